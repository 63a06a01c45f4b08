import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { initWasm, Resvg } from '@resvg/resvg-wasm';
import { colours, fontFamily, scale } from './look.ts';

const fontFiles = ['DejaVuSans.ttf', 'DejaVuSans-Bold.ttf'];

/** What XML has no way to write, such as a control character in a name. */
const unwritable = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;

const find = createRequire(import.meta.url);
// The drawing library itself can be started once a process.
// eslint-disable-next-line no-restricted-syntax
let ready: Promise<readonly Uint8Array[]> | null = null;

/** Draws SVG as PNG, with fonts of a package: those of the machine may be none. */
export async function toPng(svg: string): Promise<Uint8Array> {
  const fontBuffers = [...(await (ready ??= load()))];
  const drawing = new Resvg(svg.replace(unwritable, ''), {
    background: colours.paper,
    fitTo: { mode: 'zoom', value: scale },
    font: { fontBuffers, defaultFontFamily: fontFamily, loadSystemFonts: false },
  });
  try {
    return drawing.render().asPng();
  } finally {
    drawing.free();
  }
}

async function load(): Promise<readonly Uint8Array[]> {
  const [program, ...fonts] = await Promise.all(
    [
      '@resvg/resvg-wasm/index_bg.wasm',
      ...fontFiles.map((file) => `dejavu-fonts-ttf/ttf/${file}`),
    ].map((path) => readFile(find.resolve(path))),
  );
  await initWasm(program!);
  return fonts;
}
