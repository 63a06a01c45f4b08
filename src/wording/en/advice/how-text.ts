import type { DutyLine } from '../../../planning/duty-line.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { cautionText } from './caution-text.ts';
import { stepsText } from './step-text.ts';

/** How it is done and with what care, to follow the reason; nothing for plain work. */
export function howText({ steps, cautions }: DutyLine, s: Speaker): string {
  const how = steps ? ` ${stepsText(steps, s)}` : '';
  return `${how}${cautions ? ` ${cautionText(cautions)}` : ''}`;
}

/** The same for several lines: care is told once. */
export function cautionsOnce(lines: readonly DutyLine[]): readonly DutyLine[] {
  const told = new Set<string>();
  return lines.map((line) => {
    if (!line.cautions) return line;
    const key = line.cautions.about.join();
    if (told.has(key)) {
      const { cautions: _told, ...rest } = line;
      return rest;
    }
    told.add(key);
    return line;
  });
}
