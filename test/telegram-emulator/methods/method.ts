import type { RequestParameters } from '../http/request-parameters.ts';
import type { Platform } from '../state/platform.ts';
import type { Refusal } from '../wire/refusal.ts';

/** A call as a method gets it; `gone` fires when the caller hangs up. */
export type MethodCall = {
  readonly platform: Platform;
  readonly parameters: RequestParameters;
  readonly gone: AbortSignal;
};

/** What a method answers with; wrapped so that a refusal cannot be taken for a result. */
export type MethodAnswer = { readonly result: unknown } | Refusal;

export type Method = (call: MethodCall) => MethodAnswer | Promise<MethodAnswer>;
