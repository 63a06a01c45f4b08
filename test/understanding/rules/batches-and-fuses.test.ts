import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

const aside = 'passed over: not-a-reading';

describe('what was mixed beforehand', () => {
  understood({
    '20 ml a and 20 ml b into 60 l, poured 40 l into the bench': `${aside}; ${aside}; ${aside}; North bench top-up 40`,
    'mixed 60 l at 1.6, put 30 l in the bench and 20 l in the buckets': `${aside}; ${aside}; North bench top-up 30; Bucket row top-up 20`,
    'mixed 40 l with 10 ml a and 10 ml b, added 12 l to the jars': `${aside}; ${aside}; ${aside}; Jar shelf top-up 12`,
    'put 20 ml A and 10 l in the bench': 'North bench top-up 10; North bench dose 20 nutrient-a',
    'emptied the bench, mixed 580 l fresh, added 20 ml a to the bench':
      'North bench reservoir-change 580; North bench dose 20 nutrient-a',
  });
  understood(
    {
      '60 l angesetzt mit 20 ml A und 20 ml B, 30 l in die Wanne gekippt': `${aside}; ${aside}; ${aside}; Südwanne top-up 30`,
    },
    'lindenhof',
    'jonas',
  );
});

describe('a fuse that is put back, and water that does not come', () => {
  const outFrom6 = (back: string) =>
    `greenhouse outage 1 power at 4 May 06:00; greenhouse restored 1 power at 4 May ${back}`;
  understood({
    'the fuse went at 6 and i put it back at half 7': outFrom6('07:30'),
    'fuse blew at 6, reset it at 7': outFrom6('07:00'),
    'the fuse went at 6, i put it back in at 7': outFrom6('07:00'),
    'no flow in the gutters': 'Gutter run outage 1 pump',
    'nothing coming out at the end of the gutters': 'Gutter run outage 1 pump',
    'gutters dry at one end': 'Gutter run outage 1 pump',
    'put the lid back on the jars': '? unclear (keep-as-note)',
  });
  understood(
    {
      'in der Rinne fließt nichts mehr': 'Rinnenstrecke outage 1 pump',
      'die Sicherung ist um 6 rausgeflogen, habe sie um 7 wieder reingemacht': outFrom6('07:00'),
    },
    'lindenhof',
    'jonas',
  );
});

describe('what was done behind what was not', () => {
  understood({
    'didnt measure anything just topped the buckets with 9 l': 'Bucket row top-up 9',
    'no readings today only topped up the bench with 20 l': 'North bench top-up 20',
    'no time today topped up the bench with 20 l': 'North bench top-up 20',
    'no, the bench got 20 l': 'correct top-up 20 North bench',
    "didn't just top up the bench with 9 l": 'asks unknown',
    'added the rest of the ph down to the buckets': '? missing-amount',
    'added the rest to the bench': '? missing-amount',
  });
  understood(
    { 'nichts gemessen nur in die Wanne 9 l gekippt': 'Südwanne top-up 9' },
    'lindenhof',
    'jonas',
  );
});

describe('a number that is no amount, and an amount that is no level', () => {
  understood({
    'put the lid on the dwc at 7': '? unclear (keep-as-note)',
    'put 10 l in the dwc at 7': 'Bucket row top-up 10 at 4 May 07:00',
    'dwc oxygen fell from 8 to 7 mg/l':
      'Bucket row dissolved-oxygen 8; Bucket row dissolved-oxygen 7',
    'we have only got 100 l in the bench': '? in-it-or-added (level, top-up)',
    'jars EC: 0.6, 5.1 ph, temperature is 12 degrees C':
      'Jar shelf ec 0.6; Jar shelf ph 5.1; Jar shelf water-temperature 12',
  });
});
