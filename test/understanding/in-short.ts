import { DateTime } from 'luxon';
import type { EntryDraft } from '../../src/greenhouse/entry.ts';
import type { Greenhouse } from '../../src/greenhouse/greenhouse.ts';
import type { Ask, Choice, Statement, WorkNamed } from '../../src/understanding/statement.ts';

/**
 * What was understood, in short: `Bucket row ph 5.8; ? which-system`. An entry's time is told where it
 * is not when the message was written, `~` stands for approximate.
 */
export function inShort(
  statements: readonly Statement[],
  greenhouse: Greenhouse,
  writtenAtMs: number,
): string {
  const nameOf = (id: string | null) =>
    greenhouse.systems.find((system) => system.id === id)?.name ?? 'greenhouse';
  const draft = (entry: EntryDraft) => {
    const time = DateTime.fromMillis(entry.atMs, { zone: greenhouse.timeZone }).toFormat(
      'd LLL HH:mm',
    );
    const details = [
      entry.of,
      entry.product,
      entry.probe,
      entry.read === undefined ? undefined : `read ${entry.read}`,
      entry.duty,
      entry.note === undefined ? undefined : `"${entry.note}"`,
      entry.atMs === writtenAtMs ? undefined : `at ${time}`,
    ];
    const told = details.filter((detail) => detail !== undefined).join(' ');
    const value = Number(entry.value.toFixed(2));
    return `${nameOf(entry.system)} ${entry.quantity} ${entry.approximate ? '~' : ''}${value}${told === '' ? '' : ` ${told}`}`;
  };
  return statements.map((statement) => one(statement, nameOf, draft)).join('; ');
}

type NameOf = (id: string | null) => string;

function workInShort({ systems, duty, chore }: WorkNamed, nameOf: NameOf): string {
  return [systems?.map(nameOf).join(' + '), duty, chore].filter(Boolean).join(' ');
}

function one(statement: Statement, nameOf: NameOf, draft: (entry: EntryDraft) => string): string {
  switch (statement.kind) {
    case 'entry':
      return draft(statement.draft);
    case 'doubt': {
      const choices = statement.choices.map((choice) => choiceInShort(choice, nameOf)).join(', ');
      return `? ${statement.reason.kind}${choices === '' ? '' : ` (${choices})`}`;
    }
    case 'ask':
      return `asks ${askInShort(statement.ask, nameOf)}`;
    case 'done': {
      const except =
        statement.except.length === 0
          ? ''
          : ` except ${statement.except.map((work) => workInShort(work, nameOf)).join(' + ')}`;
      return `done ${workInShort(statement, nameOf) || 'all'}${except}`;
    }
    case 'taking-back': {
      const { back } = statement;
      if (back.kind === 'correct') {
        const to = back.to[0];
        return `correct ${to?.quantity ?? ''} ${to?.value ?? ''}${back.from ? ` from ${back.from[0]?.value ?? ''}` : ''}${back.system ? ` ${nameOf(back.system)}` : ''}`;
      }
      if (back.kind === 'retime')
        return `retime ${back.isVague ? '~' : ''}${new Date(back.atMs).toISOString()}`;
      if (back.kind === 'undo' || back.kind === 'put-back') return back.kind;
      if (back.kind === 'not-done')
        return `not done ${back.works.map((work) => workInShort(work, nameOf)).join(' + ')}`;
      if (back.kind === 'other-product') return `not ${back.from ?? 'that'} but ${back.product}`;
      const system = back.system === null ? '' : ` ${nameOf(back.system)}`;
      return back.kind === 'move'
        ? `move${system}`
        : `deny${system} ${back.quantity ?? 'anything'}`;
    }
    case 'answered':
      return `answered ${statement.drafts.map(draft).join(' + ') || 'no'}`;
    case 'passed-over':
      return `passed over: ${statement.why}`;
  }
}

function choiceInShort({ label }: Choice, nameOf: NameOf): string {
  switch (label.kind) {
    case 'system':
      return nameOf(label.system);
    case 'value':
      return String(Number(label.value.toFixed(2)));
    case 'quantity':
      return label.quantity;
    case 'quantity-of-each':
      return `${label.quantity} each`;
    case 'product':
      return label.product;
    case 'systems':
    case 'amount':
    case 'each':
    case 'in-all':
    case 'time':
    case 'yes':
    case 'no':
    case 'one-top-up':
    case 'two-top-ups':
    case 'done-without-figures':
    case 'still-out':
    case 'keep-as-note':
    case 'work':
    case 'all-work':
      return label.kind;
  }
}

function askInShort(ask: Ask, nameOf: NameOf): string {
  const parts = Object.entries(ask).flatMap(([field, value]) => {
    if (field === 'kind' || value === null || value === false) return [];
    return [field === 'system' ? nameOf(String(value)) : value === true ? field : String(value)];
  });
  return [ask.kind, ...parts].join(' ');
}
