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
        ? `Frische Puffer pH 7 und pH 4 für ${probe}: Wie viel noch da ist, zähle ich nicht.`
        : `Frischer EC-Standard für ${probe}: Wie viel noch da ist, zähle ich nicht.`,
    ),
  ];
  if (lines.length === 0) return [];
  return [`Das muss bis ${s.fullDay(until)} im Haus sein:`, ...lines.map((line) => `– ${line}`)];
}

function stockText({ product, leftMl, lacksMl, emptyOn }: StockShort, s: Speaker): string {
  const name = productName(product);
  if (lacksMl === 0) return `${name} kaufen: ist aufgebraucht.`;
  const lacks = `mindestens ${stockAmount(lacksMl, s)} fehlen`;
  if (leftMl === 0) return `${name} kaufen: ist aufgebraucht, ${lacks}.`;
  const gone = emptyOn === null ? '' : `, ${onDay(emptyOn, s)} leer`;
  return `${name} kaufen: noch ${stockAmount(leftMl, s)}${gone}; ${lacks}.`;
}

function rainText({ leftL, neededL, emptyOn }: RainShort, s: Speaker): string {
  const needed = `Der Plan braucht etwa ${s.amount(roughVolume(neededL, s.units.volume))}`;
  if (leftL === null) {
    return `Regenwasser: ${needed}, und wie voll die Tonne ist, hat noch niemand gesagt.`;
  }
  if (leftL === 0) return `Regenwasser: ${needed}, und die Tonne ist leer nach dem Entnommenen.`;
  const left = s.amount(roughVolume(leftL, s.units.volume));
  const gone = emptyOn === null ? '' : ` Ohne Regen ist sie ${onDay(emptyOn, s)} leer.`;
  return `Regenwasser: ${needed}, und etwa ${left} sind noch da.${gone} Tonne füllen oder anderes Wasser bereithalten.`;
}
