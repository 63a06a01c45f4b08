import { daysBetween, type LocalDate, localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { BoardQuestion } from '../duty-board.ts';
import type { DutyLine } from '../duty-line.ts';
import { rainLine } from '../rain-left.ts';
import { stockLeftMl } from '../stock-left.ts';
import { paceMlPerDay } from '../stock-outlook.ts';
import { concentratesOf } from '../strength-dose.ts';
import { topUpMix } from '../top-up-mix.ts';
import type { AwayQuestion } from './away-question.ts';
import type { PlannedTrip } from './away-trips.ts';

/** What does not last until the end of an absence. */
export interface AwaySupplies {
  readonly stock: readonly StockShort[];
  /** null: it lasts, or no rain water is counted. */
  readonly rain: RainShort | null;
  /** Meters that are to be calibrated: their buffers and standards are not counted. */
  readonly fresh: readonly { readonly probe: string; readonly isPh: boolean }[];
}

/** A product that is used up before the end. */
export interface StockShort {
  readonly product: string;
  readonly leftMl: number;
  /** At least so much is lacking; 0: it is used up, and nothing of it is foreseen. */
  readonly lacksMl: number;
  /** When it is gone; null: it is gone already. */
  readonly emptyOn: LocalDate | null;
}

/** Rain water that the work planned takes, and does not find. */
export interface RainShort {
  /** Without rain; null: nobody has said how full the butt is. */
  readonly leftL: number | null;
  readonly neededL: number;
  /** null: gone already, or not known. */
  readonly emptyOn: LocalDate | null;
}

/** Work of the plan, on the day that it is done. */
interface PlannedWork {
  readonly date: LocalDate;
  readonly topUps: PlannedTrip['topUps'];
  readonly lines: readonly DutyLine[];
}

interface Use {
  readonly date: LocalDate;
  readonly amount: number;
}

/** What runs out until the end, by what was used of late and by the work that is planned. */
export function awaySupplies(
  question: AwayQuestion,
  before: Pick<PlannedTrip, 'topUps' | 'lines'>,
  trips: readonly PlannedTrip[],
): AwaySupplies {
  const { greenhouse, nowMs } = question.board;
  const today = localDateOf(nowMs, greenhouse.timeZone);
  const leaving = question.from < today ? today : question.from;
  const works = [{ date: leaving, ...before }, ...trips].map(withoutFillingsTwice);
  return {
    stock: stockShort(question, works, today),
    rain: rainShort(question, works),
    fresh: freshFor(works, question.board),
  };
}

/** Solution that is changed fills its system. */
function withoutFillingsTwice({ date, topUps, lines }: PlannedWork): PlannedWork {
  const changed = lines
    .filter(({ duty }) => duty.kind === 'reservoir-change')
    .map(({ duty }) => duty.system);
  return { date, lines, topUps: topUps.filter(({ system }) => !changed.includes(system)) };
}

function stockShort(
  { board, until }: AwayQuestion,
  works: readonly PlannedWork[],
  today: LocalDate,
): readonly StockShort[] {
  const { greenhouse, logbook, nowMs } = board;
  const mixed = mixesOf(works, board);
  const days = daysBetween(today, until) + 1;
  return greenhouse.stock.flatMap((item): readonly StockShort[] => {
    const { product } = item;
    const leftMl = stockLeftMl(item, greenhouse, logbook);
    const perDayMl = paceMlPerDay(product, greenhouse, logbook, nowMs);
    const planned = [
      ...works.flatMap(({ date, lines }) =>
        lines.map((line) => ({ date, amount: usedBy(line, product) })),
      ),
      ...mixed.filter((use) => use.product === product),
    ];
    const neededMl = Math.max(perDayMl * days, sumOf(planned));
    if (neededMl <= leftMl && leftMl > 0) return [];
    const byPace = perDayMl > 0 ? plusDays(today, Math.floor(leftMl / perDayMl)) : null;
    const gone = [byPace, goneOn(planned, leftMl)].flatMap((date) => date ?? []).toSorted()[0];
    const emptyOn = leftMl === 0 ? null : (gone ?? null);
    return [{ product, leftMl, lacksMl: Math.ceil(Math.max(0, neededMl - leftMl)), emptyOn }];
  });
}

function usedBy({ duty }: DutyLine, product: string): number {
  if (duty.concentrates) return sumOfMl(duty.concentrates.filter((one) => one.product === product));
  return duty.product === product ? (duty.mL ?? 0) : 0;
}

/** Concentrates for the top-ups, as strong as they would be today. */
function mixesOf(
  works: readonly PlannedWork[],
  board: BoardQuestion,
): readonly (Use & { readonly product: string })[] {
  const concentrates = concentratesOf(board);
  const systemOf = (id: SystemId) => board.greenhouse.systems.find((each) => each.id === id);
  return works.flatMap(({ date, topUps }) =>
    topUps.flatMap(({ system, litres }) => {
      const filled = systemOf(system);
      const mix = filled ? topUpMix(filled, litres, board, concentrates) : null;
      return (mix?.concentrates ?? []).map(({ product, mL }) => ({ date, product, amount: mL }));
    }),
  );
}

function rainShort({ board }: AwayQuestion, works: readonly PlannedWork[]): RainShort | null {
  const { greenhouse, logbook, nowMs } = board;
  const line = rainLine(greenhouse, logbook, nowMs);
  if (!line || greenhouse.rainButt?.isUsual !== true) return null;
  const { leftL } = line;
  const planned = works.flatMap(({ date, topUps, lines }): readonly Use[] => [
    ...topUps.map(({ litres }) => ({ date, amount: litres })),
    ...lines
      .filter(({ duty }) => duty.kind === 'reservoir-change')
      .map(({ duty }) => ({ date, amount: duty.litres ?? 0 })),
  ]);
  const neededL = Math.round(sumOf(planned));
  if (neededL <= (leftL ?? 0)) return null;
  const emptyOn = leftL === null || leftL === 0 ? null : goneOn(planned, leftL);
  return { leftL, neededL, emptyOn };
}

/** Buffers and standards keep badly, and nobody logs what is left of them. */
function freshFor(
  works: readonly PlannedWork[],
  { greenhouse }: BoardQuestion,
): AwaySupplies['fresh'] {
  return works.flatMap(({ lines }) =>
    lines.flatMap(({ duty }) => {
      const probe = greenhouse.probes.find(({ name }) => name === duty.probe);
      if (duty.kind !== 'calibration' || !probe) return [];
      return [{ probe: probe.name, isPh: probe.measures.includes('ph') }];
    }),
  );
}

/** The day on which more has been taken than there was; null: never. */
function goneOn(uses: readonly Use[], left: number): LocalDate | null {
  let taken = 0;
  for (const { date, amount } of uses.toSorted((a, b) => (a.date < b.date ? -1 : 1))) {
    taken += amount;
    if (taken > left) return date;
  }
  return null;
}

function sumOf(uses: readonly Use[]): number {
  return uses.reduce((sum, { amount }) => sum + amount, 0);
}

function sumOfMl(amounts: readonly { readonly mL: number }[]): number {
  return amounts.reduce((sum, { mL }) => sum + mL, 0);
}
