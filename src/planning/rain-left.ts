import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import { type LocalDate, localDateOf, plusDays } from '../greenhouse/local-time.ts';
import { type Logbook, liveEntries } from '../logbook/logbook.ts';

/** What is left in the rain butt by what was drawn since it was last told, and how long that lasts. */
export interface RainLine {
  /** When full. */
  readonly litres: number;
  /** At least: rain may have fallen since. null: nobody has said yet how full it is. */
  readonly leftL: number | null;
  /** At the pace of the last weeks; null: none was drawn of late. */
  readonly lastsDays: number | null;
  readonly emptyOn: LocalDate | null;
}

const dayMs = 24 * 3_600_000;
/** The pace is that of the last two weeks: rain water is drawn by the season. */
const paceDays = 14;
const leastPaceDays = 4;
/** Told while there is time to fill it, or to think of other water. */
const urgentWithinDays = 4;

/** null: there is no butt of a known size. */
export function rainLine(greenhouse: Greenhouse, logbook: Logbook, nowMs: number): RainLine | null {
  const { rainButt, timeZone } = greenhouse;
  if (!rainButt) return null;
  const { litres, heldL, asOfMs } = rainButt;
  if (heldL === null) return { litres, leftL: null, lastsDays: null, emptyOn: null };
  const leftL = Math.max(0, heldL - drawnL(greenhouse, logbook, asOfMs));
  const firstMs = logbook.all[0]?.atMs ?? nowMs;
  const days = Math.min(paceDays, Math.max(leastPaceDays, (nowMs - firstMs) / dayMs));
  const perDayL = drawnL(greenhouse, logbook, nowMs - days * dayMs) / days;
  const lastsDays = perDayL > 0 ? Math.floor(leftL / perDayL) : null;
  const emptyOn = lastsDays === null ? null : plusDays(localDateOf(nowMs, timeZone), lastsDays);
  return { litres, leftL, lastsDays, emptyOn };
}

/** What a round says of it: only when it is nearly empty. */
export function rainOfDay(
  greenhouse: Greenhouse,
  logbook: Logbook,
  nowMs: number,
): RainLine | null {
  const line = rainLine(greenhouse, logbook, nowMs);
  if (line?.leftL === undefined || line.leftL === null) return null;
  const isLow = line.leftL === 0 || (line.lastsDays !== null && line.lastsDays <= urgentWithinDays);
  return isLow ? line : null;
}

/** Litres of rain water in all top-ups and changes of solution after an instant. */
function drawnL(
  { systems, formerSystems = [], rainButt }: Greenhouse,
  logbook: Logbook,
  afterMs: number,
): number {
  const usual = rainButt?.isUsual === true ? 'rain' : 'mains';
  return [...systems, ...formerSystems]
    .flatMap(({ id }) => [
      ...liveEntries(logbook, id, 'top-up'),
      ...liveEntries(logbook, id, 'reservoir-change'),
    ])
    .filter(({ atMs, water = usual }) => atMs > afterMs && water === 'rain')
    .reduce((sum, { value }) => sum + value, 0);
}
