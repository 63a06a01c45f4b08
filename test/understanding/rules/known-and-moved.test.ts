import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

const anySystem = '? which-system (North bench, Bucket row, Gutter run, Jar shelf)';

describe('a planter that nobody knows, told with what kind it is', () => {
  understood({
    'dwc ph 5.9 || blue tub ph 5.8': anySystem,
    'dwc ph 5.9 || the small rack is at ph 6': anySystem,
    'the north bench ph 6.1': 'North bench ph 6.1',
    'the big bench ph 6.1': 'North bench ph 6.1',
  });
});

describe('a number told as what it is by now', () => {
  understood({
    'bench was 80 cm now 75': 'North bench level 600; North bench level 562.5',
    'was 80 cm in the bench, 75 now': 'North bench level 600; North bench level 562.5',
    'level in the bench was 80 cm and is 75 now': 'North bench level 600; North bench level 562.5',
    'bench was at 80% now 70': 'North bench level 480; North bench level 420',
    'bench 60 cm now 21 degrees': 'North bench level 450; North bench water-temperature 21',
    'bench 70 cm now ph 6': 'North bench level 525; North bench ph 6',
    'bench 70 cm, dwc 20 now': 'North bench level 525; ? which-quantity (water-temperature)',
    'bench 70 cm, added 20 now': 'North bench level 525; North bench top-up 20',
  });
});

describe('German: a number told as what it is by now', () => {
  understood(
    {
      'Tisch war 40 cm, jetzt 35': 'Nordtisch level 300; Nordtisch level 262.5',
      'Wanne war bei 80 %, jetzt 70': 'Südwanne level 86.4; Südwanne level 75.6',
    },
    'lindenhof',
    'karin',
  );
});

describe('one vessel of several that went elsewhere', () => {
  understood({
    'topped the bench up with two cans and a jug || oh the jug went in the jars':
      'correct top-up 20 from 22 North bench; Jar shelf top-up 2 at 4 May 08:20',
    'topped up the bench with a jug || oh the jug went in the jars': 'move Jar shelf',
    'put 2 jugs in the bench || one jug went in the jars': 'Jar shelf top-up 2',
  });
});

describe('both of two systems that were named', () => {
  const poured = 'Gutter run top-up 10; Jar shelf top-up 1';
  understood({
    'gutters got a can and the jars half a jug, both ph 6': `${poured}; Gutter run ph 6; Jar shelf ph 6`,
    'gutters got a can and the jars half a jug, ph of both 6': `${poured}; Gutter run ph 6; Jar shelf ph 6`,
    'gutters got a can and the jars half a jug, ph 6 in both': `${poured}; Gutter run ph 6; Jar shelf ph 6`,
    'topped up bench 10 l and dwc 5 l, both are full':
      'North bench top-up 10; Bucket row top-up 5; North bench level 600; Bucket row level 108',
    'topped up bench 10 l, dwc 5 l, jars 1 l. both at ph 6':
      'North bench top-up 10; Bucket row top-up 5; Jar shelf top-up 1; ? which-system (North bench, Bucket row, Jar shelf)',
    'bench ph 6, both pens agree': 'North bench ph 6',
    'bench ec 2.1 dwc ec 1.8, both a bit high': 'North bench ec 2.1; Bucket row ec 1.8',
  });
});

describe('German: both of two systems that were named', () => {
  understood(
    {
      'Tisch 10 l und Wanne 5 l nachgefüllt, beide pH 6':
        'Nordtisch top-up 10; Südwanne top-up 5; Nordtisch ph 6; Südwanne ph 6',
    },
    'lindenhof',
    'karin',
  );
});

describe('a row of amounts before their systems, the unit told first', () => {
  understood({
    'topped up 12 l bench, 3 buckets, 1 gutters':
      'North bench top-up 12; Bucket row top-up 3; Gutter run top-up 1',
    'topped up 12 l bench, 3 buckets look sad': 'North bench top-up 12',
    'topped up 12 l bench, 6 buckets are fine': 'North bench top-up 12',
    'topped up 12 l bench, 5.8 buckets':
      'North bench top-up 12; ? which-quantity (ph, ec, water-temperature)',
    'topped up 12 bench, 3 buckets': 'North bench top-up 12; ? which-unit',
    'topped up 12 l bench, ph 6 buckets': 'North bench top-up 12; Bucket row ph 6',
    '2 jars look sad': '? unclear (keep-as-note)',
  });
});
