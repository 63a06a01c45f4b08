import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('water put in, told in passing', () => {
  understood({
    'could only put 30 l in the bench': 'North bench top-up 30',
    'could only get 30 l into the bench': 'North bench top-up 30',
    'managed to add 30 l to the bench': 'North bench top-up 30',
    'was able to add 30 l to the bench': 'North bench top-up 30',
    'I could add 30 l to the bench': 'passed over: intention',
    'could only add 10 l tomorrow': 'passed over: intention',
    'the row was down to 80 l so i put 25 in': 'Bucket row level 80; Bucket row top-up 25',
    'put about 25 in the row': 'Bucket row top-up ~25',
    'level in the row 10 in': 'Bucket row level 91.44',
    'brimmed the dwc': 'Bucket row level 108; ? litres-to-brim',
    'brimmed the dwc with 12 l': 'Bucket row top-up 12; Bucket row level 108',
    'poured 6 l into the jars, 20 into the gutters': 'Jar shelf top-up 6; Gutter run top-up 20',
    'poured 2 cans into the bench, 1 into the jars': 'North bench top-up 20; Jar shelf top-up 10',
    'topped up 6 l in the jars and 20 in the gutters': 'Jar shelf top-up 6; Gutter run top-up 20',
    'topped up 6 l in the jars, 5.8 in the dwc':
      'Jar shelf top-up 6; ? which-quantity (ph, ec, water-temperature)',
    'poured 6 l into the jars, 20C in the gutters':
      'Jar shelf top-up 6; Gutter run water-temperature 20',
    'we used 3 cans for the bench': '? in-it-or-added (level, top-up)',
    'the bench used 12 l': 'passed over: not-a-reading',
    'used 12 l from the bench': 'passed over: not-a-reading',
    'used 20 ml of a in the jars': 'Jar shelf dose 20 nutrient-a',
  });
});

describe('nutrients counted off', () => {
  understood({
    'fed the bench 200 ml a and 200 b':
      'North bench dose 200 nutrient-a; North bench dose 200 nutrient-b',
    'fed the bench 200 a and 200 b': '? which-unit (200)',
    'bench 30 of a and 30 of b': '? which-unit (30)',
    'gave the bench 200 a': '? which-unit (200)',
    'added 30 l to the bench and a lid': 'North bench top-up 30',
    'put ph down in the row, about 15 ml': 'Bucket row dose ~15 ph-down',
    'added a and b to the bench, 200 ml each':
      'North bench dose 200 nutrient-a; North bench dose 200 nutrient-b',
  });
});

describe('a probe beside its number', () => {
  understood({
    'stick reads 1.29 in 1.41': 'greenhouse calibration 1.41 stick read 1.29',
    'stick reads 1.29 in the nft': 'Gutter run ec 1.29',
    'nft 5.6 (pen) 1.4 (stick)': 'Gutter run ph 5.6; Gutter run ec 1.4',
  });
});

describe('answers that do not fit', () => {
  understood({
    'ph 5.8, topped up 150 l || dwc':
      'answered Bucket row ph 5.8 at 4 May 08:20; ? out-of-range (0.15, 15)',
    'topped up 150 l || dwc': '? out-of-range (0.15, 15)',
    'topped up 150 l || dwc || 15': 'answered Bucket row top-up 15 at 4 May 08:20',
    'level 60 cm || jars': '? missing-amount',
    'level 60 cm || jars || 12 l': 'answered Jar shelf level 12 at 4 May 08:20',
    '10 l in the bench and the jars || 7 in the bench and 300 in the jars':
      '? in-it-or-added (level, top-up); ? out-of-range',
    '10 l in the bench and the jars || 7 in the bench and 300 in the jars || added':
      'answered North bench top-up 7 at 4 May 08:20',
  });
});

