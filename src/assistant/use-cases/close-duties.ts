import type { Duty } from '../../greenhouse/duty.ts';
import type { EntryDraft } from '../../greenhouse/entry.ts';
import { localDateOf } from '../../greenhouse/local-time.ts';
import { couldNotBeDone, isDone } from '../../planning/duty-done.ts';
import { isNamedWork } from '../../understanding/is-named-work.ts';
import type {
  Choice,
  ChoiceLabel,
  DoneStatement,
  Statement,
  WorkNamed,
} from '../../understanding/statement.ts';
import { boardOf } from '../board-of.ts';
import type { WorkSpokenOf } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { askBack } from './ask-back.ts';
import { recordEntries } from './record-entries.ts';

/** The duties that a `done` can answer, and when they were asked for. */
export interface AskedDuties {
  readonly duties: readonly Duty[];
  readonly sinceMs: number;
}

/** Logs the duties answered as done; what was done is never made into a reading or a volume. */
export function closeDuties(
  handling: Handling,
  done: DoneStatement,
  asked: AskedDuties | null,
  before: SpokenBefore = { work: null, isOfList: true },
): void {
  const early = choreNotAsked(done, asked, handling);
  if (early) {
    recordEntries(handling, [doneDraft(early, handling.heard.writtenAtMs)]);
    return;
  }
  const { duties, sinceMs } = asked ?? dueNow(handling);
  const meant = duties.filter((duty) => isMeant(duty, done));
  if (meant.length === 0) return askWhich(handling);
  const { logbook } = handling.standing;
  const open = meant.filter(
    (duty) =>
      !isDone(duty, logbook, sinceMs) && !(done.isRest && couldNotBeDone(duty, logbook, sinceMs)),
  );
  if (isBare(done) && askWhetherAll(handling, before, open)) return;
  if (done.isOne && open.length > 1) return askWhich(handling);
  if (open.length === 0) {
    handling.say({ kind: 'answer', answer: { kind: 'nothing-open' } });
    return;
  }
  recordEntries(
    handling,
    open.map((duty) => doneDraft(duty, handling.heard.writtenAtMs)),
  );
}

/** What was spoken of before somebody said that it is done. */
export interface SpokenBefore {
  /** The work that was asked about, of which alone a bare `done` may be. */
  readonly work: WorkSpokenOf | null;
  /** The list was spoken of last, or what was done of it. */
  readonly isOfList: boolean;
}

/** `done`, which names no work, nor all of it. */
export function isBareDone(statement: Statement): boolean {
  return statement.kind === 'done' && isBare(statement);
}

function isBare({ systems, duty, chore, except, isRest, isAll }: DoneStatement): boolean {
  const isNamed = systems !== null || duty !== null || chore !== null;
  return !isNamed && except.length === 0 && isRest === undefined && isAll === undefined;
}

/** After talk of some work, or of something else: asks what `done` is of. False: of what is open, surely. */
function askWhetherAll(
  handling: Handling,
  { work, isOfList }: SpokenBefore,
  open: readonly Duty[],
): boolean {
  if (!work && isOfList) return false;
  const ofIt = work ? open.filter((duty) => isOfWork(duty, work)) : [];
  if (ofIt.length > 0 && ofIt.length === open.length) return false;
  const offered = ofIt.length > 0 || !work ? ofIt : notAsked(work, handling);
  if (offered.length === 0 && open.length === 0) return false;
  const others: ChoiceLabel =
    open.length === 1 ? { kind: 'work', duties: open } : { kind: 'all-work' };
  const atMs = handling.heard.writtenAtMs;
  const choice = (label: ChoiceLabel, duties: readonly SaidDuty[]): readonly Choice[] =>
    duties.length === 0 ? [] : [{ label, drafts: duties.map((duty) => doneDraft(duty, atMs)) }];
  askBack(handling, {
    reason: { kind: 'which-duties' },
    choices: [...choice({ kind: 'work', duties: offered }, offered), ...choice(others, open)],
    waiting: null,
  });
  return true;
}

