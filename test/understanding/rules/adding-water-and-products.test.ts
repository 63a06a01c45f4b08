import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('top-ups', () => {
  understood({
    'topped up 12 l to the brim in the dwc': 'Bucket row top-up 12; Bucket row level 108',
    'dwc topped up 12 l to the brim': 'Bucket row top-up 12; Bucket row level 108',
    'topped up the dwc 15 l to 60 cm': 'Bucket row top-up 15; ? out-of-range (21.6, 0.22)',
    'topped up the bench 15 l to 60 cm': 'North bench top-up 15; North bench level 450',
    'topped up the bench to 60 cm': 'North bench level 450; ? litres-to-brim',
    'topped up the dwc to the brim': 'Bucket row level 108; ? litres-to-brim',
    'topped the dwc up to full': 'Bucket row level 108; ? litres-to-brim',
    'filled the jars to the brim': 'Jar shelf level 24; ? litres-to-brim',
    'filled up the jars': '? missing-amount',
    'filled up the jars with 3 l': 'Jar shelf top-up 3',
    'filled the jars with 3 l': 'Jar shelf top-up 3',
    'dwc filled up with 12 l': 'Bucket row top-up 12',
    'gave the bench 6 cans': 'North bench top-up 60',
    'bench got 6 cans': 'North bench top-up 60',
    'poured 12 l into the dwc': 'Bucket row top-up 12',
    '12 l poured into the dwc': 'Bucket row top-up 12',
    'put the lid on the jars': '? unclear (keep-as-note)',
    'put in 12 l': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'added 12 l': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'added water to the dwc': '? missing-amount',
    'added some water to the dwc': '? missing-amount',
    'added A and B': '? missing-amount',
    'added A and B to the bench': '? missing-amount',
    'calibrated the pen': '? missing-amount (done-without-figures)',
    'topped up the bench 30 l and 20 l, 60 l in total': '? conflict',
    'topped up the bench 3 cans then 2 cans, 6 in all': '? conflict',
    'topped up the bench 3 cans then 2 cans, 5 in all':
      'North bench top-up 30; North bench top-up 20',
    'topped up 40 l. bench 25, gutters 15': 'North bench top-up 25; Gutter run top-up 15',
    'of the 30 l, 20 went in the dwc and 10 in the bench':
      'Bucket row top-up 20; North bench top-up 10',
    'topped up 12 l in the dwc, 6 l in the bench and 6 l in the jars':
      'Bucket row top-up 12; North bench top-up 6; Jar shelf top-up 6',
    'added 20 ml A, 15 dwc and 5 bench':
      'Bucket row dose 15 nutrient-a; North bench dose 5 nutrient-a',
    'of the 20 ml A 15 went in the dwc and 5 in the bench':
      'Bucket row dose 15 nutrient-a; North bench dose 5 nutrient-a',
    'topped up the gutters 18 l || the 18 l went into the buckets, not the gutters':
      'passed over: negation',
    "topped up the gutters 18 l || yesterday's 18 l went into the buckets, not the gutters":
      'passed over: negation',
    'topped up the buckets 18 l, not the gutters': 'Bucket row top-up 18',
    'topped up 5 l, then another 4 in the dwc': 'Bucket row top-up 5; Bucket row top-up 4',
    'dwc topped up 5 l, then another 4': 'Bucket row top-up 5; Bucket row top-up 4',
    'dwc: 5 l, then another 4 l':
      '? in-it-or-added (level, top-up); ? in-it-or-added (level, top-up)',
    'topped up the bench, 12 l': 'North bench top-up 12',
    'topped up the bench. 12 l': 'North bench top-up 12',
    'dwc top up 12 l': 'Bucket row top-up 12',
    'top up dwc 12 l': 'Bucket row top-up 12',
    'top-up: dwc 12 l': 'Bucket row top-up 12',
    'dwc took 12 l': 'Bucket row top-up 12',
    'added 2 l of vinegar to the dwc': '? which-quantity (top-up)',
    'added 10 ml of calmag to the bench': '? which-quantity (top-up)',
    'added 500 ml to the jars': 'Jar shelf top-up 0.5',
    'topped up the dwc with 1,200 ml': 'Bucket row top-up 1.2',
    'topped up the dwc with 1,500 l': 'Bucket row top-up 1.5',
    'topped up jars 500 l': '? out-of-range (0.5)',
    'topped up the bench with 12 l of water': 'North bench top-up 12',
    'topped up 12 l water dwc': 'Bucket row top-up 12',
    'removed 5 l from the dwc': 'passed over: not-a-reading',
    'drained 5 l from the dwc': 'passed over: not-a-reading',
    'dwc lost 5 l': 'passed over: not-a-reading',
    'dwc used 12 l this week': 'passed over: not-a-reading',
    'refilled the jars with 3 l': 'Jar shelf top-up 3',
    'refilled the jars': '? missing-amount',
  });
});

