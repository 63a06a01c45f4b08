import { bareJpeg } from './bare-jpeg.ts';
import { barePng } from './bare-png.ts';
import { bareWebp } from './bare-webp.ts';

/**
 * A photo without what cameras write beside it: where and when it was taken, by whom and with what.
 * The picture itself stays as it is, byte by byte, and so does the way up in which it is shown. What is
 * neither JPEG, PNG nor WebP stays whole.
 */
export function barePicture(bytes: Uint8Array): Uint8Array {
  return bareJpeg(bytes) ?? barePng(bytes) ?? bareWebp(bytes) ?? bytes;
}
