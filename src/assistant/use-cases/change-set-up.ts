import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { Member } from '../../greenhouse/member.ts';
import { changedSetUp } from '../../greenhouse/set-up/changed-set-up.ts';
import type { SetUpChange } from '../../greenhouse/set-up/set-up-change.ts';
import { patchBetween, withoutPatch } from '../../greenhouse/set-up/set-up-patch.ts';
import { rainLine } from '../../planning/rain-left.ts';
import { stockLeftMl, usedMl } from '../../planning/stock-left.ts';
import {
  type AskedQuestion,
  type LoggedMessage,
  withoutQuestion,
  withoutReceipt,
  withReceipt,
} from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { may } from '../permissions.ts';
import type { Standing } from '../standing.ts';
import { askBack } from './ask-back.ts';

/** Shows a change of the set-up and asks whether to make it; nothing is changed yet. */
export function proposeChange(handling: Handling, change: SetUpChange): void {
  if (!mayChange(handling.heard.member, change)) {
    const isReport = change.kind === 'planted' || change.kind === 'cleared';
    handling.say({
      kind: 'refusal',
      because: { kind: 'growers-change-set-up', ...(isReport ? { isReport } : {}) },
    });
    return;
  }
  const changed = withChange(handling.standing, change);
  if (!changed.ok) {
    const { because } = changed;
    handling.say({ kind: 'refusal', because: { kind: 'unfit-change', change, because } });
    return;
  }
  const was = asItWas(handling.standing, change);
  askBack(handling, {
    reason: { kind: 'change-set-up', change, was },
    choices: [{ label: { kind: 'yes' }, drafts: [] }],
    waiting: null,
  });
}

/** Makes the change that a question showed, or leaves everything as it is. */
export function settleChange(
  handling: Handling,
  { questionId, doubt, messageId }: AskedQuestion,
  isWanted: boolean,
): void {
  handling.conversation = withoutQuestion(handling.conversation, questionId);
  if (doubt.reason.kind !== 'change-set-up') return;
  if (isWanted) return makeChange(handling, doubt.reason.change, messageId);
  handling.say({ kind: 'answer', answer: { kind: 'set-up-left' } });
}

/** Makes a change that was shown, to be undone by the message that asked for it. */
export function makeChange(handling: Handling, change: SetUpChange, messageId: string): void {
  const before = handling.standing.greenhouse;
  const changed = withChange(handling.standing, change);
  if (!changed.ok) {
    const { because } = changed;
    handling.say({ kind: 'refusal', because: { kind: 'unfit-change', change, because } });
    return;
  }
  handling.setUp(changed.greenhouse);
  handling.conversation = withReceipt(handling.conversation, {
    messageId,
    entries: [],
    setUp: { change, patch: patchBetween(before, changed.greenhouse) },
  });
  handling.say({ kind: 'answer', answer: { kind: 'set-up', change, state: 'made' } }, [
    [{ label: { kind: 'strike-out' }, action: { kind: 'undo-set-up', messageId } }],
  ]);
}

/** Takes back the change that a message made; false: there is none any more. */
export function undoSetUpOf(handling: Handling, messageId: string): boolean {
  const receipt = handling.conversation.receipts.find(
    (each) => each.messageId === messageId && each.setUp,
  );
  if (!receipt) return false;
  undoSetUp(handling, receipt);
  return true;
}

/** Takes back the change that a receipt tells of. */
export function undoSetUp(handling: Handling, receipt: LoggedMessage): void {
  const { change, patch } = receipt.setUp!;
  const present = handling.standing.greenhouse;
  const restored = withoutPatch(present, patch);
  handling.conversation = withoutReceipt(handling.conversation, receipt);
  if (!restored) {
    handling.say({ kind: 'answer', answer: { kind: 'set-up', change, state: 'changed-since' } });
    return;
  }
  handling.setUp(withNoneLost(restored, present));
  handling.say({ kind: 'answer', answer: { kind: 'set-up', change, state: 'undone' } });
}

/** A system that was added and is taken back may have entries by now: it is hidden, not lost. */
function withNoneLost(restored: Greenhouse, present: Greenhouse): Greenhouse {
  const kept = [...restored.systems, ...(restored.formerSystems ?? [])];
  const lost = [...present.systems, ...(present.formerSystems ?? [])].filter(
    ({ id }) => !kept.some((system) => system.id === id),
  );
  if (lost.length === 0) return restored;
  return { ...restored, formerSystems: [...(restored.formerSystems ?? []), ...lost] };
}

function mayChange(member: Member, change: SetUpChange): boolean {
  const isOwn = 'handle' in change && change.handle === member.handle;
  return may(member, `change-${change.kind}`, isOwn);
}

function withChange({ greenhouse, logbook }: Standing, change: SetUpChange) {
  return changedSetUp(greenhouse, change, (product) => usedMl(product, greenhouse, logbook));
}

/** The same kind of change with what holds now; null where there is nothing to compare with. */
function asItWas({ greenhouse, logbook }: Standing, change: SetUpChange): SetUpChange | null {
  const { systems, chores, members, containers, stock, morning, risk } = greenhouse;
  const system = 'system' in change ? systems.find(({ id }) => id === change.system) : undefined;
  switch (change.kind) {
    case 'chore-moved': {
      const chore = chores.find(({ name }) => name === change.name);
      return chore ? { ...change, everyDays: chore.everyDays } : null;
    }
    case 'system-renamed':
      return system ? { ...change, name: system.name } : null;
    case 'figure-set':
      return system ? { ...change, value: system[change.figure] } : null;
    case 'range-set': {
      if (!system) return null;
      const ranges = {
        ph: system.ph,
        ec: system.ecMsPerCm,
        'water-temperature': system.waterTemperatureC,
      };
      return { ...change, range: ranges[change.quantity] };
    }
    case 'planted':
    case 'cleared': {
      const { id, crop, plants, plantedOn } = system ?? {};
      if (!id || !crop || !plants) return null;
      return { kind: 'planted', system: id, crop, plants, on: plantedOn ?? change.on };
    }
    case 'language-set': {
      const member = members.find(({ handle }) => handle === change.handle);
      return member ? { ...change, language: member.language } : null;
    }
    case 'container-set': {
      const container = containers.find(({ name }) => name === change.name);
      return container ? { ...change, litres: container.litres } : null;
    }
    case 'morning-set':
      return { ...change, morning };
    case 'risk-set':
      return { ...change, risk };
    case 'stock-added':
    case 'stock-counted': {
      const item = stock.find(({ product }) => product === change.product);
      return item ? { ...change, mL: stockLeftMl(item, greenhouse, logbook) } : null;
    }
    case 'butt-set':
      return greenhouse.rainButt ? { ...change, litres: greenhouse.rainButt.litres } : null;
    case 'butt-counted': {
      const { leftL } = rainLine(greenhouse, logbook, change.atMs) ?? { leftL: null };
      return leftL === null ? null : { ...change, held: { litres: leftL } };
    }
    default:
      return null;
  }
}
