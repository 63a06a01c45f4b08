import type { Chore } from '../../greenhouse/greenhouse.ts';
import type { Fact } from '../fact.ts';
import { couldNotAt, isDeed, isLabel } from '../moods/clause-kinds.ts';
import { notBroughtTo } from '../moods/not-brought-to.ts';
import { hindranceBeside, notDoneAt } from '../moods/not-done.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
  namesIn,
  takeRange,
} from '../reading/frame.ts';
import { isUnknown, means } from '../reading/term.ts';
import { choreIn } from './chores.ts';
import { dutyNamed } from './work-named.ts';

/** `couldn't do the jars, lid is stuck`: a duty that failed, with its reason as it was written. */
export function recogniseFailures(frame: Frame): Fact[] {
  const facts: Fact[] = [];
  for (let c = 0; c < frame.clauses.length; c++) {
    const clause = frame.clauses[c]!;
    const verb = failedAt(frame, clause);
    if (verb === null) continue;
    const last = lastOfReason(frame, c);
    const end = frame.clauses[last]!.to;
    const after = reasonOf(frame, clause, end, verb);
    const note = after === '' ? reasonBefore(frame, clause) : after;
    const chore = choreNamed(frame, clause);
    const duty = chore === null ? dutyNamed(frame, clause) : 'chore';
    for (let d = c; d <= last; d++) {
      const { from, to } = frame.clauses[d]!;
      // What failed or is wrong is told as well, beside being the reason.
      if (d === c || !tellsOfTrouble(frame, frame.clauses[d]!))
        takeRange(frame, d === c ? startOf(frame, clause, verb) : from, to);
    }
    const names = namesIn(frame, clause);
    // `did the pond couldn't reach the rail`: the name behind it, else the one nearest before.
    const at = names.find((i) => i > verb) ?? names.findLast((i) => i < verb) ?? verb;
    facts.push({
      quantity: 'duty-failed',
      amount: { kind: 'value', value: 1 },
      at,
      from: clause.from,
      to: Math.max(end - 1, at),
      ...(duty ? { duty } : {}),
      ...(chore === null ? {} : { chore: chore.name }),
      ...(chore?.system ? { byDevice: chore.system } : {}),
      ...(note === '' ? {} : { note }),
      because: 'duty that failed',
    });
    c = last;
  }
  return facts;
}

function choreNamed(frame: Frame, clause: Clause): Chore | null {
  const name = choreIn(frame, clause);
  return frame.context.greenhouse.chores.find((chore) => chore.name === name) ?? null;
}

/** After the exception that it is: `all done except I couldn't do the jars`. */
function startOf(frame: Frame, clause: Clause, verb: number): number {
  const except = inClause(frame, clause, (term, i) => i < verb && means(term, 'except')).at(-1);
  return except === undefined ? clause.from : except + 1;
}

/** Where a clause says that a duty could not be done, or was not, with what hindered it. */
function failedAt(frame: Frame, clause: Clause): number | null {
  if (notBroughtTo(frame, clause) !== null) return null;
  const verb = couldNotAt(frame, clause);
  if (verb !== null) return isDutyFailed(frame, clause, verb) ? verb : null;
  return notDoneAt(frame, clause);
}

/** `key won't turn, couldn't do the bench`: what was in the way is told first. */
function reasonBefore(frame: Frame, clause: Clause): string {
  const before = hindranceBeside(frame, clause);
  return before ? written(frame, before.from, before.to) : '';
}

function isDutyFailed(frame: Frame, clause: Clause, verb: number): boolean {
  if (
    clauseHas(frame, clause, 'judged') &&
    inClause(frame, clause, (term) => isLabel(term)).length > 0
  )
    return false;
  const doing =
    inClause(
      frame,
      clause,
      (term, i) => i > verb && (means(term, 'do', 'did', 'clean', 'plain-deed') || isDeed(term)),
    ).length > 0;
  if (choreIn(frame, clause) !== null) return true;
  const names = namesIn(frame, clause);
  // `can't stop the leak under the bench`: no work, but what is wrong there.
  if (!doing && tellsOfTrouble(frame, clause)) return false;
  // `jars hab ich nicht geschafft`: the verb may end the clause.
  return doing || names.some((i) => i > verb) || (names.length > 0 && verb === clause.to - 1);
}

