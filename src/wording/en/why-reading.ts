import type { WantedQuantity } from '../../greenhouse/set-up/set-up-change.ts';
import type { Side } from '../../understanding/asking/plain-ask.ts';

const meter = 'It may be the meter as well: rinse it, calibrate it, measure again.';

/** What moves a quantity to that side, the likeliest first; common practice of growing in solution. */
const causes: Readonly<Record<WantedQuantity, Readonly<Record<Side, string>>>> = {
  ph: {
    high: 'pH mostly rises by itself: plants that feed on nitrate leave the water more alkaline, hard water does too, and after an acid dose it climbs again as carbon dioxide leaves.',
    low: 'pH falls through fresh nutrients, which are acid, feed with ammonium, rotting roots or too much pH down, and easily in rain water, which holds nothing against it.',
  },
  ec: {
    high: 'EC rises where the plants drink more water than they take up food: the solution is too strong for them, or the level has sunk. Top up with plain water.',
    low: 'EC falls where the plants eat faster than they drink, or where plain water was topped up or rained in.',
  },
  'water-temperature': {
    high: 'Water warms in the sun, in warm air and by pumps that never rest, faster the less of it there is. Warm water holds little oxygen.',
    low: 'Water cools at night, on a cold floor and by cold top-ups, faster the less of it there is.',
  },
};

export function causesOf(quantity: WantedQuantity, side: Side): readonly string[] {
  return [`${causes[quantity][side]} ${meter}`];
}
