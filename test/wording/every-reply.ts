import type { HouseholdWish } from '../../src/assistant/household/wish.ts';
import type { ButtonLabel } from '../../src/assistant/outgoing.ts';
import type {
  AdviceAlert,
  AdviceAnswer,
  AdviceRemark,
} from '../../src/assistant/replies/advice.ts';
import type { Answer, Lasting } from '../../src/assistant/replies/answer.ts';
import type { HouseholdNews } from '../../src/assistant/replies/household-news.ts';
import type { Alert, Refusal, Remark, Reply } from '../../src/assistant/replies/reply.ts';
import type { Entry } from '../../src/greenhouse/entry.ts';
import type { LocalDate, LocalTime } from '../../src/greenhouse/local-time.ts';
import type { Quantity } from '../../src/greenhouse/quantity.ts';
import type { GuideProblem, GuideStep } from '../../src/greenhouse/set-up/guide-step.ts';
import type { SetUpChange, UnfitChange } from '../../src/greenhouse/set-up/set-up-change.ts';
import { methods } from '../../src/greenhouse/system.ts';
import { allCautions } from '../../src/planning/cautions-for.ts';
import type { DutyLine } from '../../src/planning/duty-line.ts';
import type { SeasonFigures } from '../../src/planning/season.ts';
import type { WhatIf } from '../../src/planning/what-if/what-if.ts';
import type {
  Assumption,
  Choice,
  ChoiceLabel,
  DoubtReason,
} from '../../src/understanding/statement.ts';
import { familyAlerts, familyAnswers } from './family-replies.ts';
import {
  bench,
  benchTopUp,
  buckets,
  check,
  date,
  entry,
  gutters,
  jars,
  jarTopUp,
  quarryLane,
  tieUp,
  today,
} from './quarry-lane.ts';

/** One of each kind: the compiler says which kind has no example. */
type OfEach<U extends { readonly kind: string }> = {
  readonly [K in U['kind']]: U extends { readonly kind: infer Kinds }
    ? K extends Kinds
      ? U & { readonly kind: K }
      : never
    : never;
};

const yesterdayMs = Date.parse('2027-05-03T18:00:00+01:00');
const nowMs = Date.parse('2027-05-04T08:20:00+01:00');

export const entries: Readonly<Record<Quantity, Entry>> = {
  ph: entry('ph', 5.8),
  ec: entry('ec', 1.7),
  'water-temperature': entry('water-temperature', 21),
  'air-temperature': entry('air-temperature', 31.5, { system: null }),
  humidity: entry('humidity', 60, { system: null }),
  'dissolved-oxygen': entry('dissolved-oxygen', 8.2),
  level: entry('level', 90, { saidAs: { kind: 'below-brim', cm: 5 } }),
  'top-up': entry('top-up', 12, { approximate: true }),
  'reservoir-change': entry('reservoir-change', 108),
  dose: entry('dose', 10, { product: 'ph-down' }),
  calibration: entry('calibration', 7, { system: null, probe: 'pen', read: 7.12 }),
  'fill-time': entry('fill-time', 9, { system: bench }),
  aeration: entry('aeration', 10, { system: gutters }),
  outage: entry('outage', 1, { system: null, of: 'power', atMs: yesterdayMs }),
  restored: entry('restored', 1, { of: 'air-pump' }),
  harvest: entry('harvest', 1200),
  'duty-done': entry('duty-done', 1, { duty: 'chore', chore: 'tie up the tomatoes' }),
  'duty-failed': entry('duty-failed', 1, { duty: 'top-up', note: 'lid is stuck' }),
  note: entry('note', 1, { note: 'leaves  look\npale' }),
};

export const assumptions: OfEach<Assumption> = {
  'system-from-conversation': { kind: 'system-from-conversation', system: buckets },
  'bare-volume': { kind: 'bare-volume', unit: 'L' },
  'bare-conductivity': { kind: 'bare-conductivity', unit: 'mS/cm' },
  'tds-factor': { kind: 'tds-factor', factor: 500 },
  shorthand: { kind: 'shorthand' },
  'brim-volume': { kind: 'brim-volume' },
  'slip-in-name': { kind: 'slip-in-name', written: 'bukcets', system: buckets },
};

