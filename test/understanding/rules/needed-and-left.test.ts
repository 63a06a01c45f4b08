import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('what is left in a vessel is in no system', () => {
  understood({
    'changed the gutters, 3 l left over in the can':
      'Gutter run reservoir-change ~120; passed over: not-a-reading',
    'topped up the jars with 4 l, 6 l still in the jug':
      'Jar shelf top-up 4; passed over: not-a-reading',
    "there's 5 l left in the jug from the gutters": 'passed over: not-a-reading',
    'changed the gutters, 3 l left over':
      'Gutter run reservoir-change ~120; ? in-it-or-added (level, top-up)',
    'put the can with 3 l in the jars': 'Jar shelf top-up 3',
  });
  understood(
    {
      'Wanne frisch angesetzt, in der Kanne sind noch 3 l':
        'Südwanne reservoir-change ~108; passed over: not-a-reading',
      'Wanne frisch angesetzt, 3 l übrig in der Kanne':
        'Südwanne reservoir-change ~108; passed over: not-a-reading',
      'Rinnen 7 l nachgefüllt, die Kanne hat noch 3 l':
        'Rinnenstrecke top-up 7; passed over: not-a-reading',
    },
    'lindenhof',
    'karin',
  );
});

describe('water of which it is only said when it was told', () => {
  understood({
    'the 12 l that i put in the bench yesterday are gone': '? unclear (keep-as-note)',
  });
  understood(
    {
      'die 12 l die ich gestern in die Wanne gegossen habe sind weg': '? unclear (keep-as-note)',
      'die 3 Kannen die ich heute früh in die Wanne gekippt hab sind schon wieder weg':
        '? unclear (keep-as-note)',
      'die 12 l die Jonas gestern in die Wanne gegossen hat sind weg': '? unclear (keep-as-note)',
      'die 12 l in die Wanne gegossen': 'Südwanne top-up 12',
    },
    'lindenhof',
    'karin',
  );
});

describe('two values for one thing', () => {
  understood({
    'i think i put about 10 litres in the bench maybe 12': '? conflict (10, 12)',
    'put 3 cans in the bench, could be 4': '? conflict (30, 40)',
    'topped up the bench 20 l, maybe 25 l': '? conflict (20, 25)',
    'added 20 ml ph down to the bench maybe 25': '? conflict (20, 25)',
    'bench ph about 5.8, perhaps 5.9': '? conflict (5.8, 5.9)',
    'put 10 maybe 12 litres in the bench': 'North bench top-up ~11',
    'put 10 l or maybe 12 in the bench': 'North bench top-up ~11',
    'topped up the bench 20 l, maybe more': 'North bench top-up 20',
  });
  understood(
    {
      'ca. 10 Liter in die Wanne gegeben, vielleicht 12': '? conflict (10, 12)',
      '10 Liter in die Wanne gegossen oder 12': '? conflict (10, 12)',
      '10 vielleicht 12 Liter in die Wanne gegeben': 'Südwanne top-up ~11',
    },
    'lindenhof',
    'karin',
  );
});

describe('millilitres of which product and system are asked', () => {
  understood({
    'added 5 ml || ph down': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'added 5 ml || ph down || dwc': 'answered Bucket row dose 5 ph-down at 4 May 08:20',
    'added 5 ml || ph down in the dwc': 'answered Bucket row dose 5 ph-down at 4 May 08:20',
    'added 5 ml || bench || ph up': 'answered North bench dose 5 ph-up at 4 May 08:20',
    'added 5 ml || no': 'answered no',
  });
  understood(
    {
      '5 ml zugegeben || pH minus || Wanne': 'answered Südwanne dose 5 ph-down at 4 May 09:20',
      '5 ml zugegeben || in die Wanne || pH minus':
        'answered Südwanne dose 5 ph-down at 4 May 09:20',
    },
    'lindenhof',
    'karin',
  );
});

