import { entriesOfMessage } from '../../logbook/logbook.ts';
import { withoutMessage } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import {
  actOnRest,
  noteContext,
  readReport,
  recordStatements,
  type Surroundings,
} from './hear-message.ts';
import { hearWish } from './hear-wish.ts';
import { replaceEntries } from './take-back.ts';

/**
 * An edited message replaces all that it logged, at the time it was first written. `handling.heard`
 * carries the first message's id and time.
 */
export function hearEdit(handling: Handling, text: string, around: Surroundings): void {
  const { messageId } = handling.heard;
  const old = entriesOfMessage(handling.standing.logbook, messageId).filter(
    (entry) => entry.struck === null,
  );
  handling.conversation = withoutMessage(handling.conversation, messageId);
  if (old.length === 0 && hearWish(handling, text, around)) return;
  const understood = readReport(handling, text, around);
  noteContext(handling, understood.statements, understood.named);
  if (old.length === 0) {
    recordStatements(handling, understood.statements);
  } else {
    const drafts = understood.statements.flatMap((statement) =>
      statement.kind === 'entry' ? [statement.draft] : [],
    );
    replaceEntries(handling, old, drafts);
  }
  actOnRest(handling, understood.statements, around);
}
