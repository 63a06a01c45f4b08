import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('A vessel shared along a list, and a part that may be of anything', () => {
  understood(
    {
      'pontoon took 2 watering cans and the barrel one':
        'Rhubarb pontoon top-up 16; Second barrel top-up 8',
      'pontoon took 2 watering cans, the barrel one, and the tower half':
        'Rhubarb pontoon top-up 16; Second barrel top-up 8; ? missing-amount',
      'pontoon got 2 watering cans, barrel 1, tower a half':
        'Rhubarb pontoon top-up 16; Second barrel top-up 8; Strawberry tower top-up 4',
      'pontoon took 20 l, the tower half': 'Rhubarb pontoon top-up 20; ? missing-amount',
      'topped up the pontoon 20 l and the barrel a third':
        'Rhubarb pontoon top-up 20; ? missing-amount',
      // Near misses.
      'pontoon took 20 l, the tower is half full':
        'Rhubarb pontoon top-up 20; Strawberry tower level 40',
      'pontoon took 20 l. tower half full': 'Rhubarb pontoon top-up 20; Strawberry tower level 40',
      'pontoon ph 5.9, tower half': 'Rhubarb pontoon ph 5.9; Strawberry tower level 40',
      'tower half': 'Strawberry tower level 40',
      'pontoon took 2 watering cans, barrel ph 6': 'Rhubarb pontoon top-up 16; Second barrel ph 6',
    },
    'slate-garth',
    'ana',
  );
  understood(
    {
      'Tisch bekam 3 Kannen, die Rinne eine, die Wanne eine halbe':
        'Nordtisch top-up 30; Rinnenstrecke top-up 10; Südwanne top-up 5',
      'Tisch hat 3 Kannen gekriegt, die Rinne eine': 'Nordtisch top-up 30; Rinnenstrecke top-up 10',
      'Tisch bekam 3 Kannen, die Rinne eine und die Wanne halb':
        'Nordtisch top-up 30; Rinnenstrecke top-up 10; ? missing-amount',
      'Tisch bekam 3 Kannen, Wanne halb voll': 'Nordtisch top-up 30; Südwanne level 54',
      'Tisch kriegte 3 Kannen, die Wanne pH 6': 'Nordtisch top-up 30; Südwanne ph 6',
    },
    'lindenhof',
    'jonas',
  );
});

describe('One more of the vessel, or half of one', () => {
  understood({
    'topped jars a jug and another half': 'Jar shelf top-up 3',
    'topped jars a jug and another': 'Jar shelf top-up 2; Jar shelf top-up 2',
    'topped jars a jug, then another half': 'Jar shelf top-up 2; Jar shelf top-up 1',
    'jars a jug and another half': '? in-it-or-added (level, top-up)',
  });
  understood(
    {
      'Gläser einen Krug nachgefüllt und noch einen halben':
        'Gläserregal top-up 2; Gläserregal top-up 1',
      'in die Gläser ein Krug und noch ein halber gekippt': 'Gläserregal top-up 3',
      'Gläser ein Krug und noch ein halber': '? in-it-or-added (level, top-up)',
      'Tisch eine Kanne und noch eine': '? in-it-or-added (level, top-up)',
      'ein Krug in die Gläser gekippt und noch halb voll':
        'Gläserregal top-up 2; Gläserregal level 12',
    },
    'lindenhof',
    'jonas',
  );
});

describe('The same of one more, with the verb of both behind it', () => {
  understood({
    'bench 20 l and the same in the dwc topped up': 'North bench top-up 20; Bucket row top-up 20',
    'bench 20 l and the same in the dwc':
      '? in-it-or-added (level, top-up); ? in-it-or-added (level, top-up)',
  });
  understood(
    {
      'Nordtisch 20 l und dasselbe in der Südwanne nachgefüllt':
        'Nordtisch top-up 20; Südwanne top-up 20',
      '20 l in den Nordtisch und dasselbe in die Südwanne gekippt':
        'Nordtisch top-up 20; Südwanne top-up 20',
      'Nordtisch 20 l und die Südwanne nachgefüllt': 'Nordtisch top-up 20; ? missing-amount',
      '20 l in den Nordtisch und die Südwanne gekippt':
        '? shared-amount (each, Nordtisch, Südwanne)',
    },
    'lindenhof',
    'jonas',
  );
});

