import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('what is told of a mix in a vessel', () => {
  understood({
    'mixed a can at ec 1.4, 8 l of it went into the dwc':
      'passed over: not-a-reading; passed over: not-a-reading; Bucket row top-up 8',
    'EC 1.4 in the can, gave 8 l of it to the dwc':
      'passed over: not-a-reading; Bucket row top-up 8',
    'topped up the bench with 2 cans, ec 2.1': 'North bench top-up 20; North bench ec 2.1',
    'emptied the bench, mixed 500 l new at ec 2.2':
      'North bench reservoir-change 500; North bench ec 2.2',
  });
  understood(
    {
      'Kanne auf EC 1,4 gebracht, 8 l in die Wanne gekippt, Wanne jetzt 1,7':
        'passed over: not-a-reading; Südwanne top-up 8; Südwanne ec 1.7',
      'in der Kanne EC 1,4, davon 8 l in die Wanne':
        'passed over: not-a-reading; ? in-it-or-added (level, top-up)',
    },
    'lindenhof',
    'jonas',
  );
});

describe('what was changed in part, or was no solution', () => {
  understood({
    'swapped a third of the water in the buckets': '? unclear (keep-as-note)',
    'took 20 l out of the bench and replaced it with fresh':
      'passed over: not-a-reading; ? unclear (keep-as-note)',
    'air pump swapped on the buckets': '? unclear (keep-as-note)',
  });
  understood(
    {
      'ein Drittel vom Wasser in der Wanne getauscht': '? unclear (keep-as-note)',
      'Wanne komplett ersetzt, 100 l': 'Südwanne reservoir-change 100',
    },
    'lindenhof',
    'jonas',
  );
});

describe('what is taken back in the middle of a message', () => {
  understood({
    'topped up the bench 30, scrap that, 40 l': 'North bench top-up 40',
    'bench ph 6.2 wait no i read it upside down lol 5.9': 'North bench ph 5.9',
    'put 5 l in the gutters and 5 in the jars, no sorry 3 in the jars':
      'Gutter run top-up 5; Jar shelf top-up 3',
    'bench ph 6.9 || undo that please, and log ph 6.0 for the bench': 'undo; North bench ph 6',
    'dwc ph 5.8 ec 1.7 || forget the ec, keep the ph': 'deny ec',
    'dwc ph 5.4? || yes but 5.6 now':
      'answered Bucket row ph 5.4 at 4 May 08:20; Bucket row ph 5.6',
  });
  understood(
    {
      '20 ml A in die Rinne, Moment, 25 waren es': 'Rinnenstrecke dose 25 nutrient-a',
      'Tisch pH 6,2 - nein, das war die Wanne - Tisch hat 6,0':
        'Südwanne ph 6.2; ? which-quantity (ph, ec, water-temperature)',
    },
    'lindenhof',
    'jonas',
  );
});

describe('amounts and values in the order of their systems', () => {
  understood({
    'bench and buckets topped up, 30 and 12': 'North bench top-up 30; Bucket row top-up 12',
    'bench, buckets and jars: 30, 12 and 2 litres added':
      'North bench top-up 30; Bucket row top-up 12; Jar shelf top-up 2',
    'bench, buckets, gutters ph: 6.1, 5.8, 6.0':
      'North bench ph 6.1; Bucket row ph 5.8; Gutter run ph 6',
    'bench got 1 can, buckets got 2': 'North bench top-up 10; Bucket row top-up 20',
    'gave the bench 2 cans, the second one only half full': 'North bench top-up 15',
    'harvest bench 1 kg 450': 'North bench harvest 1450',
    'ten to twelve litres in the gutters topped up': 'Gutter run top-up ~11',
    'bench ec two four ph six one': 'North bench ec 2.4; North bench ph 6.1',
  });
  understood(
    {
      'pH: Tisch 6,1, Wanne 5,8; EC: 2,4, 1,9':
        'Nordtisch ph 6.1; Südwanne ph 5.8; Nordtisch ec 2.4; Südwanne ec 1.9',
      '2 Kilo 300 Tomaten vom Tisch': 'Nordtisch harvest 2300',
    },
    'lindenhof',
    'jonas',
  );
});

describe('what was before, and what others think', () => {
  understood({
    'dwc ph from 6.6 down to 5.9 with 8 ml of ph down':
      'Bucket row ph 6.6; Bucket row dose 8 ph-down; Bucket row ph 5.9',
    'gutters ec 1.4, up from 1.2 yesterday': 'Gutter run ec ~1.2 at 3 May 12:00; Gutter run ec 1.4',
    'buckets ec 1.8 instead of 1.6 like yesterday':
      'Bucket row ec 1.8; Bucket row ec ~1.6 at 3 May 12:00',
    "bench pump is humming but there's no water coming": 'North bench outage 1 pump',
    '5 l went in the jars, then it was full': 'Jar shelf top-up 5; Jar shelf level 24',
    'breaker tripped in the night, back now':
      'greenhouse outage ~1 power at 3 May 21:00; greenhouse restored 1 power',
    'half a can left, the rest went in the dwc':
      '? in-it-or-added (level, top-up); ? missing-amount',
  });
  understood(
    {
      'Wanne war bei 80 l, jetzt 104': 'Südwanne level 80; Südwanne level 104',
      'Karin meint, die Wanne hätte 5,4, ich messe 5,8 pH': 'passed over: hearsay; Südwanne ph 5.8',
      'Sicherung heut Nacht rausgeflogen, läuft wieder': '? how-long-out (still-out)',
      'wollte der Wanne 10 l geben, Regentonne ist aber leer': 'passed over: intention',
    },
    'lindenhof',
    'jonas',
  );
});