/** The sentence, as far as it says nothing that would be logged by itself. */
function lastOfReason(frame: Frame, c: number): number {
  let last = c;
  const { sentence } = frame.clauses[c]!;
  const names = systemsIn(frame, frame.clauses[c]!);
  for (let d = c + 1; d < frame.clauses.length; d++) {
    const clause = frame.clauses[d]!;
    const another =
      clause.sentence !== sentence && (clause.sentence > sentence + 1 || !explains(frame, clause));
    if (
      another ||
      clause.opens === 'but' ||
      tells(frame, clause) ||
      tellsOfSupply(frame, clause, names)
    )
      break;
    last = d;
  }
  return last;
}

/** A sentence of its own that can be nothing but the reason. */
function explains(frame: Frame, clause: Clause): boolean {
  return (
    clause.opens === 'sentence' &&
    clause.to > clause.from &&
    inClause(
      frame,
      clause,
      (term) =>
        isMeasure(term) || isLabel(term) || means(term, 'greeting', 'thanks', 'done', 'what'),
    ).length === 0 &&
    !means(frame.terms[clause.from], 'is-it')
  );
}

/** `…, then air pump dead on the dwc`: a supply that failed, of another system or after `then`. */
function tellsOfSupply(frame: Frame, clause: Clause, failed: readonly string[]): boolean {
  const isOutage =
    clauseHas(frame, clause, 'no-power', 'no-bubbles', 'no-flow') ||
    (clauseHas(frame, clause, 'power', 'pump', 'air-pump') && clauseHas(frame, clause, 'broken'));
  if (!isOutage) return false;
  const named = systemsIn(frame, clause);
  return clause.opens === 'then' || named.some((system) => !failed.includes(system));
}

function tellsOfTrouble(frame: Frame, clause: Clause): boolean {
  return (
    clauseHas(
      frame,
      clause,
      'no-power',
      'no-bubbles',
      'no-flow',
      'leak',
      'burning',
      'shock',
      'labouring',
    ) ||
    (clauseHas(frame, clause, 'power', 'pump', 'air-pump') && clauseHas(frame, clause, 'broken'))
  );
}

function systemsIn(frame: Frame, clause: Clause): string[] {
  return namesIn(frame, clause).flatMap((i) => {
    const term = frame.terms[i];
    return term?.kind === 'name' ? term.systems : [];
  });
}

function tells(frame: Frame, clause: Clause): boolean {
  // `…, rest done` is no part of the reason.
  if (clauseHas(frame, clause, 'done', 'did') && clauseHas(frame, clause, 'remainder', 'all'))
    return true;
  const measures = inClause(frame, clause, isMeasure).length > 0;
  if (measures)
    return (
      inClause(frame, clause, (term) => isLabel(term) || isDeed(term) || term.kind === 'name')
        .length > 0
    );
  return (
    inClause(frame, clause, (term) => means(term, 'could-not', 'done', 'did')).length > 0 &&
    namesIn(frame, clause).length > 0
  );
}

/** What is written after the duty: after the first cut, or after `because`. */
function reasonOf(frame: Frame, clause: Clause, end: number, verb: number): string {
  const because = inClause(
    frame,
    clause,
    (term, i) => i > verb && means(term, 'because') && !means(term, 'article'),
  )[0];
  const start = because ?? (clause.to < end ? clause.to + 1 : firstStranger(frame, clause, verb));
  return written(frame, start, end);
}

/** Terms from the first up to but not including the second, in the teller's own letters. */
function written(frame: Frame, from: number, to: number): string {
  const first = frame.terms[from];
  const last = frame.terms[to - 1];
  if (!first || !last || from >= to) return '';
  const { originAt, original } = frame.folded;
  return original.slice(originAt(first.from), originAt(last.to)).trim();
}

function firstStranger(frame: Frame, clause: Clause, verb: number): number {
  const names = namesIn(frame, clause).filter((i) => i > verb);
  for (let i = (names.at(-1) ?? verb) + 1; i < clause.to; i++)
    if (isUnknown(frame.terms[i])) return i;
  return clause.to;
}
