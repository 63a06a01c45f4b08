import type { System, SystemId } from '../../greenhouse/system.ts';
import type { Context } from '../context.ts';
import type { Fact } from '../fact.ts';
import type { Mood } from '../moods/mood.ts';
import type { Frame } from '../reading/frame.ts';
import type { Assumption } from '../statement.ts';
import type { Mention } from '../systems/mention.ts';
import type { Scope } from '../systems/system-of.ts';
import type { TimeMark } from '../times/time-mark.ts';
import { timeOf } from '../times/time-of.ts';
import { isOfGreenhouse } from './draft-of.ts';
import { withDevice } from './no-such-device.ts';
import type { Settled } from './settled.ts';

/** What is said beside the facts. */
interface Surroundings {
  readonly mentions: readonly Mention[];
  readonly marks: readonly TimeMark[];
  readonly moods: readonly (Mood | null)[];
  readonly scopeOf: (fact: Fact) => Scope;
}

/** Finds for every fact its system, its time and its mood. */
export function settleFacts(
  frame: Frame,
  facts: readonly Fact[],
  { mentions, marks, moods, scopeOf }: Surroundings,
): Settled[] {
  return facts.map((fact) => {
    const mark = fact.time ?? timeOf(frame, fact, facts, marks, moods);
    const time = {
      atMs: mark?.atMs ?? frame.context.writtenAtMs,
      mark,
      mood: moods[fact.at] ?? null,
    };
    const isPlainNote =
      fact.quantity === 'note' &&
      fact.byDevice === undefined &&
      isOfAllOrNone(frame, scopeOf(fact));
    if (isOfGreenhouse(fact) || isPlainNote)
      return { fact, systems: null, askSystem: null, assumptions: [], ...time };
    const found = systemsOf(frame, fact, mentions, scopeOf);
    return { fact, ...withDevice(found, fact, frame.context.greenhouse.systems), ...time };
  });
}

/** `all good, checked everything`: a note of the whole greenhouse, as if none were named. */
function isOfAllOrNone(frame: Frame, scope: Scope): boolean {
  if (scope.kind !== 'named') return true;
  const { systems } = frame.context.greenhouse;
  return systems.length > 1 && scope.mention.systems.length === systems.length;
}

type Found = Pick<Settled, 'systems' | 'askSystem' | 'assumptions'>;

function systemsOf(
  frame: Frame,
  fact: Fact,
  mentions: readonly Mention[],
  scopeOf: (fact: Fact) => Scope,
): Found {
  const { context } = frame;
  const all = context.greenhouse.systems;
  const byId = (ids: readonly SystemId[]) => all.filter(({ id }) => ids.includes(id));
  const device = deviceFor(frame, fact, mentions);
  if (device) return { askSystem: null, assumptions: [], ...device, systems: byId(device.systems) };
  if (fact.isOfOther)
    return { systems: [], askSystem: { offer: all, written: null }, assumptions: [] };
  const scope = scopeOf(fact);
  switch (scope.kind) {
    case 'named': {
      const { mention } = scope;
      const assumptions: Assumption[] = mention.slip
        ? mention.systems.map((system) => ({
            kind: 'slip-in-name',
            written: mention.written,
            system,
          }))
        : [];
      return { systems: byId(mention.systems), askSystem: null, assumptions };
    }
    case 'unsure':
      return {
        systems: [],
        askSystem: { offer: byId(scope.systems), written: scope.written },
        assumptions: [],
      };
    case 'unknown-name':
      if (fact.byDevice !== undefined)
        return { systems: byId([fact.byDevice]), askSystem: null, assumptions: [] };
      return {
        systems: [],
        askSystem: { isNoName: true, offer: all, written: scope.written },
        assumptions: [],
      };
    case 'unnamed':
      return unnamed(frame, fact, mentions, all);
  }
}

/** A device or crop that one system has is its name, unless its own clause names a system too. */
function deviceFor(
  frame: Frame,
  fact: Fact,
  mentions: readonly Mention[],
): { readonly systems: readonly SystemId[] } | null {
  if (fact.inTurn !== undefined) return { systems: [fact.inTurn] };
  if (fact.byDevice === undefined) return null;
  const clause = frame.clauseOf[fact.at]!;
  const isNamedHere = mentions.some(
    (mention) => mention.clause <= clause && clause <= mention.lastClause,
  );
  return isNamedHere ? null : { systems: [fact.byDevice] };
}

/** Nothing named: a device or crop that only one has, the system replied to, the one of the talk, else a question. */
function unnamed(
  frame: Frame,
  fact: Fact,
  mentions: readonly Mention[],
  all: readonly System[],
): Found {
  const { context } = frame;
  const one = (id: SystemId, assumptions: readonly Assumption[] = []): Found => ({
    systems: all.filter((system) => system.id === id),
    askSystem: null,
    assumptions,
  });
  if (fact.byDevice !== undefined) return one(fact.byDevice);
  const replied = systemRepliedTo(context);
  if (replied !== null) return one(replied);
  const { recentSystem } = context;
  const othersNamed = mentions.some(({ systems }) => systems.some((id) => id !== recentSystem));
  // `the other one ph 6.1`: whichever it is, not the one that was spoken of.
  const isOther = frame.places.has('other-one', 0, frame.terms.length);
  if (recentSystem !== null && !othersNamed && !isOther)
    return one(recentSystem, [{ kind: 'system-from-conversation', system: recentSystem }]);
  return { systems: [], askSystem: { offer: all, written: null }, assumptions: [] };
}

/** The one system of the message, duty or question replied to; null if it is of none or several. */
export function systemRepliedTo(context: Context): SystemId | null {
  const { repliedTo } = context;
  if (!repliedTo) return null;
  const systems = new Set<SystemId | null>();
  switch (repliedTo.kind) {
    case 'round':
      for (const duty of repliedTo.duties) if (duty.alongside !== true) systems.add(duty.system);
      break;
    case 'message':
      for (const system of repliedTo.systems) systems.add(system);
      break;
    case 'question':
      for (const draft of [
        ...(repliedTo.doubt.waiting?.drafts ?? []),
        ...repliedTo.doubt.choices.flatMap(({ drafts }) => drafts),
      ])
        systems.add(draft.system);
      break;
  }
  const [only] = systems;
  return systems.size === 1 ? (only ?? null) : null;
}