describe('what was given of what was needed', () => {
  understood({
    'bench needs 5 cans and i only had 2 so put those in':
      'passed over: intention; passed over: intention; North bench top-up 20',
    'bench needs 5 cans, gave it 2': 'passed over: intention; North bench top-up 20',
    'bench needed 25ml ph down, gave it that':
      'passed over: intention; North bench dose 25 ph-down',
    'bench needs 25 ml ph down, gave it 20': 'passed over: intention; North bench dose 20 ph-down',
    'jars needed 3 l, gave them that': 'passed over: intention; Jar shelf top-up 3',
    'bench needs 5 cans so put those in': 'passed over: intention; ? is-it-a-reading (yes, no)',
    'bench needs 25 ml ph down, will give it that': 'passed over: intention',
  });
  understood(
    {
      'Tisch braucht 5 Kannen und ich hatte nur 2, hab die reingetan':
        'passed over: intention; passed over: intention; Nordtisch top-up 20',
      'Tisch braucht 3 Kannen, hab 2 reingetan': 'passed over: intention; Nordtisch top-up 20',
    },
    'lindenhof',
    'karin',
  );
  understood(
    {
      '2nd barrel ph 6.1': 'Twin barrels ph 6.1',
      'the 2nd barrel got 5 l': 'Twin barrels top-up 5',
      'left barrel 6.1 1.8 21':
        'Twin barrels ph 6.1; Twin barrels ec 1.8; Twin barrels water-temperature 21',
    },
    'kowhai-rise',
    'tama',
  );
});

describe('a value that is none of the one asked about', () => {
  understood({
    'dwc ph 5.4? || no it is 5.9': 'answered Bucket row ph 5.9 at 4 May 08:20',
    'dwc level 80 l? || no, 85': 'answered Bucket row level 85 at 4 May 08:20',
    'dwc ph 5.4? || oops 5.9': '? is-it-a-reading (yes, no)',
  });
  understood(
    { 'Wanne pH 5,4? || nein es ist 5,9': 'answered Südwanne ph 5.9 at 4 May 09:20' },
    'lindenhof',
    'karin',
  );
});

describe('the hour at which something was fed', () => {
  understood({
    'fed the cat at 7': '? unclear (keep-as-note)',
    'fed the cat at 7, jars ph 6': 'Jar shelf ph 6',
    'gave the jars a can at 7': 'Jar shelf top-up 10 at 4 May 07:00',
    'fed the bench at 7': '? unclear (keep-as-note)',
  });
});

describe('right after what was logged of one system', () => {
  understood({
    'topped the bench with 3 cans || same for the gutters': 'Gutter run top-up 30',
    'bench ph 5.8 ec 1.9 || gutters the same': 'Gutter run ph 5.8; Gutter run ec 1.9',
    'topped the bench with 3 cans, jars 3 l || same for the gutters': '? unclear (keep-as-note)',
    'topped the bench with 3 cans || same for the gutters || another 2': 'Gutter run top-up 20',
    'topped the bench with 10 l || plus 10 more': 'North bench top-up 10',
    'topped the bench with 10 l || another 300': 'North bench top-up 300',
    'topped the bench with 10 l || another 700': '? out-of-range (0.7, 70)',
    'added 20 ml ph down to the bench || another 10': 'North bench dose 10 ph-down',
    'added 20 ml ph down to the bench || another 2 l': '? in-it-or-added (level, top-up)',
    'bench ph 5.8 || another 10': '? which-quantity (ec, water-temperature)',
  });
  understood(
    {
      'Tisch mit 3 Kannen aufgefüllt || für die Rinnen genauso': 'Rinnenstrecke top-up 30',
      '10 l in die Wanne gegossen || und noch 10': 'Südwanne top-up 10',
      '20 ml pH minus in die Wanne || nochmal 10': 'Südwanne dose 10 ph-down',
      '10 l in die Wanne gegossen || noch 10 l': '? in-it-or-added (level, top-up)',
    },
    'lindenhof',
    'karin',
  );
});

describe('a container along a list', () => {
  understood({
    'topped the gutters with 3 cans, buckets with one and a half':
      'Gutter run top-up 30; Bucket row top-up 15',
    'topped the gutters with 3 cans, the buckets with one':
      'Gutter run top-up 30; Bucket row top-up 10',
    'gave the gutters 3 cans, the buckets 2 and the jars half a can':
      'Gutter run top-up 30; Bucket row top-up 20; Jar shelf top-up 5',
    'bench got 3 cans, dwc 5.9':
      'North bench top-up 30; ? which-quantity (ph, ec, water-temperature)',
  });
  understood(
    {
      'Rinnen mit 3 Kannen aufgefüllt, Wanne mit anderthalb':
        'Rinnenstrecke top-up 30; Südwanne top-up 15',
      'die Rinnen mit 3 Kannen aufgefüllt und die Wanne mit einer':
        'Rinnenstrecke top-up 30; Südwanne top-up 10',
    },
    'lindenhof',
    'karin',
  );
});
