import type { Greenhouse } from '../greenhouse.ts';
import type { LocalTime } from '../local-time.ts';
import type { Method, System } from '../system.ts';

/** What the guided set-up asks, one thing at a time, with what it suggests. */
export type GuideStep =
  | { readonly kind: 'name' }
  | { readonly kind: 'place' }
  | { readonly kind: 'morning'; readonly suggested: LocalTime }
  | { readonly kind: 'meters' }
  /** How the n-th system grows, counted from 1. */
  | { readonly kind: 'method'; readonly position: number }
  | { readonly kind: 'system-name'; readonly method: Method }
  | { readonly kind: 'brim'; readonly name: string }
  | { readonly kind: 'depth'; readonly name: string; readonly suggestedCm: number }
  | { readonly kind: 'low'; readonly name: string; readonly suggestedL: number }
  | { readonly kind: 'plants'; readonly name: string }
  | { readonly kind: 'another'; readonly system: System }
  | { readonly kind: 'summary'; readonly greenhouse: Greenhouse; readonly town: string | null };

export type GuideStepKind = GuideStep['kind'];

/** Why an answer could not be taken. */
export type GuideProblem =
  | { readonly kind: 'not-understood' }
  /** How it grows, told so that somebody who knows none of the words can see it. */
  | { readonly kind: 'which-method' }
  | { readonly kind: 'unknown-place' }
  | { readonly kind: 'name-taken' }
  | { readonly kind: 'low-above-brim' }
  | { readonly kind: 'needed' }
  | { readonly kind: 'out-of-bounds' }
  | { readonly kind: 'nothing-before' };
