import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('a device that is off at a part of every day', () => {
  understood({
    'venturi off at night now': '? switched-or-failed (keep-as-note, still-out)',
    'air pump off at night now': '? switched-or-failed (keep-as-note, still-out)',
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