export const remarks: OfEach<Exclude<Remark, AdviceRemark>> = {
  'outside-range': {
    kind: 'outside-range',
    entry: entry('ph', 5.3),
    lowest: 5.5,
    highest: 6.2,
  },
  'far-from-expected': { kind: 'far-from-expected', entry: entry('ph', 7.4), expected: 5.8 },
  trouble: { kind: 'trouble', told: ['ines'] },
  'already-known': { kind: 'already-known' },
  'lasts-until': { kind: 'lasts-until', system: buckets, date: date('2027-05-09') },
};

const waitingPh = { for: 'system', drafts: [entry('ph', 5.8, { system: null })] } as const;

export const doubtReasons: OfEach<DoubtReason> = {
  'which-system': { kind: 'which-system', quantity: 'ph', written: 'ntf' },
  'which-quantity': { kind: 'which-quantity', value: '5.8' },
  'in-it-or-added': { kind: 'in-it-or-added', litres: 12 },
  'which-product': { kind: 'which-product', amount: '30 ml feed' },
  'which-unit': { kind: 'which-unit', quantity: 'level', value: '95' },
  'out-of-range': { kind: 'out-of-range', quantity: 'ph', value: 54, lowest: 3, highest: 9 },
  conflict: { kind: 'conflict', quantity: 'ph', values: [5.9, 6.2] },
  'missing-amount': { kind: 'missing-amount', quantity: 'top-up' },
  'litres-to-brim': { kind: 'litres-to-brim' },
  'shared-amount': { kind: 'shared-amount', quantity: 'top-up', amount: '10 l' },
  'which-time': { kind: 'which-time', written: 'at 18:00' },
  'since-when': { kind: 'since-when', of: 'power', written: 'since 14:30' },
  'how-long-out': { kind: 'how-long-out', of: 'power' },
  'switched-or-failed': { kind: 'switched-or-failed', of: 'air-pump' },
  'stopped-altogether': { kind: 'stopped-altogether', of: 'pump' },
  'is-it-a-reading': { kind: 'is-it-a-reading' },
  'shorthand-does-not-fit': { kind: 'shorthand-does-not-fit' },
  'whose-photo': { kind: 'whose-photo' },
  trouble: { kind: 'trouble', of: 'leak', tells: ['ines'] },
  'which-duties': { kind: 'which-duties' },
  'which-failed': { kind: 'which-failed' },
  'was-it-cleaned': { kind: 'was-it-cleaned', system: bench, parts: ['pump-filter'] },
  unclear: { kind: 'unclear' },
  'change-set-up': {
    kind: 'change-set-up',
    change: { kind: 'figure-set', system: bench, figure: 'lowL', value: 160 },
    was: { kind: 'figure-set', system: bench, figure: 'lowL', value: 150 },
  },
  'planted-where': {
    kind: 'planted-where',
    planting: { crop: 'lettuce', plants: 12, on: '2027-07-06' as LocalDate },
  },
  'how-much-stock': { kind: 'how-much-stock', product: 'ph-down', is: 'left', leftMl: 400 },
  guide: { kind: 'guide', step: { kind: 'name' }, problem: null },
  'one-or-two': { kind: 'one-or-two', entry: entry('top-up', 12).no, by: 'tomas' },
  'away-when': { kind: 'away-when' },
  'who-covers': { kind: 'who-covers', from: date('2027-05-07'), until: date('2027-05-16') },
  'why-not': { kind: 'why-not', duty: benchTopUp.duty, entry: entry('ph', 5.8).no },
};

