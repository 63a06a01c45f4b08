import type { FileCabinet } from '../state/file-cabinet.ts';
import type { WirePhotoSize } from '../wire/message.ts';
import { type PictureSize } from './picture-size.ts';

/** The platform shows pictures scaled down to boxes of these many pixels (from memory). */
const BOXES_PX = [90, 320, 800, 1280] as const;

/** The sizes of a picture, smallest first. All hold the same bytes: the emulator scales nothing. */
export const photoSizes = (
  files: FileCabinet,
  bytes: Uint8Array,
  size: PictureSize,
): readonly WirePhotoSize[] => {
  const longestPx = Math.max(size.widthPx, size.heightPx);
  const boxes = BOXES_PX.filter((_px, index) => index === 0 || BOXES_PX[index - 1]! < longestPx);
  return boxes.map((boxPx) => {
    const scale = Math.min(1, boxPx / longestPx);
    const file = files.keep(bytes, 'photos', 'jpg');
    return {
      file_id: file.fileId,
      file_unique_id: file.uniqueId,
      width: Math.max(1, Math.round(size.widthPx * scale)),
      height: Math.max(1, Math.round(size.heightPx * scale)),
      file_size: bytes.length,
    };
  });
};
