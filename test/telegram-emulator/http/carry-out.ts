import { setTimeout as sleep } from 'node:timers/promises';
import type { Method, MethodCall } from '../methods/method.ts';
import { findMethod } from '../methods/method-table.ts';
import type { Fault } from '../state/fault.ts';
import type { Platform } from '../state/platform.ts';
import { Refusal } from '../wire/refusal.ts';
import type { RequestParameters } from './request-parameters.ts';

/** What goes back over the wire. */
export type WireAnswer =
  | { readonly kind: 'json'; readonly status: number; readonly body: unknown }
  | { readonly kind: 'raw'; readonly status: number; readonly body: string }
  | { readonly kind: 'cut' };

/** Carries a call out, or lets it go wrong as a test has ordered, and logs it. */
export const carryOut = async (
  platform: Platform,
  methodName: string,
  parameters: RequestParameters,
  gone: AbortSignal,
): Promise<WireAnswer> => {
  const found = findMethod(methodName);
  const name = found?.name ?? methodName;
  const payload = parameters.payload();
  const call = platform.calls.begin(name, payload, platform.clock.nowMs());
  const fault = platform.faults.strike(name, payload);
  const result = await attempt(platform, found?.method, { platform, parameters, gone }, fault);
  const endedMs = platform.clock.nowMs();
  if (result.kind === 'cut') {
    platform.calls.end(call, { kind: 'dropped', accepted: result.accepted }, endedMs);
    return { kind: 'cut' };
  }
  if (result.kind === 'garbled') {
    const { status, body } = result;
    platform.calls.end(call, { kind: 'refused', code: status, description: body }, endedMs);
    return { kind: 'raw', status, body };
  }
  const { answer } = result;
  if (gone.aborted) {
    platform.calls.end(call, { kind: 'dropped', accepted: !(answer instanceof Refusal) }, endedMs);
    return { kind: 'cut' };
  }
  if (answer instanceof Refusal) {
    const { code, description } = answer;
    platform.calls.end(call, { kind: 'refused', code, description }, endedMs);
    return refusalAnswer(answer);
  }
  platform.calls.end(call, { kind: 'ok', result: answer.result }, endedMs);
  return { kind: 'json', status: 200, body: { ok: true, result: answer.result } };
};

/** A refusal as the server writes it; the status line bears the same code. */
export const refusalAnswer = ({ code, description, parameters }: Refusal): WireAnswer => ({
  kind: 'json',
  status: code,
  body: {
    ok: false,
    error_code: code,
    description,
    ...(parameters === undefined ? {} : { parameters }),
  },
});

type Attempt =
  | { readonly kind: 'answered'; readonly answer: { readonly result: unknown } | Refusal }
  | { readonly kind: 'garbled'; readonly status: number; readonly body: string }
  | { readonly kind: 'cut'; readonly accepted: boolean };

const attempt = async (
  platform: Platform,
  method: Method | undefined,
  call: MethodCall,
  fault: Fault | undefined,
): Promise<Attempt> => {
  const delayMs = platform.pace.answerLatencyMs + (fault?.kind === 'slow' ? fault.delayMs : 0);
  if (delayMs > 0) await sleep(delayMs);
  if (fault?.kind === 'refuse') return { kind: 'answered', answer: fault.refusal };
  if (fault?.kind === 'garble') return { kind: 'garbled', status: fault.status, body: fault.body };
  if (fault?.kind === 'drop-before') return { kind: 'cut', accepted: false };
  if (fault?.kind === 'hang') {
    await untilGone(call.gone);
    return { kind: 'cut', accepted: false };
  }
  if (method === undefined) {
    return { kind: 'answered', answer: new Refusal(404, 'Not Found: method not found') };
  }
  const answer = await method(call);
  return fault?.kind === 'drop-after'
    ? { kind: 'cut', accepted: !(answer instanceof Refusal) }
    : { kind: 'answered', answer };
};

const untilGone = (gone: AbortSignal): Promise<void> =>
  gone.aborted
    ? Promise.resolve()
    : new Promise((resolve) => {
        gone.addEventListener('abort', () => {
          resolve();
        });
      });
