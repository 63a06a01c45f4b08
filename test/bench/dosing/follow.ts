import { boardOf } from '../../../src/assistant/board-of.ts';
import {
  emptyStanding,
  type Standing,
  withChanges,
  withLogbook,
} from '../../../src/assistant/standing.ts';
import type { Entry, EntryDraft, EntryNo } from '../../../src/greenhouse/entry.ts';
import { withEntries } from '../../../src/logbook/logbook.ts';
import type { DosingCase } from './dosing-case.ts';

/** How one case went. */
export interface Course {
  readonly phs: readonly number[];
  readonly shown: readonly number[];
  readonly doses: readonly { readonly product: string; readonly mL: number }[];
  readonly isInRange: boolean;
  readonly isOvershot: boolean;
  readonly refusal: string | null;
}

const START_MS = Date.parse('2027-05-04T08:20:00+01:00');
const MINUTE_MS = 60_000;
const WAIT_MIN = 25;
const MOST_ROUNDS = 4;
/** A pen that is some hundredths off cannot tell more closely where the range ends. */
const TOLERANCE_PH = 0.08;

/** Does what the bot says, round by round, until it asks for no more. */
export function followed(dosing: DosingCase): Course {
  const { greenhouse, reservoir } = dosing;
  const system = greenhouse.systems[dosing.systemIndex]!;
  let nowMs = START_MS;
  let standing = emptyStanding(greenhouse, START_MS - 86_400_000);
  const note = (drafts: readonly Omit<EntryDraft, 'system' | 'atMs'>[]): void => {
    standing = logged(
      standing,
      drafts.map((draft) => ({ ...draft, system: system.id, atMs: nowMs })),
      nowMs,
    );
  };
  const measure = (): number => dosing.shown(reservoir.ph);
  const startPh = reservoir.ph;
  const phs = [startPh];
  const shown = [measure()];
  const doses: { product: string; mL: number }[] = [];
  note([
    { quantity: 'level', value: Math.min(system.brimL, dosing.toldLitres) },
    { quantity: 'ec', value: dosing.ecMsPerCm },
    { quantity: 'water-temperature', value: dosing.waterC },
    { quantity: 'ph', value: shown[0]! },
  ]);
  let refusal: string | null = null;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const board = boardOf(standing, nowMs);
    const line = [...board.today, ...board.later].find(
      ({ duty }) => duty.system === system.id && duty.kind === 'dose',
    );
    if (!line) {
      const other = board.today.find(({ reason }) => reason.kind === 'before-dose');
      refusal = other ? JSON.stringify(other.reason) : null;
      break;
    }
    const { product = '', mL = 0 } = line.duty;
    doses.push({ product, mL });
    reservoir.pour(mL * (product === 'ph-up' ? dosing.trueMeqPerMl.up : -dosing.trueMeqPerMl.down));
    nowMs += 2 * MINUTE_MS;
    note([{ quantity: 'dose', value: mL, product }]);
    reservoir.wait(WAIT_MIN);
    nowMs += WAIT_MIN * MINUTE_MS;
    phs.push(reservoir.ph);
    shown.push(measure());
    note([{ quantity: 'ph', value: shown.at(-1)! }]);
  }
  const [lowest, highest] = system.ph;
  const last = phs.at(-1)!;
  return {
    phs,
    shown,
    doses,
    isInRange: last >= lowest - TOLERANCE_PH && last <= highest + TOLERANCE_PH,
    isOvershot: phs.some((ph) => (startPh < lowest ? ph > highest : ph < lowest)),
    refusal,
  };
}

function logged(standing: Standing, drafts: readonly EntryDraft[], nowMs: number): Standing {
  const last = standing.logbook.all.length;
  const entries = drafts.map(
    (draft, position): Entry => ({
      ...draft,
      no: (last + position + 1) as EntryNo,
      source: { kind: 'member', handle: 'ines', messageId: `m${nowMs}` },
      recordedAtMs: nowMs,
      struck: null,
    }),
  );
  const moved = withChanges(
    standing,
    { entries: [], strikes: [], weather: [], mornings: [], greenhouse: null },
    standing.revision,
    nowMs,
  );
  return withLogbook(moved, withEntries(moved.logbook, entries));
}