const choiceLabels: OfEach<ChoiceLabel> = {
  system: { kind: 'system', system: bench },
  systems: { kind: 'systems', systems: [bench, buckets, gutters] },
  quantity: { kind: 'quantity', quantity: 'water-temperature' },
  'quantity-of-each': { kind: 'quantity-of-each', quantity: 'top-up' },
  value: { kind: 'value', quantity: 'ph', value: 5.4 },
  amount: { kind: 'amount', text: '1,413 µS/cm as a thousand four hundred' },
  each: { kind: 'each' },
  'in-all': { kind: 'in-all' },
  time: { kind: 'time', atMs: yesterdayMs },
  yes: { kind: 'yes' },
  no: { kind: 'no' },
  'one-top-up': { kind: 'one-top-up' },
  'two-top-ups': { kind: 'two-top-ups' },
  'done-without-figures': { kind: 'done-without-figures' },
  product: { kind: 'product', product: 'nutrient-a' },
  'still-out': { kind: 'still-out' },
  'keep-as-note': { kind: 'keep-as-note' },
  work: { kind: 'work', duties: [check(buckets).duty, check(jars).duty] },
  'all-work': { kind: 'all-work' },
};

const choices: readonly Choice[] = Object.values(choiceLabels).map((label) => ({
  label,
  drafts: [entry('ph', 5.8)],
}));

const lasting: Lasting = {
  system: buckets,
  litres: 90.2,
  usePerDayL: 5.04,
  lowOnEarly: date('2027-05-06'),
  lowOnLikely: date('2027-05-07'),
  lowOnLate: date('2027-05-12'),
};

const alsoOfLaterDays: readonly DutyLine[] = [
  { ...benchTopUp, duty: { ...benchTopUp.duty, dueOn: date('2027-05-06') } },
];

export const householdNews: OfEach<HouseholdNews> = {
  welcome: { kind: 'welcome', name: 'Priya', role: 'helper' },
  'already-in': { kind: 'already-in', name: 'Priya', role: 'helper' },
  'has-joined': { kind: 'has-joined', name: 'Priya', role: 'helper' },
  'has-left': { kind: 'has-left', name: 'Priya' },
  invited: {
    kind: 'invited',
    role: 'helper',
    name: null,
    expiresAtMs: Date.parse('2027-05-11T08:20:00+01:00'),
  },
  'invited-in-private': { kind: 'invited-in-private' },
  'who-is-in': {
    kind: 'who-is-in',
    members: [
      { name: 'Ines', role: 'grower', reach: 'reached' },
      { name: 'Olli', role: 'helper', reach: 'blocked' },
      { name: 'Priya', role: 'helper', reach: 'no-account' },
    ],
    rooms: ['Family', 'Neighbours'],
  },
  removed: { kind: 'removed', name: 'Olli' },
  'taken-out': { kind: 'taken-out', by: 'Ines', accountId: '5100000003' },
  'not-in': { kind: 'not-in', name: 'Olli' },
  'really-leave': { kind: 'really-leave', isLastGrower: true },
  farewell: { kind: 'farewell' },
  stays: { kind: 'stays' },
  'growers-only': { kind: 'growers-only' },
  'room-tied': { kind: 'room-tied', readsAll: false },
  'room-untied': { kind: 'room-untied' },
  'turned-to': { kind: 'turned-to' },
  'no-words': { kind: 'no-words' },
};

const seasonOfBench: SeasonFigures = {
  system: bench,
  crop: 'tomato',
  plants: 20,
  from: date('2027-03-01'),
  isFromLogbook: false,
  days: 64,
  litres: 540,
  nutrientMl: 1200,
  visits: 31,
  troubleMin: 12,
  harvestG: 4200,
  firstHarvestOn: date('2027-04-30'),
  firstFruitOn: date('2027-04-28'),
  gPerPlant: 210,
  gPerLitre: 7.8,
};

const whatIfTold: WhatIf = {
  scenario: { kind: 'go-on', on: '2027-05-07' as LocalDate },
  planned: '2027-05-05' as LocalDate,
  instead: '2027-05-07' as LocalDate,
  withinDays: 14,
  tripsPlanned: 4,
  tripsInstead: 3,
  systems: [
    {
      system: bench,
      isLevelKnown: true,
      chanceLow: 0.7,
      lowOnLikely: '2027-05-06' as LocalDate,
      usePerDayL: 20,
      usePerDayIfL: 31,
      fillL: 120,
    },
    {
      system: jars,
      isLevelKnown: false,
      chanceLow: 0.2,
      lowOnLikely: null,
      usePerDayL: 0.5,
      usePerDayIfL: 0.6,
      fillL: 2,
    },
  ],
};

