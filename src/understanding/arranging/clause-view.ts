import type { DutyKind } from '../../greenhouse/duty.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import { type LocalDate, localDateOf } from '../../greenhouse/local-time.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Context } from '../context.ts';
import { probesMeant } from '../probes-meant.ts';
import { type ArrangingConcept, dayJoiners } from '../vocabulary/arranging-words.ts';
import type { Clause } from './clauses.ts';
import { type DaysSaid, daysAt } from './days-said.ts';
import type { Piece } from './piece.ts';

/** A clause with what stands in it, found once. */
export class ClauseView {
  readonly pieces: readonly Piece[];
  readonly isQuestion: boolean;
  readonly today: LocalDate;
  readonly me: string;
  private readonly chores: readonly string[];
  private readonly greenhouse: Greenhouse;
  readonly said: DaysSaid | null;
  /** Where the days begin among the pieces; -1: none are said. */
  readonly saidAt: number;
  /** Pieces that are no part of the days. */
  readonly rest: readonly Piece[];

  constructor({ pieces, isQuestion }: Clause, context: Context) {
    this.pieces = pieces;
    this.isQuestion = isQuestion;
    this.today = localDateOf(context.writtenAtMs, context.greenhouse.timeZone);
    this.me = context.member.handle;
    this.greenhouse = context.greenhouse;
    this.chores = context.greenhouse.chores.map(({ name }) => name.toLowerCase());
    const start = pieces.findIndex((_, i) => daysAt(pieces, i, this.today) !== null);
    this.saidAt = start;
    this.said = start < 0 ? null : daysAt(pieces, start, this.today);
    const end = this.said?.end ?? 0;
    // `eine Woche weg ab Donnerstag`.
    const among = pieces.slice(start, end).filter(({ concepts }) => concepts.has('away'));
    this.rest = start < 0 ? pieces : [...pieces.slice(0, start), ...among, ...pieces.slice(end)];
  }

  has(...concepts: readonly ArrangingConcept[]): boolean {
    return this.rest.some((piece) => concepts.some((concept) => piece.concepts.has(concept)));
  }

  /** The probes that it speaks of, by name. */
  get probes(): readonly string[] {
    return probesMeant(
      this.pieces.flatMap(({ text }) => text.split(' ')),
      this.greenhouse,
    );
  }

  starts(...concepts: readonly ArrangingConcept[]): boolean {
    const first = this.rest.find(({ concepts: meant }) => !isFiller(meant));
    return first !== undefined && concepts.some((concept) => first.concepts.has(concept));
  }

  /** `Sat and Sun`: the clause once more for each day told right after the first, with that day in its place. */
  get daysBesides(): readonly (readonly Piece[])[] {
    const { pieces, saidAt, said, today } = this;
    if (!said) return [];
    const others: (readonly Piece[])[] = [];
    const before = pieces.slice(0, saidAt);
    let end = said.end;
    for (;;) {
      const at = pieces.findIndex(({ text }, i) => i >= end && !dayJoiners.has(text));
      const next = at <= end || at < 0 ? null : daysAt(pieces, at, today);
      if (!next) break;
      others.push([...before, ...pieces.slice(at, next.end)]);
      end = next.end;
    }
    return others.map((upToDay) => [...upToDay, ...pieces.slice(end)]);
  }

  get systems(): readonly SystemId[] {
    return [...new Set(this.rest.flatMap(({ system }) => system ?? []))];
  }

  get members(): readonly string[] {
    return [...new Set(this.rest.flatMap(({ member }) => member ?? []))];
  }

  /** Those in whose place somebody goes: `for Priya`, `I'll take the bench from Priya`. */
  get replaced(): readonly string[] {
    const isSelf = this.has('self', 'self-will');
    return this.rest.flatMap(({ member }, i) => {
      const before = this.rest[i - 1]?.concepts;
      const isInstead =
        before?.has('instead-of') === true || (isSelf && before?.has('from') === true);
      // `olli's Thursday`.
      const isTheirs = this.rest[i + 1]?.text === "'s" && isSelf;
      return member !== null && (isInstead || isTheirs) ? [member] : [];
    });
  }

  /** Those named who are to go themselves. */
  get goers(): readonly string[] {
    return this.members.filter((member) => !this.replaced.includes(member));
  }

  /** Numbers left over: litres, readings. Such a clause tells something and settles nothing. */
  get hasFigures(): boolean {
    return this.rest.some(
      ({ number, date, concepts }) => date !== null || (number !== null && concepts.size === 0),
    );
  }

  get strangers(): number {
    return this.rest.filter(({ isStrange }) => isStrange).length;
  }

  /** Whether the words of one of the greenhouse's chores are said. */
  get namesChore(): boolean {
    const said = new Set(this.rest.flatMap(({ text }) => text.split(' ')));
    return this.chores.some((chore) => chore.split(' ').every((word) => said.has(word)));
  }

  get duty(): DutyKind | null {
    for (const [concept, duty] of duties) if (this.has(concept)) return duty;
    return null;
  }

  /** Who it is about: somebody named, else the speaker where they speak of themselves. */
  get subject(): string | null {
    const [named] = this.members;
    if (named !== undefined) return named;
    return this.has('self', 'self-will', 'self-is') ? this.me : null;
  }
}

const duties: readonly (readonly [ArrangingConcept, DutyKind])[] = [
  ['calibrate', 'calibration'],
  ['dose', 'dose'],
  ['air', 'aeration'],
  ['change', 'reservoir-change'],
  ['clean', 'clean'],
  ['check', 'check'],
  ['top-up', 'top-up'],
];

/** Fillers that mean something beside other words. */
const saysMoreBesides: ReadonlySet<ArrangingConcept> = new Set([
  'after-all',
  'not-before',
  'only',
  'mine',
  'plan-changed',
]);

/** Says nothing where it stands alone. */
export function isFiller(meant: ReadonlySet<ArrangingConcept>): boolean {
  return (
    meant.has('filler') &&
    [...meant].every((each) => each === 'filler' || saysMoreBesides.has(each))
  );
}
