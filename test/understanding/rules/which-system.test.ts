import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('a name governs what follows, or the clause it ends', () => {
  understood({
    'ph 5.8 buckets': 'Bucket row ph 5.8',
    'buckets: 5.9 / 1.8 / 21':
      'Bucket row ph 5.9; Bucket row ec 1.8; Bucket row water-temperature 21',
    'row ph 6': 'Bucket row ph 6',
    'dwc all checked: ph 5.8': 'Bucket row ph 5.8',
    'the jars are all fine, ph 5.9': 'Jar shelf ph 5.9',
    'bench everything ok, ph 6.0': 'North bench ph 6',
    "bucket row's ph is 5.9": 'Bucket row ph 5.9',
    'north bench ph 6.1 ec 2.3': 'North bench ph 6.1; North bench ec 2.3',
    'nor ph 6.1': 'North bench ph 6.1',
    'nort bench level 50 cm': 'North bench level 375',
    'gut ph 6': 'Gutter run ph 6',
    'gutetrs ph 6.0': 'Gutter run ph 6',
    'buckest ph 6': 'Bucket row ph 6',
    'kratki ph 6': 'Jar shelf ph 6',
    'jar ph 6': 'Jar shelf ph 6',
    'jasr ph 6': '? which-system (Jar shelf)',
    'nfy ph 6': '? which-system (Gutter run)',
    'dcw 5.9 1.7': '? which-system (Bucket row)',
    'ntf 5.9 1.7': '? which-system (Gutter run)',
    'the bench ph 6, the other one ph 5': '? conflict (6, 5)',
    'dwc ph 5.9, ntf 6.1 1.2': 'Bucket row ph 5.9; ? which-system (Gutter run)',
    'ph 5.8 in the dwc, ph 6.1 in the nft': 'Bucket row ph 5.8; Gutter run ph 6.1',
    'ph 5.8 in the dwc and 6.1 in the nft': 'Bucket row ph 5.8; Gutter run ph 6.1',
    'ph: dwc 5.8, nft 6.1, jars 6.0': 'Bucket row ph 5.8; Gutter run ph 6.1; Jar shelf ph 6',
    '1.3 ec, 6.0 ph, nft': 'Gutter run ec 1.3; Gutter run ph 6',
    'ph 5.8 and ec 1.7 in the dwc': 'Bucket row ph 5.8; Bucket row ec 1.7',
    'nft 6.1 1.2, added 20 ml A and 20 ml B to the bench':
      'Gutter run ph 6.1; Gutter run ec 1.2; North bench dose 20 nutrient-a; North bench dose 20 nutrient-b',
    'dwc ph 5.8, added 20 ml A and 20 ml B to the bench':
      'Bucket row ph 5.8; North bench dose 20 nutrient-a; North bench dose 20 nutrient-b',
    'dwc ph 5.8 ec 1.7 in the nft': '? which-system (Bucket row, Gutter run)',
    'topped up 4 l in the jars and 10 l in the bench': 'Jar shelf top-up 4; North bench top-up 10',
    'topped up the jars with 4 l and the bench with 10 l':
      'Jar shelf top-up 4; North bench top-up 10',
    'topped up: bench 40, jars 2, dwc 8':
      'North bench top-up 40; Jar shelf top-up 2; Bucket row top-up 8',
    'topped up jars 2 l, bench 30 l': 'Jar shelf top-up 2; North bench top-up 30',
    '3 l left in the jars': 'Jar shelf level 3',
    '3 l left': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'all right, dwc ph 5.9': 'Bucket row ph 5.9',
    'hi all, dwc ph 5.9': 'Bucket row ph 5.9',
    'topped up everything 5 l each':
      'North bench top-up 5; Bucket row top-up 5; Gutter run top-up 5; Jar shelf top-up 5',
    'everything ph 6': 'North bench ph 6; Bucket row ph 6; Gutter run ph 6; Jar shelf ph 6',
    'both the jars and the buckets ph 6': 'Bucket row ph 6; Jar shelf ph 6',
    'ph 6 in both the jars and the buckets': 'Bucket row ph 6; Jar shelf ph 6',
    'jars and buckets are full': 'Bucket row level 108; Jar shelf level 24',
    // The message ends where another name was to come.
    'dwc row and': '? unclear (keep-as-note)',
    '10 l in the bench and the jars': '? in-it-or-added (level each, top-up each)',
    'bench and jars 5 l each': '? in-it-or-added (level, top-up)',
    // More than the jars hold.
    '50 l in the jars': '? out-of-range (0.05, 5)',
    'bench and jars 30 l each': '? in-it-or-added',
    'topped up the bench and the jars with 10 l': '? shared-amount (each, North bench, Jar shelf)',
    'topped up the bench and the jars': '? missing-amount',
    'put 10 l each in the bench and jars': 'North bench top-up 10; Jar shelf top-up 10',
    'lettuce ph 5.8': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'picked 300 g of lettuce': 'Jar shelf harvest 300',
    'picked 300 g basil': 'Gutter run harvest 300',
    'venturi to 10 min an hour': 'Gutter run aeration 10',
    'venturi 10 min/h': 'Gutter run aeration 10',
    'air stones dead': 'Bucket row outage 1 air-pump',
    'how are the lettuces': 'asks how-is-it-going Jar shelf',
    'cucumbers 1.2 kg': 'Bucket row harvest 1200',
    'barrel ph 6.8': 'passed over: not-a-reading',
    'rain barrel ph 6.8': 'passed over: not-a-reading',
    'dwc ph 5.8, rain barrel ph 6.9': 'Bucket row ph 5.8; passed over: not-a-reading',
    'dwc ph 5.8 || barrel ph 6.8': 'passed over: not-a-reading',
    'my pond ph 7': 'passed over: not-a-reading',
    'dwc 5.8 1.7, herbs 6.0 1.2':
      'Bucket row ph 5.8; Bucket row ec 1.7; ? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
  });
});