const setUpChanges: OfEach<SetUpChange> = {
  'chore-added': {
    kind: 'chore-added',
    chore: { name: 'clean the gutter ends', system: gutters, everyDays: 10, lastDoneOn: null },
  },
  'chore-moved': { kind: 'chore-moved', name: 'tie up the tomatoes', everyDays: 4 },
  'chore-dropped': { kind: 'chore-dropped', name: 'tie up the tomatoes' },
  'system-added': { kind: 'system-added', system: quarryLane.systems[1]! },
  'system-renamed': { kind: 'system-renamed', system: jars, name: 'Window shelf' },
  'system-dropped': { kind: 'system-dropped', system: jars },
  'figure-set': { kind: 'figure-set', system: jars, figure: 'depthCm', value: 20 },
  'range-set': { kind: 'range-set', system: jars, quantity: 'ec', range: [1, 1.4] },
  'alias-added': { kind: 'alias-added', system: jars, alias: 'glasses' },
  'alias-dropped': { kind: 'alias-dropped', system: jars, alias: 'shelf' },
  planted: { kind: 'planted', system: jars, crop: 'lettuce', plants: 12, on: today },
  cleared: { kind: 'cleared', system: jars, on: date('2027-05-01') },
  'language-set': { kind: 'language-set', handle: 'olli', language: 'de' },
  'units-set': { kind: 'units-set', handle: 'olli', units: { volume: 'gal', conductivity: 'ppm' } },
  'container-set': { kind: 'container-set', name: 'jug', litres: 3 },
  'container-dropped': { kind: 'container-dropped', name: 'jug' },
  'morning-set': { kind: 'morning-set', morning: '06:30' as LocalTime },
  'risk-set': { kind: 'risk-set', risk: 'relaxed' },
  'stock-added': { kind: 'stock-added', product: 'ph-down', mL: 1000 },
  'stock-counted': { kind: 'stock-counted', product: 'ph-down', mL: 300 },
  'butt-set': { kind: 'butt-set', litres: 200, isUsual: true },
  'butt-counted': { kind: 'butt-counted', held: { share: 0.5 }, atMs: yesterdayMs },
  'acids-shown': { kind: 'acids-shown', handle: 'tomas', isShown: true },
  'set-up-anew': { kind: 'set-up-anew', greenhouse: quarryLane },
};

const unfitChanges: OfEach<UnfitChange> = {
  'no-such-chore': { kind: 'no-such-chore' },
  'no-butt': { kind: 'no-butt' },
  'more-than-butt': { kind: 'more-than-butt', litres: 200 },
  'chore-there': { kind: 'chore-there' },
  'name-taken': { kind: 'name-taken', by: 'Jar shelf' },
  'only-system': { kind: 'only-system' },
  'low-above-brim': { kind: 'low-above-brim' },
  'no-such-container': { kind: 'no-such-container' },
  'has-chores': { kind: 'has-chores', chores: ['tie up the tomatoes'] },
  'same-already': { kind: 'same-already' },
  'out-of-bounds': { kind: 'out-of-bounds' },
};

const guideSteps: OfEach<GuideStep> = {
  name: { kind: 'name' },
  place: { kind: 'place' },
  morning: { kind: 'morning', suggested: '07:00' as LocalTime },
  meters: { kind: 'meters' },
  method: { kind: 'method', position: 1 },
  'system-name': { kind: 'system-name', method: 'drip' },
  brim: { kind: 'brim', name: 'Tubs' },
  depth: { kind: 'depth', name: 'Tubs', suggestedCm: 30 },
  low: { kind: 'low', name: 'Tubs', suggestedL: 60 },
  plants: { kind: 'plants', name: 'Tubs' },
  another: { kind: 'another', system: quarryLane.systems[1]! },
  summary: { kind: 'summary', greenhouse: quarryLane, town: 'Galway' },
};

