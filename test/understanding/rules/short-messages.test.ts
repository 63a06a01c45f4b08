import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('a device that is off at a part of every day', () => {
  understood({
    'venturi off at night now': '? switched-or-failed (keep-as-note, still-out)',
    'air pump off at night now': '? switched-or-failed (keep-as-note, still-out)',
    'venturi off at nite now': '? switched-or-failed (keep-as-note, still-out)',
    'air pump off during the day, jars ph 5.9':
      '? switched-or-failed (keep-as-note, still-out); Jar shelf ph 5.9',
    'the venturi is off from 10pm to 6am now': '? switched-or-failed (keep-as-note, still-out)',
    'pump in the gutters not running at night': '? switched-or-failed (keep-as-note, still-out)',
    'air pump died at night': 'Bucket row outage ~1 air-pump at 3 May 21:00',
    'air pump off since last night': 'Bucket row outage ~1 air-pump at 3 May 21:00',
  });
  understood(
    {
      'Pumpe der Rinnen läuft jetzt nachts nicht mehr':
        '? switched-or-failed (keep-as-note, still-out)',
      'Luftpumpe in der Südwanne tagsüber aus': '? switched-or-failed (keep-as-note, still-out)',
      'Luftpumpe der Südwanne letzte Nacht ausgefallen':
        'Südwanne outage ~1 air-pump at 3 May 21:00',
    },
    'lindenhof',
    'jonas',
  );
});

describe('another unit, and nothing else', () => {
  understood({
    'added 5 l to the jars, sorry ml':
      '? which-product (nutrient-a, nutrient-b, ph-down, ph-up, top-up)',
    '700 ppm dwc, i mean µS': 'Bucket row ec 0.7',
    'topped up jars 5 l, bench 30 l, sorry ml': '? conflict (5, 0.01); ? conflict (30, 0.03)',
    'bench topped up 5 cans sorry jugs': 'North bench top-up 10',
    'topped up the jars 5 l not ml': 'Jar shelf top-up 5',
  });
  understood(
    {
      'Gläser 3 l nachgefüllt, sorry ml':
        '? which-product (nutrient-a, nutrient-b, ph-down, ph-up, top-up)',
      'Nordtisch 3 Kannen nachgefüllt, ich meinte Krüge': 'Nordtisch top-up 6',
    },
    'lindenhof',
    'jonas',
  );
});

describe('a container told of the system before', () => {
  understood({
    'fed the bench 2 cans, the jars 1': 'North bench top-up 20; Jar shelf top-up 10',
    'the bench got 3 cans, the row got 1': 'North bench top-up 30; Bucket row top-up 10',
    'bucket 1 5.8, bucket 2 5.9': '? shorthand-does-not-fit',
  });
});

describe('what helpers type in a hurry', () => {
  understood({
    // Digits that are a part of the word, and digits in words.
    'gave the jars 2 l b4 work': 'Jar shelf top-up 2',
    'five nine ph on the buckets': 'Bucket row ph 5.9',
    'which probe needs calibrating': 'asks when-next calibration',
    'how often should i calibrate': 'asks when-next calibration isOften',
    'dwc ec one eight': 'Bucket row ec 1.8',
    // Where it went, and not by how much it fell.
    'chucked 3 cans down the gutters': '? in-it-or-added (level, top-up)',
    // So deep that it is low, or so much below the brim.
    'row about an inch low': '? missing-amount',
    // Behind what was told of others, one alone was left out.
    'bench 5.9 ph row 6.1 ph gutters forgot': 'North bench ph 5.9; Bucket row ph 6.1',
    'put 5 l in the jars and the same in the gutters': 'Jar shelf top-up 5; Gutter run top-up 5',
    'filled a can for the gutters, not poured it in yet': 'passed over: negation',
    'power went 10 min ago back now':
      'greenhouse outage 1 power at 4 May 08:10; greenhouse restored 1 power',
    'pump humming but the gutters dry': 'Gutter run outage 1 pump',
    // An answer that tells a unit, or shares out what was counted.
    'dwc 1400 || ppm': 'answered Bucket row ec 2.8 at 4 May 08:20',
    'topped up 8 l || gutters, sorry': 'answered Gutter run top-up 8 at 4 May 08:20',
    'topped up the bench || 2 cans and a bit': 'answered North bench top-up ~20 at 4 May 08:20',
  });
  understood(
    {
      'gave left a pail right half a pail back wall 4':
        '? which-system (Left tub, Back wall); ? which-system (Left tub, Right tub, Back wall); ? which-quantity (ph, ec, water-temperature)',
      'left tub 2 pails left over in the shed': '? is-it-a-reading (yes, no)',
    },
    'hollow-oak',
    'finn',
  );
  understood(
    {
      'Strom ist letzte Nacht dreimal weg gewesen': '? how-long-out (still-out)',
      'wie oft soll ich kalibrieren': 'asks when-next calibration isOften',
      'pH fünf neun in der Südwanne': 'Südwanne ph 5.9',
      'Kanne für die Rinnen gefüllt, noch nicht eingegossen': 'passed over: negation',
    },
    'lindenhof',
    'jonas',
  );
});
