import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('negation', () => {
  understood({
    "didn't top up the jars, still plenty": 'passed over: negation',
    "didn't top up": 'passed over: negation',
    'no need for water': 'passed over: negation',
    "haven't topped up the bench yet": 'passed over: negation',
    'not topped up': 'passed over: negation',
    'did not add any ph down': 'passed over: negation',
    "didn't add 20 ml A and 20 ml B to the bench": 'passed over: negation; passed over: negation',
    "didn't top up the jars but topped up the bench 12 l":
      'passed over: negation; North bench top-up 12',
    "didn't top up the jars, topped up the bench 12 l":
      'passed over: negation; North bench top-up 12',
    'no water added': 'passed over: negation',
    'nothing added': 'passed over: negation',
    'dwc ph 5.8 not bad': 'Bucket row ph 5.8',
    'dwc ph 5.8, not bad': 'Bucket row ph 5.8',
    'dwc not topped up': 'passed over: negation',
    'never topped up the jars': 'passed over: negation',
    'dwc ph not 5.8': 'passed over: negation',
    'dint top up the jars 12 l': 'passed over: negation',
    "the jars don't need 3 l": 'passed over: negation',
  });
});

describe('intention', () => {
  understood({
    'will top up tonight': 'passed over: intention',
    'will top up the bench tonight with 40 l': 'passed over: intention',
    'going to add 12 l to the dwc': 'passed over: intention',
    'need to change the bench': 'passed over: intention',
    'need to top up the bench, 40 l': 'passed over: intention',
    'the bench needs 40 l': 'passed over: intention',
    '12 l needed in the dwc': 'passed over: intention',
    "i'll add 20 ml A and 20 ml B to the bench tomorrow":
      'passed over: intention; passed over: intention',
    'should add 12 l': 'passed over: intention',
    'must top up the dwc': 'passed over: intention',
    'topped up 12 l in the dwc, will do the jars later': 'Bucket row top-up 12',
    'dwc ph 5.8, need to check ec later': 'Bucket row ph 5.8',
    'please top up the bench with 40 l': 'passed over: intention',
    'can you top up the bench with 40 l': 'passed over: intention',
    'remember to add 12 l to the dwc': 'passed over: intention',
    "let's add 12 l to the dwc": 'passed over: intention',
    'want to add 10 ml up to the dwc': 'passed over: intention',
    'was going to top up the dwc with 12 l': 'passed over: intention',
    'dwc could do with 12 l': 'passed over: intention',
    'top up the bench tonight': 'passed over: intention',
    'tomorrow dwc 12 l': 'passed over: intention',
  });
});

describe('condition', () => {
  understood({
    'if the ph is 5.4 add 10 ml up': 'passed over: condition; passed over: condition',
    'if the dwc ph is 5.4': 'passed over: condition',
    'add 10 ml up if the dwc ph is 5.4': 'passed over: condition; passed over: condition',
    "when the ph hits 5.4 i'll add 10 ml up": 'passed over: condition; passed over: intention',
    'unless the dwc is at 80 l': 'passed over: condition',
    'in case dwc ph is 5.4': 'passed over: condition',
  });
});

describe('what was forgotten', () => {
  understood({
    'forgot to top up the jars': 'passed over: forgotten',
    'forgot to add 10 ml ph up to the dwc': 'passed over: forgotten',
    'forgot the jars': 'passed over: forgotten',
    'forgot to say: topped up 12 l in the dwc': 'Bucket row top-up 12',
    'forgot to mention dwc ph 5.8': 'Bucket row ph 5.8',
  });
});

describe('hearsay', () => {
  understood({
    'my neighbour runs his at 5.5': 'passed over: hearsay',
    'the book says ph 5.5': 'passed over: hearsay',
    'last year it was 5.5': 'passed over: hearsay',
    'last year the dwc was 5.5': 'passed over: hearsay',
    'google says ec 2.0': 'passed over: hearsay',
    'priya says the dwc is at 5.4': 'passed over: hearsay',
    'priya said ph 5.8 in the dwc': 'passed over: hearsay',
    'they say ph 5.5': 'passed over: hearsay',
    "a friend's dwc runs at ph 5.5": 'passed over: hearsay',
    'usually the dwc is at 5.8': 'passed over: hearsay',
    'dwc ph is always 5.8': 'passed over: hearsay',
    'the pen says 5.8 in the dwc': 'Bucket row ph 5.8',
    'stick says 1.7 in the dwc': 'Bucket row ec 1.7',
    'pen: dwc 5.8': 'Bucket row ph 5.8',
    'dwc pen 5.8 stick 1.7': 'Bucket row ph 5.8; Bucket row ec 1.7',
    'it says 5.8 ph in the dwc': 'Bucket row ph 5.8',
  });
});

describe('targets', () => {
  understood({
    'target ph 5.8': 'passed over: target',
    'dwc ph should be 5.8': 'passed over: target',
    'aim for 5.8 in the dwc': 'passed over: target',
    'ideal ph is 5.8': 'passed over: target',
    'dwc wants ph 5.8': 'passed over: intention',
  });
});

describe('forecasts and extremes', () => {
  understood({
    'going to be 30 tomorrow': 'passed over: intention',
    'forecast 30C tomorrow': 'passed over: intention',
    'forecast says 31': 'passed over: not-a-reading',
    "yesterday's maximum was 31": 'passed over: not-a-reading',
    'max 31 min 12': 'passed over: not-a-reading',
    'air max 31': 'passed over: not-a-reading',
    'it was 31 max in here yesterday': 'passed over: not-a-reading',
  });
});

describe('numbers that are not readings', () => {
  understood({
    'dwc ph 5.8, 20 plants look fine': 'Bucket row ph 5.8',
    '3 leaves yellow on the dwc': '? unclear (keep-as-note)',
    'bucket 4 looks sad': '? unclear (keep-as-note)',
    'bucket 4 ph 5.8': 'Bucket row ph 5.8',
    'dwc ph 5.8, plant 3 is wilting': 'Bucket row ph 5.8',
    'row 3 has aphids': '? trouble (keep-as-note)',
    'error 5 on the pen': '? unclear (keep-as-note)',
    'pen shows error 12': '? unclear (keep-as-note)',
    'my number is 0871234567': '? unclear (keep-as-note)',
    'ph down cost 12.50': 'passed over: not-a-reading',
    'ph down was £12': 'passed over: not-a-reading',
    'paid 30 euro for nutrients': 'passed over: not-a-reading',
    'dwc ph 5.8, 3 new leaves': 'Bucket row ph 5.8',
    '6 buckets in the row, ph 5.8': 'Bucket row ph 5.8',
    'day 12, dwc ph 5.8': 'Bucket row ph 5.8',
    'week 3: dwc ph 5.8': 'Bucket row ph 5.8',
    'all 12 jars look good': '? unclear (keep-as-note)',
    'moved 3 plants to the nft': '? unclear (keep-as-note)',
    'found 2 slugs in the jars': '? unclear (keep-as-note)',
    '50% shade on the bench': '? unclear (keep-as-note)',
    'the 10 l bucket broke': '? unclear (keep-as-note)',
    'planted 12 lettuces in the jars': '? unclear (keep-as-note)',
    'two of the jars are leaking': '? trouble (keep-as-note)',
    'one of the jars is leaking': '? trouble (keep-as-note)',
    'dwc has 6 plants': '? unclear (keep-as-note)',
  });
});
