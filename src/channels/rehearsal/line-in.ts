import * as z from 'zod';
import { foundText, pathText, valueAt } from '../../greenhouse/file/fault.ts';
import { isLocalDate, type LocalDate } from '../../greenhouse/local-time.ts';

/** One line of a rehearsal's input, read at the border. */
export type LineIn = { readonly atMs: number } & (
  | {
      readonly kind: 'message';
      readonly from: string;
      readonly text: string;
      readonly id: string | null;
      readonly chat: string | null;
      readonly replyTo: string | null;
      readonly sentAtMs: number | null;
      /** A photo, by any name, that the text is the caption of. */
      readonly photo: string | null;
    }
  | {
      readonly kind: 'edit';
      readonly from: string;
      readonly edits: string;
      readonly text: string;
      readonly chat: string | null;
    }
  | { readonly kind: 'press'; readonly from: string; readonly press: string }
  | { readonly kind: 'weather'; readonly days: readonly WeatherIn[] }
  | {
      readonly kind: 'sensor';
      readonly system: string | null;
      readonly quantity: string;
      readonly value: number;
      readonly unit: string;
    }
  | { readonly kind: 'outlook' }
  | { readonly kind: 'time' }
);

export interface WeatherIn {
  readonly date: LocalDate;
  readonly tMinC: number;
  readonly tMaxC: number;
  readonly rhMeanPercent?: number;
  readonly windMs?: number;
  readonly solarMjM2?: number;
}

const instantPattern = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d{1,9})?)?(Z|[+-]\d{2}:?\d{2})$/;

const instant = z
  .string('an ISO 8601 time with an offset or Z')
  .refine(
    (text) => instantPattern.test(text) && !Number.isNaN(Date.parse(text)),
    'an ISO 8601 time with an offset or Z',
  )
  .transform((text) => Date.parse(text));

const text = z.string('a text');
const celsius = z
  .number('a temperature in °C')
  .min(-90, 'a temperature from -90 °C')
  .max(60, 'a temperature up to 60 °C');

const weatherDay = z
  .object({
    date: z
      .string('a local date, such as 2027-05-04')
      .refine(isLocalDate, 'a local date, such as 2027-05-04'),
    tMinC: celsius,
    tMaxC: celsius,
    rhMean: z.number('a percentage').min(0, 'from 0 %').max(100, 'up to 100 %').optional(),
    windMs: z.number('metres a second').min(0, 'from 0 m/s').optional(),
    solarMjM2: z.number('MJ/m² a day').min(0, 'from 0 MJ/m²').optional(),
  })
  .refine(({ tMinC, tMaxC }) => tMinC <= tMaxC, 'tMinC at most tMaxC');

const at = { at: instant };
const shapes = {
  edit: z.object({ ...at, from: text, edits: text, text, chat: text.optional() }),
  message: z.object({
    ...at,
    from: text,
    text,
    id: text.optional(),
    chat: text.optional(),
    replyTo: text.optional(),
    sentAt: instant.optional(),
    photo: text.optional(),
  }),
  press: z.object({ ...at, from: text, press: text }),
  weather: z.object({ ...at, weather: z.array(weatherDay, 'a list of days') }),
  sensor: z.object({
    ...at,
    sensor: z.object({
      system: text.nullable(),
      quantity: text,
      value: z.number('a number'),
      unit: text,
    }),
  }),
  outlook: z.object({ ...at, outlook: z.literal(true, 'true') }),
  time: z.object(at),
};

export type ReadLine =
  | { readonly ok: true; readonly line: LineIn }
  | { readonly ok: false; readonly error: string };

/** Reads one line, or says which field is wrong, what was found and what is expected. */
export function readLine(raw: string): ReadLine {
  let json: unknown;
  try {
    json = JSON.parse(raw);
  } catch {
    return { ok: false, error: `the line: found ${foundText(raw)}, expected one JSON object` };
  }
  if (typeof json !== 'object' || json === null || Array.isArray(json)) {
    return { ok: false, error: `the line: found ${foundText(json)}, expected one JSON object` };
  }
  return readObject(json);
}

function readObject(json: object): ReadLine {
  if ('edits' in json) {
    return parsed(shapes.edit, json, ({ at: atMs, from, edits, text: words, chat }) => {
      return { kind: 'edit', atMs, from, edits, text: words, chat: chat ?? null };
    });
  }
  if ('text' in json) {
    return parsed(shapes.message, json, (line) => ({
      kind: 'message',
      atMs: line.at,
      from: line.from,
      text: line.text,
      id: line.id ?? null,
      chat: line.chat ?? null,
      replyTo: line.replyTo ?? null,
      sentAtMs: line.sentAt ?? null,
      photo: line.photo ?? null,
    }));
  }
  if ('press' in json) {
    return parsed(shapes.press, json, ({ at: atMs, from, press }) => {
      return { kind: 'press', atMs, from, press };
    });
  }
  if ('weather' in json) {
    return parsed(shapes.weather, json, ({ at: atMs, weather }) => {
      return { kind: 'weather', atMs, days: weather.map(weatherIn) };
    });
  }
  if ('sensor' in json) {
    return parsed(shapes.sensor, json, ({ at: atMs, sensor }) => {
      return { kind: 'sensor', atMs, ...sensor };
    });
  }
  if ('outlook' in json) {
    return parsed(shapes.outlook, json, ({ at: atMs }) => ({ kind: 'outlook', atMs }));
  }
  const others = Object.keys(json).filter((key) => key !== 'at');
  if (others.length > 0) {
    return {
      ok: false,
      error: `the line: found the fields ${others.join(', ')}, expected text, press, weather, sensor, outlook or at alone`,
    };
  }
  return parsed(shapes.time, json, ({ at: atMs }) => ({ kind: 'time', atMs }));
}

function parsed<T extends z.ZodType>(
  shape: T,
  json: object,
  toLine: (value: z.infer<T>) => LineIn,
): ReadLine {
  const result = shape.safeParse(json);
  if (result.success) return { ok: true, line: toLine(result.data) };
  const faults = result.error.issues.map(({ path, message }) => {
    const place = path.length > 0 ? pathText(path) : 'the line';
    return `${place}: found ${foundText(valueAt(json, path))}, expected ${message}`;
  });
  return { ok: false, error: faults.join('; ') };
}

function weatherIn({ rhMean, windMs, solarMjM2, ...day }: z.infer<typeof weatherDay>): WeatherIn {
  return {
    ...day,
    ...(rhMean === undefined ? {} : { rhMeanPercent: rhMean }),
    ...(windMs === undefined ? {} : { windMs }),
    ...(solarMjM2 === undefined ? {} : { solarMjM2 }),
  };
}
