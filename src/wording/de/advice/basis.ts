import type { DoseBasis } from '../../../planning/advice-reason.ts';

/** What an amount rests on. */
export function basisText(basis: DoseBasis): string {
  switch (basis.kind) {
    case 'usual-strength':
      return 'gerechnet mit üblicher Stärke, da kein Etikett angegeben ist';
    case 'label':
      return 'gerechnet nach dem Etikett';
    case 'learned':
      return basis.doses === 1
        ? 'nach der Wirkung der letzten Zugabe'
        : `nach der Wirkung von ${basis.doses} früheren Zugaben`;
  }
}
