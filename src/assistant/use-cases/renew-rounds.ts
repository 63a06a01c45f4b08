import type { Duty } from '../../greenhouse/duty.ts';
import type { PastRound } from '../../logbook/rounds.ts';
import type { DutyLine } from '../../planning/duty-line.ts';
import { type DutyMark, dutyMark } from '../../planning/duty-mark.ts';
import type { Button, Outgoing, OutgoingNo } from '../outgoing.ts';
import type { ChannelName, Ledger } from '../ports/store.ts';
import type { Standing } from '../standing.ts';

export type Marks = readonly (DutyMark | null)[];

/**
 * The messages of the latest round as they must look now, where the logbook has changed what became
 * of its duties: each takes the place of the one that went out, so that everyone sees one list.
 */
export async function renewedRounds(
  before: Standing,
  after: Standing,
  ledger: Pick<Ledger, 'outgoing'>,
  lastOutgoingNo: number,
  nowMs: number,
  canEdit: (channel: ChannelName) => boolean,
): Promise<readonly Outgoing[]> {
  const round = after.rounds.at(-1);
  if (!round?.outgoing || before.logbook === after.logbook) return [];
  if (sameMarks(marksOf(round, before), marksOf(round, after))) return [];
  const renewed: Outgoing[] = [];
  for (const no of round.outgoing) {
    const first = await ledger.outgoing(no as OutgoingNo);
    if (first?.reply.kind !== 'round' || !canEdit(first.channel)) continue;
    const { duties } = first.reply;
    const marks = duties.map(({ duty }) => dutyMark(duty, after.logbook, round.sentAtMs));
    renewed.push({
      no: (lastOutgoingNo + renewed.length + 1) as OutgoingNo,
      atMs: nowMs,
      channel: first.channel,
      to: first.to,
      inReplyTo: null,
      reply: { ...first.reply, marks },
      // Who is away is told how it stands, and asked for nothing.
      buttons: first.reply.isBrief
        ? []
        : roundButtons(duties, marks, round.sentAtMs, isHelper(first.to, after)),
      edits: first.no,
    });
  }
  return renewed;
}

/** A row a duty: done and can't while it is open; a way back where it was only said to be closed. */
export function roundButtons(
  duties: readonly DutyLine[],
  marks: Marks,
  askedAtMs: number,
  isForHelper: boolean,
): readonly (readonly Button[])[] {
  return duties.flatMap(({ duty }, position): (readonly Button[])[] => {
    const mark = marks[position] ?? null;
    const done: Button = {
      label: { kind: 'tick', duty },
      action: { kind: 'tick', duty, askedAtMs },
    };
    const cannot: Button = {
      label: { kind: 'cannot', duty },
      action: { kind: 'cannot', duty, askedAtMs },
    };
    // A layman may ask how it is done.
    if (!mark) return [isForHelper ? [done, cannot, howButton(duty)] : [done, cannot]];
    if (mark.said === null) return [];
    const untick: Button = {
      label: { kind: 'untick', duty },
      action: { kind: 'strike', entries: [mark.said] },
    };
    return mark.state === 'cannot' ? [[done, untick]] : [[untick]];
  });
}

function marksOf({ duties, sentAtMs }: PastRound, { logbook }: Standing): Marks {
  return duties.map((duty) => dutyMark(duty, logbook, sentAtMs));
}

function sameMarks(some: Marks, others: Marks): boolean {
  return JSON.stringify(some) === JSON.stringify(others);
}

/** Beside the duty's own buttons its name need not stand again. */
function howButton(duty: Duty): Button {
  return { label: { kind: 'how' }, action: { kind: 'how-to', duty } };
}

function isHelper(to: string, { greenhouse }: Standing): boolean {
  return greenhouse.members.some(({ handle, role }) => handle === to && role === 'helper');
}
