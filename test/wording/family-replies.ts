import type { FamilyAlert, FamilyAnswer } from '../../src/assistant/replies/family.ts';
import type { ArrangementDraft } from '../../src/greenhouse/arrangement.ts';
import type { AwayPlan } from '../../src/planning/family/away-plan.ts';
import type { Dont, HowStep, HowTo } from '../../src/planning/family/how-to.ts';
import {
  bench,
  benchTopUp,
  buckets,
  date,
  entry,
  jars,
  jarTopUp,
  quarryLane,
  tieUp,
  today,
} from './quarry-lane.ts';

type OfEach<U extends { readonly kind: string }> = {
  readonly [K in U['kind']]: Extract<U, { readonly kind: K }>;
};

const from = date('2027-05-07');
const until = date('2027-05-16');

const settled: OfEach<ArrangementDraft> = {
  away: { kind: 'away', handle: 'ines', from, until },
  back: { kind: 'back', handle: 'ines', on: until },
  news: { kind: 'news', handle: 'ines', every: 'never' },
  covers: { kind: 'covers', handles: ['tomas', 'priya'], from, until },
  'cannot-go': { kind: 'cannot-go', handle: null, from, until: from, reason: null },
  'can-go': { kind: 'can-go', handle: 'tomas', from, until: from },
  rota: { kind: 'rota', handle: 'tomas', weekdays: [1, 4] },
  claim: {
    kind: 'claim',
    handle: 'priya',
    system: jars,
    duty: 'top-up',
    on: today,
    isEvening: true,
  },
  release: { kind: 'release', handle: 'priya', system: jars, on: today, reason: null },
};

const steps: OfEach<HowStep> = {
  'fetch-water': { kind: 'fetch-water', litres: 43 },
  mix: { kind: 'mix', work: [{ kind: 'stir' }] },
  pour: { kind: 'pour', toL: 22 },
  'read-level': { kind: 'read-level' },
  'dip-probe': { kind: 'dip-probe', quantities: ['ph', 'ec'], probes: ['pen', 'stick'] },
  'rinse-probe': { kind: 'rinse-probe' },
  buffers: { kind: 'buffers', probe: 'pen', isPh: true },
  work: { kind: 'work', work: [{ kind: 'unplug' }, { kind: 'empty' }] },
  'set-air': { kind: 'set-air', minutesPerHour: 5 },
  'wait-for-figures': { kind: 'wait-for-figures' },
  answer: { kind: 'answer', duty: 'top-up', litres: 43 },
};

const donts: Readonly<Record<Dont, true>> = {
  'no-guessing-products': true,
  'no-over-brim': true,
  'no-drowned-air-roots': true,
  'no-pumps-off': true,
  'no-acids-untaught': true,
  'no-one-probe-for-all': true,
};

const how: HowTo = {
  system: quarryLane.systems[3]!,
  duty: jarTopUp.duty,
  line: null,
  steps: Object.values(steps),
  tips: [
    { text: 'the tap is behind the door', photo: null },
    { text: '', photo: { channel: 'page', id: 'p1' } },
  ],
  donts: Object.keys(donts) as Dont[],
  cautions: { about: ['concentrates-apart'], inFull: true },
};

const awayPlan: AwayPlan = {
  from,
  until,
  systems: [
    { system: bench, asItIs: date('2027-05-12'), ifFilled: null },
    { system: buckets, asItIs: date('2027-05-08'), ifFilled: date('2027-05-11') },
  ],
  before: {
    fill: [{ system: bench, litres: 43 }],
    lines: [tieUp],
    timers: [bench, buckets],
  },
  supplies: {
    stock: [{ product: 'nutrient-a', leftMl: 90, lacksMl: 300, emptyOn: date('2027-05-12') }],
    rain: { leftL: 60, neededL: 340, emptyOn: date('2027-05-10') },
    fresh: [{ probe: 'pen', isPh: true }],
  },
  trips: [
    {
      date: date('2027-05-10'),
      by: 'tomas',
      topUps: [{ system: buckets, litres: 30 }],
      lines: [tieUp],
    },
    { date: date('2027-05-14'), by: null, topUps: [], lines: [] },
  ],
  unsafe: [{ system: jars, from: date('2027-05-15') }],
};

