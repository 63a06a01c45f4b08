import type { Handling } from '../handling.ts';
import type { Button } from '../outgoing.ts';

/** The button that takes back what the message in hand settled. */
export function undoSettledRow({ heard }: Handling): readonly Button[] {
  const { messageId } = heard;
  return [{ label: { kind: 'strike-out' }, action: { kind: 'undo-settled', messageId } }];
}
