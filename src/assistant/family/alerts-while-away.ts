import { localDateOf } from '../../greenhouse/local-time.ts';
import type { Ledger } from '../ports/store.ts';
import type { AlertTold } from '../replies/family.ts';
import type { Standing } from '../standing.ts';
import { absenceToEnd, spanOf } from './absence-to-end.ts';
import { rosterOf } from './roster-of.ts';

/**
 * What was said unasked to somebody while away that stands in no entry: what did not fit, and harm
 * that was likely. Nothing is looked up for who was not away of late.
 */
export async function alertsWhileAway(
  ledger: Pick<Ledger, 'alertsTo'>,
  standing: Standing,
  handle: string,
  nowMs: number,
): Promise<readonly AlertTold[]> {
  const { greenhouse, arrangements } = standing;
  if (arrangements.length === 0) return [];
  const today = localDateOf(nowMs, greenhouse.timeZone);
  const absence = absenceToEnd(rosterOf(standing), handle, today);
  if (!absence || absence.from > today) return [];
  const { fromMs, untilMs } = spanOf(absence, greenhouse, nowMs);
  const told = await ledger.alertsTo(handle, fromMs, untilMs);
  return told.flatMap(({ atMs, reply }): readonly AlertTold[] => {
    if (reply.kind !== 'alert') return [];
    const { alert } = reply;
    if (alert.kind === 'surprise') return [{ atMs, alert }];
    return alert.kind === 'outage-reminder' && alert.stage === 'now' ? [{ atMs, alert }] : [];
  });
}
