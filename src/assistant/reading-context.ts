import type { SystemId } from '../greenhouse/system.ts';
import { openOutages } from '../planning/outages.ts';
import type { Context, OpenQuestion, RepliedTo } from '../understanding/context.ts';
import {
  type AskedQuestion,
  type Conversation,
  openQuestions,
  recentSystem,
} from './conversation.ts';
import type { Handling } from './handling.ts';
import type { Standing } from './standing.ts';
import type { Surroundings } from './use-cases/hear-message.ts';

/** A greenhouse is older than its logbook: a household may tell of the year before it. */
const keptBeforeMs = 366 * 24 * 3_600_000;

export function contextOf(handling: Handling, around: Surroundings): Context {
  const { standing, heard, conversation } = handling;
  return {
    greenhouse: handling.spoken,
    member: heard.member,
    writtenAtMs: heard.writtenAtMs,
    repliedTo: stillRepliedTo(around.repliedTo, standing),
    recentSystem: stillThere(recentSystem(conversation, heard.writtenAtMs), standing),
    openQuestions: openQuestions(conversation, heard.writtenAtMs).map((question) =>
      asOpen(question, conversation),
    ),
    roundDuties: around.round?.duties ?? null,
    ...outages(standing),
    ...asked(handling),
    ...calibrating(handling),
    ...justLogged(handling),
    existsSinceMs: standing.createdAtMs - keptBeforeMs,
  };
}

function asOpen({ questionId, doubt, messageId }: AskedQuestion, of: Conversation): OpenQuestion {
  const hasLogged = of.receipts.some((receipt) => receipt.messageId === messageId);
  return { questionId, doubt, ...(hasLogged ? { hasLogged } : {}) };
}

const askedForMs = 10 * 60_000;

function asked({ conversation, heard }: Handling): Pick<Context, 'asked'> {
  const last = conversation.asked;
  return last && heard.writtenAtMs - last.atMs <= askedForMs ? { asked: last.ask } : {};
}

const calibratingForMs = 10 * 60_000;

/** References are tried one after the other, and may be told so. */
function calibrating({ standing, conversation, heard }: Handling): Pick<Context, 'calibrating'> {
  const [no] = conversation.receipts[0]?.entries ?? [];
  const entry = no === undefined ? undefined : standing.logbook.all[no - 1];
  if (entry?.quantity !== 'calibration' || entry.struck !== null) return {};
  if (entry.probe === undefined || heard.writtenAtMs - entry.atMs > calibratingForMs) return {};
  return { calibrating: entry.probe };
}

const justLoggedForMs = 10 * 60_000;

/** What the member's last message logged, as long as nothing of it was struck out and no question was left. */
function justLogged({ standing, conversation, heard }: Handling): Pick<Context, 'justLogged'> {
  const { lastTalk, receipts } = conversation;
  // An edited message is read as if it had logged nothing yet.
  const isOfNow =
    lastTalk?.of === 'receipt' &&
    heard.writtenAtMs - lastTalk.atMs <= justLoggedForMs &&
    receipts[0]?.messageId !== heard.messageId;
  const nos = isOfNow && heard.writtenAtMs >= lastTalk.atMs ? (receipts[0]?.entries ?? []) : [];
  const entries = nos.flatMap((no) => standing.logbook.all[no - 1] ?? []);
  const isWhole = entries.length === nos.length && entries.every(({ struck }) => struck === null);
  return entries.length > 0 && isWhole ? { justLogged: entries } : {};
}

function outages({ logbook, greenhouse }: Standing): Pick<Context, 'outage' | 'outSince'> {
  const ids = greenhouse.systems.map(({ id }) => id);
  const outSince = openOutages(logbook, ids);
  const [outage, ...others] = outSince;
  if (!outage) return {};
  return others.length > 0
    ? { outSince }
    : { outage: { of: outage.of, system: outage.system }, outSince };
}

/** A system that was given up since is not meant any more. */
export function stillRepliedTo(repliedTo: RepliedTo | null, standing: Standing): RepliedTo | null {
  if (repliedTo?.kind !== 'message') return repliedTo;
  const systems = repliedTo.systems.filter((system) => stillThere(system, standing) !== null);
  return { ...repliedTo, systems };
}

function stillThere(system: SystemId | null, { greenhouse }: Standing): SystemId | null {
  return greenhouse.systems.some(({ id }) => id === system) ? system : null;
}
