import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('cleaning told without its part or its system', () => {
  understood({
    'cleaned the gutters': '? was-it-cleaned (yes, keep-as-note)',
    'scrubbed the buckets': '? was-it-cleaned (yes, keep-as-note)',
    'cleaned the bench filter': '? was-it-cleaned (yes, keep-as-note)',
    'rinsed the air stones': '? was-it-cleaned (yes, keep-as-note)',
    'cleaned the filter': '? was-it-cleaned (North bench, Gutter run, keep-as-note)',
    'cleaned the gutters || yes': 'answered Gutter run duty-done 1 clean at 4 May 08:20',
    'cleaned the gutters on sunday || yes': 'answered Gutter run duty-done ~1 clean at 2 May 12:00',
    'cleaned the filter || the bench': 'answered North bench duty-done 1 clean at 4 May 08:20',
    'cleaned the filter || no': 'answered no',
  });
});

describe('what is no cleaning of theirs', () => {
  understood({
    'cleaned the jars': '? unclear (keep-as-note)',
    'cleaned the pen': '? unclear (keep-as-note)',
    'cleaned everything': '? unclear (keep-as-note)',
    'need to clean the gutters': 'passed over: intention',
    "didn't clean the filter": 'passed over: negation',
    'cleaned the air stones in the bench': '? unclear (keep-as-note)',
    'cleaned the gutters, ph 5.9': 'Gutter run ph 5.9',
  });
});

describe('air that was set, to nobody knows what', () => {
  understood({
    'did the air of the nft': '? missing-amount (keep-as-note)',
    'venturi is set': '? missing-amount (keep-as-note)',
    'turned the air up in the buckets': '? missing-amount (keep-as-note)',
    'venturi is set || 15': 'answered Gutter run aeration 15 at 4 May 08:20',
    'did the air of the nft || 10 min': 'answered Gutter run aeration 10 at 4 May 08:20',
    'did the air of the jars': '? unclear (keep-as-note)',
    'swapped the air pump on the buckets': '? unclear (keep-as-note)',
    "didn't set the venturi": 'passed over: negation',
    'will set the venturi': 'passed over: intention',
  });
});

describe('German: work told without its figures', () => {
  understood(
    {
      'Rinne geputzt': '? was-it-cleaned (yes, keep-as-note)',
      'hab den Filter gereinigt': '? was-it-cleaned (Nordtisch, Rinnenstrecke, keep-as-note)',
      'hab den Filter gereinigt || vom Tisch':
        'answered Nordtisch duty-done 1 clean at 4 May 09:20',
      'Gläser gewischt': '? unclear (keep-as-note)',
      'muss die Rinne noch putzen': 'passed over: intention',
      'Venturi eingestellt': '? missing-amount (keep-as-note)',
      'hab die Belüftung der Rinne gemacht': '? missing-amount (keep-as-note)',
    },
    'lindenhof',
    'karin',
  );
});
