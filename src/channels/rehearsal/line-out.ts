import type { Outgoing } from '../../assistant/outgoing.ts';
import { pressToken } from '../../assistant/outgoing.ts';
import type { OutlookEntry } from '../../assistant/outlook.ts';
import { photoIn } from '../../assistant/photo-in.ts';
import type { Answer } from '../../assistant/replies/answer.ts';
import type { Reply } from '../../assistant/replies/reply.ts';
import type { Entry } from '../../greenhouse/entry.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import { isoAt } from '../../greenhouse/local-time.ts';
import { unitOf } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { DutyLine } from '../../planning/duty-line.ts';
import { inWordsAlone } from '../../wording/in-words-alone.ts';
import { readerOf } from '../../wording/reader-of.ts';
import type { Reader, Wording } from '../../wording/wording.ts';

/** The id that a rehearsal's member sees on a message of the bot. */
export function messageId({ no }: Pick<Outgoing, 'no'>): string {
  return `b${no}`;
}

/** A message of the bot as a line of output. */
export function messageOut(message: Outgoing, greenhouse: Greenhouse, wording: Wording): object {
  const { reply, buttons } = message;
  const reader = readerOf(message.to, greenhouse, message.atMs);
  const photo = photoIn(reply)?.id ?? null;
  const { logged, struck } = entriesIn(reply);
  const due = dutiesIn(reply);
  let position = -1;
  return {
    at: isoAt(message.atMs, greenhouse.timeZone),
    id: messageId(message),
    to: message.to,
    kind: reply.kind,
    text: inWordsAlone(wording, reply, reader),
    ...(photo === null ? {} : { photo }),
    ...(struck ? { struck: struck.map((entry) => entryOut(entry, greenhouse)) } : {}),
    ...(logged ? { logged: logged.map((entry) => entryOut(entry, greenhouse)) } : {}),
    ...(due ? { due: due.map((line) => dutyOut(line, wording, reader)) } : {}),
    ...(buttons.length > 0
      ? {
          buttons: buttons.map((row) =>
            row.map(({ label }) => {
              position += 1;
              return {
                label: wording.button(label, reader),
                press: pressToken(message.no, position),
              };
            }),
          ),
        }
      : {}),
  };
}

export function outlookOut(
  outlook: readonly OutlookEntry[],
  greenhouse: Greenhouse,
  wording: Wording,
  nowMs: number,
): object {
  return {
    outlook: outlook.map(({ system, due, ...figures }) => ({
      system: nameOf(system, greenhouse),
      ...figures,
      due: due.map((line) => dutyOut(line, wording, { greenhouse, nowMs })),
    })),
  };
}

function entriesIn(reply: Reply): {
  logged: readonly Entry[] | null;
  struck: readonly Entry[] | null;
} {
  switch (reply.kind) {
    case 'receipt':
      return { logged: reply.logged, struck: null };
    case 'correction':
      return { logged: reply.logged, struck: reply.struck };
    default:
      return { logged: null, struck: null };
  }
}

function dutiesIn(reply: Reply): readonly DutyLine[] | null {
  if (reply.kind === 'round') return reply.duties;
  if (reply.kind !== 'answer') return null;
  return dutiesOf(reply.answer);
}

function dutiesOf(answer: Answer): readonly DutyLine[] | null {
  switch (answer.kind) {
    case 'due':
    case 'why':
    case 'when-next':
      return answer.duties;
    case 'how-much':
      return answer.lines;
    default:
      return null;
  }
}

function entryOut(entry: Entry, greenhouse: Greenhouse): object {
  const { system, quantity, value, atMs, approximate, product, probe, read, of } = entry;
  const { duty, chore, note, photo, water } = entry;
  return {
    system: nameOf(system, greenhouse),
    quantity,
    value: tidy(value),
    unit: quantity === 'calibration' ? referenceUnit(entry, greenhouse) : unitOf[quantity],
    at: isoAt(atMs, greenhouse.timeZone),
    ...given({ product, probe, of, duty, chore, note, water, photo: photo?.id }),
    ...(read === undefined ? {} : { read: tidy(read) }),
    ...(approximate ? { approximate: true } : {}),
  };
}

function dutyOut(line: DutyLine, wording: Wording, reader: Reader): object {
  const { kind, system, dueOn, ...rest } = line.duty;
  return {
    duty: kind,
    system: nameOf(system, reader.greenhouse),
    dueOn,
    why: wording.why(line, reader),
    ...given(rest),
  };
}

function referenceUnit({ probe, value }: Entry, greenhouse: Greenhouse): string {
  const measures = greenhouse.probes.find(({ name }) => name === probe)?.measures ?? [];
  const isConductivity = measures.includes('ec') && (!measures.includes('ph') || value < 3);
  return isConductivity ? unitOf.ec : unitOf.ph;
}

function nameOf(system: SystemId | null, greenhouse: Greenhouse): string | null {
  const { systems, formerSystems = [] } = greenhouse;
  return [...systems, ...formerSystems].find(({ id }) => id === system)?.name ?? null;
}

/** The fields that are there. */
function given(fields: Readonly<Record<string, unknown>>): object {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}

/** Without the dust of binary fractions. */
function tidy(value: number): number {
  return Number(value.toPrecision(10));
}
