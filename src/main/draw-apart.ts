import { Worker } from 'node:worker_threads';
import type { DrawPicture } from '../wording/wording.ts';
import type { DrawnPicture, WantedPicture } from './picture-drawer.ts';

interface Waiting {
  readonly resolve: (png: Uint8Array) => void;
  readonly reject: (error: Error) => void;
}

/** Beside the bundle: a picture is drawn by the built program only. */
const drawerFile = './picture-drawer.js';
const waiting = new Map<number, Waiting>();
let drawer: Worker | null = null;
let lastNo = 0;

/**
 * Draws pictures in a thread of its own, so that nobody's reading waits for one. It starts with the
 * first picture; should it die, those under way fail and the next picture starts another.
 */
export const drawApart: DrawPicture = (picture, language, reader) =>
  new Promise((resolve, reject) => {
    drawer ??= startDrawer();
    lastNo += 1;
    drawer.postMessage({ no: lastNo, picture, language, reader } satisfies WantedPicture);
    waiting.set(lastNo, { resolve, reject });
    drawer.ref();
  });

function startDrawer(): Worker {
  const worker = new Worker(new URL(drawerFile, import.meta.url));
  worker.on('message', (drawn: DrawnPicture) => {
    const asked = waiting.get(drawn.no);
    waiting.delete(drawn.no);
    if (drawn.ok) asked?.resolve(drawn.png);
    else asked?.reject(new Error(`the picture could not be drawn: ${drawn.because}`));
    // With nothing to draw it does not keep the program from ending.
    if (waiting.size === 0) worker.unref();
  });
  worker.once('error', (error) => {
    drawer = null;
    for (const { reject } of waiting.values()) {
      reject(new Error('the thread that draws pictures has died', { cause: error }));
    }
    waiting.clear();
  });
  return worker;
}
