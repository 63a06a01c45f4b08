import { type LocalDate, localDateOf } from '../../greenhouse/local-time.ts';
import { type Member, mayHandleAcids } from '../../greenhouse/member.ts';
import type { WantedQuantity } from '../../greenhouse/set-up/set-up-change.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { latestEntry } from '../../logbook/logbook.ts';
import type { Cautions } from '../../planning/caution.ts';
import { concentrateCautions, reagentCautions } from '../../planning/cautions-for.ts';
import { dutiesForMember } from '../../planning/duties-for-member.ts';
import type { DutyLine } from '../../planning/duty-line.ts';
import { raiseAtMostL } from '../../planning/fill-ceiling.ts';
import { openOutages } from '../../planning/outages.ts';
import type { PlainAsk, Side } from '../../understanding/asking/plain-ask.ts';
import { boardOf } from '../board-of.ts';
import type { Answer } from '../replies/answer.ts';
import type { Against, PlainAnswer, Remedy } from '../replies/plain.ts';
import type { Standing } from '../standing.ts';
import { wantedRange } from '../wanted-range.ts';
import { compared } from './compared.ts';
import { daysTold } from './days-told.ts';
import { firstOfAll } from './first-of-all.ts';
import { fullest } from './fullest.ts';
import { howFull } from './how-full.ts';
import { howMuch } from './how-much.ts';
import { whyUse } from './why-use.ts';

/** Answers what somebody asks who does not know. `named`: the systems it is about; none: all. */
export function plainAnswer(
  ask: PlainAsk,
  standing: Standing,
  nowMs: number,
  named: readonly SystemId[],
  member: Member,
): Answer {
  const { greenhouse } = standing;
  const systems = named.length > 0 ? named : greenhouse.systems.map(({ id }) => id);
  switch (ask.kind) {
    case 'containers': {
      const { containers } = greenhouse;
      const meant = containers.filter(({ name }) => ask.name === null || name === ask.name);
      return { kind: 'containers', containers: meant };
    }
    case 'grown':
      return { kind: 'grown', systems };
    case 'water-source':
    case 'which-value':
      return { kind: ask.kind };
    case 'urgent':
      return urgent(standing, nowMs, named, ask.by, member);
    case 'out-of-range':
      return outOfRange(standing, nowMs, systems, ask, member, named.length > 0);
    case 'why-reading': {
      const against = heldAgainst(standing, systems, ask.quantity);
      return { ...ask, against: named.length > 0 ? against : against.filter(isOut(ask.side)) };
    }
    case 'first':
      return firstOfAll(standing, nowMs, member);
    case 'fullest':
      return fullest(standing, systems, ask.side, nowMs);
    case 'why-use':
      return whyUse(standing, systems, ask.side, nowMs);
    case 'days-told':
      return daysTold(standing, ask.from, ask.to, nowMs);
    case 'topic':
      return { kind: 'explained', term: ask.of };
    case 'compared':
      return compared(standing, systems, nowMs);
    case 'room':
      return { kind: 'room', systems: roomIn(standing, systems, nowMs) };
    case 'coming': {
      const { today, later } = boardOf(standing, nowMs);
      const { mine } = dutiesForMember([...today, ...later], member, greenhouse);
      return { kind: 'when-next', duties: mine.slice(0, mostComing) };
    }
  }
}

const mostComing = 6;

function urgent(
  standing: Standing,
  nowMs: number,
  named: readonly SystemId[],
  by: LocalDate | null,
  member: Member,
): PlainAnswer {
  const { greenhouse, logbook } = standing;
  const today = localDateOf(nowMs, greenhouse.timeZone);
  const board = boardOf(standing, nowMs);
  const isAsked = ({ system }: { readonly system: SystemId | null }): boolean =>
    named.length === 0 || (system !== null && named.includes(system));
  const { mine } = dutiesForMember(
    [...board.today, ...board.later].filter(({ duty }) => isAsked(duty)),
    member,
    greenhouse,
  );
  const due = mine.filter(
    ({ duty }) => duty.dueOn <= (by ?? today) || board.today.some(isOf(duty)),
  );
  const lines = due.map((line) => ({ line, until: latestOf(line, today) }));
  const mayWait = ({ until }: { readonly until: LocalDate }): boolean =>
    by === null ? until > today : until >= by;
  const ids = greenhouse.systems.map(({ id }) => id);
  return {
    kind: 'urgent',
    systems: named.length > 0 ? named : null,
    by,
    out: openOutages(logbook, ids)
      .filter((outage) => outage.system === null || isAsked(outage))
      .map(({ of, system, sinceMs }) => ({ of, system, sinceMs })),
    now: lines.filter((each) => !mayWait(each)).map(({ line }) => line),
    waits: lines.filter(mayWait),
    next: mine.find((line) => !due.includes(line)) ?? null,
  };
}

