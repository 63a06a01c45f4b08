import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('chores as they are told in passing', () => {
  understood({
    'tied up the tomatoes': 'done tie up the tomatoes',
    'tomatoes are tied up and jars topped up 2 l': 'done tie up the tomatoes; Jar shelf top-up 2',
    'i tie up the tomatoes': '? unclear (keep-as-note)',
    'tied up some of the tomatoes': '? unclear (keep-as-note)',
    'tomatoes are to be tied up': '? unclear (keep-as-note)',
    "actually didn't tie the tomatoes": 'deny duty-done',
  });
  understood({ 'drains wiped too': 'done wipe the rack drains' }, 'hollow-oak', 'finn');
  understood(
    {
      'ranken kapp ich': '? unclear (keep-as-note)',
      'kappe die ranken am we': 'passed over: intention',
      'ranken hab ich gekappt': 'done Ranken kappen',
    },
    'birkenweg',
    'kai',
  );
  understood(
    {
      'triebe sind gestutzt': 'done Triebe stutzen',
      'sind die triebe gestutzt': '? unclear (keep-as-note)',
    },
    'fensterbrett',
    'jonas',
  );
});

describe('one more of the vessel told before', () => {
  understood({
    'two cans in the bench added, one more in the buckets':
      'North bench top-up 20; Bucket row top-up 10',
    'poured two cans into the bench and one in the buckets':
      'North bench top-up 20; Bucket row top-up 10',
    'bench one can and buckets two topped up': 'North bench top-up 10; Bucket row top-up 20',
  });
  understood(
    {
      'zwei eimer in den tisch gekippt, einer noch in die wanne':
        'Nordtisch top-up 24; Südwanne top-up 12',
      'zwei eimer in den tisch gekippt, eine pflanze in die wanne gesetzt': 'Nordtisch top-up 24',
    },
    'lindenhof',
    'jonas',
  );
});

describe('whose value and whose word it is', () => {
  understood({
    'per ines, dwc ph 6.2': 'passed over: hearsay',
    'bench ph 5.8 || the other one ph 6.1':
      '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'pen done, 7 read 7.05, 4 read 4.02':
      'greenhouse calibration 7 pen read 7.05; greenhouse calibration 4 pen read 4.02',
    'jars yesterday ph 5.7 today 5.9': 'Jar shelf ph ~5.7 at 3 May 12:00; Jar shelf ph 5.9',
    "i'd say dwc ph 5.8": 'Bucket row ph ~5.8',
    "jars half full i'd say": 'Jar shelf level ~12',
  });
  understood(
    { 'left is fine right ph 6.0': 'Right tub ph 6', 'left is all right ph 6.0': 'Left tub ph 6' },
    'hollow-oak',
    'finn',
  );
  understood(
    {
      'lt karin tisch ph 6,2': 'passed over: hearsay',
      'lt. karin hat der tisch ph 6,2': 'passed over: hearsay',
      'wanne ph 5,8 || die andere hat ph 6,1':
        '? which-system (Nordtisch, Südwanne, Rinnenstrecke, Gläserregal, Linke Tonne, Rechte Tonne)',
      'gestern ph wanne 5,7 heute 5,9': 'Südwanne ph ~5.7 at 3 May 12:00; Südwanne ph 5.9',
      'gläser noch halb voll würd ich sagen': 'Gläserregal level ~12',
      'luft pumpe in der linken tonne läuft wieder': 'Linke Tonne restored 1 air-pump',
    },
    'lindenhof',
    'jonas',
  );
});

describe('what is put right after a no, and what needs water', () => {
  understood({
    'buckets 5 l added || no the buckets got 8': 'correct top-up 8 Bucket row',
    'which ones need water?': 'asks what-is-due',
  });
  understood(
    {
      'nee die wanne hat 8 bekommen': 'correct top-up 8 Südwanne',
      'keine 5 l in die wanne gekippt': 'passed over: negation',
      'wer braucht wasser?': 'asks what-is-due',
    },
    'lindenhof',
    'jonas',
  );
});

describe('more of it, and nobody says how much', () => {
  understood({
    'put a can in the bench, maybe a bit more': 'North bench top-up 10',
    'put a can in the bench, a little more in the jars': 'North bench top-up 10; ? missing-amount',
    'put a can in the bench and another': 'North bench top-up 10; North bench top-up 10',
  });
  understood(
    {
      'eine Kanne in den Tisch gekippt, vielleicht etwas mehr': 'Nordtisch top-up 10',
      'eine Kanne in den Tisch gekippt, etwas mehr in die Wanne':
        'Nordtisch top-up 10; ? missing-amount',
    },
    'lindenhof',
    'jonas',
  );
});

describe('words that are a slip away from an alarm', () => {
  understood({
    'leaving the jars alone': '? unclear (keep-as-note)',
    'bench leaking': '? trouble (keep-as-note)',
    'bench leaking bad': '? trouble (keep-as-note)',
    'bench drippers dripping fine': '? unclear (keep-as-note)',
    'checked everything, all good': 'greenhouse note 1 "all good"',
  });
});

describe('against how it stood before, and a part of what there was', () => {
  understood({
    'dwc 4 cm since saturday': '? missing-amount',
    '4 cm lower than saturday in the dwc': '? missing-amount',
    'the dwc is losing water, 4 cm since saturday': '? which-quantity',
    'bench 40 cm': 'North bench level 300',
    '10 of the 12 l got into the jars': 'Jar shelf top-up 10',
    'poured 2 of the 5 l into the jars': 'Jar shelf top-up 2',
    'gutter pump was off, back on at 7':
      'Gutter run outage ~1 pump at 4 May 07:00; Gutter run restored 1 pump at 4 May 07:00',
  });
  understood(
    {
      'Wanne 4 cm seit Samstag': '? missing-amount',
      'Wanne 4 cm tiefer als am Samstag': '? which-quantity',
      '10 von den 12 l in die Wanne gekippt': 'Südwanne top-up 10',
    },
    'lindenhof',
    'jonas',
  );
});