describe('doses and readings of a pH that moves', () => {
  understood({
    'added 20 ml A and 20 ml B to the bench':
      'North bench dose 20 nutrient-a; North bench dose 20 nutrient-b',
    '30ml each of A and B in the bench':
      'North bench dose 30 nutrient-a; North bench dose 30 nutrient-b',
    '30 ml A and B in the bench': '? shared-amount (each, in-all)',
    '30 ml of A and B in the bench': '? shared-amount (each, in-all)',
    '20 ml a + 20 ml b bench': 'North bench dose 20 nutrient-a; North bench dose 20 nutrient-b',
    'bench A 20 ml, B 20 ml': 'North bench dose 20 nutrient-a; North bench dose 20 nutrient-b',
    'bench 20ml A 20ml B': 'North bench dose 20 nutrient-a; North bench dose 20 nutrient-b',
    'bench: A 20ml B 20ml': 'North bench dose 20 nutrient-a; North bench dose 20 nutrient-b',
    '15 ml ph down in the buckets': 'Bucket row dose 15 ph-down',
    'buckets 15 ml of ph down': 'Bucket row dose 15 ph-down',
    'ph down 5ml': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'ph down': '? missing-amount',
    'ph up 10 ml dwc': 'Bucket row dose 10 ph-up',
    'dwc ph up 10ml': 'Bucket row dose 10 ph-up',
    'dwc ph down to 5.4': 'Bucket row ph 5.4',
    'dwc ph is down, 5.4': 'Bucket row ph 5.4',
    'dwc ph down, 5.4': 'Bucket row ph 5.4',
    'dwc ph down 5.4': '? which-quantity (ph, dose)',
    'dwc ph down at 5.4': 'Bucket row ph 5.4',
    'dwc ph up to 6.1': 'Bucket row ph 6.1',
    'dwc ph up 6.1': '? which-quantity (ph, dose)',
    'dwc ph is up to 6.1': 'Bucket row ph 6.1',
    'dwc ph is up at 6.1': 'Bucket row ph 6.1',
    'added 15 ph down to the dwc': '? which-unit (15)',
    'added 15 ml to the dwc': '? which-product (nutrient-a, nutrient-b, ph-down, ph-up, top-up)',
    '10 ml up in the dwc': 'Bucket row dose 10 ph-up',
    'gave the dwc 10 ml of down': 'Bucket row dose 10 ph-down',
    'added 5 ml nutrient a to the nft': 'Gutter run dose 5 nutrient-a',
    'added 40 ml nutrients to the nft': '? which-product (nutrient-a, nutrient-b, ph-down, ph-up)',
    'added nutrients to the nft': '? missing-amount',
    '20 ml A, same of B, in the nft':
      'Gutter run dose 20 nutrient-a; Gutter run dose 20 nutrient-b',
    '20 ml A and the same B in the nft':
      'Gutter run dose 20 nutrient-a; Gutter run dose 20 nutrient-b',
    'added ph down to the dwc': '? missing-amount',
    'dosed the dwc with 8 ml ph down': 'Bucket row dose 8 ph-down',
    'added 2 capfuls of ph down to the dwc': '? which-unit',
    'added 20 ml a day to the dwc': 'passed over: hearsay',
    'added 600 ml ph down to the dwc': '? out-of-range (60, 6)',
    'ph down bottle is nearly empty': '? unclear (keep-as-note)',
    "we're out of ph down": '? unclear (keep-as-note)',
    'brought the dwc ph down from 6.8 to 6.1': 'Bucket row ph 6.8; Bucket row ph 6.1',
    'raised dwc ph from 5.4 to 5.8 with 10 ml up':
      'Bucket row ph 5.4; Bucket row dose 10 ph-up; Bucket row ph 5.8',
    'dwc ph was 5.4, now 6.1 after 10 ml up':
      'Bucket row ph 5.4; Bucket row dose 10 ph-up; Bucket row ph 6.1',
    'dwc ph 5.4, added 10 ml ph up, now 5.9':
      'Bucket row ph 5.4; Bucket row dose 10 ph-up; Bucket row ph 5.9',
    'dwc ph 5.4, added 10 ml ph up, ph 5.9':
      'Bucket row ph 5.4; Bucket row dose 10 ph-up; Bucket row ph 5.9',
    'dwc ph 5.4 -> 5.9': 'Bucket row ph 5.4; Bucket row ph 5.9',
    'dwc ph 5.4 before, 5.9 after': 'Bucket row ph 5.4; Bucket row ph 5.9',
    'dwc ph now 5.9, was 5.4': 'Bucket row ph 5.4; Bucket row ph 5.9',
    'added 10 ml ph up to the dwc, ph went from 5.4 to 5.9':
      'Bucket row ph 5.4; Bucket row dose 10 ph-up; Bucket row ph 5.9',
  });
});
