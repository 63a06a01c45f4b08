import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('what stands ready, and what went in', () => {
  understood({
    'put 5 ml of ph down out for the dwc': '? is-it-a-reading (yes, no)',
    'put 2 cans out for the bench': '? is-it-a-reading (yes, no)',
    'put 20 ml A and 20 ml B out for the bench': '? is-it-a-reading (yes, no)',
    'gave the bench 2 cans, put 1 aside': 'North bench top-up 20; ? is-it-a-reading (yes, no)',
    'put 5 ml of A out for the dwc and poured it in': 'Bucket row dose 5 nutrient-a',
    'put 5 ml of down out of the bottle into the dwc': 'Bucket row dose 5 ph-down',
    'poured 2 cans out into the bench': 'North bench top-up 20',
    'took 3 cans out, put 3 in the bench': 'North bench top-up 30',
    'could only carry one can so bench got 10': 'North bench top-up 10',
    'carried 3 cans so bench got 2 and buckets got 1':
      'North bench top-up 20; Bucket row top-up 10',
    'the buckets drank 9 l so 9 l went back in': 'Bucket row top-up 9',
    'bench got 2 cans so 20 l': 'North bench top-up 20',
  });
});

describe('one more of what was just poured, and one that was not full', () => {
  understood({
    'put a can in the bench || another can just now': 'North bench top-up 10',
    'put a can in the bench || one more can': 'North bench top-up 10',
    'put one more can in the bench': 'North bench top-up 10',
    'put a can in the bench || one more can to go': '? in-it-or-added',
    'dwc a can just now': '? in-it-or-added (level, top-up)',
    'dwc 95 l now': 'Bucket row level 95',
    'put a can in the buckets || that can was only half full': 'correct top-up 5',
    'put 2 cans in the buckets || the second was only half full': 'correct top-up 15',
    'put 2 cans in the buckets || the last can was half empty': 'correct top-up 15',
    'put a can in the buckets || the jug was half full': '? which-quantity',
    'put a can in the buckets || it was only half full': '? is-it-a-reading',
    'put a can in the buckets || buckets were only half full': 'Bucket row level 54',
  });
});

describe('how it stood after an amount', () => {
  understood({
    'bench full again after 4 cans': 'North bench top-up 40; North bench level 600',
    'gutters 80 l after topping up 2 cans': 'Gutter run top-up 20; Gutter run level 80',
    'brought the gutters back up to the top with 22 l':
      'Gutter run top-up 22; Gutter run level 120',
    'bench full with 4 cans': 'North bench top-up 40; North bench level 600',
    'jars are full with 24 l': 'Jar shelf level 24',
    'bench full after 4 days': 'North bench level 600',
    'buckets were down to 80': '? which-unit (80, 86.4)',
    'gutters at 80 after topping up 2 cans': '? which-unit (80, 96); Gutter run top-up 20',
    'dwc at 21': '? which-quantity (water-temperature)',
    'bench down 6 cm since monday': '? missing-amount',
    'bench down 6 cm': 'North bench level 555',
  });
});

describe('fresh solution that was added', () => {
  understood({
    'topped up the jars with 3 l fresh water': 'Jar shelf top-up 3',
    'poured 3 l of fresh mix into the jars': 'Jar shelf top-up 3',
    'washed the jars out, put 20 l of new mix in': 'Jar shelf reservoir-change 20',
    'fresh solution in the jars': 'Jar shelf reservoir-change ~24',
  });
});

describe('amounts before their systems', () => {
  understood({
    'put 2 cans bench 1 buckets': 'North bench top-up 20; Bucket row top-up 10',
    'topped up 20 l bench 10 l buckets': 'North bench top-up 20; Bucket row top-up 10',
    'put 2 cans bench 5.8 buckets': 'North bench top-up 20; ? which-quantity',
    'put two 10 l buckets in the bench': 'North bench top-up 20',
  });
  understood(
    {
      'put 2 jugs in right, 3 in left': 'Right tub top-up 7.57; Left tub top-up 11.36',
      'tote 3 has 6 inches left': 'Tote 3 level 38.46',
    },
    'brook-end',
    'abe',
  );
});

describe('values of which one holds', () => {
  understood({
    'dwc ppm 90 or 900': '? conflict (0.18, 0.9)',
    'dwc ph 5.4 or 6.4': '? conflict (5.4, 6.4)',
    'put 2 or 3 cans in the bench': 'North bench top-up ~25',
    'dwc ph 5.8 or 5.9': 'Bucket row ph ~5.85',
  });
});

describe('a round, and what is in two bottles', () => {
  understood({
    'next up bench: ph 6.1': 'North bench ph 6.1',
    'next up, gutters 6.0 1.2': 'Gutter run ph 6; Gutter run ec 1.2',
    'next up: bench 12 l': 'passed over: intention',
    'next up bench to 6.1 ph': 'passed over: intention',
    'put 15 ml of each part in the bench':
      'North bench dose 15 nutrient-a; North bench dose 15 nutrient-b',
    '15 ml of each in the bench': '? which-product (nutrient-a, nutrient-b, ph-down, ph-up)',
    "added A and B to the bench, 15 each || they're both ml":
      'answered North bench dose 15 nutrient-a at 4 May 08:20 + North bench dose 15 nutrient-b at 4 May 08:20',
    'did everything except the calibration': '? which-duties',
  });
});
