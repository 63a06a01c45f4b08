import type { SystemId } from '../greenhouse/system.ts';
import { entriesOfMessage } from '../logbook/logbook.ts';
import type { PastRound } from '../logbook/rounds.ts';
import type { RepliedTo } from '../understanding/context.ts';
import type { ReplyTarget } from './incoming.ts';
import type { Outgoing } from './outgoing.ts';
import type { ChannelName, Ledger } from './ports/store.ts';
import type { Standing } from './standing.ts';
import type { AskedDuties } from './use-cases/close-duties.ts';
import type { Surroundings } from './use-cases/hear-message.ts';

export const nothingAround: Surroundings = {
  repliedTo: null,
  askedDuties: null,
  round: null,
  alerts: [],
};

/** Finds what a message replies to, and the round it may answer. */
export async function surroundingsOf(
  ledger: Ledger,
  standing: Standing,
  target: ReplyTarget | null,
  place: { readonly chat: string; readonly channel: ChannelName; readonly writtenAtMs: number },
): Promise<Surroundings> {
  const round = roundBefore(standing, place.writtenAtMs);
  if (!target) return { ...nothingAround, round };
  if (target.kind === 'round') {
    const latest = standing.rounds.at(-1);
    if (!latest) return { ...nothingAround, round };
    return {
      ...nothingAround,
      repliedTo: { kind: 'round', duties: latest.duties },
      askedDuties: { duties: latest.duties, sinceMs: latest.sentAtMs },
      round,
    };
  }
  if (target.kind === 'last') {
    const message = await ledger.latestOutgoing(place.chat);
    return message ? aroundBotMessage(message, standing, round) : { ...nothingAround, round };
  }
  for (const id of target.ids) {
    const message = await ledger.outgoingByPlatformId(place.channel, place.chat, id);
    if (message) return aroundBotMessage(message, standing, round);
  }
  for (const id of target.ids) {
    const entries = entriesOfMessage(standing.logbook, id);
    if (entries.length === 0) continue;
    const systems = distinct(entries.map(({ system }) => system));
    return { ...nothingAround, repliedTo: { kind: 'message', entries, systems }, round };
  }
  return { ...nothingAround, repliedTo: { kind: 'message', entries: [], systems: [] }, round };
}

function aroundBotMessage(
  message: Outgoing,
  standing: Standing,
  round: AskedDuties | null,
): Surroundings {
  const { reply } = message;
  const duties = dutiesIn(message);
  const askedDuties = duties && { duties, sinceMs: message.atMs };
  return { ...nothingAround, repliedTo: repliedToOf(reply, standing), askedDuties, round };
}

function repliedToOf(reply: Outgoing['reply'], standing: Standing): RepliedTo {
  const current = (entries: readonly { readonly no: number }[]) =>
    entries.map(({ no }) => standing.logbook.all[no - 1]!);
  switch (reply.kind) {
    case 'round':
      return { kind: 'round', duties: reply.duties.map(({ duty }) => duty) };
    case 'question':
      return { kind: 'question', questionId: reply.questionId, doubt: reply.doubt };
    case 'receipt':
    case 'correction':
      return {
        kind: 'message',
        entries: current(reply.logged),
        systems: distinct(reply.logged.map(({ system }) => system)),
      };
    case 'answer': {
      const { answer } = reply;
      if (answer.kind === 'due') {
        return { kind: 'round', duties: answer.duties.map(({ duty }) => duty) };
      }
      return { kind: 'message', entries: [], systems: systemsIn(answer) };
    }
    case 'alert':
    case 'refusal':
      return { kind: 'message', entries: [], systems: [] };
  }
}

function dutiesIn({ reply }: Outgoing): AskedDuties['duties'] | null {
  if (reply.kind === 'round') return reply.duties.map(({ duty }) => duty);
  if (reply.kind === 'answer' && reply.answer.kind === 'due') {
    return reply.answer.duties.map(({ duty }) => duty);
  }
  // `Still open today: …. Is it done?`
  if (reply.kind === 'alert' && reply.alert.kind === 'undone') return reply.alert.duties;
  return null;
}

function systemsIn(
  answer: Extract<Outgoing['reply'], { kind: 'answer' }>['answer'],
): readonly SystemId[] {
  if (answer.kind === 'how-full') return answer.systems.map(({ system }) => system);
  if (answer.kind === 'how-long') return answer.systems.map(({ system }) => system);
  if (answer.kind === 'show') return answer.systems.map(({ lasting }) => lasting.system);
  if (answer.kind === 'picture') return [answer.picture.system];
  if (answer.kind === 'last-reading') return distinct(answer.entries.map(({ system }) => system));
  return [];
}

/** This morning's round: the latest one, for as long as the next is not due. */
function roundBefore(standing: Standing, writtenAtMs: number): AskedDuties | null {
  const round: PastRound | undefined = standing.rounds.findLast(
    ({ sentAtMs }) => sentAtMs <= writtenAtMs,
  );
  if (!round || writtenAtMs - round.sentAtMs > answerableForMs) return null;
  return { duties: round.duties, sinceMs: round.sentAtMs };
}

const answerableForMs = 24 * 3_600_000;

function distinct(systems: readonly (SystemId | null)[]): readonly SystemId[] {
  return [...new Set(systems.filter((system) => system !== null))];
}
