import type { SystemId } from '../../greenhouse/system.ts';
import { isDeed, isLabel, isPlainDeed, tellsOfItsOwn } from '../moods/clause-kinds.ts';
import type { Clause, Frame } from '../reading/frame.ts';
import { means, type NameTerm } from '../reading/term.ts';

/** One naming of one or more systems that stand together: `the bench and the jars`, `all`. */
export interface Mention {
  readonly systems: readonly SystemId[];
  /** First and last term. */
  readonly from: number;
  readonly to: number;
  /** Clause of its first and of its last term. */
  readonly clause: number;
  readonly lastClause: number;
  /** Fits several, or is too short a slip: to be asked about. */
  readonly unsure: boolean;
  readonly written: string;
  readonly slip: boolean;
  /** After in, on, for, of, from, into, to. */
  readonly afterPlace: boolean;
}

/** All namings in the order they stand, those that a list joins as one. */
export function mentionsOf(frame: Frame, isSaid: (i: number) => boolean): Mention[] {
  const mentions: Mention[] = [];
  let excepted = -1;
  frame.terms.forEach((term, i) => {
    if (i <= excepted) return;
    const allBut = allExcept(frame, i);
    if (allBut) {
      mentions.push(allBut);
      excepted = allBut.to;
    } else if (term.kind === 'name') {
      const last = mentions.at(-1);
      if (last && joins(frame, last, i, isSaid))
        mentions[mentions.length - 1] = joined(frame, last, term, i);
      else mentions.push(mentionOf(frame, term, i));
    } else if (isAll(frame, i)) mentions.push(allSystems(frame, i));
  });
  return mentions;
}

/** `everything except the jars`: all but those named straight after. */
function allExcept(frame: Frame, i: number): Mention | null {
  if (!means(frame.terms[i], 'all')) return null;
  let j = means(frame.terms[i], 'except') ? i + 1 : i + 2;
  if (j === i + 2 && !means(frame.terms[i + 1], 'except')) return null;
  const left = new Set<SystemId>();
  let to = i;
  for (; j < frame.terms.length; j++) {
    const term = frame.terms[j]!;
    if (term.kind === 'name') {
      for (const system of term.systems) left.add(system);
      to = j;
    } else if (!means(term, 'article') && !(term.kind === 'stop' && term.cut === 'and')) break;
  }
  if (left.size === 0) return null;
  const all = allSystems(frame, i);
  return {
    ...all,
    systems: all.systems.filter((system) => !left.has(system)),
    to,
    lastClause: frame.clauseOf[to]!,
  };
}

function mentionOf(frame: Frame, term: NameTerm, i: number): Mention {
  const clause = frame.clauseOf[i]!;
  return {
    systems: term.systems,
    from: i,
    to: i,
    clause,
    lastClause: clause,
    unsure: !term.sure,
    written: term.text,
    slip: term.slip,
    afterPlace: isAfterPlace(frame, i),
  };
}

function isAfterPlace(frame: Frame, i: number): boolean {
  let j = i - 1;
  while (
    j >= 0 &&
    means(frame.terms[j], 'article', 'both', 'each', 'all') &&
    !means(frame.terms[j], 'place')
  )
    j--;
  return j >= 0 && means(frame.terms[j], 'place');
}

function joined(frame: Frame, last: Mention, term: NameTerm, i: number): Mention {
  return {
    ...last,
    systems: [...new Set([...last.systems, ...term.systems])],
    to: i,
    lastClause: frame.clauseOf[i]!,
    unsure: last.unsure || !term.sure,
    written: `${last.written}, ${term.text}`,
  };
}

