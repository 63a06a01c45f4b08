import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import { cmFactor, isVolume, unitIs } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  measureOf,
  measuresIn,
  nextIn,
  previousIn,
  take,
} from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { fact } from './level-fact.ts';
import { standsNow } from './level-moved-by.ts';
import { isTalkOfLevel } from './level-talk.ts';

/** `5 cm down`, `down 5 cm`, `5 cm below the brim`, `2 cm from the top`, `full to within 5 cm`. */
export function fromBrim(frame: Frame, clause: Clause): Fact[] {
  const facts: Fact[] = [];
  for (const i of measuresIn(frame, clause)) {
    const measure = measureOf(frame, i);
    if (!isPartOfLevel(measure)) continue;
    const after = i + 1 < clause.to ? frame.terms[i + 1] : undefined;
    const belowBrim =
      ((means(after, 'below') || isRoomLeft(frame, clause, i) || isFrom(frame, clause, i)) &&
        means(
          frame.terms[
            nextIn(frame, clause, i + 1, (term) => means(term, 'article') && !means(term, 'brim'))
          ],
          'brim',
        )) ||
      // `5 cm ab Rand`.
      (means(after, 'below') && means(after, 'brim')) ||
      isLedFromBrim(frame, clause, i);
    const isRoom = saysRoom(frame, clause, i);
    const before = previousIn(
      frame,
      clause,
      i,
      (term) => means(term, 'about', 'article', 'filler') && !means(term, 'down'),
    );
    // `auf 70 l runter`: down to there, and not by so much.
    const leadsThere = leadsTo(frame, i - 1);
    // `an inch low`: so deep that it is low, or so much below the brim.
    const isLow = means(after, 'low') && cmFactor(measure) !== null;
    if (isLow && !belowBrim) {
      // How much that leaves, nobody has said.
      take(frame, i);
      continue;
    }
    const isDown =
      means(after, 'down') &&
      !isPouredAlong(frame, clause, i + 1) &&
      !leadsThere &&
      !means(frame.terms[i + 2], 'to') &&
      !isProductAt(frame, i + 1);
    const downBefore =
      before >= 0 &&
      means(frame.terms[before], 'down') &&
      !means(frame.terms[before], 'to') &&
      !means(frame.terms[before + 1], 'to');
    if (!belowBrim && !isDown && !downBefore && !isRoom) continue;
    if (cmFactor(measure) !== null && !isTalkOfLevel(frame, clause)) continue;
    const label = inClause(frame, clause, (term) => means(term, 'level'));
    take(frame, ...label);
    if (isRoom) take(frame, ...inClause(frame, clause, (term) => means(term, 'full')));
    // `down 5 cm since yesterday` counts from where it was, not from the brim.
    const sinceThen = !belowBrim && clauseHas(frame, clause, 'since');
    const asked = sinceThen ? standsNow(frame, clause, i) : [];
    if (asked.length > 0) {
      facts.push(...asked);
      continue;
    }
    const doubt = sinceThen || isRoom ? { doubt: { kind: 'is-it-a-reading' as const } } : {};
    facts.push({
      ...fact(
        frame,
        i,
        { kind: 'below-brim', measure },
        'counted from the brim',
        downBefore ? before : i,
        (belowBrim || isDown) && after !== undefined ? i + 1 : i,
      ),
      ...doubt,
    });
  }
  return facts;
}

/** `5 cm von oben`. */
function isFrom(frame: Frame, clause: Clause, i: number): boolean {
  return i + 2 < clause.to && isLength(frame, i) && means(frame.terms[i + 1], 'from');
}

/** `from the top 5 cm`, `von oben 5 cm`. */
function isLedFromBrim(frame: Frame, clause: Clause, i: number): boolean {
  const { terms } = frame;
  if (i - 2 < clause.from || !isLength(frame, i) || !means(terms[i - 1], 'brim')) return false;
  const lead = means(terms[i - 2], 'article') ? i - 3 : i - 2;
  return lead >= clause.from && means(terms[lead], 'from', 'below');
}

/** `5 cm of air`, `bis auf 5 cm voll`, `full to within 5 cm`: so much is missing, as like as not. */
function saysRoom(frame: Frame, clause: Clause, i: number): boolean {
  if (!isLength(frame, i)) return false;
  const { terms } = frame;
  const last = means(terms[i + 1], 'of') ? i + 2 : i + 1;
  if (last < clause.to && means(terms[last], 'air')) return true;
  const isLeftOut = i > clause.from && means(terms[i - 1], 'except');
  return isLeftOut && (means(terms[i + 1], 'full') || means(terms[i - 2], 'full'));
}

function isLength(frame: Frame, i: number): boolean {
  return cmFactor(measureOf(frame, i)) !== null;
}

/** `chucked 3 cans down the gutters`: where it went, and not by how much something fell. */
function isPouredAlong(frame: Frame, clause: Clause, down: number): boolean {
  const after = nextIn(frame, clause, down, (term) => means(term, 'article'));
  return frame.terms[after]?.kind === 'name' && clauseHas(frame, clause, 'add', 'top-up', 'fill');
}

/** A word that leads to a mark, or a phrase that runs up to one: `ging auf`. */
function leadsTo({ terms, lexicon }: Frame, i: number): boolean {
  const term = terms[i];
  if (term?.kind !== 'word') return false;
  const last = term.text.slice(term.text.lastIndexOf(' ') + 1);
  return (
    means(term, 'to') || (means(term, 'link') && lexicon.own.vocabulary.words.to.includes(last))
  );
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
  // Millilitres are of a product: nobody reads a reservoir so finely.
  const isLitres = isVolume(measure) && !unitIs(measure, 'ml', 'cl');
  return cmFactor(measure) !== null || isLitres || unitIs(measure, 'percent') || measure.share;
}

function isProductAt(frame: Frame, i: number): boolean {
  const term = frame.terms[i];
  return term?.kind === 'word' && term.word.product !== null;
}
