import type { Correction, Receipt } from '../../assistant/replies/reply.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { assumptionText } from './assumption.ts';
import { entryLines } from './entry-lines.ts';
import { remarkText } from './remark.ts';

/** What was understood, how it was read, and what it means. */
export function receiptText(receipt: Receipt, s: Speaker): string {
  const { logged, assumptions, remarks } = receipt;
  const howRead = assumptions.map((assumption) => assumptionText(assumption, logged, s)).join(' ');
  const lines = [
    ...entryLines('Eingetragen', logged, s),
    ...(howRead === '' ? [] : [howRead]),
    ...remarks.map((remark) => remarkText(remark, s)),
  ];
  return lines.length > 0 ? lines.join('\n') : 'Nichts Neues einzutragen.';
}

/** What was struck out, and what stands instead. */
export function correctionText(correction: Correction, s: Speaker): string {
  const { struck, logged, remarks } = correction;
  const lines = [
    ...entryLines('Gestrichen', struck, s),
    ...entryLines(struck.length > 0 ? 'Stattdessen eingetragen' : 'Eingetragen', logged, s),
    ...remarks.map((remark) => remarkText(remark, s)),
  ];
  return lines.length > 0 ? lines.join('\n') : 'Es wurde nichts geändert.';
}
