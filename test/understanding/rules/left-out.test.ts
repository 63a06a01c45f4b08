import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('systems that are left out or only denied', () => {
  understood({
    'ph 6 everywhere but the nft, the jars and the bench': 'Bucket row ph 6',
    'ph 6 in all systems except the nft and the jars': 'North bench ph 6; Bucket row ph 6',
    'all of the systems but the jars got 3 l each':
      'North bench top-up 3; Bucket row top-up 3; Gutter run top-up 3',
    'topped up the bench 20 l but not the jars': 'North bench top-up 20',
    'topped up the bench 20 l, not the jars, they are full':
      'North bench top-up 20; Jar shelf level 24',
    'ph 5.8 not the gutters': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'dwc nft jars ph 6.0': '? which-system (Bucket row, Gutter run, Jar shelf)',
    'gave bench 3 cans, none for the dwc, 4 l for nft':
      'North bench top-up 30; Gutter run top-up 4',
  });
});

describe('vessels of a told size and counts along a row', () => {
  understood({
    'added an 8 l can to the bench': 'North bench top-up 8',
    'poured a 5 litre bucket in the bench': 'North bench top-up 5',
    'put the 10 l bucket back in the bench': '? unclear (keep-as-note)',
    'topped up bench 12 cans dwc 2 gutters 3':
      'North bench top-up 120; Bucket row top-up 20; Gutter run top-up 30',
    'bench 6 8 l can added': '? which-unit',
    'added 3x a can to the bench': 'North bench top-up 30',
  });
});

describe('what looks like a reading or an amount and is none', () => {
  understood({
    'dwc dropped 3 cm to 20 cm': 'Bucket row level 72',
    'dwc dropped 3 cm': '? missing-amount',
    'topped up dwc with 12 l of ec 1.5': 'Bucket row top-up 12; ? is-it-a-reading (yes, no)',
    'the 12 l i added yesterday to the dwc are gone': '? unclear (keep-as-note)',
    'topped up the bench with 3 cans and the jars with 2 l at 7':
      'North bench top-up 30 at 4 May 07:00; Jar shelf top-up 2 at 4 May 07:00',
    'changed the gutters, 110 l at ec 1.2': 'Gutter run reservoir-change 110; Gutter run ec 1.2',
    'jars ph 6.0 overnight': 'Jar shelf ph ~6 at 3 May 21:00',
  });
});
