import type { Danger, Trouble } from '../../greenhouse/entry.ts';
import { localDateOf } from '../../greenhouse/local-time.ts';
import { type DangerSaid, readDangers } from '../../understanding/dangers/read-dangers.ts';
import { dangersTold, withDangersTold } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { contextOf } from '../reading-context.ts';
import type { Surroundings } from '../use-cases/hear-message.ts';
import { rosterOf } from './roster-of.ts';

/** The growers, and whoever covers today, but for the teller and those whom nothing reaches. */
export function hearersOfDanger({ standing, heard, nowMs }: Handling): readonly string[] {
  const { greenhouse, unjoined } = standing;
  const growers = greenhouse.members.filter(({ role }) => role === 'grower');
  const covers = rosterOf(standing).coversOn(localDateOf(nowMs, greenhouse.timeZone));
  const all = new Set([...growers.map(({ handle }) => handle), ...covers]);
  return [...all].filter((handle) => handle !== heard.member.handle && !unjoined.includes(handle));
}

/**
 * Whatever else came of a message: what it tells of that may hurt reaches the others at once, each
 * kind once however often the message is edited, and the teller is told what to do first.
 */
export function tellOfDangers(handling: Handling, text: string, around: Surroundings): void {
  if (handling.searchedForDangers.has(text)) return;
  handling.searchedForDangers.add(text);
  const { messageId, member } = handling.heard;
  const said = readDangers(text, contextOf(handling, around));
  const fresh = said.filter(
    ({ of }) => !dangersTold(handling.conversation, messageId).includes(of),
  );
  if (fresh.length === 0) return;
  const hearers = hearersOfDanger(handling);
  for (const { of, system } of fresh) {
    if (!isToldFirst(handling, of)) {
      handling.say({ kind: 'answer', answer: { kind: 'danger', of, told: hearers } });
    }
    const alert = { kind: 'danger', of, by: member.handle, words: text, system } as const;
    for (const hearer of hearers) handling.tell(hearer, { kind: 'alert', alert });
  }
  handling.conversation = withDangersTold(handling.conversation, {
    messageId,
    dangers: fresh.map(({ of }: DangerSaid): Danger => of),
  });
}

/** The question whether to keep it says what to do first, and so does the answer to what to do. */
export function isToldFirst({ outgoing }: Handling, trouble: Trouble): boolean {
  return outgoing.some(({ reply }) => {
    if (reply.kind === 'answer')
      return reply.answer.kind === 'danger' && reply.answer.of === trouble;
    if (reply.kind !== 'question') return false;
    const { reason } = reply.doubt;
    return reason.kind === 'trouble' && reason.of === trouble;
  });
}