function isOf(duty: DutyLine['duty']): (line: DutyLine) => boolean {
  return (line) => line.duty === duty;
}

/** The last day on which it is in time. */
function latestOf({ duty, waitsUntil }: DutyLine, today: LocalDate): LocalDate {
  const latest = waitsUntil ?? duty.dueOn;
  return latest < today ? today : latest;
}

function outOfRange(
  standing: Standing,
  nowMs: number,
  systems: readonly SystemId[],
  { quantity, side }: Extract<PlainAsk, { kind: 'out-of-range' }>,
  member: Member,
  isNamed: boolean,
): PlainAnswer {
  const remedy = remedyFor(quantity, side, member);
  const against = heldAgainst(standing, systems, quantity);
  const out = against.filter(isOut(side)).map(({ system }) => system);
  const product = productOf(remedy);
  const doses =
    product === null || out.length === 0
      ? null
      : howMuch(standing, { kind: 'how-much', system: null, product }, out, member, nowMs);
  return {
    kind: 'out-of-range',
    quantity,
    side,
    remedy,
    against: isNamed ? against : against.filter(isOut(side)),
    doses,
    cautions: cautionsOf(remedy, standing, systems),
  };
}

function remedyFor(quantity: WantedQuantity, side: Side, member: Member): Remedy {
  switch (quantity) {
    case 'ph': {
      const product = side === 'high' ? 'ph-down' : 'ph-up';
      return { kind: 'reagent', product, mayDose: mayHandleAcids(member) };
    }
    case 'ec':
      return side === 'high' ? { kind: 'plain-water' } : { kind: 'nutrients' };
    case 'water-temperature':
      return { kind: 'care', advice: side === 'high' ? 'cool-the-water' : 'warm-the-water' };
  }
}

function productOf(remedy: Remedy): string | null {
  if (remedy.kind === 'reagent') return remedy.product;
  return remedy.kind === 'nutrients' ? 'nutrient-a' : null;
}

function cautionsOf(
  remedy: Remedy,
  { logbook }: Standing,
  systems: readonly SystemId[],
): Cautions | null {
  if (remedy.kind === 'reagent')
    return remedy.mayDose ? reagentCautions(logbook, systems, remedy.product) : null;
  return remedy.kind === 'nutrients' ? concentrateCautions(logbook, systems, 'nutrient-a') : null;
}

function heldAgainst(
  { greenhouse, logbook }: Standing,
  systems: readonly SystemId[],
  quantity: WantedQuantity,
): readonly Against[] {
  return greenhouse.systems.flatMap((system) => {
    const range = wantedRange(system, quantity);
    if (!systems.includes(system.id) || !range) return [];
    const value = latestEntry(logbook, system.id, quantity)?.value ?? null;
    return [{ system: system.id, value, lowest: range[0], highest: range[1] }];
  });
}

function isOut(side: Side): (against: Against) => boolean {
  return ({ value, lowest, highest }) =>
    value !== null && (side === 'high' ? value > highest : value < lowest);
}

function roomIn(
  standing: Standing,
  systems: readonly SystemId[],
  nowMs: number,
): Extract<PlainAnswer, { kind: 'room' }>['systems'] {
  return howFull(standing, systems, nowMs).map(({ system: id, now }) => {
    const system = standing.greenhouse.systems.find((each) => each.id === id)!;
    const free = now === null ? 0 : Math.max(0, system.brimL - now.litres);
    const atMost = raiseAtMostL(system);
    const isBounded = atMost !== null && free > atMost;
    return {
      system: id,
      litres: now?.litres ?? null,
      roomL: isBounded ? atMost : free,
      isBounded,
    };
  });
}
