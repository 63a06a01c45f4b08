import type { DutyLine } from '../../planning/duty-line.ts';

/** From one time that work is due to the next; null: it goes by how things stand. */
export function daysBetween({ reason }: DutyLine): number | null {
  switch (reason.kind) {
    case 'not-measured':
      return reason.rhythm && Math.max(1, Math.round(reason.rhythm.everyDays));
    case 'calibration':
    case 'chore':
      return reason.everyDays;
    case 'clean':
      return reason.because.kind === 'interval' ? reason.because.everyDays : null;
    case 'change':
      return Math.round(reason.dueAgeDays);
    default:
      return null;
  }
}
