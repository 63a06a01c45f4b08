import type { Amount, Fact } from '../fact.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import type { Measure } from '../numbers/measure.ts';
import { cmFactor, isVolume, unitIs } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  hasUnknown,
  inClause,
  isMeasure,
  isPadding,
  measureOf,
  measuresIn,
  namesIn,
  nextIn,
  previousIn,
  take,
} from '../reading/frame.ts';
import { isMark, means } from '../reading/term.ts';

/** How much is in a reservoir: in cm, per cent, words, litres left, or counted from the brim. */
export function recogniseLevels(frame: Frame): Fact[] {
  return frame.clauses.flatMap((clause) => [
    ...fromBrim(frame, clause),
    ...measured(frame, clause),
    ...inWords(frame, clause),
    ...justLow(frame, clause),
  ]);
}

function fact(frame: Frame, at: number, amount: Amount, because: string, from = at, to = at): Fact {
  take(frame, at);
  return { quantity: 'level', amount, at, from, to, because };
}

/** `5 cm down`, `down 5 cm`, `5 cm below the brim`, `2 cm from the top`. */
function fromBrim(frame: Frame, clause: Clause): Fact[] {
  const facts: Fact[] = [];
  for (const i of measuresIn(frame, clause)) {
    const measure = measureOf(frame, i);
    if (!isPartOfLevel(measure)) continue;
    const after = i + 1 < clause.to ? frame.terms[i + 1] : undefined;
    const belowBrim =
      (means(after, 'below') || isRoomLeft(frame, clause, i)) &&
      means(
        frame.terms[
          nextIn(frame, clause, i + 1, (term) => means(term, 'article') && !means(term, 'brim'))
        ],
        'brim',
      );
    const before = previousIn(
      frame,
      clause,
      i,
      (term) => means(term, 'about', 'article', 'filler') && !means(term, 'down'),
    );
    const isDown =
      means(after, 'down') && !means(frame.terms[i + 2], 'to') && !isProductAt(frame, i + 1);
    const downBefore =
      before >= 0 &&
      means(frame.terms[before], 'down') &&
      !means(frame.terms[before], 'to') &&
      !means(frame.terms[before + 1], 'to');
    if (!belowBrim && !isDown && !downBefore) continue;
    const label = inClause(frame, clause, (term) => means(term, 'level'));
    take(frame, ...label);
    // `down 5 cm since yesterday` counts from where it was, not from the brim.
    const sinceThen = !belowBrim && clauseHas(frame, clause, 'since');
    const doubt = sinceThen ? { doubt: { kind: 'is-it-a-reading' as const } } : {};
    facts.push({
      ...fact(
        frame,
        i,
        { kind: 'below-brim', measure },
        'counted from the brim',
        downBefore ? before : i,
        belowBrim || isDown ? i + 1 : i,
      ),
      ...doubt,
    });
  }
  return facts;
}

/** `5 cm to the brim` counts from it, unless something was filled to there. */
function isRoomLeft(frame: Frame, clause: Clause, i: number): boolean {
  return (
    cmFactor(measureOf(frame, i)) !== null &&
    means(frame.terms[i + 1], 'to') &&
    !clauseHas(frame, clause, 'top-up', 'fill', 'refill', 'add')
  );
}

function isPartOfLevel(measure: Measure): boolean {
  return (
    cmFactor(measure) !== null || isVolume(measure) || unitIs(measure, 'percent') || measure.share
  );
}

function isProductAt(frame: Frame, i: number): boolean {
  const term = frame.terms[i];
  return term?.kind === 'word' && term.word.product !== null;
}

/** `level 52cm`, `bench 80 %`, `95 l left`, `there's 95 l in the dwc`, `dwc at 95 l`. */
function measured(frame: Frame, clause: Clause): Fact[] {
  const facts: Fact[] = [];
  for (const i of measuresIn(frame, clause)) {
    const measure = measureOf(frame, i);
    const length = cmFactor(measure) !== null;
    const percent = unitIs(measure, 'percent');
    const volume = isVolume(measure);
    const labelled = labelFor(frame, clause, i);
    if (
      !length &&
      !percent &&
      !volume &&
      !(labelled !== null && (measure.share || measure.unit === null))
    )
      continue;
    if (percent && nearHumidity(frame, clause, i)) continue;
    if (labelled !== null) {
      take(frame, labelled);
      facts.push(
        fact(
          frame,
          i,
          { kind: 'measure', measure },
          'level',
          Math.min(labelled, i),
          Math.max(labelled, i),
        ),
      );
    } else if (saysWhatIsThere(frame, clause, i, volume)) {
      facts.push(fact(frame, i, { kind: 'measure', measure }, 'level by its unit'));
    }
  }
  return facts;
}

function nearHumidity(frame: Frame, clause: Clause, i: number): boolean {
  return (
    inClause(frame, clause, (term, j) => means(term, 'humidity') && Math.abs(i - j) < 5).length > 0
  );
}