const guideProblems: OfEach<GuideProblem> = {
  'not-understood': { kind: 'not-understood' },
  'unknown-place': { kind: 'unknown-place' },
  'name-taken': { kind: 'name-taken' },
  'low-above-brim': { kind: 'low-above-brim' },
  needed: { kind: 'needed' },
  'out-of-bounds': { kind: 'out-of-bounds' },
  'which-method': { kind: 'which-method' },
  'nothing-before': { kind: 'nothing-before' },
};

export const answers: OfEach<Exclude<Answer, AdviceAnswer>> = {
  ...familyAnswers,
  due: {
    kind: 'due',
    system: null,
    today,
    duties: [benchTopUp, check(bench), check(buckets), jarTopUp, tieUp],
    next: [],
  },
  why: { kind: 'why', duties: [benchTopUp], exactly: true },
  'what-if': { kind: 'what-if', told: whatIfTold },
  'when-next': { kind: 'when-next', duties: alsoOfLaterDays },
  'how-long': { kind: 'how-long', systems: [lasting] },
  'how-full': {
    kind: 'how-full',
    systems: [
      { system: jars, now: null, last: null, topUps: [] },
      {
        system: gutters,
        now: { litres: 80, leastL: 71, mostL: 90 },
        last: entry('level', 90, { system: gutters, atMs: yesterdayMs }),
        topUps: [entry('top-up', 10, { system: gutters })],
      },
    ],
  },
  'last-reading': {
    kind: 'last-reading',
    quantity: 'ph',
    entries: [entry('ph', 5.8, { atMs: yesterdayMs }), entry('ph', 6.1, { system: gutters })],
  },
  use: {
    kind: 'use',
    from: date('2027-05-01'),
    to: today,
    systems: [{ system: bench, toppedUpL: 120, usePerDayL: 24.3 }],
  },
  'is-it-right': {
    kind: 'is-it-right',
    quantity: 'ph',
    systems: [
      { system: buckets, value: 5.4, lowest: 5.5, highest: 6.2 },
      { system: jars, value: null, lowest: 5.5, highest: 6.5 },
    ],
  },
  who: {
    kind: 'who',
    entries: [entry('top-up', 3, { system: jars, atMs: yesterdayMs })],
    setUp: [],
  },
  show: {
    kind: 'show',
    systems: [
      {
        lasting,
        readings: [entry('ph', 5.8), entry('ec', 1.7, { atMs: yesterdayMs })],
        duties: [check(buckets, { dueOn: date('2027-05-05') })],
      },
    ],
  },
  picture: {
    kind: 'picture',
    picture: {
      kind: 'water',
      system: bench,
      fromMs: yesterdayMs,
      nowMs,
      untilMs: nowMs + 7 * 86_400_000,
      brimL: 240,
      lowL: 110,
      past: [{ atMs: nowMs, lowL: 150, likelyL: 160.4, highL: 170 }],
      ahead: [{ atMs: nowMs + 7 * 86_400_000, lowL: 60, likelyL: 90, highL: 110 }],
      topUps: [{ atMs: yesterdayMs, value: 40 }],
      told: [],
    },
  },
  'set-up': { kind: 'set-up', change: setUpChanges.planted, state: 'made' },
  'set-up-left': { kind: 'set-up-left' },
  stock: {
    kind: 'stock',
    product: null,
    lines: [
      { product: 'ph-down', leftMl: 400, lastsDays: 21, emptyOn: date('2027-05-25') },
      { product: 'nutrient-a', leftMl: 4200, lastsDays: null, emptyOn: null },
      { product: 'ph-up', leftMl: 0, lastsDays: null, emptyOn: null },
    ],
    buy: [{ product: 'ph-down', leftMl: 400, lastsDays: 21, emptyOn: date('2027-05-25') }],
    rain: { litres: 200, leftL: 120, lastsDays: 6, emptyOn: date('2027-05-10') },
  },
  'stock-opened': {
    kind: 'stock-opened',
    product: 'ph-down',
    line: { product: 'ph-down', leftMl: 400, lastsDays: 21, emptyOn: date('2027-05-25') },
  },
  chores: {
    kind: 'chores',
    chores: [
      {
        name: 'wash the windows',
        system: bench,
        everyDays: 14,
        lastDoneOn: null,
        dueOn: date('2027-05-25'),
      },
    ],
  },
  rain: { kind: 'rain', rain: { litres: 200, leftL: null, lastsDays: null, emptyOn: null } },
  notes: {
    kind: 'notes',
    about: { system: bench, duty: null },
    notes: [entry('note', 1, { note: 'the tap is behind the door', isAttached: true })],
  },
  season: {
    kind: 'season',
    asks: 'best',
    season: {
      systems: [
        seasonOfBench,
        {
          ...seasonOfBench,
          system: jars,
          crop: 'lettuce',
          harvestG: 0,
          firstHarvestOn: null,
          gPerPlant: null,
          gPerLitre: null,
        },
      ],
      bestPerPlant: bench,
      bestPerLitre: buckets,
      unfair: ['crops', 'plants', 'days'],
    },
  },
  'nothing-to-take-back': { kind: 'nothing-to-take-back' },
  'nothing-to-put-right': { kind: 'nothing-to-put-right' },
  'nothing-to-put-back': { kind: 'nothing-to-put-back' },
  'nothing-open': { kind: 'nothing-open' },
  'too-late': { kind: 'too-late' },
  'left-out': { kind: 'left-out' },
  greeted: { kind: 'greeted' },
  heard: { kind: 'heard' },
  thanks: { kind: 'thanks' },
  'cannot-tell': { kind: 'cannot-tell', because: 'not-built' },
  household: { kind: 'household', news: householdNews.welcome },
  help: { kind: 'help' },
  'planted-where': { kind: 'planted-where' },
  introduction: { kind: 'introduction' },
  'no-single-reminder': { kind: 'no-single-reminder' },
  supply: {
    kind: 'supply',
    of: 'pump',
    outages: [{ system: null, sinceMs: yesterdayMs, untilMs: null }],
  },
  where: { kind: 'where', what: 'pH pen', notes: [] },
  explained: { kind: 'explained', term: 'ec' },
  containers: { kind: 'containers', containers: [{ name: 'can', litres: 10 }] },
  grown: { kind: 'grown', systems: [bench] },
  'water-source': { kind: 'water-source' },
  urgent: {
    kind: 'urgent',
    systems: null,
    by: null,
    out: [{ of: 'pump', system: gutters, sinceMs: yesterdayMs }],
    now: [check(bench)],
    waits: [{ line: tieUp, until: date('2027-05-07') }],
    next: null,
  },
  'out-of-range': {
    kind: 'out-of-range',
    quantity: 'ph',
    side: 'high',
    remedy: { kind: 'reagent', product: 'ph-down', mayDose: true },
    against: [{ system: gutters, value: 6.6, lowest: 5.5, highest: 6.2 }],
    doses: null,
    cautions: allCautions(),
  },
  'why-reading': {
    kind: 'why-reading',
    quantity: 'ph',
    side: 'low',
    against: [{ system: bench, value: null, lowest: 5.8, highest: 6.4 }],
  },
  room: {
    kind: 'room',
    systems: [
      { system: bench, litres: 550, roomL: 50, isBounded: false },
      { system: jars, litres: 12, roomL: 2.7, isBounded: true },
      { system: buckets, litres: null, roomL: 0, isBounded: false },
    ],
  },
  'which-value': { kind: 'which-value' },
  first: {
    kind: 'first',
    out: [],
    line: check(bench),
    then: tieUp,
    thenCount: 2,
    next: null,
    leftToGrower: [],
  },
  fullest: {
    kind: 'fullest',
    side: 'low',
    systems: [
      { system: jars, litres: 12, share: 0.5 },
      { system: bench, litres: 550, share: 0.917 },
    ],
  },
  'why-use': {
    kind: 'why-use',
    side: 'high',
    systems: [
      {
        system: bench,
        usePerDayL: 17,
        lately: { days: 7, litres: 120, beforeL: 80 },
        found: null,
      },
    ],
  },
  'days-told': {
    kind: 'days-told',
    from: date('2027-04-26'),
    to: date('2027-05-02'),
    days: 4,
    by: [{ handle: 'olli', days: 3 }],
    systems: [
      { system: bench, toppedUpL: 60, changes: 1, checks: 2, dosedMl: 40, harvestG: 1200 },
      { system: jars, toppedUpL: 0, changes: 0, checks: 0, dosedMl: 0, harvestG: 0 },
    ],
    troubles: [entry('outage', 1, { system: gutters, of: 'pump', atMs: yesterdayMs })],
    missed: [tieUp],
  },
  compared: {
    kind: 'compared',
    systems: [
      {
        usePerDayL: 2.5,
        figures: {
          system: buckets,
          crop: 'cucumber',
          plants: 6,
          from: date('2027-04-24'),
          isFromLogbook: true,
          days: 10,
          litres: 40,
          nutrientMl: 0,
          visits: 4,
          troubleMin: 0,
          harvestG: 1200,
          firstHarvestOn: date('2027-05-01'),
          firstFruitOn: date('2027-05-01'),
          gPerPlant: 200,
          gPerLitre: 30,
        },
      },
    ],
  },
  safety: { kind: 'safety', cautions: allCautions() },
  unknown: { kind: 'unknown' },
};

