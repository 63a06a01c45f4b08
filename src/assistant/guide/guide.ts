import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { LocalTime } from '../../greenhouse/local-time.ts';
import type { Town } from '../../greenhouse/places/towns.ts';
import type { GuideStep, GuideStepKind } from '../../greenhouse/set-up/guide-step.ts';
import type { Method, System } from '../../greenhouse/system.ts';
import { suggestedLowL, usualDepthCm } from './suggestions.ts';

/**
 * The guided set-up, as it is kept between messages. For a greenhouse: name → place → morning → meters,
 * then for each system method → system-name → brim → depth → low → plants → another, then summary.
 * For one more system: method to plants, then the change is shown as any other.
 */
export interface Guide {
  readonly of: 'greenhouse' | 'system';
  readonly now: GuideDraft;
  /** What it was before each answer, latest last, to go back to. */
  readonly past: readonly GuideDraft[];
  readonly askedAtMs: number;
}

/** What a button of the guided set-up answers. */
export type GuideOption =
  | { readonly kind: 'method'; readonly method: Method }
  | { readonly kind: 'back' | 'skip' | 'finish' | 'yes' };

/** All that was answered, and which step is open. */
export interface GuideDraft {
  readonly step: GuideStepKind;
  readonly name: string | null;
  readonly town: Town | null;
  readonly morning: LocalTime | null;
  readonly measures: readonly ('ph' | 'ec')[];
  readonly systems: readonly System[];
  readonly system: SystemDraft;
}

/** The system being set up; what is not answered yet is null. */
export interface SystemDraft {
  readonly method: Method | null;
  readonly name: string | null;
  readonly brimL: number | null;
  readonly depthCm: number | null;
  readonly lowL: number | null;
}

export const noSystemYet: SystemDraft = {
  method: null,
  name: null,
  brimL: null,
  depthCm: null,
  lowL: null,
};

export function newGuide(of: Guide['of'], nowMs: number): Guide {
  const step = of === 'greenhouse' ? 'name' : 'method';
  const now: GuideDraft = {
    step,
    name: null,
    town: null,
    morning: null,
    measures: [],
    systems: [],
    system: noSystemYet,
  };
  return { of, now, past: [], askedAtMs: nowMs };
}

/** The open step as it is asked. `preview`: the greenhouse as it would be, for the summary. */
export function askedStep(draft: GuideDraft, present: Greenhouse, preview: Greenhouse): GuideStep {
  const { step, system } = draft;
  const name = system.name ?? '';
  switch (step) {
    case 'name':
    case 'place':
    case 'meters':
      return { kind: step };
    case 'morning':
      return { kind: 'morning', suggested: present.morning };
    case 'method':
      return { kind: 'method', position: draft.systems.length + 1 };
    case 'system-name':
      return { kind: 'system-name', method: system.method! };
    case 'brim':
    case 'plants':
      return { kind: step, name };
    case 'depth':
      return { kind: 'depth', name, suggestedCm: usualDepthCm[system.method!] };
    case 'low':
      return { kind: 'low', name, suggestedL: suggestedLowL(system.method!, system.brimL!) };
    case 'another':
      return { kind: 'another', system: draft.systems.at(-1)! };
    case 'summary':
      return { kind: 'summary', greenhouse: preview, town: draft.town?.name ?? null };
  }
}
