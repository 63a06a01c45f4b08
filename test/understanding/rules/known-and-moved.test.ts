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
