import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('duties done, failed, and all good', () => {
  understood({
    done: '? which-duties',
    'all done': '? which-duties',
    'done!': '? which-duties',
    '✅': '? which-duties',
    '👍': '? which-duties',
    'did the jars': '? which-duties',
    'did the jars and the bench': '? which-duties',
    'jars done': '? which-duties',
    'the jars are done': '? which-duties',
    'done with the jars': '? which-duties',
    'finished the bench': '? which-duties',
    'done except gutters': '? which-duties',
    'done except for the gutters': '? which-duties',
    'all done except gutters and jars': '? which-duties',
    'everything except the jars': '? which-duties',
    'did everything but the jars': '? which-duties',
    'all but the gutters': '? which-duties',
    'done, not the gutters': '? which-duties',
    'done: jars, bench': '? which-duties',
    'did all': '? which-duties',
    'did it': '? which-duties',
    'did the jars, ph 6.0': '? which-duties; Jar shelf ph 6',
    'done. dwc ph 5.8 ec 1.7': '? which-duties; Bucket row ph 5.8; Bucket row ec 1.7',
    'all done, dwc ph 5.8': '? which-duties; Bucket row ph 5.8',
    'tied up the tomatoes': 'done tie up the tomatoes',
    'tied the tomatoes up': 'done tie up the tomatoes',
    'need to tie up the tomatoes': 'passed over: intention',
    'done: tie up the tomatoes': 'done tie up the tomatoes',
    "did the jars' lids": '? unclear (keep-as-note)',
    'all good': 'greenhouse note 1 "all good"',
    'all good in the jars': 'Jar shelf note 1 "all good in the jars"',
    'all good here, dwc ph 5.8': 'Bucket row ph 5.8',
    'everything looks good': 'greenhouse note 1 "everything looks good"',
    'all fine': 'greenhouse note 1 "all fine"',
    "couldn't do the jars, lid is stuck": 'Jar shelf duty-failed 1 "lid is stuck"',
    "couldn't do the jars because the lid is stuck":
      'Jar shelf duty-failed 1 "because the lid is stuck"',
    "couldn't do the jars. lid is stuck": 'Jar shelf duty-failed 1 "lid is stuck"',
    'could not top up the bench, hose is broken':
      'North bench duty-failed 1 top-up "hose is broken"',
    "can't do the jars today, no time": 'Jar shelf duty-failed 1 "no time"',
    "couldn't get to the gutters": 'Gutter run duty-failed 1',
    "wasn't able to change the dwc": 'Bucket row duty-failed 1 reservoir-change',
    "couldn't do the jars, dwc ph 5.8": 'Jar shelf duty-failed 1; Bucket row ph 5.8',
    "couldn't measure the ph in the dwc, pen battery dead":
      'Bucket row duty-failed 1 check "pen battery dead"',
    "couldn't do it, lid stuck": '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    "couldn't calibrate the pen": 'greenhouse duty-failed 1 calibration',
    "jars couldn't be done, lid stuck": 'Jar shelf duty-failed 1 "lid stuck"',
    "couldn't do the jars or the gutters, no time":
      'Gutter run duty-failed 1 "no time"; Jar shelf duty-failed 1 "no time"',
  });
});

describe('notes', () => {
  understood({
    'note: aphids on the third basil gutter':
      'greenhouse note 1 "aphids on the third basil gutter"',
    'note: jars need new lids': 'Jar shelf note 1 "jars need new lids"',
    'note jars need new lids': 'Jar shelf note 1 "jars need new lids"',
    'note - dwc ph 5.4 looks odd': 'Bucket row note 1 "dwc ph 5.4 looks odd"',
    'Note: Bench and jars swapped': 'greenhouse note 1 "Bench and jars swapped"',
    'dwc ph 5.8. note: aphids on the bench':
      'Bucket row ph 5.8; North bench note 1 "aphids on the bench"',
    'note to self: buy ph down': 'greenhouse note 1 "buy ph down"',
    'notes: ph 5.8': 'greenhouse note 1 "ph 5.8"',
    'please note the lid is stuck': 'greenhouse note 1 "the lid is stuck"',
  });
});

describe('chatter', () => {
  understood({
    'lovely sunrise today': '? unclear (keep-as-note)',
    'dwc ph 5.8, lovely sunrise today': 'Bucket row ph 5.8',
    'lovely sunrise, dwc ph 5.8 😀': 'Bucket row ph 5.8',
    thanks: 'passed over: thanks',
    'thank you!': 'passed over: thanks',
    hi: 'passed over: greeting',
    'hello everyone': 'passed over: greeting',
    'good morning': 'passed over: greeting',
    ok: 'passed over: chatter',
    asdf: '? unclear (keep-as-note)',
    '😀': '? unclear (keep-as-note)',
    '5': '? which-quantity',
    '1234': '? which-quantity',
    dwc: '? unclear (keep-as-note)',
    'the dwc': '? unclear (keep-as-note)',
    '....': '? unclear (keep-as-note)',
    'ok cool': 'passed over: chatter',
    'good night all': 'passed over: greeting',
  });
});
