import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('two values, plans, hours and places that are of something else', () => {
  understood({
    'pen a 5.8 pen b 6.0 dwc': '? conflict (5.8, 6)',
    'dwc ph with the pen 5.8 with the other 6.0': '? conflict (5.8, 6)',
    'dwc ph 5.8 or 5.3': '? conflict (5.8, 5.3)',
    'next: 15 ml ph down in the buckets': 'passed over: intention',
    'next I put 10 l in the gutters': 'Gutter run top-up 10',
    'next up the jars, ph 6.1': 'Jar shelf ph 6.1',
    'put 20 l of fresh water in the bench': 'North bench top-up 20',
    'emptied the dwc, 100 l fresh water in': 'Bucket row reservoir-change 100',
    'under the bench there are 2 cans': '? in-it-or-added (level, top-up)',
    'there are 90 l in the dwc': 'Bucket row level 90',
  });
  understood(
    {
      'Stift A 5,8 Stift B 6,0 Wanne': '? conflict (5.8, 6)',
      'stift a 5,8 stift b 5,8 wanne': 'Südwanne ph 5.8',
      'wanne ph 5,8 oder 5,3, kann die zahl kaum lesen': '? conflict (5.8, 5.3)',
      'wanne ph 5,8 oder so': 'Südwanne ph ~5.8',
      'bin erst um 9 gekommen also wanne ph 5,8': 'Südwanne ph 5.8',
      'als nächstes: 15 ml pH minus in die Wanne': 'passed over: intention',
      'als nächstes hab ich 15 ml ph minus in die wanne getan': 'Südwanne dose 15 ph-down',
      'wanne dreimal gemessen, ph immer 5,8': 'Südwanne ph 5.8',
      'wanne ph immer 5,8': 'passed over: hearsay',
      'stimmt was nicht mit der wanne': 'asks how-is-it-going Südwanne',
      'tisch: 3 kannen rein, steht jetzt auf 400 l': 'Nordtisch top-up 30; Nordtisch level 400',
      'neben der wanne stehen 20 l': '? in-it-or-added (level, top-up)',
    },
    'lindenhof',
    'jonas',
  );
});
