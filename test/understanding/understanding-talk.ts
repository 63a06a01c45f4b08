import { readFileSync } from 'node:fs';
import { DateTime } from 'luxon';
import type { Duty } from '../../src/greenhouse/duty.ts';
import type { EntryDraft } from '../../src/greenhouse/entry.ts';
import { readGreenhouseFile } from '../../src/greenhouse/file/read-greenhouse-file.ts';
import type { Greenhouse } from '../../src/greenhouse/greenhouse.ts';
import { localDateOf } from '../../src/greenhouse/local-time.ts';
import type { Context, OpenQuestion } from '../../src/understanding/context.ts';
import type { Statement, Understanding } from '../../src/understanding/statement.ts';
import { understand } from '../../src/understanding/understand.ts';

export interface Line {
  readonly at: string;
  readonly sentAt?: string;
  readonly from?: string;
  readonly text?: string;
  readonly replyTo?: string;
  readonly edits?: string;
  readonly press?: string;
  readonly chat?: string;
}

export interface ExpectedEntry {
  readonly system?: string | null;
  readonly quantity: string;
  readonly value?: number;
  readonly at?: string;
  readonly product?: string;
  readonly probe?: string;
  readonly read?: number;
  readonly of?: string;
  readonly duty?: string;
  readonly note?: string;
  readonly approximate?: boolean;
}

export interface MessageCase {
  readonly before?: readonly Line[];
  readonly line: Line;
  readonly expect: {
    readonly logged: readonly ExpectedEntry[];
    readonly asks?: boolean;
    readonly answers?: boolean;
    readonly refuses?: boolean;
    readonly corrects?: boolean;
    readonly struck?: number;
  };
  readonly rule?: string;
  readonly greenhouse?: string;
}

const folders = ['../../greenhouses', './corpus/greenhouses', './greenhouses'];
const loaded = new Map<string, Greenhouse>();

export function greenhouseNamed(name = 'quarry-lane'): Greenhouse {
  const known = loaded.get(name);
  if (known) return known;
  for (const folder of folders) {
    let text: string;
    try {
      text = readFileSync(new URL(`${folder}/${name}.json`, import.meta.url), 'utf8');
    } catch {
      continue;
    }
    const read = readGreenhouseFile(JSON.parse(text));
    if (!read.ok) throw new Error(`${name}: ${JSON.stringify(read.faults)}`);
    loaded.set(name, read.greenhouse);
    return read.greenhouse;
  }
  throw new Error(`no greenhouse file ${name}`);
}

/** A talk of one member after another with the reader alone: no logbook, no estimates, no duties but those of the chores. */
export class UnderstandingTalk {
  private readonly greenhouse: Greenhouse;
  private readonly named: { from: string; systems: readonly string[]; atMs: number }[] = [];
  private readonly questions: { from: string; atMs: number; question: OpenQuestion }[] = [];
  private logged: EntryDraft[] = [];

  constructor(greenhouse: Greenhouse) {
    this.greenhouse = greenhouse;
  }

  hear(line: Line): Understanding {
    const context = this.contextFor(line);
    const understanding = understand(line.text ?? '', context);
    const from = line.from ?? '';
    if (understanding.named.length > 0)
      this.named.push({ from, systems: understanding.named, atMs: context.writtenAtMs });
    this.questions.splice(
      0,
      this.questions.length,
      ...this.questions.filter((open) => open.from !== from),
    );
    understanding.statements.forEach((statement, n) => {
      if (statement.kind !== 'doubt') return;
      const { reason, choices, waiting } = statement;
      this.questions.unshift({
        from,
        atMs: context.writtenAtMs,
        question: { questionId: `${line.at}-${n}`, doubt: { reason, choices, waiting } },
      });
    });
    this.logged = draftsOf(understanding.statements);
    return understanding;
  }

