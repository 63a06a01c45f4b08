import type { Duty, DutyKind } from '../../greenhouse/duty.ts';
import { type Member, mayHandleAcids } from '../../greenhouse/member.ts';
import type { PhotoRef } from '../../greenhouse/photo.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { System } from '../../greenhouse/system.ts';
import type { Caution, Cautions } from '../caution.ts';
import {
  changeCautions,
  cleaningCautions,
  concentrateCautions,
  mainsCautions,
  reagentCautions,
} from '../cautions-for.ts';
import type { BoardQuestion } from '../duty-board.ts';
import type { DutyLine } from '../duty-line.ts';
import type { WorkStep } from '../work-step.ts';

/** One step for somebody who has never done it. */
export type HowStep =
  | { readonly kind: 'fetch-water'; readonly litres: number | null }
  | { readonly kind: 'mix'; readonly work: readonly WorkStep[] }
  /** Slowly, up to a mark below the brim; litres null: to the brim. */
  | { readonly kind: 'pour'; readonly toL: number | null }
  | { readonly kind: 'read-level' }
  | {
      readonly kind: 'dip-probe';
      readonly quantities: readonly Quantity[];
      readonly probes: readonly string[];
    }
  | { readonly kind: 'rinse-probe' }
  | { readonly kind: 'buffers'; readonly probe: string; readonly isPh: boolean }
  | { readonly kind: 'work'; readonly work: readonly WorkStep[] }
  | { readonly kind: 'set-air'; readonly minutesPerHour: number | null }
  | { readonly kind: 'wait-for-figures' }
  /** What to answer afterwards. */
  | { readonly kind: 'answer'; readonly duty: DutyKind; readonly litres: number | null };

export type Dont =
  | 'no-guessing-products'
  | 'no-over-brim'
  | 'no-drowned-air-roots'
  | 'no-pumps-off'
  | 'no-acids-untaught'
  | 'no-one-probe-for-all';

/** Something that the grower attached, for whoever does it. */
export interface Tip {
  /** Empty where the photo says it all. */
  readonly text: string;
  readonly photo: PhotoRef | null;
}

/** A duty unfolded for this greenhouse. */
export interface HowTo {
  readonly duty: Duty;
  /** null: work of no one system. */
  readonly system: System | null;
  /** What is due of it, where it is in sight. */
  readonly line: DutyLine | null;
  readonly steps: readonly HowStep[];
  /** What the grower attached. */
  readonly tips: readonly Tip[];
  readonly donts: readonly Dont[];
  readonly cautions: Cautions | null;
}

export interface HowToQuestion {
  readonly board: BoardQuestion;
  readonly lines: readonly DutyLine[];
  readonly duty: Duty;
  readonly tips: readonly Tip[];
  readonly member: Member;
}

export function howTo(question: HowToQuestion): HowTo {
  const { board, duty, lines, tips, member } = question;
  const line = lines.find((each) => isSameWork(each.duty, duty)) ?? null;
  const system = board.greenhouse.systems.find(({ id }) => id === duty.system) ?? null;
  const isUntaught = duty.kind === 'dose' && !mayHandleAcids(member);
  return {
    system,
    duty,
    line: isUntaught ? null : line,
    steps: isUntaught ? [{ kind: 'wait-for-figures' }] : stepsOf(question, system, line),
    tips,
    donts: dontsOf(system, duty.kind, isUntaught),
    cautions: cautionsOf(question, system, line),
  };
}

function isSameWork(one: Duty, other: Duty): boolean {
  return (
    one.kind === other.kind &&
    one.system === other.system &&
    (other.probe === undefined || one.probe === other.probe) &&
    (other.chore === undefined || one.chore === other.chore)
  );
}

