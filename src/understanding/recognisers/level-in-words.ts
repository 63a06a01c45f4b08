import type { Amount, Fact } from '../fact.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import {
  type Clause,
  clauseHas,
  clauseToldBefore,
  type Frame,
  hasUnknown,
  inClause,
  isName,
  isShare,
  isVolumeTerm,
  measuresIn,
  namesIn,
  nextIn,
  previousIn,
  take,
} from '../reading/frame.ts';
import { isMark, means, type Term } from '../reading/term.ts';
import { fact } from './level-fact.ts';
import { mayBeOfVessel } from './vessel-not-full.ts';

/** `full`, `half full`, `empty`, `half empty`, `a third left`. */
export function inWords(frame: Frame, clause: Clause): Fact[] {
  const facts: Fact[] = [];
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (frame.taken[i]) continue;
    if (term.kind === 'measure' && term.measure.share && term.measure.unit === null) {
      const after = nextIn(
        frame,
        clause,
        i,
        (other) => means(other, 'of', 'article', 'ish') || isMark(other, '-'),
      );
      const word = after >= 0 ? frame.terms[after] : undefined;
      const isLevel =
        means(word, 'full', 'left-over', 'level', 'brim') ||
        (after < 0 && isTiedToName(frame, clause, i));
      if (isOfStranger(frame, clause, i)) continue;
      if (isLevel) {
        if (after >= 0) take(frame, after);
        const to = Math.max(i, after);
        const amount: Amount = { kind: 'measure', measure: term.measure };
        facts.push({
          ...fact(frame, i, amount, 'level in words', i, to),
          ...shadedAfter(frame, to),
          ...(mayBeOfVessel(frame) ? { doubt: { kind: 'is-it-a-reading' as const } } : {}),
        });
      } else if (means(word, 'empty', 'down')) {
        take(frame, after);
        facts.push(
          fact(frame, i, { kind: 'below-brim', measure: term.measure }, 'level in words', i, after),
        );
      }
      continue;
    }
    const full = means(term, 'full');
    if (!full && !(means(term, 'empty') && !means(term, 'empty-out'))) continue;
    if (!isStateOfSystem(frame, clause, i)) continue;
    const before = frame.terms[i - 1];
    // `all but empty`.
    const isShaded =
      means(before, 'about', 'ish') || (means(before, 'all') && means(before, 'except'));
    const amount: Amount = full ? { kind: 'brim' } : { kind: 'nothing-in-it' };
    facts.push({
      ...fact(frame, i, amount, 'level in words'),
      ...(isShaded ? { approximate: true } : shadedAfter(frame, i)),
    });
  }
  return facts;
}

/** `half full I'd say`, `three quarters full-ish`. */
function shadedAfter({ terms }: Frame, i: number): { readonly approximate?: true } {
  const after = isMark(terms[i + 1], '-') ? terms[i + 2] : terms[i + 1];
  return means(after, 'ish') ? { approximate: true } : {};
}

/** `fridge is half full`: of a thing that is no system, and none is named beside it. */
function isOfStranger(frame: Frame, clause: Clause, i: number): boolean {
  if (namesIn(frame, clause).length > 0) return false;
  return (
    hasUnknown(frame, clause.from, i) || clauseHas(frame, { from: clause.from, to: i }, 'vessel')
  );
}

function isTiedToName(frame: Frame, clause: Clause, i: number): boolean {
  const before = previousIn(frame, clause, i, (term) =>
    means(term, 'link', 'about', 'at', 'filler', 'article', 'now'),
  );
  return before >= 0 && frame.terms[before]!.kind === 'name';
}

/** `jars full`, not `full of roots`, `the full sun`, `the bottle is empty`. */
function isStateOfSystem(frame: Frame, clause: Clause, i: number): boolean {
  const after = i + 1 < clause.to ? frame.terms[i + 1] : undefined;
  const filling = whatFillsIt(frame, clause, i);
  if (isCounted(frame, after) || (filling !== null && !means(filling, 'solution', 'water')))
    return false;
  if (
    after &&
    ((means(after, 'of') && filling === null) ||
      !(
        filling !== null ||
        means(after, 'now', 'filler', 'place', 'today', 'brim') ||
        after.kind === 'name' ||
        after.kind === 'mark' ||
        // `dwc full 5.8 1.7`: the readings follow.
        (after.kind === 'measure' && after.measure.unit === null && !after.measure.whole)
      ))
  ) {
    if (!means(after, 'this', 'at-hour', 'yesterday', 'link', 'ish')) return false;
  }
  // `everything dry`: the floor as well as the systems.
  const mayBeOfFloor = means(frame.terms[i], 'dry');
  const subject = frame.places.lastWhere(maySayWhat, i - 1);
  if (subject < clause.from && leansBack(frame, clause, subject)) return false;
  if (isOneSpokenOf(frame, clause, subject, i)) return true;
  if (subject < clause.from) return !mayBeOfFloor || after?.kind === 'name';
  if (isOfPart(frame, clause, subject)) return false;
  const term = frame.terms[subject];
  if (means(term, 'water', 'solution')) return isWaterOfNamed(frame, clause);
  return term?.kind === 'name' || means(term, 'all', 'both', 'reservoir', 'level');
}