export const familyAnswers: OfEach<FamilyAnswer> = {
  settled: {
    kind: 'settled',
    items: Object.values(settled),
    instead: [{ handle: 'olli' }],
    unjoined: ['olli'],
  },
  'after-all': {
    kind: 'after-all',
    handle: 'tomas',
    from,
    until,
    was: 'hindered',
    turns: [from],
    others: ['priya'],
  },
  unsettled: { kind: 'unsettled', items: Object.values(settled) },
  'away-plan': {
    kind: 'away-plan',
    handle: 'ines',
    isThought: false,
    plan: awayPlan,
  },
  'home-coming': {
    kind: 'home-coming',
    alerts: [
      {
        atMs: Date.parse('2027-05-03T12:00:00+01:00'),
        alert: {
          kind: 'surprise',
          surprise: {
            key: 'k',
            atMs: Date.parse('2027-05-03T12:00:00+01:00'),
            kind: 'move',
            system: buckets,
            quantity: 'ph',
            from: 5.8,
            to: 7,
            fromMs: Date.parse('2027-05-02T12:00:00+01:00'),
            usualPerDay: 0.2,
          },
        },
      },
    ],
    today: [],
    next: [benchTopUp],
    story: {
      fromMs: Date.parse('2027-05-01T07:00:00+01:00'),
      untilMs: Date.parse('2027-05-04T08:00:00+01:00'),
      people: [
        {
          handle: 'tomas',
          visits: 2,
          toppedUp: [{ system: buckets, litres: 30 }],
          others: [entry('dose', 10, { product: 'ph-down' })],
        },
      ],
      unmeasured: [
        { systems: [jars, buckets], quantities: ['ph', 'ec'] },
        { systems: [bench], quantities: ['level'] },
      ],
      changed: [{ system: buckets, quantity: 'ph', before: 5.8, after: 6.3 }],
      odd: [
        { kind: 'missed', system: jars, days: 1 },
        { kind: 'outside-range', entry: entry('ph', 6.9) },
        { kind: 'far-from-expected', entry: entry('ec', 3.1) },
        {
          kind: 'outage',
          entry: entry('outage', 1, { system: null, of: 'power' }),
          untilMs: Date.parse('2027-05-04T12:00:00+01:00'),
        },
        {
          kind: 'failed',
          entry: entry('duty-failed', 1, { duty: 'top-up', note: 'lid is stuck' }),
        },
      ],
    },
  },
  'my-turns': {
    kind: 'my-turns',
    days: [date('2027-05-08'), date('2027-05-09')],
    isEveryDay: false,
    claims: [],
    next: [benchTopUp],
  },
  roster: {
    kind: 'roster',
    days: [
      { date: today, handles: ['tomas'] },
      { date: from, handles: [] },
    ],
    claims: [{ handle: 'priya', settled: settled.claim }],
  },
  'how-to': { kind: 'how-to', how },
  photo: {
    kind: 'photo',
    photo: { channel: 'page', id: 'p1' },
    system: bench,
    text: 'the tap is behind the door',
  },
  'no-such-duty': { kind: 'no-such-duty', isChoice: false },
  'one-chore': { kind: 'one-chore', handle: 'ines', date: from },
  'back-when': { kind: 'back-when', handle: 'ines', until: from },
  'who-is-away': { kind: 'who-is-away', absences: [{ handle: 'ines', from, until: from }] },
  'nobody-away': { kind: 'nobody-away' },
  danger: { kind: 'danger', of: 'shock', told: ['ines', 'priya'] },
};

export const familyAlerts: OfEach<FamilyAlert> = {
  undone: { kind: 'undone', stage: 'offer', of: 'tomas', duties: [benchTopUp.duty] },
  'your-days': { kind: 'your-days', away: 'ines', from, until, days: [from] },
  'done-by-other': { kind: 'done-by-other', by: 'priya', duty: benchTopUp.duty },
  'turn-passed': { kind: 'turn-passed', by: 'tomas', days: [from], reason: 'ill', isYours: true },
  'days-dropped': { kind: 'days-dropped', by: 'tomas', from, until, turns: 12, reason: null },
  trouble: {
    kind: 'trouble',
    entry: entry('note', 1, { note: 'row is leaking', trouble: 'leak' }),
  },
  danger: { kind: 'danger', of: 'spill', by: 'tomas', words: 'acid in my eye', system: null },
  'given-back': { kind: 'given-back', by: 'tomas', duties: [benchTopUp.duty], reason: 'ill' },
  relieved: { kind: 'relieved', by: 'ines', days: [from], instead: ['priya'], still: [until] },
  'claim-off': { kind: 'claim-off', by: 'ines', settled: settled.claim, instead: 'tomas' },
  leaving: { kind: 'leaving', plan: awayPlan },
  'named-for': { kind: 'named-for', by: 'ines', settled: settled.claim },
};