function stepsOf(
  { duty, board }: HowToQuestion,
  system: System | null,
  line: DutyLine | null,
): readonly HowStep[] {
  const { kind } = duty;
  const litres = line?.duty.litres ?? null;
  const answer = (told: number | null = null): HowStep => ({
    kind: 'answer',
    duty: kind,
    litres: told,
  });
  switch (kind) {
    case 'top-up': {
      const brimL = system?.brimL ?? 0;
      const fillToL = line?.reason.kind === 'water' ? line.reason.fillToL : brimL;
      return [
        { kind: 'fetch-water', litres },
        ...mixing(line),
        { kind: 'pour', toL: fillToL < brimL ? fillToL : null },
        { kind: 'read-level' },
        answer(litres),
      ];
    }
    case 'check': {
      const quantities: readonly Quantity[] = ['ph', 'ec'];
      const probes = board.greenhouse.probes
        .filter(({ measures }) => measures.some((each) => quantities.includes(each)))
        .map(({ name }) => name);
      return [
        { kind: 'dip-probe', quantities, probes },
        { kind: 'rinse-probe' },
        { kind: 'read-level' },
        answer(),
      ];
    }
    case 'calibration': {
      const name = line?.duty.probe ?? duty.probe ?? board.greenhouse.probes[0]?.name ?? '';
      const probe = board.greenhouse.probes.find((each) => each.name === name);
      return [
        { kind: 'buffers', probe: name, isPh: probe?.measures.includes('ph') ?? true },
        { kind: 'rinse-probe' },
        { kind: 'answer', duty: kind, litres: null },
      ];
    }
    case 'aeration':
      return [
        {
          kind: 'set-air',
          minutesPerHour: line?.duty.minutesPerHour ?? system?.aeration?.minutesPerHour ?? null,
        },
        answer(),
      ];
    case 'dose':
      return line?.steps
        ? [{ kind: 'work', work: line.steps }, answer()]
        : [{ kind: 'wait-for-figures' }];
    case 'reservoir-change':
    case 'clean':
    case 'chore':
      return [
        ...(line?.steps ? [{ kind: 'work', work: line.steps } as const] : []),
        answer(kind === 'reservoir-change' ? (system?.brimL ?? null) : null),
      ];
  }
}

function mixing(line: DutyLine | null): readonly HowStep[] {
  return line?.steps ? [{ kind: 'mix', work: line.steps }] : [];
}

function dontsOf(system: System | null, duty: DutyKind, isUntaught: boolean): readonly Dont[] {
  if (isUntaught) return ['no-acids-untaught', 'no-guessing-products'];
  switch (duty) {
    case 'top-up':
      return [
        system?.method === 'non-circulating' ? 'no-drowned-air-roots' : 'no-over-brim',
        'no-guessing-products',
        ...(system?.method === 'non-circulating' ? [] : (['no-pumps-off'] as const)),
      ];
    case 'check':
      return ['no-one-probe-for-all', 'no-guessing-products'];
    default:
      return ['no-guessing-products'];
  }
}

/** In full for whoever asks how it is done. */
function cautionsOf(
  { board, duty }: HowToQuestion,
  system: System | null,
  line: DutyLine | null,
): Cautions | null {
  const { logbook, greenhouse } = board;
  const systems = greenhouse.systems.map(({ id }) => id);
  const about = ((): readonly Caution[] => {
    switch (duty.kind) {
      case 'reservoir-change':
        return changeCautions(logbook, systems).about;
      case 'clean':
        return cleaningCautions(logbook, systems).about;
      case 'dose':
        return line?.cautions?.about ?? reagentCautions(logbook, systems, '').about;
      case 'aeration':
        return mainsCautions(logbook, systems).about;
      case 'top-up':
        return [
          ...nearMains(system),
          ...(line?.steps ? concentrateCautions(logbook, systems, '').about : []),
        ];
      case 'check':
        return nearMains(system);
      default:
        return [];
    }
  })();
  return about.length === 0 ? null : { about, inFull: true };
}

/** Hands go into water in which a pump or an air stone hangs on the mains. */
function nearMains(system: System | null): readonly Caution[] {
  return system?.floods || system?.aeration ? ['unplug-before-hands-in'] : [];
}
