import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('a quantity that closes a row of systems', () => {
  understood({
    'bench 6.1 dwc 5.8 nft 5.9 jars 6.2 thats all ph':
      'North bench ph 6.1; Bucket row ph 5.8; Gutter run ph 5.9; Jar shelf ph 6.2',
    '1.3 gutters, 2.2 bench, all ec': 'Gutter run ec 1.3; North bench ec 2.2',
    'gutters 5.9 jars 6.1 both ph': 'Gutter run ph 5.9; Jar shelf ph 6.1',
    'dwc 5.8, nft 5.9, both ph': 'Bucket row ph 5.8; Gutter run ph 5.9',
    'bench 2.1 and row 1.8, both ec': 'North bench ec 2.1; Bucket row ec 1.8',
    'bench 22 row 21 jars 23 all temps':
      'North bench water-temperature 22; Bucket row water-temperature 21; Jar shelf water-temperature 23',
    'morning, dwc 5.8 bench 6.0, all ph thanks': 'Bucket row ph 5.8; North bench ph 6',
    'dwc 5.8 bench 6.0 jars 6.1 both ph':
      '? which-quantity (ph, ec, water-temperature); ? which-quantity (ph, ec, water-temperature); Jar shelf ph 6.1',
    'dwc 5.8 dwc 5.9 both ph': '? which-quantity (ph, ec, water-temperature); Bucket row ph 5.9',
    'dwc 58 bench 6.0 both ph': '? which-quantity; North bench ph 6',
    'bench 6.1 dwc 5.8 topped up, all ph':
      '? which-quantity (ph, ec, water-temperature); Bucket row top-up 5.8',
    'dwc 5.8 1.7 bench 6.0 all ph':
      'Bucket row ph 5.8; Bucket row ec 1.7; ? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
  });
  understood(
    {
      'Tisch 6,0 Wanne 5,8 Rinne 6,1 alles pH':
        'Nordtisch ph 6; Südwanne ph 5.8; Rinnenstrecke ph 6.1',
      'linke Tonne 6,0 rechte 6,1 beide pH': 'Linke Tonne ph 6; Rechte Tonne ph 6.1',
      'Wanne 1,8 und Rinne 1,2, beides EC': 'Südwanne ec 1.8; Rinnenstrecke ec 1.2',
      '5,8 Wanne, 6,0 Tisch, alle pH': 'Südwanne ph 5.8; Nordtisch ph 6',
      'Tisch 21 Wanne 22 Rinne 20 alles Temperatur':
        'Nordtisch water-temperature 21; Südwanne water-temperature 22; Rinnenstrecke water-temperature 20',
      'Tisch 6,0 Wanne 5,8 Rinne 6,1 beide pH':
        '? which-quantity (ph, ec, water-temperature); ? which-quantity (ph, ec, water-temperature); Rinnenstrecke ph 6.1',
    },
    'lindenhof',
    'jonas',
  );
});

describe('so many vessels of such a size', () => {
  understood({
    'put two 8 l watering cans in the bench': 'North bench top-up 16',
    'poured three 5 litre buckets into the gutters': 'Gutter run top-up 15',
    'poured a 5 litre bucket in the jars': 'Jar shelf top-up 5',
    'added 2 10 l cans to the bench': 'North bench top-up 20',
    'put two 5 l buckets in': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'put two 5 l buckets in the bench': 'North bench top-up 10',
    'gave the gutters three 4 l bottles of water': 'Gutter run top-up 12',
    'bench got two 1 gallon jugs': 'North bench top-up 7.57',
    'added four 2.5 l jugs to the jars': 'Jar shelf top-up 10',
    'used two 20 l barrels for the bench': '? in-it-or-added (level, top-up)',
    'put 8 l in the jars, 5 l in the buckets': 'Jar shelf top-up 8; Bucket row top-up 5',
    'bench 6 8 l cans': '? in-it-or-added (level, top-up)',
    'two 8 l watering cans in the bench, poured': 'North bench top-up 16',
  });
  understood(
    {
      'zwei 8 Liter Gießkannen in den Tisch gekippt': 'Nordtisch top-up 16',
      'drei 5 l Eimer in die Rinne gekippt': 'Rinnenstrecke top-up 15',
      'Tisch hat drei 10 l Kannen bekommen': 'Nordtisch top-up 30',
      'zwei 2 l Flaschen in die Wanne gegeben': 'Südwanne top-up 4',
      'zwei 8 l Gießkannen in den Tisch': '? in-it-or-added (level, top-up)',
    },
    'lindenhof',
    'jonas',
  );
});

describe('an arrow from before to after', () => {
  understood({
    'ph bench 6.9>6.3 w 25ml down':
      'North bench ph 6.9; North bench dose 25 ph-down; North bench ph 6.3',
    'bench ph 6.9>6.3 with 25ml down':
      'North bench ph 6.9; North bench dose 25 ph-down; North bench ph 6.3',
    'dwc ph 6.4 > 5.9, 10 ml down':
      'Bucket row ph 6.4; Bucket row dose 10 ph-down; Bucket row ph 5.9',
    '10 ml down in the dwc, ph 6.4>5.9':
      'Bucket row ph 6.4; Bucket row dose 10 ph-down; Bucket row ph 5.9',
    'gutters ec 1.1>1.4 w 20 ml A':
      'Gutter run ec 1.1; Gutter run dose 20 nutrient-a; Gutter run ec 1.4',
    'dwc ph 6.4 > 6.2, too high': '? conflict (6.4, 6.2)',
    'ph dwc 5.2>5.7, 5 ml up': 'Bucket row ph 5.2; Bucket row dose 5 ph-up; Bucket row ph 5.7',
    'jars ph 6.6>6.1 w/ 3 ml down': 'Jar shelf ph 6.6; Jar shelf dose 3 ph-down; Jar shelf ph 6.1',
    'dwc ph > 6.3': '? is-it-a-reading (yes, no)',
    'heater 40 w': '? unclear (keep-as-note)',
  });
  understood(
    {
      'Wanne pH 6,4>5,9 mit 10 ml pH minus':
        'Südwanne ph 6.4; Südwanne dose 10 ph-down; Südwanne ph 5.9',
      'Rinne EC 1,1>1,4 mit 20 ml A':
        'Rinnenstrecke ec 1.1; Rinnenstrecke dose 20 nutrient-a; Rinnenstrecke ec 1.4',
    },
    'lindenhof',
    'jonas',
  );
});
