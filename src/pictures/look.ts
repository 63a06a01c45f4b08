/** How pictures look: wide enough for a phone held upright, in px before they are scaled up. */
export const widthPx = 720;
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
