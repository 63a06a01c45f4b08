import type { AwayPlan } from '../../../planning/family/away-plan.ts';
import type { RainShort, StockShort } from '../../../planning/family/away-supplies.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { roughVolume } from '../../spoken/volume.ts';
import { onDay } from '../day-text.ts';
import { stockAmount } from '../keeping/stock-text.ts';
import { productName } from '../names.ts';

/** What does not last until the end; empty: all of it does. */
export function suppliesText({ supplies, until }: AwayPlan, s: Speaker): readonly string[] {
  const { stock, rain, fresh } = supplies;
  const lines = [
    ...stock.map((each) => stockText(each, s)),
    ...(rain ? [rainText(rain, s)] : []),
    ...fresh.map(({ probe, isPh }) =>
      isPh
        ? `Fresh pH 7 and pH 4 buffer for the ${probe}: I do not count what is left.`
        : `Fresh EC standard for the ${probe}: I do not count what is left.`,
    ),
  ];
  if (lines.length === 0) return [];
  return [
    `To have in the house by then (until ${s.fullDay(until)}):`,
    ...lines.map((l) => `– ${l}`),
  ];
}

function stockText({ product, leftMl, lacksMl, emptyOn }: StockShort, s: Speaker): string {
  const name = productName(product);
  if (lacksMl === 0) return `Buy ${name}: it is used up.`;
  const lacks = `at least ${stockAmount(lacksMl, s)} is lacking`;
  if (leftMl === 0) return `Buy ${name}: it is used up, and ${lacks}.`;
  const gone = emptyOn === null ? '' : `, gone ${onDay(emptyOn, s)}`;
  return `Buy ${name}: ${stockAmount(leftMl, s)} left${gone}; ${lacks}.`;
}

function rainText({ leftL, neededL, emptyOn }: RainShort, s: Speaker): string {
  const needed = `the plan takes about ${s.amount(roughVolume(neededL, s.units.volume))}`;
  if (leftL === null) return `Rain water: ${needed}, and nobody has said how full the butt is.`;
  if (leftL === 0) return `Rain water: ${needed}, and the butt is empty by what was drawn.`;
  const left = s.amount(roughVolume(leftL, s.units.volume));
  const gone = emptyOn === null ? '' : ` Without rain it is empty ${onDay(emptyOn, s)}.`;
  return `Rain water: ${needed}, and about ${left} is left.${gone} Fill the butt, or have other water ready.`;
}
