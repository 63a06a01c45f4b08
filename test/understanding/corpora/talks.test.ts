import { holdToCorpora } from './hold-to-corpora.ts';

/** Whole conversations: what is asked about once more in one line is missing from those after it. */
const exactShareOfTalks = 0.96;

holdToCorpora(['tenth-talks', 'eleventh-talks'], exactShareOfTalks);

// Answers that come late, corrections of corrections and rounds in pieces; what is left in it is asked about.
holdToCorpora(['thirteenth-talks'], 0.94);

// A German family's talks; what is left in it is dialect, and asked about.
holdToCorpora(['fifteenth-german'], 0.95);