const refusals: OfEach<Refusal> = {
  'edit-of-unknown': { kind: 'edit-of-unknown' },
  'not-yours': { kind: 'not-yours', entries: [entry('ph', 5.8)] },
  'cannot-handle': { kind: 'cannot-handle' },
  'not-for-you': { kind: 'not-for-you' },
  'growers-change-set-up': { kind: 'growers-change-set-up' },
  'unfit-change': {
    kind: 'unfit-change',
    change: setUpChanges['chore-added'],
    because: unfitChanges['chore-there'],
  },
};

const alerts: OfEach<Exclude<Alert, AdviceAlert>> = {
  ...familyAlerts,
  'not-delivered': { kind: 'not-delivered', to: 'Olli', because: { kind: 'shut-out' } },
  'messages-may-be-lost': { kind: 'messages-may-be-lost', hours: 30 },
};

const exceptNested: OfEach<Exclude<Reply, { kind: 'question' | 'answer' | 'alert' | 'refusal' }>> =
  {
    receipt: {
      kind: 'receipt',
      logged: Object.values(entries),
      assumptions: Object.values(assumptions),
      remarks: Object.values(remarks),
    },
    round: {
      kind: 'round',
      date: today,
      isLate: true,
      duties: [benchTopUp, check(bench), tieUp],
      shopping: [{ product: 'ph-down', leftMl: 40, lastsDays: 3, emptyOn: date('2027-05-07') }],
    },
    correction: {
      kind: 'correction',
      struck: [entry('ph', 5.4)],
      logged: [entry('ph', 5.6)],
      remarks: [],
    },
  };

