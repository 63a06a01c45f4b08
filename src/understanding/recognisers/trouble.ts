import type { Trouble } from '../../greenhouse/entry.ts';
import { dangerIn } from '../dangers/danger-in.ts';
import type { Fact } from '../fact.ts';
import type { Mood } from '../moods/mood.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
  type TermRange,
  takeRange,
} from '../reading/frame.ts';
import { isCrop, means, type Term } from '../reading/term.ts';
import { choreIn } from './chores.ts';
import { systemOfCrop, systemOfDevice } from './devices.ts';

/**
 * `bench leaking`, `leaves yellow`, `the pump is screaming`: to be kept in the teller's words, for somebody to see
 * to. Beside something that is told, how plants look is chatter.
 */
export function recogniseTroubles(
  frame: Frame,
  moods: readonly (Mood | null)[],
  told: readonly Fact[],
): Fact[] {
  return frame.clauses.flatMap((clause): Fact[] => {
    const danger = dangerIn(frame, clause, moods);
    const found = danger ? { trouble: danger.of, at: danger.at } : troubleIn(frame, clause, moods);
    if (!found) return [];
    if (found.trouble === 'plants' && told.length > 0) return [];
    const isTold = (fact: Fact) => fact.from < clause.to && fact.to >= clause.from;
    if (told.some((fact) => fact.quantity !== 'duty-failed' && isTold(fact))) return [];
    const { originAt, original } = frame.folded;
    const note = original
      .slice(originAt(frame.terms[clause.from]!.from), originAt(frame.terms[clause.to - 1]!.to))
      .trim();
    const device = inClause(
      frame,
      clause,
      (term) => isCrop(term) || means(term, 'pump', 'air-pump'),
    );
    const system = device
      .map((i) => systemOfCrop(frame, frame.terms[i]) ?? systemOfDevice(frame, frame.terms[i]))
      .find((id) => id !== null);
    takeRange(frame, clause.from, clause.to);
    return [
      {
        quantity: 'note',
        amount: { kind: 'value', value: 1 },
        at: found.at,
        from: clause.from,
        to: clause.to - 1,
        note,
        trouble: found.trouble,
        doubt: { kind: 'trouble', of: found.trouble, tells: growersBeside(frame) },
        ...(system ? { byDevice: system } : {}),
        because: 'trouble',
      },
    ];
  });
}

function growersBeside({ context }: Frame): readonly string[] {
  const { greenhouse, member } = context;
  return greenhouse.members
    .filter(({ role, handle }) => role === 'grower' && handle !== member.handle)
    .map(({ handle }) => handle);
}

/** What is amiss and hurts nobody, where it is plainly said. */
function troubleIn(
  frame: Frame,
  clause: Clause,
  moods: readonly (Mood | null)[],
): { readonly trouble: Trouble; readonly at: number } | null {
  const found = harmlessIn(frame, clause);
  if (!found || (moods[found.at] ?? null) !== null) return null;
  // `12 Gurken hängen schon` counts them; `bucket 3 is barely bubbling` says which.
  const counts = inClause(
    frame,
    clause,
    (term, i) => isMeasure(term) && frame.terms[i - 1]?.kind !== 'name',
  );
  if (isOver(frame, clause) || counts.length > 0) return null;
  // `done except wipe off the algae`: a chore is called so.
  if (choreIn(frame, clause) !== null) return null;
  return found;
}

/** What is amiss by its words alone, and hurts nobody, whoever asks about it or tells of it. */
export function harmlessIn(
  frame: Frame,
  clause: TermRange,
): { readonly trouble: Trouble; readonly at: number } | null {
  const first = (...concepts: Parameters<typeof means>[1][]): number => {
    for (let i = clause.from; i < clause.to; i++) if (means(frame.terms[i], ...concepts)) return i;
    return -1;
  };
  const noise = first('labouring');
  if (noise >= 0 && (first('pump', 'air-pump', 'venturi') >= 0 || first('instrument') >= 0))
    return { trouble: 'noise', at: noise };
  const weak = first('weak-bubbles');
  if (weak >= 0) return { trouble: 'air', at: weak };
  // `the bubbles in the buckets are really weak`: what bubbles and how stand apart.
  const feeble = first('weak');
  if (feeble >= 0 && first('aeration', 'air-pump', 'air-stones', 'venturi') >= 0)
    return { trouble: 'air', at: feeble };
  const foul = first('foul');
  if (foul >= 0) return { trouble: 'solution', at: foul };
  const murky = first('murky');
  if (murky >= 0 && first('water', 'solution') >= 0) return { trouble: 'solution', at: murky };
  const ailing = first('ailing');
  if (ailing >= 0) return { trouble: 'plants', at: ailing };
  const colour = first('off-colour');
  const isOfPlant =
    first('plant-part') >= 0 || frame.places.hasWhere(isCrop, clause.from, clause.to);
  return colour >= 0 && isOfPlant ? { trouble: 'plants', at: colour } : null;
}

/** `no mould`, `fixed the pump`, `cut off the yellow leaves`: nothing is wrong, or not any more. */
function isOver(frame: Frame, clause: Clause): boolean {
  // `I'm wiping off the algae tonight`: somebody sees to it.
  const isThisEvening =
    (clauseHas(frame, clause, 'today') && clauseHas(frame, clause, 'evening')) ||
    inClause(frame, clause, (term) => means(term, 'evening') && opensWithToday(frame, term))
      .length > 0;
  const isSeenTo = isThisEvening || clauseHas(frame, clause, 'tonight', 'tomorrow');
  if (isSeenTo && clauseHas(frame, clause, 'self')) return true;
  return clauseHas(
    frame,
    clause,
    'not',
    'no',
    'did-not',
    'working',
    'other-deed',
    'clean',
    'pick',
    'take-away',
    'intention',
    'condition',
    'all-good',
    'done',
    'except',
    'ceased',
  );
}

/** `heute Abend` may be one phrase. */
function opensWithToday({ lexicon }: Frame, { text }: Term): boolean {
  return lexicon.own.vocabulary.words.today.includes(text.split(' ')[0]!);
}
