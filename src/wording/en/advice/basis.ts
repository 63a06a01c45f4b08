import type { DoseBasis } from '../../../planning/advice-reason.ts';

/** What an amount rests on. */
export function basisText(basis: DoseBasis): string {
  switch (basis.kind) {
    case 'usual-strength':
      return 'reckoned with a usual strength, since no label was given';
    case 'label':
      return 'reckoned by the label';
    case 'learned':
      return basis.doses === 1
        ? 'going by what the last dose did'
        : `going by what ${basis.doses} earlier doses did`;
  }
}
