import { stockItemFor } from '../../greenhouse/common-products.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import { localDateOf } from '../../greenhouse/local-time.ts';
import type { Member } from '../../greenhouse/member.ts';
import type { System, SystemId } from '../../greenhouse/system.ts';
import { type DoseQuantity, doseAdvice } from '../../planning/dose-advice.ts';
import { DOSE_BOUNDS } from '../../planning/dose-bounds.ts';
import { doseLines } from '../../planning/dose-duties.ts';
import { dutiesForMember } from '../../planning/duties-for-member.ts';
import type { DutyLine } from '../../planning/duty-line.ts';
import type { Ask, DoseTarget } from '../../understanding/statement.ts';
import { boardQuestion } from '../board-question.ts';
import type { AdviceAnswer, RefusedDose } from '../replies/advice.ts';
import type { Standing } from '../standing.ts';
import { wantedRange } from '../wanted-range.ts';

type HowMuch = Extract<AdviceAnswer, { kind: 'how-much' }>;
type AskedMuch = Extract<Ask, { kind: 'how-much' }>;

/** How much of what the systems need now, or why no amount is told. */
export function howMuch(
  standing: Standing,
  ask: AskedMuch,
  systems: readonly SystemId[],
  member: Member,
  nowMs: number,
): HowMuch {
  const question = boardQuestion(standing, nowMs);
  const today = localDateOf(nowMs, standing.greenhouse.timeZone);
  const lines: DutyLine[] = [];
  const refused: RefusedDose[] = [];
  const inRange: HowMuch['inRange'][number][] = [];
  const { target } = ask;
  const meant = meantBy(ask, standing.greenhouse, systems);
  for (const system of meant) {
    for (const quantity of quantitiesOf(ask, standing.greenhouse)) {
      const advice = doseAdvice(question, system, quantity, target?.value ?? null);
      const place = { system: system.id, quantity };
      if (advice.kind === 'dose') lines.push(...doseLines(advice.dose, system, question, today));
      else if (advice.kind === 'in-range') inRange.push({ ...place, value: advice.entry.value });
      else {
        const value = advice.entry?.value ?? null;
        refused.push({ ...place, value, because: advice.because });
      }
    }
  }
  const { mine, leftToGrower } = dutiesForMember(lines, member, standing.greenhouse);
  const wanted = wantedOf(ask, standing.greenhouse, systems);
  const aimed = target ? { target: aimedAt(target, meant, mine) } : {};
  return { ...wanted, ...aimed, kind: 'how-much', lines: mine, leftToGrower, refused, inRange };
}

/** Where a target is asked for and no system named: those in whose range it lies, if it lies in any. */
function meantBy(
  { target }: AskedMuch,
  greenhouse: Greenhouse,
  systems: readonly SystemId[],
): readonly System[] {
  const meant = greenhouse.systems.filter(({ id }) => systems.includes(id));
  if (!target || meant.length < greenhouse.systems.length) return meant;
  const fitting = meant.filter((system) => isWithin(target, system));
  return fitting.length > 0 ? fitting : meant;
}

function isWithin({ quantity, value }: DoseTarget, system: System): boolean {
  const [lowest, highest] = wantedRange(system, quantity)!;
  return value >= lowest && value <= highest;
}

/** What was aimed at, and where only its bound was, since no further is safe. */
function aimedAt(
  target: DoseTarget,
  meant: readonly System[],
  lines: readonly DutyLine[],
): NonNullable<HowMuch['target']> {
  const dosed = meant.filter(({ id }) => lines.some(({ duty }) => duty.system === id));
  return {
    ...target,
    aimed: dosed.filter((system) => isWithin(target, system)).map(({ id }) => id),
    outside: meant.filter((system) => !isWithin(target, system)).map(({ id }) => id),
  };
}

/** What somebody would give, held against the most that may go in within a day. */
function wantedOf(
  { product, wantedMl }: AskedMuch,
  greenhouse: Greenhouse,
  systems: readonly SystemId[],
): Pick<HowMuch, 'wanted'> {
  if (wantedMl === undefined || product === null) return {};
  const litres = greenhouse.systems
    .filter(({ id }) => systems.includes(id))
    .reduce((sum, { brimL }) => sum + brimL, 0);
  const most = DOSE_BOUNDS.inADay * litres;
  return { wanted: { product, mL: wantedMl, beyondMl: wantedMl > most ? most : null } };
}

/** What a product moves: acid and alkali the pH, anything else the strength; both where none is named. */
function quantitiesOf(
  { product, target }: AskedMuch,
  { stock }: Greenhouse,
): readonly DoseQuantity[] {
  if (target) return [target.quantity];
  if (product === null) return ['ec', 'ph'];
  const reagents = (['ph-up', 'ph-down'] as const).flatMap((common) => [
    common,
    stockItemFor(common, stock)?.product,
  ]);
  return reagents.includes(product) ? ['ph'] : ['ec'];
}