function isOfWork(duty: Duty, work: WorkSpokenOf): boolean {
  return isNamed(duty, work) && (work.probe === undefined || duty.probe === work.probe);
}

/** The work spoken of, where nothing had asked for it: it may have been done all the same. */
function notAsked({ systems, duty, chore }: WorkSpokenOf, { standing, nowMs }: Handling): Duty[] {
  const dueOn = localDateOf(nowMs, standing.greenhouse.timeZone);
  const known = standing.greenhouse.chores.find(({ name }) => name === chore);
  if (known) return [{ kind: 'chore', system: known.system, chore: known.name, dueOn }];
  const [system, ...others] = systems ?? [];
  if (duty === null || system === undefined || others.length > 0) return [];
  return [{ kind: duty, system, dueOn }];
}

/** Where no round has asked and the work was asked about by the bot: what the list shows as open. */
function dueNow({ standing, nowMs }: Handling): AskedDuties {
  const { today } = boardOf(standing, nowMs);
  const duties = today.flatMap(({ duty }) => (duty.alongside ? [] : [duty]));
  return { duties, sinceMs: nowMs };
}

/** A chore told by its name counts on a day that did not ask for it, too; null: it was asked for. */
function choreNotAsked(
  { chore: name }: DoneStatement,
  asked: AskedDuties | null,
  { standing }: Handling,
): SaidDuty | null {
  const chore = standing.greenhouse.chores.find((each) => each.name === name);
  if (!chore || asked?.duties.some((duty) => duty.chore === name)) return null;
  return { kind: 'chore', system: chore.system, chore: chore.name };
}

/** A duty as far as an entry keeps it. */
type SaidDuty = Omit<Duty, 'dueOn'>;

export function doneDraft(duty: SaidDuty, atMs: number): EntryDraft {
  return saidDraft('duty-done', duty, atMs);
}

/** What a member says of a duty, as an entry. */
export function saidDraft(
  quantity: 'duty-done' | 'duty-failed',
  duty: SaidDuty,
  atMs: number,
): EntryDraft {
  return {
    system: duty.system,
    quantity,
    value: 1,
    atMs,
    duty: duty.kind,
    ...(duty.chore === undefined ? {} : { chore: duty.chore }),
    ...(duty.product === undefined ? {} : { product: duty.product }),
    ...(duty.probe === undefined ? {} : { probe: duty.probe }),
  };
}

function isMeant(duty: Duty, done: DoneStatement): boolean {
  return isNamed(duty, done) && !done.except.some((work) => isNamed(duty, work));
}

function isNamed({ system, kind, chore }: Duty, work: WorkNamed): boolean {
  return isNamedWork({ system, duty: kind, ...(chore === undefined ? {} : { chore }) }, work);
}

/** More buttons than these are not looked through: then there is one a system. */
const mostDutiesOffered = 6;

/** The work, or the system where it is all that is open of it. */
function labelOf(of: readonly Duty[]): ChoiceLabel {
  const system = of[0]?.system ?? null;
  return of.length > 1 && system !== null
    ? { kind: 'system', system }
    : { kind: 'work', duties: of };
}

/** Asks which work is done, with what is open now on the buttons. */
export function askWhich(handling: Handling): void {
  const { duties } = dueNow(handling);
  const atMs = handling.heard.writtenAtMs;
  const bySystem = [...new Set(duties.map(({ system }) => system))].map((system) =>
    duties.filter((duty) => duty.system === system),
  );
  const offered = duties.length <= mostDutiesOffered ? duties.map((duty) => [duty]) : bySystem;
  const choice = (label: ChoiceLabel, of: readonly Duty[]): Choice => ({
    label,
    drafts: of.map((duty) => doneDraft(duty, atMs)),
  });
  askBack(handling, {
    reason: { kind: 'which-duties' },
    choices: [
      ...offered.map((of) => choice(labelOf(of), of)),
      ...(duties.length > 1 ? [choice({ kind: 'all-work' }, duties)] : []),
    ],
    waiting: null,
  });
}