describe('answers that tell more', () => {
  understood({
    'topped up the dwc || 12 l, ph 5.9':
      'answered Bucket row top-up 12 at 4 May 08:20; Bucket row ph 5.9',
    'topped up the dwc || 200 l, ph 5.9': '? out-of-range (0.2, 20); Bucket row ph 5.9',
    'topped up the dwc || 12 l. is 5.4 too low?':
      'answered Bucket row top-up 12 at 4 May 08:20; asks is-it-right ph 5.4',
    'topped up the dwc || 12 l, topped up the jars 3 l':
      'answered Bucket row top-up 12 at 4 May 08:20; Jar shelf top-up 3',
    'topped up the dwc || 12 l, added to the jars': '? in-it-or-added',
    'topped up the dwc || 12 l, 3 of them in the jars': '? in-it-or-added',
    'dwc ph 54 || 5.4, ec 1.7': 'answered Bucket row ph 5.4 at 4 May 08:20; Bucket row ec 1.7',
    'ph 5.9 ec 1.7 || dwc, and 20 l added':
      'answered Bucket row ph 5.9 at 4 May 08:20 + Bucket row ec 1.7 at 4 May 08:20; Bucket row top-up 20',
    'ph 5.9 ec 1.7 || dwc, and 200 l added':
      'answered Bucket row ph 5.9 at 4 May 08:20 + Bucket row ec 1.7 at 4 May 08:20; ? out-of-range (0.2, 20)',
  });
});

describe('what was out, and is not said to be so still', () => {
  understood({
    'power was out yesterday': '? how-long-out (still-out)',
    'pump was off this morning in the nft': '? how-long-out (still-out)',
    'power was out this morning || half an hour':
      'answered greenhouse outage ~1 power at 4 May 07:00 + greenhouse restored ~1 power at 4 May 07:30',
    'power was out this morning || 2 hours':
      'answered greenhouse outage ~1 power at 4 May 06:21 + greenhouse restored ~1 power',
    'pump was off this morning in the nft || about an hour':
      'answered Gutter run outage ~1 pump at 4 May 07:00 + Gutter run restored ~1 pump at 4 May 08:00',
    'power was out yesterday || still out': 'answered greenhouse outage ~1 power at 3 May 12:00',
    'power was out yesterday || until 6':
      'answered greenhouse outage ~1 power at 3 May 12:00 + greenhouse restored ~1 power at 4 May 06:00',
    'power was out yesterday || 30 hours': '? how-long-out (still-out)',
    'power was out yesterday || dwc ph 5.9': 'Bucket row ph 5.9',
    'power went out at 6': 'greenhouse outage 1 power at 4 May 06:00',
    'power was out at 6, back at 7':
      'greenhouse outage 1 power at 4 May 06:00; greenhouse restored 1 power at 4 May 07:00',
    'power was out since 6': 'greenhouse outage 1 power at 4 May 06:00',
  });
});

describe('what somebody saw to be wrong', () => {
  understood({
    'bench leaking': '? trouble (keep-as-note)',
    'water in the jars is green': '? trouble (keep-as-note)',
    'the bench smells of rotten eggs': '? trouble (keep-as-note)',
    'algae in the gutters': '? trouble (keep-as-note)',
    'jars smell nice': '? unclear (keep-as-note)',
    'hardly any bubbles in bucket 2, ph 5.9': '? trouble (keep-as-note); Bucket row ph 5.9',
    'airstone in bucket 3 is barely bubbling': '? trouble (keep-as-note)',
    'no algae in the gutters': '? unclear (keep-as-note)',
    'gutter pump is making a weird noise': '? trouble (keep-as-note)',
    'bench leaking || yes': 'answered North bench note 1 "bench leaking" at 4 May 08:20',
    "there's a puddle under the gutters": '? trouble (keep-as-note)',
    'leaves yellow || keep it': 'answered greenhouse note 1 "leaves yellow" at 4 May 08:20',
    'leaves on the tomatoes are yellow || yes':
      'answered North bench note 1 "leaves on the tomatoes are yellow" at 4 May 08:20',
    'dwc ph 5.9, roots brown': 'Bucket row ph 5.9',
    'gutters not done, pump was screaming || yes':
      'answered Gutter run note 1 "pump was screaming" at 4 May 08:20',
    'smells of burning near the bench pump': '? trouble (keep-as-note)',
    'the row is leaking, level 80 l': '? trouble (keep-as-note); Bucket row level 80',
    'bench pump dead, plants wilting': 'North bench outage 1 pump',
    'no leaks': '? unclear (keep-as-note)',
    'fixed the leak': '? unclear (keep-as-note)',
    'if the bench leaks call me': 'passed over: condition',
    'are the leaves yellow?': 'asks unknown',
    'why are the leaves yellow': 'asks why',
    'picked 1 kg yellow tomatoes': 'North bench harvest 1000',
    'gutters dry': 'Gutter run level 0',
  });
});
