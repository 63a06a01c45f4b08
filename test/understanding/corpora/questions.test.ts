import { holdToCorpora } from './hold-to-corpora.ts';

holdToCorpora(['thirteenth-questions']);
