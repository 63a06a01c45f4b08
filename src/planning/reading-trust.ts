import type { Entry } from '../greenhouse/entry.ts';
import { localDateOf } from '../greenhouse/local-time.ts';
import type { SystemId } from '../greenhouse/system.ts';
import { type Logbook, latestEntry, liveEntries } from '../logbook/logbook.ts';
import type { DoseRefusal } from './dose-refusal.ts';
import { DOSE_WAIT, dosesOf, isMeasuredAfterMixing } from './doses-given.ts';
import type { BoardQuestion } from './duty-board.ts';
import { borneOutBy, contradictedBy } from './meter-comparison.ts';
import { isTrustedOn, type ProbeTrust, probesFor } from './probe-trust.ts';
import { jumpedFrom } from './reading-jump.ts';

/** A reading that a dose may rest on, or why none may. */
export type BearingReading =
  | { readonly ok: true; readonly entry: Entry }
  | { readonly ok: false; readonly entry: Entry | null; readonly because: DoseRefusal };

/** A dose rests on a reading no older than this. */
const FRESH_MS = 36 * 3_600_000;

/** The latest pH or EC of a system, if it may bear a dose as things stand. */
export function bearingReading(
  question: Pick<BoardQuestion, 'greenhouse' | 'logbook' | 'nowMs'>,
  system: SystemId,
  quantity: 'ph' | 'ec',
): BearingReading {
  const { greenhouse, logbook, nowMs } = question;
  const entry = latestEntry(logbook, system, quantity);
  const renewed =
    latestEntry(logbook, system, 'reservoir-change')?.atMs ?? Number.NEGATIVE_INFINITY;
  if (!entry || nowMs - entry.atMs > FRESH_MS || entry.atMs < renewed) {
    const lastOn = entry ? localDateOf(entry.atMs, greenhouse.timeZone) : null;
    return { ok: false, entry: null, because: { kind: 'not-measured', lastOn } };
  }
  const refused = (because: DoseRefusal): BearingReading => ({ ok: false, entry, because });
  const dosed = notYetMeasured(logbook, system, entry);
  if (dosed) return refused(dosed);
  const other = contradictedBy(entry, logbook);
  if (other) return refused({ kind: 'meters-disagree', one: entry, other });
  const untrusted = probeDoubt(entry, question, quantity);
  if (untrusted) return refused(untrusted);
  const before = jumpedFrom(entry, logbook);
  if (before && !borneOutBy(entry, logbook)) {
    return refused({ kind: 'looks-like-slip', entry, before });
  }
  return { ok: true, entry };
}

/** A dose that came after the reading, or so shortly before it that it was not mixed yet. */
function notYetMeasured(logbook: Logbook, system: SystemId, entry: Entry): DoseRefusal | null {
  const last = dosesOf(logbook, system).at(-1);
  const top = liveEntries(logbook, system, 'top-up').at(-1);
  if (!last) return null;
  if (isMeasuredAfterMixing(last, entry)) return null;
  // Concentrates that went in with a top-up were part of it: the next check tells.
  if (top && Math.abs(top.atMs - last.atMs) < DOSE_WAIT.leastMin * 60_000 && isNutrient(last)) {
    return null;
  }
  const readyAtMs = last.atMs + DOSE_WAIT.fromMin * 60_000;
  return { kind: 'just-dosed', atMs: last.atMs, readyAtMs };
}

function isNutrient(entry: Entry): boolean {
  return entry.product !== undefined && !/ph/i.test(entry.product);
}

function probeDoubt(
  entry: Entry,
  { greenhouse, logbook, nowMs }: Pick<BoardQuestion, 'greenhouse' | 'logbook' | 'nowMs'>,
  quantity: 'ph' | 'ec',
): DoseRefusal | null {
  // A fixed sensor is no probe of the list; it is looked after by its own alarms.
  if (entry.source.kind === 'sensor') return null;
  const probe = probeOf(entry, probesFor(greenhouse, logbook, quantity));
  if (!probe) {
    return { kind: 'stale-probe', probe: null, calibratedOn: null, trustedDays: 0 };
  }
  const { name } = probe.probe;
  if (probe.verdict === 'unfit') return { kind: 'unfit-probe', probe: name };
  if (isTrustedOn(probe, localDateOf(nowMs, greenhouse.timeZone))) return null;
  const { calibratedOn, trustedDays } = probe;
  return { kind: 'stale-probe', probe: name, calibratedOn, trustedDays };
}

/** The probe named with the reading, else the one most lately calibrated. */
function probeOf(entry: Entry, probes: readonly ProbeTrust[]): ProbeTrust | undefined {
  return probes.find(({ probe }) => probe.name === entry.probe) ?? probes[0];
}