/** A reply of each kind, and of each kind within its kind, with its name. */
export const everyReply: readonly (readonly [string, Reply])[] = [
  ...Object.entries(setUpChanges).flatMap(([kind, change]) => [
    [
      `question for ${kind}`,
      {
        kind: 'question',
        questionId: 'q1',
        doubt: {
          reason: { kind: 'change-set-up', change, was: change },
          choices: [],
          waiting: null,
        },
      },
    ] as const,
    [
      `answer ${kind} made`,
      { kind: 'answer', answer: { kind: 'set-up', change, state: 'made' } },
    ] as const,
    [
      `answer ${kind} undone`,
      { kind: 'answer', answer: { kind: 'set-up', change, state: 'undone' } },
    ] as const,
  ]),
  ...Object.entries(unfitChanges).map(
    ([kind, because]) =>
      [
        `refusal of a change since ${kind}`,
        {
          kind: 'refusal',
          because: { kind: 'unfit-change', change: setUpChanges['figure-set'], because },
        },
      ] as const,
  ),
  ...Object.entries(guideSteps).map(
    ([kind, step]) =>
      [
        `guide ${kind}`,
        {
          kind: 'question',
          questionId: 'q1',
          doubt: { reason: { kind: 'guide', step, problem: null }, choices: [], waiting: null },
        },
      ] as const,
  ),
  ...Object.entries(guideProblems).map(
    ([kind, problem]) =>
      [
        `guide with the problem ${kind}`,
        {
          kind: 'question',
          questionId: 'q1',
          doubt: {
            reason: { kind: 'guide', step: guideSteps.place, problem },
            choices: [],
            waiting: null,
          },
        },
      ] as const,
  ),
  ...Object.entries(exceptNested),
  ...Object.entries(doubtReasons).map(
    ([kind, reason]) =>
      [
        `question ${kind}`,
        { kind: 'question', questionId: 'q1', doubt: { reason, choices: [], waiting: waitingPh } },
      ] as const,
  ),
  ...Object.entries(doubtReasons).map(
    ([kind, reason]) =>
      [
        `question ${kind} with choices`,
        { kind: 'question', questionId: 'q1', doubt: { reason, choices, waiting: null } },
      ] as const,
  ),
  ...Object.entries(answers).map(
    ([kind, answer]) => [`answer ${kind}`, { kind: 'answer', answer }] as const,
  ),
  ...Object.entries(householdNews).map(
    ([kind, news]) =>
      [`household ${kind}`, { kind: 'answer', answer: { kind: 'household', news } }] as const,
  ),
  ...Object.entries(alerts).map(
    ([kind, alert]) => [`alert ${kind}`, { kind: 'alert', alert }] as const,
  ),
  ...Object.entries(refusals).map(
    ([kind, because]) => [`refusal ${kind}`, { kind: 'refusal', because }] as const,
  ),
];

