import { stockItemFor } from '../../greenhouse/common-products.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import { localDateOf } from '../../greenhouse/local-time.ts';
import type { Member } from '../../greenhouse/member.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { type DoseQuantity, doseAdvice } from '../../planning/dose-advice.ts';
import { DOSE_BOUNDS } from '../../planning/dose-bounds.ts';
import { doseLines } from '../../planning/dose-duties.ts';
import { dutiesForMember } from '../../planning/duties-for-member.ts';
import type { DutyLine } from '../../planning/duty-line.ts';
import type { Ask } from '../../understanding/statement.ts';
import { boardQuestion } from '../board-question.ts';
import type { AdviceAnswer, RefusedDose } from '../replies/advice.ts';
import type { Standing } from '../standing.ts';

type HowMuch = Extract<AdviceAnswer, { kind: 'how-much' }>;

/** How much of what the systems need now, or why no amount is told. */
export function howMuch(
  standing: Standing,
  ask: Extract<Ask, { kind: 'how-much' }>,
  systems: readonly SystemId[],
  member: Member,
  nowMs: number,
): HowMuch {
  const question = boardQuestion(standing, nowMs);
  const today = localDateOf(nowMs, standing.greenhouse.timeZone);
  const lines: DutyLine[] = [];
  const refused: RefusedDose[] = [];
  const inRange: HowMuch['inRange'][number][] = [];
  for (const system of standing.greenhouse.systems) {
    if (!systems.includes(system.id)) continue;
    for (const quantity of quantitiesOf(ask.product, standing.greenhouse)) {
      const advice = doseAdvice(question, system, quantity);
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
  return { ...wanted, kind: 'how-much', lines: mine, leftToGrower, refused, inRange };
}

/** What somebody would give, held against the most that may go in within a day. */
function wantedOf(
  { product, wantedMl }: Extract<Ask, { kind: 'how-much' }>,
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
function quantitiesOf(product: string | null, { stock }: Greenhouse): readonly DoseQuantity[] {
  if (product === null) return ['ec', 'ph'];
  const reagents = (['ph-up', 'ph-down'] as const).flatMap((common) => [
    common,
    stockItemFor(common, stock)?.product,
  ]);
  return reagents.includes(product) ? ['ph'] : ['ec'];
}
