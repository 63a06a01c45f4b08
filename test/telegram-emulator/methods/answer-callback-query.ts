import { badRequest } from '../wire/refusal.ts';
import type { Method } from './method.ts';

/** Documented: 0-200 characters. */
const LONGEST_ANSWER = 200;

export const answerCallbackQuery: Method = ({ platform, parameters }) => {
  const text = parameters.text('text');
  if ((text ?? '').length > LONGEST_ANSWER) return badRequest('MESSAGE_TOO_LONG');
  const answered = platform.callbacks.answer(parameters.text('callback_query_id') ?? '', {
    kind: 'answered',
    text: text === '' ? undefined : text,
    alert: parameters.flag('show_alert'),
  });
  return answered
    ? { result: true }
    : badRequest('query is too old and response timeout expired or query ID is invalid');
};
