import { localDateOf } from '../../greenhouse/local-time.ts';
import type { Member } from '../../greenhouse/member.ts';
import { asSpokenBy } from '../../greenhouse/own-units.ts';
import { type Quantity, readings } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { latestEntry } from '../../logbook/logbook.ts';
import { allCautions } from '../../planning/cautions-for.ts';
import { dutiesForMember } from '../../planning/duties-for-member.ts';
import type { DutyLine } from '../../planning/duty-line.ts';
import type { Ask } from '../../understanding/statement.ts';
import { boardOf } from '../board-of.ts';
import type { Handling } from '../handling.ts';
import type { Answer, Portrait } from '../replies/answer.ts';
import type { Standing } from '../standing.ts';
import { converted } from './convert.ts';
import { dueBy } from './due-by.ts';
import { fillWithPump } from './fill-with-pump.ts';
import { howFull } from './how-full.ts';
import { howMuch } from './how-much.ts';
import { isItRight } from './is-it-right.ts';
import { lastReadings } from './last-readings.ts';
import { lastingOf } from './lasting-of.ts';
import { mixFor } from './mix.ts';
import { isPictured, pictureAnswer, pictureButtons } from './picture-answer.ts';
import { pictureOf } from './picture-of.ts';
import { plainAnswer } from './plain-answer.ts';
import { seasonAnswer } from './season-answer.ts';
import { supplyState } from './supply-state.ts';
import { useBetween } from './use-between.ts';
import { whoDid } from './who-did.ts';
import { withoutSupply } from './without-supply.ts';

/** Answers a member's question. `spokenOf`: systems that it names, or of the message it replies to. */
export function answerQuestion(handling: Handling, ask: Ask, spokenOf: readonly SystemId[]): void {
  const { standing, nowMs } = handling;
  const answer = answerTo(ask, standing, nowMs, spokenOf, handling.heard.member);
  const offersPictures =
    ask.kind === 'show' || ask.kind === 'how-is-it-going' || ask.kind === 'why';
  const buttons = offersPictures ? pictureButtons(answer, standing, nowMs) : [];
  handling.say({ kind: 'answer', answer }, buttons);
}

function answerTo(
  ask: Ask,
  standing: Standing,
  nowMs: number,
  spokenOf: readonly SystemId[],
  member: Member,
): Answer {
  const asked = (system: SystemId | null): readonly SystemId[] => {
    if (system !== null) return [system];
    return spokenOf.length > 0 ? spokenOf : standing.greenhouse.systems.map(({ id }) => id);
  };
  switch (ask.kind) {
    case 'what-is-due':
      return ask.by === undefined
        ? whatIsDue(standing, ask.system, nowMs, member)
        : dueBy(standing, ask.system, ask.by, member, nowMs);
    case 'why':
      return why(standing, ask, asked(ask.system), nowMs);
    case 'when-next': {
      const { today, later } = boardOf(standing, nowMs);
      const meant = [...today, ...later].filter(
        ({ duty }) =>
          (ask.system === null || duty.system === ask.system) &&
          (ask.duty === null || duty.kind === ask.duty) &&
          (ask.probe === undefined || duty.probe === ask.probe),
      );
      const often = ask.isOften ? { isOften: true as const } : {};
      // Nobody is sent to acid who was not shown how.
      const { mine } = dutiesForMember(meant, member, standing.greenhouse);
      return { ...often, kind: 'when-next', duties: mine.slice(0, mostDutiesTold) };
    }
    case 'how-long':
      return { kind: 'how-long', systems: lastingOf(standing, asked(ask.system), nowMs) };
    case 'last-reading':
      if (ask.quantity === 'level') {
        return { kind: 'how-full', systems: howFull(standing, asked(ask.system), nowMs) };
      }
      return lastReadings(
        standing,
        ask.quantity,
        ask.system === null && spokenOf.length === 0 ? null : asked(ask.system),
      );
    case 'use':
      return useBetween(standing, ask, asked(ask.system), nowMs);
    case 'is-it-right':
      return isItRightOrWhich(standing, ask, asked(ask.system), spokenOf);
    case 'who':
      return whoDid(standing, ask);
    case 'how-is-it-going':
      if (ask.system !== null || spokenOf.length > 0) {
        return show(standing, asked(ask.system), nowMs);
      }
      return seasonAnswer(standing, nowMs, 'going');
    case 'show':
      return ask.quantity === null || ask.quantity === 'level'
        ? show(standing, asked(ask.system), nowMs)
        : showReadings(
            standing,
            ask.quantity,
            ask.system === null ? spokenOf : [ask.system],
            nowMs,
          );
    case 'how-much':
      return howMuch(standing, ask, asked(ask.system), member, nowMs);
    case 'mix':
      return mixFor(standing, ask, nowMs);
    case 'convert':
      return converted(asSpokenBy(standing.greenhouse, member.handle).units, ask);
    case 'fill-with-pump':
      return fillWithPump(standing, ask, asked(ask.system)) ?? { kind: 'unknown' };
    case 'without-supply':
      return withoutSupply(standing, ask, asked(ask.system), nowMs);
    case 'supply':
      return supplyState(standing, ask.of);
    case 'help':
      return { kind: 'help' };
    case 'safety':
      return { kind: 'safety', cautions: allCautions() };
    case 'first-aid':
      return { kind: 'danger', of: ask.of, told: [] };
    case 'containers':
    case 'grown':
    case 'water-source':
    case 'urgent':
    case 'out-of-range':
    case 'why-reading':
    case 'room':
    case 'coming':
    case 'first':
    case 'fullest':
    case 'why-use':
    case 'days-told':
    case 'compared':
    case 'topic':
    case 'which-value':
      return plainAnswer(ask, standing, nowMs, spokenOf, member);
    case 'unknown':
      return { kind: 'unknown' };
  }
}