describe('A question behind a report, in one breath', () => {
  understood({
    'topped jars 1 jug do u want bench done too':
      'Jar shelf top-up 2; asks what-is-due North bench',
    'topped jars 1 jug want me to do the bench': 'Jar shelf top-up 2; asks what-is-due North bench',
    'put 3 l in the jars shall i top up the gutters':
      'Jar shelf top-up 3; asks what-is-due Gutter run',
    'gutters ph 6.5 shall i add ph down': 'Gutter run ph 6.5; asks what-is-due',
    'dwc ph 5.4 what should i do': 'Bucket row ph 5.4',
    'can u top up the jars 3 l': 'passed over: intention',
  });
  understood(
    {
      'Gläser 1 Krug nachgefüllt soll ich den Tisch auch machen':
        'Gläserregal top-up 2; asks what-is-due Nordtisch',
      'Gläser 3 l nachgefüllt willst du dass ich den Tisch auch mache':
        'Gläserregal top-up 3; asks what-is-due Nordtisch',
      '3 l hab ich in die Gläser gekippt': 'Gläserregal top-up 3',
    },
    'lindenhof',
    'jonas',
  );
});

describe('What there is, behind a question or what was not needed', () => {
  understood({
    'how full is the bench its 300 l now':
      'North bench level 300; asks last-reading North bench level',
    'how full shld bench be its 300 now':
      '? which-quantity (ec); asks last-reading North bench level',
    'dwc doesnt need any theres 90 l in it': 'Bucket row level 90',
    'dwc doesnt need water still 90 l': 'Bucket row level 90',
    'jars dont need 5 l': 'passed over: negation',
    'dwc didnt need any of the 9 l': 'passed over: negation',
    'how much is 3 cans': 'asks how-much',
    'bench ec 2.3 jars need water so gave em 3 l': 'North bench ec 2.3; Jar shelf top-up 3',
    'bench fine 2.3 jars need water so gave em 3 l':
      '? which-quantity (ec, water-temperature); Jar shelf top-up 3',
    'bench ec 2.3 jars need 3 l': 'North bench ec 2.3; passed over: intention',
    'the jars need 3 l': 'passed over: intention',
  });
  understood(
    {
      't2 doesnt need any 18 gal in it': 'Tote 2 level 68.14',
      't2 doesnt need any still 18 gal': 'Tote 2 level 68.14',
      't2 doesnt need 18 gal': 'passed over: negation',
    },
    'brook-end',
    'abe',
  );
  understood(
    {
      'Wanne braucht nichts 80 l drin': 'Südwanne level 80',
      'Wanne braucht kein Wasser sind noch 80 l drin': 'Südwanne level 80',
      'Wanne braucht keine 80 l': 'passed over: negation',
      'Tisch EC 2,3 passt Gläser brauchen Wasser also hab ich ihnen 3 l gegeben':
        'Nordtisch ec 2.3; Gläserregal top-up 3',
    },
    'lindenhof',
    'jonas',
  );
});

describe('Two digits in words, and the system behind them', () => {
  understood({
    'ec one eight gutters': 'Gutter run ec 1.8',
    'ph six one gutters': 'Gutter run ph 6.1',
    'ph six one more can in the bench': '? in-it-or-added (level, top-up)',
    'ph one of the jars 6': 'Jar shelf ph 6',
  });
  understood(
    {
      'EC eins acht Rinnen': 'Rinnenstrecke ec 1.8',
      'pH sechs eins Rinnen': 'Rinnenstrecke ph 6.1',
      'EC eins Rinnen acht': '? which-quantity (ph, ec, water-temperature)',
    },
    'lindenhof',
    'jonas',
  );
});

describe('What was done, one after another', () => {
  understood(
    {
      'did pond did table couldnt reach rail': '? which-duties; Patio rail duty-failed 1',
      'did the pond, did the table, couldnt reach the rail':
        '? which-duties; Patio rail duty-failed 1',
      'did pond did 5 gal in the table': '? which-duties; ? in-it-or-added (level, top-up)',
      'couldnt reach rail': 'Patio rail duty-failed 1',
      'didnt do the pond': 'passed over: negation',
    },
    'pelican-court',
    'june',
  );
  understood(
    {
      'Wanne gemacht Tisch gemacht konnte nicht an die Rinne':
        '? which-duties; Rinnenstrecke duty-failed 1',
      'Wanne gemacht Tisch pH 6 gemessen': '? which-duties; Nordtisch ph 6',
    },
    'lindenhof',
    'jonas',
  );
});

describe('The unit of an amount that is asked about', () => {
  understood({
    'put 300 l in the jars || ml, not l': 'answered Jar shelf top-up 0.3 at 4 May 08:20',
    'put 300 l in the jars || ml': 'answered Jar shelf top-up 0.3 at 4 May 08:20',
    'put 3000 in the jars || ml not litres': 'answered Jar shelf top-up 3 at 4 May 08:20',
    'put 300 l in the jars || not ml': '? unclear (keep-as-note)',
  });
  understood(
    {
      'hab 300 l in die Gläser gekippt || ml, nicht l':
        'answered Gläserregal top-up 0.3 at 4 May 09:20',
      'hab 3000 in die Gläser gekippt || ml und nicht l': '? unclear (keep-as-note)',
    },
    'lindenhof',
    'jonas',
  );
});
