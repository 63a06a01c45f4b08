import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('a day that heads what is told', () => {
  understood({
    'yesterday\n7:10 bench 6.1 2.3\n7:20 buckets 5.9':
      'North bench ph 6.1 at 3 May 07:10; North bench ec 2.3 at 3 May 07:10; ? which-quantity (ph, ec, water-temperature)',
    'yesterday: bench ph 6.1 at 19:10, buckets ph 5.9 at 19:20':
      'North bench ph 6.1 at 3 May 19:10; Bucket row ph 5.9 at 3 May 19:20',
    'yesterday:\nbench ph 6.1\nbuckets ph 5.9':
      'North bench ph ~6.1 at 3 May 12:00; Bucket row ph ~5.9 at 3 May 12:00',
    'from yesterday: bench ph 6.1': 'North bench ph ~6.1 at 3 May 12:00',
    'forgot to tell you yesterday: jars got 3 l around 6pm': 'Jar shelf top-up ~3 at 3 May 18:00',
  });
  understood(
    {
      'gestern: tisch um 19:10 ph 6,1, wanne um 19:20 ph 5,9':
        'Nordtisch ph 6.1 at 3 May 19:10; Südwanne ph 5.9 at 3 May 19:20',
      'hatte gestern vergessen: gläser abends noch 2 l nachgefüllt':
        'Gläserregal top-up ~2 at 3 May 21:00',
    },
    'lindenhof',
    'karin',
  );
});

describe('rows under one word, and names that go on', () => {
  understood({
    'ph\nbench 6.1\nbuckets 5.9': 'North bench ph 6.1; Bucket row ph 5.9',
    'ph\n6.1\n5.9': '? which-system',
  });
  understood(
    {
      'leitwert:\ntisch 2,3\nwanne 1,8': 'Nordtisch ec 2.3; Südwanne ec 1.8',
      'tonnen alle beide voll': 'Linke Tonne level 60; Rechte Tonne level 60',
    },
    'lindenhof',
    'karin',
  );
  understood(
    {
      'kiste eins und zwei ph 5,8': 'Kiste 1 ph 5.8; Kiste 2 ph 5.8',
      'kiste eins und zwei kannen': '? unclear (keep-as-note)',
    },
    'birkenweg',
    'kai',
  );
  understood(
    {
      'tubs both full': 'Left tub level 80; Right tub level 80',
      'the left tub is 70 l now': '? is-it-a-reading (yes, no)',
      'the left tub is 30 l now': 'Left tub level 30',
    },
    'hollow-oak',
    'finn',
  );
});

describe('what was picked, counted and then weighed', () => {
  understood({
    '14 cucumbers off the buckets, 4.2 kg': 'Bucket row harvest 4200',
    '800 g tomatoes yesterday evening and 350 g just now':
      'North bench harvest ~800 at 3 May 21:00; North bench harvest 350',
    'sold 14 cucumbers, 4.2 kg': '? which-quantity',
    'planted 14 cucumbers, 4.2 kg': '? which-quantity',
  });
  understood(
    {
      'gurken: 6, zusammen 2,1 kg': 'Südwanne harvest 2100',
      '14 gurken gekauft, 4,2 kg': '? which-quantity',
    },
    'lindenhof',
    'karin',
  );
});

describe('what looks like an amount and is none', () => {
  understood({
    'bench floods every 3 hours from now': '? unclear (keep-as-note)',
    'bench fill took 9 min': 'North bench fill-time 9',
    'nothing yet': 'passed over: negation',
  });
  understood(
    {
      'tisch flutet alle 3 stunden': '? unclear (keep-as-note)',
      'noch nix': 'passed over: negation',
      '5 ml ph-minus in der rinne haben nix gebracht': 'Rinnenstrecke dose 5 ph-down',
    },
    'lindenhof',
    'karin',
  );
});

describe('a slip of yesterday', () => {
  understood({
    "last night's jar top up was 2 l, i'd written 3": 'correct top-up 2 from 3 Jar shelf',
    'the 12 l from yesterday in the gutters were only 10': 'correct top-up 10 from 12 Gutter run',
    'the ec was 1.7 yesterday in the bench': 'North bench ec ~1.7 at 3 May 12:00',
  });
  understood(
    {
      'gestern die wanne war 5,7 statt 5,9': 'correct ph 5.7 from 5.9 Südwanne',
      'die 12 l von gestern in der rinne waren nur 10': 'correct top-up 10 from 12 Rinnenstrecke',
      'wanne ph 58 || mach 5,8 draus': 'answered Südwanne ph 5.8 at 4 May 09:20',
      'wanne 5,6 || mach 5,8 draus': '? which-quantity (ph, ec, water-temperature)',
    },
    'lindenhof',
    'karin',
  );
});

describe('what went in, who drinks, and how long since', () => {
  understood({
    'how much went in the gutters': 'asks use Gutter run 2027-04-28 2027-05-04',
    'how much water did the jars get yesterday': 'asks use Jar shelf 2027-05-03 2027-05-03',
    'how much A went in the gutters': 'asks who Gutter run dose',
    'how much should i top up the bench': 'asks what-is-due North bench',
    'how much do i need to carry tomorrow': 'asks what-is-due',
    'which one drinks most': 'asks use isRanked 2027-04-28 2027-05-04',
    'how long since we changed the buckets': 'asks who Bucket row reservoir-change',
    'how long will the buckets last': 'asks how-long Bucket row',
    'how often do i change the gutters': 'asks when-next isOften Gutter run reservoir-change',
    "who's right, me or tomas?": 'asks unknown',
  });
  understood(
    {
      'wie viel kam in die rinne': 'asks use Rinnenstrecke 2027-04-28 2027-05-04',
      'wer säuft am meisten': 'asks use isRanked 2027-04-28 2027-05-04',
      'wie lange ist der letzte wechsel der wanne her': 'asks who Südwanne reservoir-change',
      'wer hat recht?': 'asks unknown',
    },
    'lindenhof',
    'karin',
  );
});
