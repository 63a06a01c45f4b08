/** One thing wrong with a greenhouse file: where, what stands there, and what should. */
export interface Fault {
  /** `systems[2].lowL`; `file` for the whole; `line 3, column 5` where it is not even JSON. */
  readonly path: string;
  readonly found: string;
  readonly expected: string;
}

export type Path = readonly PropertyKey[];

const longestFound = 60;

/** `['systems', 2, 'lowL']` as `systems[2].lowL`. */
export function pathText(path: Path): string {
  let text = '';
  for (const step of path) {
    if (typeof step === 'number') text += `[${step}]`;
    else if (/^[\p{L}_$][\p{L}\d_$]*$/u.test(String(step)))
      text += `${text ? '.' : ''}${String(step)}`;
    else text += `[${JSON.stringify(String(step))}]`;
  }
  return text || 'file';
}

/** The value that a path leads to; undefined where it leads nowhere. */
export function valueAt(json: unknown, path: Path): unknown {
  let value = json;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step))
      return undefined;
    value = (value as Record<PropertyKey, unknown>)[step];
  }
  return value;
}

/** What was found, short enough for one line. */
export function foundText(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value) && value.some((item) => typeof item === 'object')) {
    return `a list of ${value.length}`;
  }
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return 'an object';
  const text =
    typeof value === 'number' ? String(value) : (JSON.stringify(value) as string | undefined);
  if (text === undefined) return typeof value;
  return text.length > longestFound ? `${text.slice(0, longestFound)}…` : text;
}
