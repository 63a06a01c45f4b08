import type { SystemId } from '../greenhouse/system.ts';
import type { Context } from './context.ts';
import { layOut, piecesOf } from './lay-out.ts';
import { namesSaid } from './read-frame.ts';
import { fold } from './reading/fold.ts';

/** The systems that a message names, each once, where it is not read as a report: in a wish, in what somebody takes on. */
export function systemsNamed(text: string, context: Context): readonly SystemId[] {
  const folded = fold(text);
  return namesSaid(layOut(piecesOf(folded, folded.text, context), context));
}
