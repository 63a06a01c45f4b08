import type { SpokenUnits } from './greenhouse.ts';

export type Role = 'grower' | 'helper';
export type Language = 'en' | 'de';

export const languages: readonly Language[] = ['en', 'de'];

/** A person in the chat; the handle is unique in the greenhouse. */
export interface Member {
  readonly handle: string;
  readonly name: string;
  readonly role: Role;
  readonly language: Language;
  /** Was shown how to handle strong acid and alkali; absent: growers yes, helpers no. */
  readonly handlesAcids?: boolean;
  /** Units that this member reads and speaks in where the household has others. */
  readonly units?: Partial<SpokenUnits>;
}

/** Nobody is sent to strong acid or alkali who was not shown how. */
export function mayHandleAcids(member: Pick<Member, 'role' | 'handlesAcids'>): boolean {
  return member.handlesAcids ?? member.role === 'grower';
}
