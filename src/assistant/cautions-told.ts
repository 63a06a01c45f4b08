import type { Duty } from '../greenhouse/duty.ts';
import type { PastRound } from '../logbook/rounds.ts';
import type { Cautions } from '../planning/caution.ts';
import type { DutyLine } from '../planning/duty-line.ts';
import type { Conversation } from './conversation.ts';
import type { Answer } from './replies/answer.ts';
import type { Remark, Reply } from './replies/reply.ts';

/** A reply in which each caution stands in full at its first telling to a member, briefly afterwards. */
export function withCautionsOnce(
  reply: Reply,
  conversation: Conversation,
): { readonly reply: Reply; readonly conversation: Conversation } {
  const told = new Set(conversation.cautioned);
  const before = told.size;
  const worded = onceIn(reply, (cautions) => {
    if (!cautions.inFull) return cautions;
    const key = cautions.about.join(' ');
    const isNew = !told.has(key);
    told.add(key);
    return isNew ? cautions : { ...cautions, inFull: false };
  });
  return {
    reply: worded,
    conversation: told.size > before ? { ...conversation, cautioned: [...told] } : conversation,
  };
}

/** Duties of a round: briefly where a round has asked for the like before. */
export function withCautionsOfRound(
  lines: readonly DutyLine[],
  rounds: readonly PastRound[],
): readonly DutyLine[] {
  return lines.map((line) => {
    if (!line.cautions?.inFull) return line;
    const wasAsked = rounds.some(({ duties }) => duties.some((duty) => isAlike(duty, line.duty)));
    return wasAsked ? { ...line, cautions: { ...line.cautions, inFull: false } } : line;
  });
}

function isAlike(one: Duty, other: Duty): boolean {
  const mixes = (duty: Duty) => (duty.concentrates?.length ?? 0) > 0;
  return one.kind === other.kind && one.product === other.product && mixes(one) === mixes(other);
}

type Once = (cautions: Cautions) => Cautions;

function onceIn(reply: Reply, once: Once): Reply {
  switch (reply.kind) {
    case 'receipt':
    case 'correction':
      return { ...reply, remarks: reply.remarks.map((remark) => onceInRemark(remark, once)) };
    case 'answer':
      return { ...reply, answer: onceInAnswer(reply.answer, once) };
    case 'alert':
      return reply.alert.kind === 'outage'
        ? { ...reply, alert: { ...reply.alert, cautions: once(reply.alert.cautions) } }
        : reply;
    default:
      return reply;
  }
}

function onceInRemark(remark: Remark, once: Once): Remark {
  return remark.kind === 'next-work'
    ? { ...remark, lines: onceInLines(remark.lines, once) }
    : remark;
}

function onceInAnswer(answer: Answer, once: Once): Answer {
  switch (answer.kind) {
    case 'due':
      return { ...answer, duties: onceInLines(answer.duties, once) };
    case 'how-much':
      return { ...answer, lines: onceInLines(answer.lines, once) };
    case 'mix':
      return { ...answer, cautions: once(answer.cautions) };
    default:
      return answer;
  }
}

function onceInLines(lines: readonly DutyLine[], once: Once): readonly DutyLine[] {
  return lines.map((line) => (line.cautions ? { ...line, cautions: once(line.cautions) } : line));
}