/** The word `level` that belongs to a number, before or after it. */
function labelFor(frame: Frame, clause: Clause, i: number): number | null {
  const skip = (term: Parameters<typeof isPadding>[0]) =>
    (isPadding(term) && !isOpenLabel(term)) ||
    term.kind === 'name' ||
    (means(term, 'place', 'down', 'full') && !isOpenLabel(term));
  const before = previousIn(frame, clause, i, skip);
  if (before >= 0 && isOpenLabel(frame.terms[before]!) && !frame.taken[before]) return before;
  const after = nextIn(
    frame,
    clause,
    i,
    (term) => means(term, 'article', 'filler') && !isOpenLabel(term),
  );
  if (after < 0 || !isOpenLabel(frame.terms[after]!) || frame.taken[after]) return null;
  // `21 level 95 l`: the word belongs to the number after it.
  const then = nextIn(frame, clause, after, skip);
  return then >= 0 && isMeasure(frame.terms[then]) ? null : after;
}

function isOpenLabel(term: Parameters<typeof isPadding>[0]): boolean {
  return means(term, 'level');
}

/** By its unit alone: cm and per cent of a named system; litres only where they are said to be there. */
function saysWhatIsThere(frame: Frame, clause: Clause, i: number, volume: boolean): boolean {
  const after = i + 1 < clause.to ? frame.terms[i + 1] : undefined;
  if (means(after, 'left-over') && !means(frame.terms[i + 2], 'do')) return true;
  if (clauseHas(frame, clause, 'take-away', 'capacity', 'other-deed')) return false;
  if (volume) return clauseHas(frame, clause, 'there-is') || isStandingAt(frame, clause, i);
  if (hasUnknown(frame, clause.from, clause.to)) return false;
  if (means(after, 'deep')) return true;
  const named =
    namesIn(frame, clause).length > 0 ||
    frame.terms.slice(0, clause.from).some((term) => term.kind === 'name');
  return named && !clauseHas(frame, clause, 'size', 'humidity');
}

/** `dwc at 95 l`, `bench is down to 300 l`, `jars have 18 l`: a state, tied to its system by a verb. */
function isStandingAt(frame: Frame, clause: Clause, i: number): boolean {
  if (clauseHas(frame, clause, 'top-up', 'fill', 'refill', 'pick')) return false;
  let j = i - 1;
  let tied = false;
  while (
    j >= clause.from &&
    (isPadding(frame.terms[j]!) || means(frame.terms[j], 'place', 'to', 'has', 'down'))
  ) {
    const term = frame.terms[j]!;
    if (means(term, 'at', 'has') || (means(term, 'link') && !means(term, 'add', 'of', 'filler')))
      tied = true;
    j--;
  }
  return tied && j >= clause.from && frame.terms[j]!.kind === 'name';
}

/** `full`, `half full`, `empty`, `half empty`, `a third left`. */
function inWords(frame: Frame, clause: Clause): Fact[] {
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
      if (isLevel) {
        if (after >= 0) take(frame, after);
        facts.push(
          fact(
            frame,
            i,
            { kind: 'measure', measure: term.measure },
            'level in words',
            i,
            Math.max(i, after),
          ),
        );
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
    const approximate = means(frame.terms[i - 1], 'about') || means(frame.terms[i - 1], 'ish');
    const amount: Amount = full ? { kind: 'brim' } : { kind: 'nothing-in-it' };
    facts.push({
      ...fact(frame, i, amount, 'level in words'),
      ...(approximate ? { approximate: true } : {}),
    });
  }
  return facts;
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
  if (
    after &&
    (means(after, 'of') ||
      !(
        means(after, 'now', 'filler', 'place', 'today', 'brim') ||
        after.kind === 'name' ||
        after.kind === 'mark'
      ))
  ) {
    if (!means(after, 'this', 'at-hour', 'yesterday', 'link', 'ish')) return false;
  }
  const subject = previousIn(
    frame,
    clause,
    i,
    (term) =>
      means(term, 'link', 'about', 'filler', 'now', 'all', 'article', 'both', 'level') &&
      term.kind === 'word',
  );
  if (subject < 0) return true;
  const term = frame.terms[subject];
  return term?.kind === 'name' || means(term, 'all', 'both', 'reservoir', 'level') || isLabel(term);
}

/** `dwc is low`: how low is asked. */
function justLow(frame: Frame, clause: Clause): Fact[] {
  const at = inClause(frame, clause, (term, i) => means(term, 'low') && !frame.taken[i])[0];
  if (at === undefined || namesIn(frame, clause).length === 0) return [];
  if (measuresIn(frame, clause).length > 0 || hasUnknown(frame, clause.from, clause.to)) return [];
  if (inClause(frame, clause, (term) => isLabel(term) && !means(term, 'level')).length > 0)
    return [];
  return [fact(frame, at, { kind: 'missing' }, 'low, but not how low')];
}
