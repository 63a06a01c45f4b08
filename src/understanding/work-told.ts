import type { CleanPart } from '../greenhouse/duty.ts';
import type { EntryDraft } from '../greenhouse/entry.ts';
import { partsToClean } from '../greenhouse/parts-to-clean.ts';
import type { SystemId } from '../greenhouse/system.ts';
import type { Mood } from './moods/mood.ts';
import { type Clause, clauseHas, type Frame, inClause } from './reading/frame.ts';
import { means, type Term } from './reading/term.ts';
import { systemOfDevice } from './recognisers/devices.ts';
import { systemsNamedIn } from './recognisers/work-named.ts';
import type { Choice, DoubtStatement } from './statement.ts';
import type { TimeMark } from './times/time-mark.ts';

type Asked = Pick<DoubtStatement, 'reason' | 'choices' | 'waiting'>;

/**
 * Work that was done, told without what an entry of it needs: `cleaned the gutters`, which may be
 * wiping them, and `the venturi is set`, to nobody knows what. Asks for that; null: no such work.
 */
export function workTold(
  frame: Frame,
  moods: readonly (Mood | null)[],
  marks: readonly TimeMark[],
): DoubtStatement | null {
  const when = whenDone(frame, marks);
  if (!when) return null;
  for (const clause of frame.clauses) {
    if (clauseHas(frame, clause, 'not', 'did-not', 'intention')) continue;
    const asked =
      cleaningTold(frame, moods, clause, when) ?? aerationTold(frame, moods, clause, when);
    if (!asked) continue;
    const span = { from: 0, to: frame.folded.text.length };
    return { kind: 'doubt', span, because: ['work told'], ...asked };
  }
  return null;
}

type When = Pick<EntryDraft, 'atMs' | 'approximate'>;

/** null: at several times, or at one that is still to come. */
function whenDone(frame: Frame, [mark, ...others]: readonly TimeMark[]): When | null {
  if (!mark) return { atMs: frame.context.writtenAtMs };
  if (others.length > 0 || mark.askFrom || mark.since || mark.until) return null;
  return { atMs: mark.atMs, ...(mark.vague ? { approximate: true } : {}) };
}

function cleaningTold(
  frame: Frame,
  moods: readonly (Mood | null)[],
  clause: Clause,
  when: When,
): Asked | null {
  const verb = inClause(frame, clause, (term) => means(term, 'clean'))[0];
  if (verb === undefined || moods[verb]) return null;
  const named = systemsNamedIn(frame, clause);
  const part = partNamed(frame, clause);
  if (named.length === 0 && part === null) return null;
  const meant = frame.context.greenhouse.systems.flatMap((system) => {
    const parts = partsToClean(system);
    const isMeant = named.length === 0 || named.includes(system.id);
    const fits = part === null ? parts.length > 0 : parts.includes(part);
    return isMeant && fits ? [{ system: system.id, parts: part === null ? parts : [part] }] : [];
  });
  const [one, ...others] = meant;
  if (!one) return null;
  const draft = (system: SystemId): EntryDraft => ({
    system,
    quantity: 'duty-done',
    value: 1,
    duty: 'clean',
    ...when,
  });
  const choices: readonly Choice[] =
    others.length === 0
      ? [{ label: { kind: 'yes' }, drafts: [draft(one.system)] }]
      : meant.map(({ system }) => ({ label: { kind: 'system', system }, drafts: [draft(system)] }));
  const { system } = others.length === 0 ? one : { system: null };
  const parts = [...new Set(meant.flatMap((each) => each.parts))];
  return { reason: { kind: 'was-it-cleaned', system, parts }, choices, waiting: null };
}

function partNamed(frame: Frame, clause: Clause): CleanPart | null {
  if (clauseHas(frame, clause, 'air-stones')) return 'air-stones';
  const { filters } = frame.lexicon.own.vocabulary;
  const isFilter = (term: Term) => means(term, 'pump') || filters.includes(term.text);
  return inClause(frame, clause, isFilter).length > 0 ? 'pump-filter' : null;
}

function aerationTold(
  frame: Frame,
  moods: readonly (Mood | null)[],
  clause: Clause,
  when: When,
): Asked | null {
  const device = inClause(frame, clause, isOfAir)[0];
  if (device === undefined || moods[device] || inClause(frame, clause, isSetting).length === 0)
    return null;
  const [named, ...others] = systemsNamedIn(frame, clause);
  const system = named ?? systemOfDevice(frame, frame.terms[device]);
  const aired = frame.context.greenhouse.systems.filter(({ aeration }) => aeration !== null);
  if (others.length > 0 || !aired.some(({ id }) => id === system)) return null;
  const draft: EntryDraft = { system, quantity: 'aeration', value: 0, ...when };
  return {
    reason: { kind: 'missing-amount', quantity: 'aeration' },
    choices: advisedMinutes(frame, system).map((value) => ({
      label: { kind: 'value', quantity: 'aeration', value },
      drafts: [{ ...draft, value }],
    })),
    waiting: { for: 'value', drafts: [draft] },
  };
}

function isOfAir(term: Term): boolean {
  return means(term, 'venturi', 'air-stones', 'air-pump', 'aeration');
}

function isSetting(term: Term): boolean {
  // `swapped the air pump`: another one, which runs as the old one did.
  const isSet = means(term, 'set') && !means(term, 'link', 'working', 'change', 'place');
  return isSet || means(term, 'did', 'done');
}

/** What the round has asked for. */
function advisedMinutes(frame: Frame, system: SystemId | null): readonly number[] {
  const { roundDuties } = frame.context;
  return (roundDuties ?? []).flatMap(({ kind, system: of, minutesPerHour }) =>
    kind === 'aeration' && of === system && minutesPerHour !== undefined ? [minutesPerHour] : [],
  );
}
