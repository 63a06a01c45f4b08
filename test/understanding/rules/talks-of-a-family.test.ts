import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('a container that nobody counts is one of it', () => {
  understood({
    'topped up the bench with 2 cans, jug to the jars': 'North bench top-up 20; Jar shelf top-up 2',
    'added 3 l to the bench, jug for the jars and can for the gutters':
      'North bench top-up 3; Jar shelf top-up 2; Gutter run top-up 10',
    'bench 2 cans, jars jug, topped up': 'North bench top-up 20; Jar shelf top-up 2',
    'jug and a half went in the jars': 'Jar shelf top-up 3',
    'topped up the jars with jug': 'Jar shelf top-up 2',
    'poured can into the bench': 'North bench top-up 10',
    'jug to the jars': '? in-it-or-added (level, top-up)',
    'the bench got two cans and jug went to the jars':
      'North bench top-up 20; ? in-it-or-added (level, top-up)',
    'topped up the bench with 2 cans, jug is broken': 'North bench top-up 20',
    'topped up the bench with 2 cans, jug in the jars is broken': 'North bench top-up 20',
    'topped up the bench with 2 cans, cans to the jars': 'North bench top-up 20',
    'can the jars wait': 'asks how-is-it-going Jar shelf',
  });
  understood(
    { 'pitcher and a half went in the mason row': 'Mason row top-up 2.84' },
    'pelican-court',
    'june',
  );
  understood(
    {
      'Tisch 2 Kannen aufgefüllt, Krug in die Gläser': 'Nordtisch top-up 20; Gläserregal top-up 2',
      'Kanne in den Tisch gekippt': 'Nordtisch top-up 10',
      'Krug ist kaputt': '? unclear (keep-as-note)',
    },
    'lindenhof',
    'jonas',
  );
});

describe('water used for a system', () => {
  understood({
    'used the tap for the bench 2 cans': '? in-it-or-added (level, top-up)',
    'used tap water for the bench, 2 cans': '? in-it-or-added (level, top-up)',
    'used 2 cans from the tap for the bench': '? in-it-or-added (level, top-up)',
    '2 cans of tap water for the bench': '? in-it-or-added (level, top-up)',
    'bench ph 6.0 used 2 cans of rain water': 'North bench ph 6; passed over: not-a-reading',
    'filled the bench from the tap, 2 cans': 'North bench top-up 20',
    'bench used 2 cans': 'passed over: not-a-reading',
    'used the tap for the bench': 'passed over: not-a-reading',
    '2 cans of tap water in the barrel': 'passed over: not-a-reading',
  });
});

describe('a planter that is none of ours', () => {
  understood({
    'tub 3 ph 6': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'bench ph 6.1 || tub 3 ph 6': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'bench ph 6.1 || rack ph 5.9':
      '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'bench ph 6.1 || the tray is at ph 5.9':
      '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'bench ph 6.1 || tank ph 5.9': 'North bench ph 5.9',
    'bucket 3 ph 5.9': 'Bucket row ph 5.9',
    'bench ph 6.1, wiped the rack': 'North bench ph 6.1',
    'bench ph 6.1 || the rack is wet': '? unclear (keep-as-note)',
  });
  understood(
    {
      'Wanne pH 5,9 || Kasten pH 6':
        '? which-system (Nordtisch, Südwanne, Rinnenstrecke, Gläserregal, Linke Tonne, Rechte Tonne)',
      'Wanne pH 5,9 || Trog 2 pH 6':
        '? which-system (Nordtisch, Südwanne, Rinnenstrecke, Gläserregal, Linke Tonne, Rechte Tonne)',
      'Wanne pH 5,9 || Turm EC 1,4':
        '? which-system (Nordtisch, Südwanne, Rinnenstrecke, Gläserregal, Linke Tonne, Rechte Tonne)',
    },
    'lindenhof',
    'jonas',
  );
});

describe('a number that is of what was told just before', () => {
  understood({
    'bench ph 6.1 || measured again, its 6.0': 'North bench ph 6',
    'bench ph 6.1 || later: 6.3': 'North bench ph 6.3',
    "bench ph 6.1 || it's 6.3 now": 'North bench ph 6.3',
    'bench ph 6.1, ec 2.3 || again 6.0': 'North bench ph 6',
    '10 ml ph down in the bench || now 6.3': '? which-quantity (ph, ec, water-temperature)',
    'bench ph 6.1 || 6.3': '? which-quantity (ph, ec, water-temperature)',
    'bench ph 6.1 || measured again, 60': '? which-quantity',
    'bench ph 6.1 || again 2.3': '? which-quantity (ec, water-temperature)',
    'bench ph 6.1 || will check again later, 6.3 is too high': 'passed over: intention',
    'bench ph 6.1 || is 6.3 better now?': 'asks is-it-right ph 6.3',
  });
  understood(
    {
      'Wanne pH 5,9 || nochmal gemessen, 6,0': 'Südwanne ph 6',
      'Wanne pH 5,9 || ist jetzt 6,0': 'Südwanne ph 6',
      'Wanne pH 5,9 || später 6,0': 'Südwanne ph 6',
      'Wanne pH 5,9 || morgen wieder 6,0': 'passed over: intention',
    },
    'lindenhof',
    'jonas',
  );
});