/** `gutters look fine, water is up to the top`: of the system that its sentence names. */
function isWaterOfNamed({ places, sentences }: Frame, { sentence, to }: Clause): boolean {
  return places.hasWhere(isName, sentences[sentence]![0]!.from, to);
}

/** `the corner of the table is dry`, `half of the jars are empty`: said of a part, and not of the whole system. */
function isOfPart({ terms }: Frame, clause: Clause, subject: number): boolean {
  if (terms[subject]?.kind !== 'name') return false;
  const of = means(terms[subject - 1], 'article') ? subject - 2 : subject - 1;
  if (of >= clause.from && isShare(terms[of]!)) return true;
  // `the can in the jars was empty`: the vessel that was poured.
  if (of > clause.from && means(terms[of], 'place') && isVesselAlone(terms[of - 1])) return true;
  if (of <= clause.from || !means(terms[of], 'of')) return false;
  const part = terms[of - 1];
  if (part?.kind === 'measure') return true;
  return (
    part?.kind === 'word' &&
    !means(part, 'level', 'water', 'solution', 'reservoir', 'all', 'both', 'each', 'whole')
  );
}

function isVesselAlone(term: Term | undefined): boolean {
  return means(term, 'vessel') && !means(term, 'reservoir', 'planter');
}

/** What it is full of, where that is told: `full of algae`, `voll mit Wasser`. */
function whatFillsIt({ terms }: Frame, clause: Clause, i: number): Term | null {
  // `full of water`, `voller Wasser`.
  if (i + 1 < clause.to && means(terms[i + 1], 'solution')) return terms[i + 1]!;
  if (i + 2 >= clause.to || !means(terms[i + 1], 'of', 'with')) return null;
  const of = means(terms[i + 2], 'article', 'fresh') && i + 3 < clause.to ? i + 3 : i + 2;
  return terms[of]?.kind === 'word' ? terms[of] : null;
}

/** `Zisterne ist aber leer`: the subject stands before the `but`, and is no system. */
function leansBack(frame: Frame, clause: Clause, subject: number): boolean {
  const before = frame.clauses[frame.clauseOf[clause.from]! - 1];
  if (clause.opens !== 'but' || !before || subject < before.from) return false;
  return means(frame.terms[before.to - 1], 'link') && frame.terms[subject]!.kind !== 'name';
}

/** `5 l went in the jars, then it was full`: full after water was put into a system that was named. */
function isOneSpokenOf(frame: Frame, clause: Clause, subject: number, at: number): boolean {
  const before = clauseToldBefore(frame, clause);
  const term = frame.terms[subject];
  if (before?.sentence !== clause.sentence || subject < clause.from) return false;
  const isIt = term?.kind === 'word' && means(term, 'pronoun', 'was', 'third-person');
  return (
    isIt &&
    means(frame.terms[at], 'full') &&
    namesIn(frame, before).length > 0 &&
    frame.places.hasWhere(isVolumeTerm, before.from, before.to) &&
    !clauseHas(frame, before, 'vessel')
  );
}

/** `an empty one`: a thing of which there are several. */
function isCounted({ lexicon }: Frame, term: Term | undefined): boolean {
  return term?.kind === 'word' && lexicon.own.phrases.get([term.text])?.number === 1;
}

function maySayWhat(term: Term): boolean {
  return (
    !means(term, 'link', 'about', 'filler', 'now', 'all', 'article', 'both', 'level') &&
    !isMark(term, ':', '-', '=')
  );
}

/** `dwc is low`: how low is asked. */
export function justLow(frame: Frame, clause: Clause): Fact[] {
  const at = inClause(frame, clause, (term, i) => means(term, 'low') && !frame.taken[i])[0];
  if (at === undefined || namesIn(frame, clause).length === 0) return [];
  if (measuresIn(frame, clause).length > 0 || hasUnknown(frame, clause.from, clause.to)) return [];
  if (inClause(frame, clause, (term) => isLabel(term) && !means(term, 'level')).length > 0)
    return [];
  return [fact(frame, at, { kind: 'missing' }, 'low, but not how low')];
}
