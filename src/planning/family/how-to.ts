import type { DutyKind } from '../../greenhouse/duty.ts';
import { type Member, mayHandleAcids } from '../../greenhouse/member.ts';
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
  | { readonly kind: 'buffers'; readonly probe: string }
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

/** A duty unfolded for this greenhouse. */
export interface HowTo {
  readonly system: System;
  readonly duty: DutyKind;
  /** What is due of it, where it is in sight. */
  readonly line: DutyLine | null;
  readonly steps: readonly HowStep[];
  /** What the grower attached. */
  readonly tips: readonly string[];
  readonly donts: readonly Dont[];
  readonly cautions: Cautions | null;
}

export interface HowToQuestion {
  readonly board: BoardQuestion;
  readonly lines: readonly DutyLine[];
  readonly system: System;
  readonly duty: DutyKind;
  readonly tips: readonly string[];
  readonly member: Member;
}

export function howTo(question: HowToQuestion): HowTo {
  const { system, duty, lines, tips, member } = question;
  const line =
    lines.find((each) => each.duty.kind === duty && each.duty.system === system.id) ?? null;
  const isUntaught = duty === 'dose' && !mayHandleAcids(member);
  return {
    system,
    duty,
    line: isUntaught ? null : line,
    steps: isUntaught ? [{ kind: 'wait-for-figures' }] : stepsOf(question, line),
    tips,
    donts: dontsOf(system, duty, isUntaught),
    cautions: cautionsOf(question, line),
  };
}

function stepsOf(question: HowToQuestion, line: DutyLine | null): readonly HowStep[] {
  const { system, duty, board } = question;
  const litres = line?.duty.litres ?? null;
  switch (duty) {
    case 'top-up': {
      const fillToL = line?.reason.kind === 'water' ? line.reason.fillToL : system.brimL;
      return [
        { kind: 'fetch-water', litres },
        ...mixing(line),
        { kind: 'pour', toL: fillToL < system.brimL ? fillToL : null },
        { kind: 'read-level' },
        { kind: 'answer', duty, litres },
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
        { kind: 'answer', duty, litres: null },
      ];
    }
    case 'calibration': {
      const probe = line?.duty.probe ?? board.greenhouse.probes[0]?.name ?? '';
      return [
        { kind: 'buffers', probe },
        { kind: 'rinse-probe' },
        { kind: 'answer', duty, litres: null },
      ];
    }
    case 'aeration':
      return [
        {
          kind: 'set-air',
          minutesPerHour: line?.duty.minutesPerHour ?? system.aeration?.minutesPerHour ?? null,
        },
        { kind: 'answer', duty, litres: null },
      ];
    case 'dose':
      return line?.steps
        ? [
            { kind: 'work', work: line.steps },
            { kind: 'answer', duty, litres: null },
          ]
        : [{ kind: 'wait-for-figures' }];
    case 'reservoir-change':
    case 'clean':
    case 'chore':
      return [
        ...(line?.steps ? [{ kind: 'work', work: line.steps } as const] : []),
        { kind: 'answer', duty, litres: duty === 'reservoir-change' ? system.brimL : null },
      ];
  }
}

function mixing(line: DutyLine | null): readonly HowStep[] {
  return line?.steps ? [{ kind: 'mix', work: line.steps }] : [];
}

function dontsOf(system: System, duty: DutyKind, isUntaught: boolean): readonly Dont[] {
  if (isUntaught) return ['no-acids-untaught', 'no-guessing-products'];
  switch (duty) {
    case 'top-up':
      return [
        system.method === 'non-circulating' ? 'no-drowned-air-roots' : 'no-over-brim',
        'no-guessing-products',
        ...(system.method === 'non-circulating' ? [] : (['no-pumps-off'] as const)),
      ];
    case 'check':
      return ['no-one-probe-for-all', 'no-guessing-products'];
    default:
      return ['no-guessing-products'];
  }
}

/** In full for whoever asks how it is done. */
function cautionsOf({ board, duty }: HowToQuestion, line: DutyLine | null): Cautions | null {
  const { logbook, greenhouse } = board;
  const systems = greenhouse.systems.map(({ id }) => id);
  const about = ((): readonly Caution[] => {
    switch (duty) {
      case 'reservoir-change':
        return changeCautions(logbook, systems).about;
      case 'clean':
        return cleaningCautions(logbook, systems).about;
      case 'dose':
        return line?.cautions?.about ?? reagentCautions(logbook, systems, '').about;
      case 'aeration':
        return mainsCautions(logbook, systems).about;
      case 'top-up':
        return line?.steps ? concentrateCautions(logbook, systems, '').about : [];
      default:
        return [];
    }
  })();
  return about.length === 0 ? null : { about, inFull: true };
}