describe('how it stood before a dose', () => {
  understood({
    '5 ml ph down in the bench, was 6.5': 'North bench ph 6.5; North bench dose 5 ph-down',
    '5 ml ph down in the bench, was 6.5, now 6.1':
      'North bench ph 6.5; North bench dose 5 ph-down; North bench ph 6.1',
    '20 ml A and 20 ml B in the bench, was 1.8':
      'North bench dose 20 nutrient-a; North bench dose 20 nutrient-b; ? which-quantity (ec, water-temperature)',
    '5 ml ph down in the bench, was 65': 'North bench dose 5 ph-down; ? which-quantity',
  });
  understood(
    { '5 ml pH runter in den Tisch, war 6,5': 'Nordtisch ph 6.5; Nordtisch dose 5 ph-down' },
    'lindenhof',
    'jonas',
  );
});

describe('levels in words and beside them', () => {
  understood({
    'bench half full, gutters 3/4, jars full':
      'North bench level 300; Gutter run level 90; Jar shelf level 24',
    'gutters 3/4': '? shorthand-does-not-fit',
    'gutters 3/4, jars ph 6.0': '? shorthand-does-not-fit; Jar shelf ph 6',
    'gutters look fine, water is up to the top': 'Gutter run level 120',
    'gutters are up to the top': 'Gutter run level 120',
    'water barrel is full': 'passed over: not-a-reading',
    'the barrel is fine, water is up to the top': 'passed over: not-a-reading',
    'bench looks ok, water at 70': '? which-unit (70, 420, 525)',
    'bench looks ok, water at 22': '? which-quantity (water-temperature)',
    'the water in the bench is at 70': '? which-unit (70, 420, 525)',
    'bench looks ok, water at 70 || cm': 'answered North bench level 525 at 4 May 08:20',
    'topped up the gutters with two jugs full stop': 'Gutter run top-up 4',
  });
  understood(
    {
      'Rinnen sehen gut aus, Wasser steht bei 70': '? which-unit (70, 84)',
      'Tisch halb voll, Rinnen 3/4, Gläser voll':
        'Nordtisch level 300; Rinnenstrecke level 90; Gläserregal level 24',
    },
    'lindenhof',
    'jonas',
  );
});

describe('what a machine wrote down', () => {
  understood({
    'bench Ph. 6.2 ec 2.4': 'North bench ph 6.2; North bench ec 2.4',
    'bench Ph. 6.2 Ec. 2.4 Temp. 20':
      'North bench ph 6.2; North bench ec 2.4; North bench water-temperature 20',
    'bench Ph. 6.2 easy 2.4': 'North bench ph 6.2; ? which-quantity (ec, water-temperature)',
    'looked at the ph. 3 cans in the bench': '? in-it-or-added (level, top-up)',
    'pretend the gutters are empty': 'passed over: condition',
  });
});

describe('several questions answered in one message', () => {
  understood({
    'bench ph 61 level 60 and topped up the jars || 6.1, cm, one jug':
      'answered North bench ph 6.1 at 4 May 08:20; answered North bench level 450 at 4 May 08:20; answered Jar shelf top-up 2 at 4 May 08:20',
    '12 l in the dwc, level 70 on the bench, gutters ph 54 || added, cm and 5.4':
      'answered Bucket row top-up 12 at 4 May 08:20; answered North bench level 525 at 4 May 08:20; answered Gutter run ph 5.4 at 4 May 08:20',
    'level 70 on the bench, gutters ph 54 || 5.4, cm': '? which-quantity',
    'level 70 on the bench, gutters ph 54 || yes, thanks':
      'answered Gutter run ph 5.4 at 4 May 08:20',
    'level 70 on the bench, gutters ph 54 || cm, gutters 5.4':
      '? which-quantity (ph, ec, water-temperature)',
    'topped up the bench and the jars || 30 and 2':
      'answered North bench top-up 30 at 4 May 08:20 + Jar shelf top-up 2 at 4 May 08:20',
    'bench 5.8, jars 6.0 || both ph':
      'answered North bench ph 5.8 at 4 May 08:20; answered Jar shelf ph 6 at 4 May 08:20',
    'bench 5.8, jars 6.0 || ph': 'answered Jar shelf ph 6 at 4 May 08:20',
  });
});

