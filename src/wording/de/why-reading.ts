import type { WantedQuantity } from '../../greenhouse/set-up/set-up-change.ts';
import type { Side } from '../../understanding/asking/plain-ask.ts';

const meter = 'Es kann auch am Messgerät liegen: spülen, kalibrieren, neu messen.';

/** What moves a quantity to that side, the likeliest first; common practice of growing in solution. */
const causes: Readonly<Record<WantedQuantity, Readonly<Record<Side, string>>>> = {
  ph: {
    high: 'Der pH steigt meist von selbst: Pflanzen, die Nitrat aufnehmen, machen das Wasser alkalischer, hartes Wasser auch, und nach einer Säuregabe steigt er wieder, weil Kohlendioxid entweicht.',
    low: 'Der pH sinkt durch frischen Dünger, der sauer ist, durch Dünger mit Ammonium, durch faulende Wurzeln, durch zu viel pH-Minus, und leicht in Regenwasser, das nichts dagegenhält.',
  },
  ec: {
    high: 'Der EC steigt, wenn die Pflanzen mehr Wasser als Dünger aufnehmen: die Lösung ist ihnen zu stark, oder der Stand ist gesunken. Mit klarem Wasser auffüllen.',
    low: 'Der EC sinkt, wenn die Pflanzen mehr Dünger als Wasser aufnehmen, oder wenn klares Wasser dazukam.',
  },
  'water-temperature': {
    high: 'Wasser wird warm durch Sonne, warme Luft und Pumpen, die nie ruhen, und umso schneller, je weniger es ist. Warmes Wasser hält wenig Sauerstoff.',
    low: 'Wasser kühlt nachts aus, auf kaltem Boden und durch kaltes Nachfüllen, und umso schneller, je weniger es ist.',
  },
};

export function causesOf(quantity: WantedQuantity, side: Side): readonly string[] {
  return [`${causes[quantity][side]} ${meter}`];
}
