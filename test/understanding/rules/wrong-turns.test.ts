import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('what looks like one thing and is another', () => {
  understood({
    // Filled up to a mark is no amount.
    'filled nft to 110': '? which-unit (110)',
    'topped the bench up to 500': '? which-unit (500)',
    'filled the row up to 100 with 20 l': '? which-unit (100, 108); Bucket row top-up 20',
    // So much more of a container is so many of it.
    'added two more cans to the bench': 'North bench top-up 20',
    'put 2 extra jugs in the row': 'Bucket row top-up 4',
    // A share is not two readings.
    'jars 3/4': '? shorthand-does-not-fit',
    'level nft 3/4': 'Gutter run level 90',
    'level of the row is 2/3': 'Bucket row level 72',
    // What is over is not going on.
    'power was out for 2 hours last night':
      'greenhouse outage ~1 power at 3 May 21:00; greenhouse restored ~1 power at 3 May 23:00',
    'power out 2 hours last night':
      'greenhouse outage ~1 power at 3 May 21:00; greenhouse restored ~1 power at 3 May 23:00',
    'power was out for 2 hours':
      'greenhouse outage ~1 power at 4 May 06:20; greenhouse restored ~1 power',
    'had a power cut 3 till half 4':
      'greenhouse outage 1 power at 4 May 03:00; greenhouse restored 1 power at 4 May 04:30',
    'pump out in the gutters 6 till 7:15':
      'Gutter run outage 1 pump at 4 May 06:00; Gutter run restored 1 pump at 4 May 07:15',
    'power has been out for 2 hours': 'greenhouse outage 1 power at 4 May 06:20',
    'no power for 2 hours': 'greenhouse outage 1 power at 4 May 06:20',
    // No water in it, or none given.
    'no water left in the jars': 'Jar shelf level 0',
    'the bench ran dry': 'North bench level 0',
    'no water in the jars!': '? missing-amount',
    'no water for the jars today': 'passed over: negation',
    // The amount that was missing comes with the next verb.
    'filled the buckets, took a can and a half': 'Bucket row top-up 15',
    'topped up the nft, it took 12 l': 'Gutter run top-up 12',
  });
});

describe('one word for a list', () => {
  understood({
    'ec: bench 2.2 row 1.8 gutters 1.2': 'North bench ec 2.2; Bucket row ec 1.8; Gutter run ec 1.2',
    'temps bench 22 row 23': 'North bench water-temperature 22; Bucket row water-temperature 23',
    'ec bench 2.2 row 5.9': 'North bench ec 2.2; ? which-quantity (ph, ec, water-temperature)',
  });
});

describe('questions about safety, and about what was', () => {
  understood({
    'do i need gloves': 'asks safety',
    'is it safe to add ph down': 'asks safety',
    'can i mix a and b together': 'asks safety',
    'how much water for the jars': 'asks what-is-due Jar shelf',
    'when was the bench last topped up': 'asks who North bench top-up',
    'where is the ph down': 'asks unknown',
  });
});

describe('an amount, its time and its system among others', () => {
  understood({
    'gave the gutters 8 l this morning, another 5 now':
      'Gutter run top-up ~8 at 4 May 07:00; Gutter run top-up 5',
    'dwc was 80 l, added 2 cans, now 100 l':
      'Bucket row level 80; Bucket row top-up 20; Bucket row level 100',
    'around 7 the jars got 3 l': 'Jar shelf top-up ~3 at 4 May 07:00',
    'jars instead of the buckets, ph 5.9': 'Jar shelf ph 5.9',
  });
});
