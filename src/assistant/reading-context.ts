import type { SystemId } from '../greenhouse/system.ts';
import type { Context, RepliedTo } from '../understanding/context.ts';
import { openQuestions, recentSystem } from './conversation.ts';
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
    openQuestions: openQuestions(conversation, heard.writtenAtMs),
    roundDuties: around.round?.duties ?? null,
    existsSinceMs: standing.createdAtMs - keptBeforeMs,
  };
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
