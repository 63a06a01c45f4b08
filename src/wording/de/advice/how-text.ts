import type { DutyLine } from '../../../planning/duty-line.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { cautionText } from './caution-text.ts';
import { stepsText } from './step-text.ts';

/** How it is done and with what care, to follow the reason; nothing for plain work. */
export function howText({ steps, cautions }: DutyLine, s: Speaker): string {
  const how = steps ? ` ${stepsText(steps, s)}` : '';
  return `${how}${cautions ? ` ${cautionText(cautions)}` : ''}`;
}
