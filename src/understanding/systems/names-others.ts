import { type Clause, type Frame, namesIn } from '../reading/frame.ts';

/** `drained the jars and filled the bench`: whether a clause names a system that the one before it does not. */
export function namesOthers(frame: Frame, before: Clause, clause: Clause): boolean {
  const of = namesIn(frame, before).map((i) => systemsAt(frame, i));
  return of.length > 0 && namesIn(frame, clause).some((i) => !of.includes(systemsAt(frame, i)));
}

function systemsAt({ terms }: Frame, i: number): string {
  const term = terms[i];
  return term?.kind === 'name' ? term.systems.join() : '';
}
