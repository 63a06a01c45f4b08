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
