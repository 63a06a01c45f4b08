import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('mixed messages', () => {
  understood({
    'topped up: bench 40, jars 2, dwc 8':
      'North bench top-up 40; Jar shelf top-up 2; Bucket row top-up 8',
    'rain barrel ph 6.8': 'passed over: not-a-reading',
    'dwc ph 5.8 || rain barrel ph 6.8': 'passed over: not-a-reading',
    'dwc 5.8 1.7, herbs 6.0 1.2':
      'Bucket row ph 5.8; Bucket row ec 1.7; ? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'put ½ a jug in the jars': 'Jar shelf top-up 1',
    'topped up the bench with 3 pints': '? which-unit',
    'topped up the bench 20 l from the rain barrel': 'North bench top-up 20',
    'jars three quarters': 'Jar shelf level 18',
    'bench is down a third': 'North bench level 400',
    "we're out of ph down": '? unclear (keep-as-note)',
    'added 10 ml ph up to the dwc, ph went from 5.4 to 5.9':
      'Bucket row ph 5.4; Bucket row dose 10 ph-up; Bucket row ph 5.9',
    'dwc ph 5.9, up from 5.4': 'Bucket row ph 5.4; Bucket row ph 5.9',
    'ph 5.8 in the dwc was fine': 'Bucket row ph 5.8',
    'dwc ph meter battery 5.8': '? unclear (keep-as-note)',
    'the ph bottle 500 ml is empty': '? unclear (keep-as-note)',
    'i have 12 l of water left in the barrel': 'passed over: not-a-reading',
    '12 l in the rain barrel': 'passed over: not-a-reading',
    'dwc 5.8 is a bit low': '? which-quantity (ph, ec, water-temperature)',
    'dwc looks good at 5.8': '? which-quantity (ph, ec, water-temperature)',
    'ph looks good in the dwc 5.8': '? which-quantity (ph, ec, water-temperature)',
    'the dwc was on 5.8 and now the nft 6.1':
      '? which-quantity (ph, ec, water-temperature); ? which-quantity (ph, ec, water-temperature)',
    'dwc and nft ph 5.8 and 6.1': '? conflict (5.8, 6.1); ? conflict (5.8, 6.1)',
    'ph 5.8 and 6.1 in the dwc and nft': '? conflict (5.8, 6.1); ? conflict (5.8, 6.1)',
    'dwc ph between 5.8 and 6.0': 'Bucket row ph ~5.9',
    'dwc ph below 6': '? is-it-a-reading (yes, no)',
    'dwc ph over 6': '? is-it-a-reading (yes, no)',
    'dwc ph about 6': 'Bucket row ph ~6',
    'dwc ph just under 6': 'Bucket row ph ~6',
    'topped up more than 12 l in the dwc': '? is-it-a-reading (yes, no)',
    'topped up the dwc with at least 12 l': '? is-it-a-reading (yes, no)',
    'dwc ph 5.8/nft ph 6.1': 'Bucket row ph 5.8; Gutter run ph 6.1',
    'dwc:5.8,1.7;nft:6.1,1.2':
      'Bucket row ph 5.8; Bucket row ec 1.7; Gutter run ph 6.1; Gutter run ec 1.2',
    'dwc 5.8,1.7,21': 'Bucket row ph 5.8; Bucket row ec 1.7; Bucket row water-temperature 21',
    'bench 6.1 2.3 22 / dwc 5.8 1.7 21':
      'North bench ph 6.1; North bench ec 2.3; North bench water-temperature 22; Bucket row ph 5.8; Bucket row ec 1.7; Bucket row water-temperature 21',
    'bench ph6.1ec2.3t22':
      'North bench ph 6.1; North bench ec 2.3; North bench water-temperature 22',
    'DWC PH5.8 EC1.7 T21': 'Bucket row ph 5.8; Bucket row ec 1.7; Bucket row water-temperature 21',
    'dwc ph 5.8 ec 1.7 temp 21 level 95 l':
      'Bucket row ph 5.8; Bucket row ec 1.7; Bucket row water-temperature 21; Bucket row level 95',
    'dwc ph 5.8 ec 1.7 21C 95 l left':
      'Bucket row ph 5.8; Bucket row ec 1.7; Bucket row water-temperature 21; Bucket row level 95',
    'dwc ph 5.8 ec 1.7 wt 21 down 3 cm':
      'Bucket row ph 5.8; Bucket row ec 1.7; Bucket row water-temperature 21; Bucket row level 97.2',
    'dwc: pH 5.8 | EC 1.7 | 21 °C':
      'Bucket row ph 5.8; Bucket row ec 1.7; Bucket row water-temperature 21',
    'pH: 5.8': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'dwc ; ph 5.8 ; ec 1.7': 'Bucket row ph 5.8; Bucket row ec 1.7',
    'temp 27 in the dwc': 'Bucket row water-temperature 27',
    'temp in the dwc 21 and in the greenhouse 27':
      'Bucket row water-temperature 21; greenhouse air-temperature 27',
    'dwc water 21C air 27C': 'Bucket row water-temperature 21; greenhouse air-temperature 27',
    'air 27 water 21 dwc': 'greenhouse air-temperature 27; ? which-quantity (water-temperature)',
    'humidity 64 temp 27':
      'greenhouse humidity 64; ? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'humidity 64, temp 27 inside': 'greenhouse humidity 64; greenhouse air-temperature 27',
    'dwc 1.7 ec 5.8 ph': 'Bucket row ec 1.7; Bucket row ph 5.8',
    'dwc ph/ec 5.8/1.7': 'Bucket row ph 5.8; Bucket row ec 1.7',
    'ph/ec dwc 5.8/1.7': 'Bucket row ph 5.8; Bucket row ec 1.7',
    'topped up dwc nft and jars 5 l each':
      'Bucket row top-up 5; Gutter run top-up 5; Jar shelf top-up 5',
    '12 l dwc, 8 l nft topped up': '? in-it-or-added (level, top-up); Gutter run top-up 8',
    'topped up with 12 l': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'topped up 12 l ': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'dwc: topped up 12 l, ph 5.8, ec 1.7':
      'Bucket row top-up 12; Bucket row ph 5.8; Bucket row ec 1.7',
    'dwc topped up 12 l ph 5.8 ec 1.7':
      'Bucket row top-up 12; Bucket row ph 5.8; Bucket row ec 1.7',
    'dwc 5.8 1.7 topped up 12 l': 'Bucket row ph 5.8; Bucket row ec 1.7; Bucket row top-up 12',
    'ph 5.8 ec 1.7 topped up 12 l in the dwc':
      'Bucket row ph 5.8; Bucket row ec 1.7; Bucket row top-up 12',
    'i topped up the dwc with twelve litres of rainwater and the ph is now 5.8':
      'Bucket row top-up 12; Bucket row ph 5.8',
    'poured the rest of the can into the bench': '? missing-amount',
    'gave the jars a splash': '? unclear (keep-as-note)',
    'gave the jars a drink': '? unclear (keep-as-note)',
    'watered the jars': '? missing-amount',
    'fed the dwc 20 ml each': '? which-product (nutrient-a, nutrient-b, ph-down, ph-up, top-up)',
    'put a litre in the jars': 'Jar shelf top-up 1',
    'put 1l in jars, 2l in dwc': 'Jar shelf top-up 1; Bucket row top-up 2',
    'added 5 l to all': '? shared-amount (each, North bench, Bucket row, Gutter run, Jar shelf)',
    'topped up all with 5 l':
      '? shared-amount (each, North bench, Bucket row, Gutter run, Jar shelf)',
    'dwc 12 l topped up at 7, ph 5.8 at 8':
      'Bucket row top-up 12 at 4 May 07:00; Bucket row ph 5.8 at 4 May 08:00',
    'used 10 ml ph up in the dwc': 'Bucket row dose 10 ph-up',
    '10ml ph up dwc ph now 5.8': 'Bucket row dose 10 ph-up; Bucket row ph 5.8',
    'dwc 10 ml up 5.8': 'Bucket row dose 10 ph-up; ? which-quantity (ph, ec, water-temperature)',
    'dwc ph up 10 ml, now 5.8': 'Bucket row dose 10 ph-up; Bucket row ph 5.8',
    'dwc ph is up': '? unclear (keep-as-note)',
    'dwc ph is going up': '? unclear (keep-as-note)',
    'dwc ph dropped from 5.8 to 5.5': 'Bucket row ph 5.8; Bucket row ph 5.5',
    'dwc ph dropped to 5.5': 'Bucket row ph 5.5',
    'ec up to 1.9 in the dwc': 'Bucket row ec 1.9',
    'dwc ec 1.9 (was 1.7)': 'Bucket row ec 1.7; Bucket row ec 1.9',
    'dwc ec 1.9, yesterday 1.7': 'Bucket row ec 1.9; Bucket row ec ~1.7 at 3 May 12:00',
    'jars ph 6, basil 5.8': 'Jar shelf ph 6; ? which-quantity',
    'tomatoes ph 6': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    '3 ripe tomatoes on the bench': '? unclear (keep-as-note)',
    'dwc temp 21.5, 3 cm roots': 'Bucket row water-temperature 21.5',
    'level in dwc 20 cm': 'Bucket row level 72',
    '20 cm in the dwc': 'Bucket row level 72',
    '20cm dwc': 'Bucket row level 72',
    'dwc 20 cm': 'Bucket row level 72',
    'dwc 25cm left': 'Bucket row level 90',
    'dwc 90%': 'Bucket row level 97.2',
    'pump is down': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'power down': 'greenhouse outage 1 power',
    'no power, dwc air pump dead too': 'greenhouse outage 1 power; Bucket row outage 1 air-pump',
    'fixed the air pump': 'Bucket row restored 1 air-pump',
    'replaced the air pump on the dwc': '? unclear (keep-as-note)',
  });
});
