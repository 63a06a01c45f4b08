import type { SystemId } from '../../greenhouse/system.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import type { Mood } from '../moods/mood.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  namesIn,
  takeRange,
} from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { DoneStatement } from '../statement.ts';
import { choreIn } from './chores.ts';

/** `done`, `did the jars`, `done except gutters`, ✅, a chore told by its name. */
export function recogniseDone(frame: Frame, moods: readonly (Mood | null)[]): DoneStatement[] {
  const found = doneSaid(frame, moods);
  return isOnlyTick(frame) ? found.map((one) => ({ ...one, isSign: true })) : found;
}

function doneSaid(frame: Frame, moods: readonly (Mood | null)[]): DoneStatement[] {
  const found: DoneStatement[] = [];
  for (let c = 0; c < frame.clauses.length; c++) {
    const clause = frame.clauses[c]!;
    const plain =
      inClause(
        frame,
        clause,
        (term, i) =>
          term.kind !== 'mark' && !frame.taken[i] && moods[i] !== null && moods[i] !== 'negation',
      ).length === 0;
    if (!plain) continue;
    const chore = choreIn(frame, clause);
    const anchor = doneWord(frame, clause, chore !== null);
    if (
      chore !== null &&
      !clauseHas(frame, clause, 'not', 'did-not') &&
      (anchor !== null || !clauseHas(frame, clause, 'intention', 'is-it'))
    ) {
      found.push(statement(frame, clause, clause, { systems: null, chore, except: [] }));
      takeRange(frame, clause.from, clause.to);
      continue;
    }
    if (anchor === null || !saysOnlyDone(frame, clause) || isDenied(frame, clause, anchor))
      continue;
    const exceptAt = inClause(frame, clause, (term) => means(term, 'except', 'not'))[0];
    let last = c;
    let except = exceptAt === undefined ? [] : systemsIn(frame, clause, exceptAt);
    const own = systemsIn(frame, clause, clause.from, exceptAt ?? clause.to);
    const first = own.length === 0 ? c : firstOfNames(frame, c);
    let systems = [
      ...frame.clauses.slice(first, c).flatMap((each) => systemsIn(frame, each, each.from)),
      ...own,
    ];
    while (isMoreNames(frame, last + 1) || isException(frame, last + 1)) {
      last++;
      const more = systemsIn(frame, frame.clauses[last]!, frame.clauses[last]!.from);
      if (exceptAt !== undefined || isException(frame, last)) except = [...except, ...more];
      else systems = [...systems, ...more];
    }
    if (systems.length === 0) except = [...except, ...putOff(frame, c)];
    takeRange(frame, frame.clauses[first]!.from, frame.clauses[last]!.to);
    found.push(
      statement(frame, frame.clauses[first]!, frame.clauses[last]!, {
        systems: systems.length > 0 ? systems : null,
        chore: null,
        except,
      }),
    );
    c = last;
  }
  return found;
}

function statement(
  frame: Frame,
  first: Clause,
  last: Clause,
  said: Pick<DoneStatement, 'systems' | 'chore' | 'except'>,
): DoneStatement {
  const [from, to] = [
    frame.terms[first.from]!.from,
    frame.terms[Math.max(first.from, last.to - 1)]!.to,
  ];
  return { kind: 'done', ...said, span: { from, to }, because: ['done'] };
}

/** A thumb or a tick and nothing else. */
export function isOnlyTick({ terms }: Frame): boolean {
  const said = terms.filter(({ kind }) => kind !== 'stop' && kind !== 'mark');
  return said.length > 0 && said.every((term) => means(term, 'tick'));
}

function doneWord(frame: Frame, clause: Clause, isChore: boolean): number | null {
  const named =
    isChore || namesIn(frame, clause).length > 0 || clauseHas(frame, clause, 'all', 'pronoun');
  return (
    inClause(
      frame,
      clause,
      (term) =>
        means(term, 'done', 'tick') ||
        (means(term, 'did') && named) ||
        (means(term, 'except') && clauseHas(frame, clause, 'all')),
    )[0] ?? null
  );
}

