import { localTimeOf } from '../../src/greenhouse/local-time.ts';

type Line = Readonly<Record<string, unknown>>;

/** A rehearsal as it is read: who said what and when, what the bot answered, what was logged. */
export function talkAsRead(
  talk: readonly Line[],
  replies: readonly (readonly Line[])[],
  timeZone: string,
): string {
  const lines = talk.flatMap((line, i) => {
    const said = replies[i] ?? [];
    const isBefore = ({ at }: Line): boolean =>
      at !== undefined && instantOf(at) < instantOf(line['at']);
    return [
      ...said.filter(isBefore).flatMap((reply) => ['', ...answered(reply, timeZone)]),
      ...saidBy(line, timeZone),
      ...said.filter((reply) => !isBefore(reply)).flatMap((reply) => answered(reply, timeZone)),
    ];
  });
  return `${lines.join('\n')}\n`;
}

function saidBy(line: Line, timeZone: string): readonly string[] {
  const at = clockOf(line, timeZone);
  const { from, text, press } = line;
  if (typeof text === 'string') return ['', `${at} ${String(from)}: ${text}`];
  return typeof press === 'string' ? ['', `${at} ${String(from)} presses ${press}`] : [];
}

function answered(reply: Line, timeZone: string): readonly string[] {
  const { error, to, kind, text, id, buttons, logged } = reply;
  if (error !== undefined) return [`    ! ${JSON.stringify(error)}`];
  if (typeof text !== 'string') return [];
  const head = `${clockOf(reply, timeZone)} → ${String(to)} (${String(kind)}, ${String(id)})`;
  const rows = (buttons ?? []) as readonly (readonly { readonly label: string }[])[];
  const entries = (logged ?? []) as readonly Line[];
  return [
    head,
    ...text.split('\n').map((row) => `    ${row}`),
    ...rows.map((row) => `    ${row.map(({ label }) => `[${label}]`).join(' ')}`),
    ...entries.map(
      ({ system, quantity, value, unit }) =>
        `    logged: ${[system, quantity, value, unit]
          .filter((part) => part !== null)
          .map((part) => String(part as string | number))
          .join(' ')}`,
    ),
  ];
}

function clockOf({ at }: Line, timeZone: string): string {
  return localTimeOf(instantOf(at), timeZone).toFormat('ccc d LLL HH:mm');
}

function instantOf(at: unknown): number {
  return typeof at === 'string' ? Date.parse(at) : Number.NaN;
}
