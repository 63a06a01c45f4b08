import { sameName } from '../../greenhouse/file/cross-checks.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import { nextSystemId } from '../../greenhouse/set-up/changed-set-up.ts';
import type { GuideProblem } from '../../greenhouse/set-up/guide-step.ts';
import type { Method } from '../../greenhouse/system.ts';
import type { GuideAnswer } from '../../understanding/wishes/read-guide-answer.ts';
import { type Guide, type GuideDraft, noSystemYet } from './guide.ts';
import { guidedSystem } from './guided-greenhouse.ts';

export type Answered =
  | { readonly kind: 'next'; readonly draft: GuideDraft }
  | { readonly kind: 'problem'; readonly problem: GuideProblem };

/** How a kind of system is called where the member gives it no name. */
export type MethodNames = Readonly<Record<Method, string>>;

/** The answers with one more, and the step that follows; or why it cannot be taken. */
export function answerStep(
  { of, now }: Pick<Guide, 'of' | 'now'>,
  answer: GuideAnswer,
  present: Greenhouse,
  methodNames: MethodNames,
): Answered {
  const isSkipped = answer.kind === 'skip';
  switch (now.step) {
    case 'name':
      return next({ ...now, step: 'place', name: answer.kind === 'text' ? answer.text : null });
    case 'place':
      return next({ ...now, step: 'morning', town: answer.kind === 'place' ? answer.town : null });
    case 'morning':
      return next({
        ...now,
        step: 'meters',
        morning: answer.kind === 'time' ? answer.time : null,
      });
    case 'meters':
      return next({
        ...now,
        step: 'method',
        measures: answer.kind === 'meters' ? answer.measures : [],
      });
    case 'method':
    case 'another':
      // `skip` where another system is asked for: there is none.
      if (answer.kind === 'finish' || (answer.kind === 'skip' && now.step === 'another')) {
        return now.systems.length > 0 ? next({ ...now, step: 'summary' }) : problem('needed');
      }
      if (answer.kind !== 'method') return problem('which-method');
      return next({
        ...now,
        step: 'system-name',
        system: { ...noSystemYet, method: answer.method },
      });
    case 'system-name': {
      const taken = of === 'system' ? present.systems : now.systems;
      const name =
        answer.kind === 'text'
          ? answer.text
          : freeName(
              methodNames[now.system.method!],
              taken.map((system) => system.name),
            );
      const isTaken = taken.some((system) =>
        [system.name, ...system.aliases].some((known) => sameName(known) === sameName(name)),
      );
      if (isTaken) return problem('name-taken');
      return next({ ...now, step: 'brim', system: { ...now.system, name } });
    }
    case 'brim':
      if (answer.kind !== 'amount') return problem('needed');
      if (answer.value <= 0 || answer.value > mostLitres) return problem('out-of-bounds');
      return next({ ...now, step: 'depth', system: { ...now.system, brimL: answer.value } });
    case 'depth': {
      const depthCm = answer.kind === 'amount' ? answer.value : null;
      if (depthCm !== null && (depthCm <= 0 || depthCm > mostCm)) return problem('out-of-bounds');
      return next({ ...now, step: 'low', system: { ...now.system, depthCm } });
    }
    case 'low': {
      const lowL = answer.kind === 'amount' ? answer.value : null;
      if (lowL !== null && lowL >= now.system.brimL!) return problem('low-above-brim');
      return next({ ...now, step: 'plants', system: { ...now.system, lowL } });
    }
    case 'plants': {
      if (!isSkipped && answer.kind !== 'plants') return problem('not-understood');
      const { crop, plants } = answer.kind === 'plants' ? answer : { crop: null, plants: 0 };
      const id = nextSystemId({ ...present, systems: [...present.systems, ...now.systems] });
      const system = guidedSystem(now, id, crop, plants);
      return next({ ...now, step: 'another', systems: [...now.systems, system] });
    }
    case 'summary':
      return problem('not-understood');
  }
}

const mostLitres = 1_000_000;
const mostCm = 10_000;

function next(draft: GuideDraft): Answered {
  return { kind: 'next', draft };
}

function problem(kind: GuideProblem['kind']): Answered {
  return { kind: 'problem', problem: { kind } };
}

function freeName(name: string, taken: readonly string[]): string {
  const isFree = (wanted: string): boolean =>
    !taken.some((other) => sameName(other) === sameName(wanted));
  for (let n = 1; ; n++) {
    const wanted = n === 1 ? name : `${name} ${n}`;
    if (isFree(wanted)) return wanted;
  }
}