/** Only `and`, articles and the like between two names, and not a value before one and after the other. */
function joins(frame: Frame, last: Mention, i: number, isSaid: (i: number) => boolean): boolean {
  if (last.unsure || frame.terms[i]?.kind !== 'name') return false;
  let ands = 0;
  for (let j = last.to + 1; j < i; j++) {
    const term = frame.terms[j]!;
    if (term.kind === 'stop' && term.cut === 'and') ands++;
    else if (term.kind === 'mark' && (term.text === '/' || term.text === '+')) ands++;
    else if (term.kind === 'stop' && term.cut === 'comma') {
      if (!listGoesOn(frame, i)) return false;
    } else if (!means(term, 'article', 'place', 'both', 'filler', 'each', 'or')) return false;
    else if (means(term, 'or')) ands++;
  }
  const comma = frame.terms
    .slice(last.to + 1, i)
    .some((term) => term.kind === 'stop' && term.cut === 'comma');
  const sideBySide = i === last.to + 1 && listGoesOn(frame, i);
  if (ands === 0 && !comma && !sideBySide) return false;
  const clause = frame.clauses[last.clause]!;
  const before = rangeSays(clause.from, last.from, isSaid);
  const next = frame.clauses[frame.clauseOf[i]!]!;
  const after = rangeSays(i + 1, next.to, isSaid);
  if (next !== clause && isObject(frame, clause, last) && opensAnew(frame, next, i, clause))
    return false;
  return !(before && after && last.afterPlace);
}

/** `couldn't do the jars`: a verb stands before the name. */
function isObject(frame: Frame, clause: Clause, { from }: Mention): boolean {
  return frame.terms
    .slice(clause.from, from)
    .some((term) => isDeed(term) || means(term, 'did-not', 'did', 'could'));
}

/** `… and bucket row water 21C`: after the second name something is told that is no amount of the verb before. */
function opensAnew(frame: Frame, clause: Clause, i: number, before: Clause): boolean {
  const after = frame.terms.slice(i + 1, clause.to);
  return (
    after.some((term) => isLabel(term) || (isDeed(term) && !isPlainDeed(term))) ||
    tellsOfItsOwn(frame, { ...clause, from: i + 1 }, before)
  );
}

/** After a comma the list must go on to an `and`: `dwc, nft and jars`. */
function listGoesOn(frame: Frame, i: number): boolean {
  for (let j = i + 1; j < frame.terms.length; j++) {
    const term = frame.terms[j]!;
    if (term.kind === 'name') continue;
    if (term.kind === 'stop' && term.cut === 'and') {
      let k = j + 1;
      while (means(frame.terms[k], 'article', 'place')) k++;
      return frame.terms[k]?.kind === 'name';
    }
    if (!(term.kind === 'stop' && term.cut === 'comma') && !means(term, 'article', 'place'))
      return false;
  }
  return false;
}

function rangeSays(from: number, to: number, isSaid: (i: number) => boolean): boolean {
  for (let i = from; i < to; i++) if (isSaid(i)) return true;
  return false;
}

/** `all` and `everything` as the things spoken of, not `all good` or `hi all`. */
function isAll(frame: Frame, i: number): boolean {
  const term = frame.terms[i];
  if (!means(term, 'all')) return false;
  const [before, after] = [frame.terms[i - 1], frame.terms[i + 1]];
  let next = i + 1;
  while (means(frame.terms[next], 'article', 'of')) next++;
  if (frame.terms[next]?.kind === 'name') return false;
  return (
    (!means(before, 'greeting', 'thanks', 'not') &&
      !means(after, 'done', 'tick', 'judged', 'solution', 'reservoir', 'except')) ||
    (means(after, 'full', 'empty', 'both') && !means(before, 'greeting'))
  );
}

function allSystems(frame: Frame, i: number): Mention {
  const clause = frame.clauseOf[i]!;
  const systems = frame.context.greenhouse.systems.map(({ id }) => id);
  return {
    systems,
    from: i,
    to: i,
    clause,
    lastClause: clause,
    unsure: false,
    written: frame.terms[i]!.text,
    slip: false,
    afterPlace: isAfterPlace(frame, i),
  };
}
