import type { Logbook } from '../logbook/logbook.ts';
import type { Surprise } from '../planning/surprises/surprise.ts';
import { type FreshSurprise, freshSurprises } from '../planning/surprises/surprises.ts';
import { waterOutlooks } from '../planning/water-outlooks.ts';
import { inDaytime } from './quiet-hours.ts';
import type { Reminder } from './reminders-due.ts';
import type { Standing } from './standing.ts';

/** Harm this near is told at night as well. */
const NEAR_MS = 12 * 3_600_000;

/** What does not fit what was learned, to the growers, each once. */
export function surpriseReminders(standing: Standing, nowMs: number): readonly Reminder[] {
  const { timeZone, members } = standing.greenhouse;
  const to = members.filter(({ role }) => role === 'grower').map(({ handle }) => handle);
  return surprisesOf(standing, nowMs).map(({ surprise, toldAtMs }) => ({
    key: surprise.key,
    atMs: isNear(surprise, toldAtMs) ? toldAtMs : inDaytime(toldAtMs, timeZone),
    to,
    alert: { kind: 'surprise', surprise },
  }));
}

function isNear(surprise: Surprise, toldAtMs: number): boolean {
  if (surprise.kind !== 'use' || surprise.way === 'below') return false;
  return surprise.lowAtMs !== null && surprise.lowAtMs - toldAtMs < NEAR_MS;
}

/** The same log shows the same; what is due is reckoned over and over. */
const known = new WeakMap<Logbook, readonly FreshSurprise[]>();

function surprisesOf(
  { greenhouse, logbook, water }: Standing,
  nowMs: number,
): readonly FreshSurprise[] {
  let found = known.get(logbook);
  if (!found) {
    const outlooks = waterOutlooks(greenhouse, water, nowMs);
    found = freshSurprises(greenhouse, logbook, water, outlooks, nowMs);
    known.set(logbook, found);
  }
  return found;
}
