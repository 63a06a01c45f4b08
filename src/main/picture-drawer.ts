import { parentPort } from 'node:worker_threads';
import type { Picture } from '../assistant/replies/picture.ts';
import type { Language } from '../greenhouse/member.ts';
import { drawPicture } from '../pictures/draw-picture.ts';
import type { Reader } from '../wording/wording.ts';

/** A picture that the thread is asked for. */
export interface WantedPicture {
  readonly no: number;
  readonly picture: Picture;
  readonly language: Language;
  readonly reader: Reader;
}

export type DrawnPicture =
  | { readonly ok: true; readonly no: number; readonly png: Uint8Array }
  | { readonly ok: false; readonly no: number; readonly because: string };

parentPort?.on('message', (wanted: WantedPicture) => {
  void drawn(wanted).then((answer) => {
    parentPort?.postMessage(answer);
  });
});

async function drawn({ no, picture, language, reader }: WantedPicture): Promise<DrawnPicture> {
  try {
    return { ok: true, no, png: await drawPicture(picture, language, reader) };
  } catch (error) {
    return { ok: false, no, because: String(error) };
  }
}