  private contextFor(line: Line): Context {
    const writtenAtMs = DateTime.fromISO(line.sentAt ?? line.at).toMillis();
    const member = this.greenhouse.members.find(({ handle }) => handle === line.from)!;
    const recent = new Set(
      this.named
        .filter(
          ({ from, atMs }) =>
            from === line.from && atMs <= writtenAtMs && writtenAtMs - atMs <= 600_000,
        )
        .flatMap(({ systems }) => systems),
    );
    const [only] = recent;
    const open = this.questions.filter(
      ({ from, atMs }) => from === line.from && writtenAtMs - atMs <= 1_800_000,
    );
    const systems = [
      ...new Set(this.logged.flatMap(({ system }) => (system === null ? [] : [system]))),
    ];
    const duties = this.duties(writtenAtMs);
    const lastQuestion = open[0]?.question;
    return {
      greenhouse: this.greenhouse,
      member,
      writtenAtMs,
      repliedTo:
        line.replyTo === 'round'
          ? { kind: 'round', duties }
          : line.replyTo !== undefined
            ? lastQuestion
              ? { kind: 'question', ...lastQuestion }
              : { kind: 'message', entries: [], systems }
            : null,
      recentSystem: recent.size === 1 ? (only as Context['recentSystem']) : null,
      openQuestions: open.map(({ question }) => question),
      roundDuties: null,
      ...(lastQuestion || this.logged.length === 0 ? {} : { justLogged: this.logged }),
      existsSinceMs: DateTime.fromISO('2027-01-01T00:00:00Z').toMillis(),
    };
  }

  private duties(atMs: number): Duty[] {
    const today = localDateOf(atMs, this.greenhouse.timeZone);
    return this.greenhouse.chores.map(({ name, system }) => ({
      kind: 'chore',
      system,
      dueOn: today,
      chore: name,
    }));
  }
}

export function draftsOf(statements: readonly Statement[]): EntryDraft[] {
  return statements.flatMap((statement) => {
    if (statement.kind === 'entry') return [statement.draft];
    return statement.kind === 'answered' ? [...statement.drafts] : [];
  });
}

/** What a case got wrong; empty if nothing. `wrong entry` where something was logged that must not be. */
export function judge(
  one: MessageCase,
  understanding: Understanding,
  greenhouse: Greenhouse,
): string[] {
  const faults: string[] = [];
  const { statements } = understanding;
  const { expect } = one;
  const back = statements.some(({ kind }) => kind === 'taking-back');
  if ((expect.corrects ?? false) !== back) faults.push(back ? 'takes back' : 'does not take back');
  if (!back) {
    const drafts = draftsOf(statements).filter(({ quantity }) => quantity !== 'duty-done');
    const wanted = expect.logged.filter(({ quantity }) => quantity !== 'duty-done');
    const left = [...drafts];
    for (const entry of wanted) {
      const at = left.findIndex((draft) => fits(entry, draft, greenhouse));
      if (at < 0) faults.push(`missing ${JSON.stringify(entry)}`);
      else left.splice(at, 1);
    }
    for (const draft of left)
      faults.push(`wrong entry ${JSON.stringify(named(draft, greenhouse))}`);
    if (
      expect.logged.some(({ quantity }) => quantity === 'duty-done') &&
      !statements.some(({ kind }) => kind === 'done')
    )
      faults.push('not done');
  }
  const asks = statements.some(({ kind }) => kind === 'doubt');
  if (expect.asks !== undefined && expect.asks !== asks)
    faults.push(asks ? 'asks' : 'does not ask');
  const answers = statements.some(({ kind }) => kind === 'ask');
  if (expect.answers === true && !answers) faults.push('does not answer');
  return faults;
}

function named(draft: EntryDraft, greenhouse: Greenhouse) {
  const system = greenhouse.systems.find(({ id }) => id === draft.system)?.name ?? null;
  return { ...draft, system, at: new Date(draft.atMs).toISOString() };
}

function fits(entry: ExpectedEntry, draft: EntryDraft, greenhouse: Greenhouse): boolean {
  const has = named(draft, greenhouse);
  if (entry.system !== undefined && entry.system !== has.system) return false;
  if (entry.quantity !== draft.quantity) return false;
  if (
    entry.value !== undefined &&
    Math.abs(entry.value - draft.value) > Math.abs(entry.value) * 0.005 + 1e-9
  )
    return false;
  if (
    entry.read !== undefined &&
    Math.abs(entry.read - (draft.read ?? Number.NaN)) > Math.abs(entry.read) * 0.005
  )
    return false;
  if (entry.at !== undefined && DateTime.fromISO(entry.at).toMillis() !== draft.atMs) return false;
  for (const field of ['product', 'probe', 'of', 'duty'] as const) {
    if (entry[field] !== undefined && entry[field] !== draft[field]) return false;
  }
  if (
    entry.note !== undefined &&
    !(draft.note ?? '').toLowerCase().includes(entry.note.toLowerCase())
  )
    return false;
  return entry.approximate === undefined || entry.approximate === (draft.approximate ?? false);
}