const exceptChoices: OfEach<Exclude<ButtonLabel, { kind: 'choice' }>> = {
  'strike-out': { kind: 'strike-out' },
  'how-to': { kind: 'how-to', duty: jarTopUp.duty },
  how: { kind: 'how' },
  'log-nothing': { kind: 'log-nothing' },
  tick: { kind: 'tick', duty: benchTopUp.duty },
  cannot: { kind: 'cannot', duty: benchTopUp.duty },
  untick: { kind: 'untick', duty: benchTopUp.duty },
  'no-reason': { kind: 'no-reason' },
  household: { kind: 'household', wish: { kind: 'show' } },
  cover: { kind: 'cover', handles: ['tomas', 'priya', 'olli'], isAll: true },
  news: { kind: 'news', every: 'day' },
  'take-over': { kind: 'take-over', duty: benchTopUp.duty },
  'leave-as-is': { kind: 'leave-as-is' },
  guide: { kind: 'guide', option: { kind: 'skip' } },
  picture: { kind: 'picture', system: bench, of: 'readings' },
};

const wishes: OfEach<HouseholdWish> = {
  invite: { kind: 'invite', role: 'helper', handle: null },
  show: { kind: 'show' },
  remove: { kind: 'remove', handle: 'olli' },
  leave: { kind: 'leave' },
  stay: { kind: 'stay' },
  'turn-to': { kind: 'turn-to', accountId: '1' },
  'tie-room': { kind: 'tie-room', roomId: '1', title: 'Family', readsAll: true },
  'untie-room': { kind: 'untie-room' },
  'no-words': { kind: 'no-words' },
};

export const everyButton: readonly ButtonLabel[] = [
  ...methods.map((method) => ({ kind: 'guide', option: { kind: 'method', method } }) as const),
  ...(['back', 'finish', 'yes'] as const).map(
    (kind) => ({ kind: 'guide', option: { kind } }) as const,
  ),
  ...Object.values(exceptChoices),
  ...Object.values(wishes).map((wish) => ({ kind: 'household', wish }) as const),
  ...Object.values(choiceLabels).map((choice) => ({ kind: 'choice', choice }) as const),
];
