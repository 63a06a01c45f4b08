import type { DrawPicture } from '../wording/wording.ts';

/** Draws pictures; what that takes is loaded with the first of them, so that starting stays quick. */
export const drawLazily: DrawPicture = async (picture, words, timeZone) => {
  const { drawPicture } = await import('../pictures/draw-picture.ts');
  return drawPicture(picture, words, timeZone);
};