/** `is that too warm`, where no water was ever measured: of which value? */
function isItRightOrWhich(
  standing: Standing,
  ask: Extract<Ask, { kind: 'is-it-right' }>,
  systems: readonly SystemId[],
  spokenOf: readonly SystemId[],
): Answer {
  const held = isItRight(standing, ask, systems);
  const isOfNone = ask.system === null && ask.value === null && spokenOf.length === 0;
  return isOfNone &&
    held.kind === 'is-it-right' &&
    ask.quantity === 'water-temperature' &&
    held.systems.every(({ value }) => value === null)
    ? { kind: 'which-value' }
    : held;
}

const mostDutiesTold = 6;

function whatIsDue(
  standing: Standing,
  system: SystemId | null,
  nowMs: number,
  member: Member,
): Answer {
  const { today, later } = boardOf(standing, nowMs);
  const isAsked = ({ duty }: DutyLine): boolean => system === null || duty.system === system;
  const { mine, leftToGrower } = dutiesForMember(
    today.filter(isAsked),
    member,
    standing.greenhouse,
  );
  return {
    kind: 'due',
    system,
    today: localDateOf(nowMs, standing.greenhouse.timeZone),
    duties: mine,
    ...(leftToGrower.length > 0 ? { leftToGrower } : {}),
    next: later.filter(isAsked).slice(0, mostDutiesTold),
  };
}

function why(
  standing: Standing,
  ask: Extract<Ask, { kind: 'why' }>,
  systems: readonly SystemId[],
  nowMs: number,
): Answer {
  const { today, later } = boardOf(standing, nowMs);
  const isAsked = ({ duty }: DutyLine): boolean =>
    duty.system === null ? ask.system === null : systems.includes(duty.system);
  const isOfWork = ({ duty }: DutyLine): boolean =>
    (ask.duty === undefined || duty.kind === ask.duty) &&
    (ask.probe === undefined || duty.probe === ask.probe);
  const asked = [...today, ...later].filter(
    (line) => isOfWork(line) && (ask.probe !== undefined || isAsked(line)),
  );
  const isNarrow = (ask.duty !== undefined || ask.probe !== undefined) && asked.length > 0;
  const duties = isNarrow ? asked : today.filter(isAsked);
  const told = duties.length > 0 ? duties : later.filter(isAsked).slice(0, mostDutiesTold);
  return { kind: 'why', duties: told, exactly: ask.exactly };
}

function show(standing: Standing, systems: readonly SystemId[], nowMs: number): Answer {
  const system = only(systems);
  const picture = system && pictureOf(standing, { system, of: 'water' }, nowMs);
  const shown = portraits(standing, systems, nowMs);
  return { kind: 'show', systems: shown, ...(picture ? { picture } : {}) };
}

function showReadings(
  standing: Standing,
  quantity: Quantity,
  systems: readonly SystemId[],
  nowMs: number,
): Answer {
  const system = only(systems);
  if (system === null || !isPictured(quantity)) {
    return lastReadings(standing, quantity, systems.length > 0 ? systems : null);
  }
  return pictureAnswer(standing, { kind: 'picture', system, of: 'readings' }, nowMs);
}

function only(systems: readonly SystemId[]): SystemId | null {
  return systems.length === 1 ? systems[0]! : null;
}

function portraits(
  standing: Standing,
  systems: readonly SystemId[],
  nowMs: number,
): readonly Portrait[] {
  const { today, later } = boardOf(standing, nowMs);
  return lastingOf(standing, systems, nowMs).map((lasting) => ({
    lasting,
    readings: readings.flatMap((quantity) => {
      const entry = latestEntry(standing.logbook, lasting.system, quantity);
      return entry ? [entry] : [];
    }),
    duties: [...today, ...later].filter(({ duty }) => duty.system === lasting.system).slice(0, 3),
  }));
}