/** `not done yet`, `none of it done`, `nearly done`, `done nothing`: the word is said, and the deed is not. */
function isDenied(frame: Frame, clause: Clause, anchor: number): boolean {
  for (let i = clause.from; i < anchor; i++) {
    const term = frame.terms[i];
    const lacks = means(term, 'not', 'did-not', 'no', 'said-no', 'about') && !means(term, 'except');
    if (lacks || term?.kind === 'measure') return true;
  }
  const after = frame.terms[anchor + 1];
  return (
    means(after, 'not', 'no', 'did-not') &&
    !frame.terms.slice(anchor + 1, clause.to).some(({ kind }) => kind === 'name')
  );
}

/** Nothing beside it but names and small words: `did the lids of the jars` is not the duty. */
function saysOnlyDone(frame: Frame, clause: Clause): boolean {
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (frame.timed[i] || term.kind === 'name' || term.kind === 'mark') continue;
    if (frame.taken[i] || isLabel(term) || !isSmall(term)) return false;
  }
  return true;
}

function isSmall(term: Term): boolean {
  return means(
    term,
    'done',
    'did',
    'tick',
    'article',
    'filler',
    'all',
    'both',
    'pronoun',
    'place',
    'with',
    'except',
    'not',
    'but',
    'today',
    'this',
    'morning',
    'self',
    'thanks',
    'job',
    'due',
    'yes',
    'just-now',
    'now',
    'greeting',
    'member',
    'each',
    'link',
    'chatter',
  );
}

function systemsIn(frame: Frame, clause: Clause, from: number, to = clause.to): SystemId[] {
  const found = new Set<SystemId>();
  for (let i = from; i < to; i++) {
    const term = frame.terms[i];
    if (term?.kind === 'name' && term.sure) for (const system of term.systems) found.add(system);
  }
  return [...found];
}

/** `jars and row done`, `jars, row and bench done`: the clause that the list of names begins with. */
function firstOfNames(frame: Frame, c: number): number {
  let first = c;
  let isList = false;
  while (first > 0) {
    const { opens } = frame.clauses[first]!;
    const before = frame.clauses[first - 1]!;
    if (opens !== 'and' && !(isList && opens === 'comma')) break;
    if (namesIn(frame, before).length === 0 || !isOnlyNames(frame, before)) break;
    isList = true;
    first -= 1;
  }
  return first;
}

/** `all done, bench tonight`: what is still to come is not done. */
function putOff(frame: Frame, c: number): SystemId[] {
  return frame.clauses.flatMap((clause, at) =>
    at !== c && clauseHas(frame, clause, 'tonight', 'tomorrow', 'intention')
      ? systemsIn(frame, clause, clause.from)
      : [],
  );
}

function isOnlyNames(frame: Frame, clause: Clause): boolean {
  return frame.terms
    .slice(clause.from, clause.to)
    .every((term) => term.kind === 'name' || means(term, 'article', 'both', 'filler', 'place'));
}

/** `did the jars and the bench`: the next clause holds a name and nothing else. */
function isMoreNames(frame: Frame, c: number): boolean {
  const clause = frame.clauses[c];
  if (!clause || (clause.opens !== 'and' && clause.opens !== 'comma')) return false;
  if (namesIn(frame, clause).length === 0) return false;
  if (!isOnlyNames(frame, clause)) return false;
  return clause.opens === 'and' || frame.clauses.slice(c + 1).some(({ opens }) => opens === 'and');
}

/** `done, except the gutters`, `did all, not the jars`. */
function isException(frame: Frame, c: number): boolean {
  const clause = frame.clauses[c];
  if (!clause || namesIn(frame, clause).length === 0) return false;
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (term.kind !== 'name' && !means(term, 'except', 'not', 'article', 'filler', 'but'))
      return false;
  }
  return clauseHas(frame, clause, 'except', 'not') || clause.opens === 'but';
}
