import type { Entry } from '../greenhouse/entry.ts';
import type { Probe } from '../greenhouse/greenhouse.ts';
import type { ReferenceQuantity } from '../greenhouse/quantity.ts';
import { type Logbook, liveEntries } from '../logbook/logbook.ts';
import { type ProbeVerdict, probeFromShownPh } from '../science/ph/probe-calibration.ts';
import { celsius } from '../science/units/temperature.ts';

/** One calibration: what the probe showed in its references before it was set anew. */
export interface ProbeSession {
  readonly probe: string;
  readonly measures: ReferenceQuantity;
  readonly atMs: number;
  readonly entries: readonly Entry[];
  /** Of a perfect probe's slope; null where one reference does not tell. */
  readonly slopeShare: number | null;
  /** mV at pH 7; null for other quantities. */
  readonly offsetMv: number | null;
  /** How far off it showed, at worst, in the quantity's unit. */
  readonly worstMiss: number;
  readonly verdict: ProbeVerdict;
}

/** References said within so long belong to one calibration. */
const ONE_SESSION_MS = 3 * 3_600_000;
/** Buffers stand at room temperature; what the bottle says is taken as their pH there. */
const ROOM_C = 20;
/** Below this, a reference of a probe for both can only be an EC standard. */
const LOWEST_BUFFER_PH = 3;
/** One buffer alone: a zero point of 30 mV is about half a pH. */
const MOST_MISS_PH = 0.5;
const GOOD_MISS_PH = 0.2;
/** EC meters: within 5 % is good, beyond 15 % means nothing. Common practice. */
const GOOD_MISS_SHARE = 0.05;
const MOST_MISS_SHARE = 0.15;

/** The calibrations of a probe for one quantity, earliest first. */
export function probeSessions(
  logbook: Logbook,
  probe: Probe,
  measures: ReferenceQuantity,
): readonly ProbeSession[] {
  const entries = liveEntries(logbook, null, 'calibration').filter(
    (entry) => entry.probe === probe.name && referenceOf(entry, probe) === measures,
  );
  const sessions: Entry[][] = [];
  for (const entry of entries) {
    const last = sessions.at(-1);
    if (last && entry.atMs - last.at(-1)!.atMs <= ONE_SESSION_MS) last.push(entry);
    else sessions.push([entry]);
  }
  return sessions.map((session) => judged(probe.name, measures, session));
}

/** What a calibration entry calibrated, going by the probe and the reference's value. */
export function referenceOf(entry: Pick<Entry, 'value'>, probe: Probe): ReferenceQuantity {
  const [only, second] = probe.measures;
  if (only !== undefined && second === undefined) return only;
  const isPh = probe.measures.includes('ph') && entry.value >= LOWEST_BUFFER_PH;
  return isPh ? 'ph' : probe.measures.includes('ec') ? 'ec' : (only ?? 'ph');
}

function judged(
  probe: string,
  measures: ReferenceQuantity,
  entries: readonly Entry[],
): ProbeSession {
  const atMs = entries.at(-1)!.atMs;
  const misses = entries.map((entry) => Math.abs((entry.read ?? entry.value) - entry.value));
  const worstMiss = Math.max(...misses);
  const common = { probe, measures, atMs, entries, worstMiss };
  if (measures === 'ph') return { ...common, ...phVerdict(entries, worstMiss) };
  const shares = entries.map((entry) => (entry.read ?? entry.value) / entry.value);
  const slopeShare = shares.reduce((sum, share) => sum + share, 0) / shares.length;
  const off = Math.abs(slopeShare - 1);
  const verdict = off <= GOOD_MISS_SHARE ? 'good' : off <= MOST_MISS_SHARE ? 'worn' : 'unfit';
  return { ...common, slopeShare, offsetMv: null, verdict };
}

function phVerdict(
  entries: readonly Entry[],
  worstMiss: number,
): Pick<ProbeSession, 'slopeShare' | 'offsetMv' | 'verdict'> {
  const ordered = entries.toSorted((one, other) => one.value - other.value);
  const [low, high] = [ordered[0]!, ordered.at(-1)!];
  const state = probeFromShownPh({
    first: { bufferPh: high.value, shownPh: high.read ?? high.value },
    second: { bufferPh: low.value, shownPh: low.read ?? low.value },
    bufferCelsius: celsius(ROOM_C),
  });
  if (state.ok) return state.value;
  const verdict = worstMiss <= GOOD_MISS_PH ? 'good' : worstMiss <= MOST_MISS_PH ? 'worn' : 'unfit';
  return { slopeShare: null, offsetMv: null, verdict };
}
