import recognizers from '@microsoft/recognizers-text-suite';
import * as chrono from 'chrono-node';
import type { MessageCase } from '../../understanding/message-case.ts';

/** A general reader of numbers, units or times, which knows nothing of a greenhouse. */
export interface Peer {
  readonly name: string;
  readonly read: (text: string) => unknown;
  /** Whether it finds what the case expects of its own subject; null where the case has none. */
  readonly finds: (messageCase: MessageCase) => boolean | null;
}

const culture = recognizers.Culture.English;
const tolerance = 0.005;

function numbersIn(text: string): readonly number[] {
  return recognizers
    .recognizeNumber(text, culture)
    .map(({ resolution }) => Number((resolution as { value?: string } | null)?.value));
}

function recognize(text: string): unknown {
  return [
    recognizers.recognizeNumber(text, culture),
    recognizers.recognizeDimension(text, culture),
    recognizers.recognizeTemperature(text, culture),
    recognizers.recognizeDateTime(text, culture),
  ];
}

/** Does it find every value that is logged as it was said? */
function findsNumbers({ line, expect }: MessageCase): boolean | null {
  const values = expect.logged.flatMap(({ value, quantity }) =>
    typeof value === 'number' && (quantity === 'ph' || quantity === 'dose') ? [value] : [],
  );
  if (values.length === 0 || line.text === undefined) return null;
  const found = numbersIn(line.text);
  return values.every((value) =>
    found.some((other) => Math.abs(other - value) <= tolerance * value),
  );
}

/** Does it find the time at which the entries held, where that is not the time of writing? */
function findsTime(messageCase: MessageCase): boolean | null {
  const line = messageCase.line as { readonly at: string; readonly text?: string };
  const wanted = messageCase.expect.logged.flatMap(({ at }) =>
    typeof at === 'string' ? [at] : [],
  );
  if (wanted.length === 0 || line.text === undefined) return null;
  const offset = /([+-])(\d{2}):(\d{2})$/.exec(line.at);
  const minutes = offset
    ? (offset[1] === '-' ? -1 : 1) * (Number(offset[2]) * 60 + Number(offset[3]))
    : 0;
  const reference = { instant: new Date(line.at), timezone: minutes };
  const found = chrono.parse(line.text, reference).map(({ start }) => start.date().getTime());
  return wanted.every((at) => found.includes(Date.parse(at)));
}

export const peers: readonly Peer[] = [
  {
    name: '@microsoft/recognizers-text-suite (numbers)',
    read: recognize,
    finds: findsNumbers,
  },
  { name: 'chrono-node (times)', read: (text) => chrono.parse(text), finds: findsTime },
];
