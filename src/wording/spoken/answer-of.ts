import type { Answer } from '../../assistant/replies/answer.ts';

/** The answer of one kind. */
export type AnswerOf<Kind extends Answer['kind']> = Extract<Answer, { kind: Kind }>;
