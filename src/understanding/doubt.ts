import type { DoubtStatement } from './statement.ts';

/** A doubt as it is kept until it is answered: plain data, stored with the question. */
export type Doubt = Pick<DoubtStatement, 'reason' | 'choices' | 'waiting'>;
