/**
 * How pictures look: about as wide as a phone held upright, so that lettering is as large there as here;
 * and no taller than wide, since a chat shows a tall picture smaller, and its lettering with it.
 */
export const widthPx = 420;
/** Pixels a px: sharp on a phone, and below what chat platforms shrink. */
export const scale = 3;
export const fontFamily = 'DejaVu Sans';

export const colours = {
  ink: '#1c2b2d',
  faint: '#6b7a7c',
  paper: '#ffffff',
  water: '#1f6f8b',
  low: '#b3261e',
  wanted: '#2e7d32',
  poured: '#0b3c49',
} as const;
