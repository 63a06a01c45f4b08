import { holdToCorpora } from './hold-to-corpora.ts';

holdToCorpora(['thirteenth-questions']);

// What is answered, too: each names what its words must hold. What is left in it cannot be answered yet.
holdToCorpora(['fourteenth-questions']);

// What newcomers, growers, doubting teenagers and house sitters ask.
holdToCorpora(['fifteenth-questions']);
