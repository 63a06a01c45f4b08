import { holdToCorpora } from './hold-to-corpora.ts';

holdToCorpora(['english-open', 'english-sealed', 'german-open', 'german-sealed']);
