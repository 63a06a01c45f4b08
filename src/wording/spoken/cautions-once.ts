import type { DutyLine } from '../../planning/duty-line.ts';

/** Lines told together: the same care is told with the first of them only. */
export function cautionsOnce(lines: readonly DutyLine[]): readonly DutyLine[] {
  const told = new Set<string>();
  return lines.map((line) => {
    const { cautions, ...rest } = line;
    if (!cautions) return line;
    const key = cautions.about.join();
    if (told.has(key)) return rest;
    told.add(key);
    return line;
  });
}