describe('an amount said once more, and what was poured put right', () => {
  understood({
    'so i put two cans in the bench hang on one sec ok yeah two cans': 'North bench top-up 20',
    'put 2 cans in the bench, hang on, also 2 cans in the jars':
      'North bench top-up 20; ? in-it-or-added (level, top-up)',
    'put 2 cans in the bench, yeah and 1 can in the jars':
      'North bench top-up 20; Jar shelf top-up 10',
    'put a can in the jars || the can in the jars was a jug btw': 'correct top-up 2 Jar shelf',
    'put a can in the jars || the can in the jars was only 5 l': 'correct top-up 5 Jar shelf',
    'put a can in the jars || the can in the jars was empty': '? unclear (keep-as-note)',
    'put a can in the jars || a can in the jars was a mistake': 'deny Jar shelf anything',
    'put 3 jugs in the gutters || oh no those jugs went in the jars': 'move Jar shelf',
    'put 3 jugs in the gutters || those jugs are for the jars': '? unclear (keep-as-note)',
    'bench ec 2.3 || hang on ec on the bench should be 2.5': 'correct ec 2.5 North bench',
    'bench ec 2.3 || ec on the bench should be 2.5': 'passed over: target',
    'bench ec 2.3 || hang on, what should the ec on the bench be':
      'asks last-reading North bench ec',
  });
});

describe('numbers of a product, totals, trials and pictures', () => {
  understood({
    '10 of ph down in the bench': '? which-unit (10)',
    '10 of ph down in the bench || ml': 'answered North bench dose 10 ph-down at 4 May 08:20',
    'put 10 of down in the bench': '? which-unit (10)',
    '2 of the jars are dry': '? unclear (keep-as-note)',
    'total for the gutters is 2 jugs today': '? in-it-or-added (level, top-up)',
    'jars 💧 full': 'Jar shelf level 24',
    'bench 📉 ph 5.9': 'North bench ph 5.9',
    'this is only a test: bench ph 6.0': '? is-it-a-reading (yes, no)',
    'test of the pen: ph 6.0 in the bench': 'North bench ph 6',
  });
  understood(
    {
      'das ist nur ein Test: Tisch pH 6,0': '? is-it-a-reading (yes, no)',
      '10 von pH runter in den Tisch': '? which-unit (10)',
    },
    'lindenhof',
    'jonas',
  );
});

describe('what is still asked about, put right or answered', () => {
  understood({
    'a can in the bench || was only half full': '? in-it-or-added (level, top-up)',
    'a can in the bench || bench was only half full': 'North bench level 300',
    '2 cans in the bench || the second was only half full': '? in-it-or-added (level, top-up)',
    'topped up a can, ph 5.9 || that was the buckets, both':
      'answered Bucket row top-up 10 at 4 May 08:20 + Bucket row ph 5.9 at 4 May 08:20',
    'ph 5.9 || that was the buckets': 'answered Bucket row ph 5.9 at 4 May 08:20',
    'bench ph 5.9 || that was the buckets': 'move Bucket row',
  });
});

describe('what only looks like an answer', () => {
  understood({
    '20 l || jars full': 'Jar shelf level 24',
    '20 l || the jars': '? in-it-or-added (level, top-up)',
    'topped up the jars || full': 'Jar shelf level 24',
  });
  understood(
    {
      'tote 4 ph 6': '? which-system (Tote 2, Tote 3)',
      'tote 4 ph 6 || right, ph of the left tub 5.7': 'Left tub ph 5.7',
      'tub ph 6 || right, ph of the back wall 5.7':
        'answered Right tub ph 6 at 4 May 09:20; Back wall ph 5.7',
    },
    'hollow-oak',
    'finn',
  );
});

describe('put right while it is asked, and all but one', () => {
  understood({
    'added 2 jugs || no 3': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'ph 5.9 || no 3': 'answered Gutter run ph 5.9 at 4 May 08:20',
    'ph 5.9 || 3': 'answered Gutter run ph 5.9 at 4 May 08:20',
    'put ten of down in the bench || ml sorry':
      'answered North bench dose 10 ph-down at 4 May 08:20',
    'topped up everything with one can each || except the jars, they got a jug':
      'correct top-up 2 Jar shelf',
    'topped up everything with one can each || except the jars': 'deny Jar shelf top-up',
    'topped up everything with one can each || except the jars, they are full':
      'Jar shelf level 24',
    'topped up the bench with one can || except the jars': '? unclear (keep-as-note)',
  });
  understood(
    {
      'je 5 l in Tisch und Wanne nachgefüllt || außer der Wanne, die hat 3 l bekommen':
        'correct top-up 3 Südwanne',
    },
    'lindenhof',
    'jonas',
  );
});
