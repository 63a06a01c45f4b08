import type {
  AdviceAlert,
  AdviceAnswer,
  AdviceRemark,
} from '../../src/assistant/replies/advice.ts';
import type { Reply } from '../../src/assistant/replies/reply.ts';
import type { AdviceReason } from '../../src/planning/advice-reason.ts';
import type { Caution } from '../../src/planning/caution.ts';
import type { DoseRefusal } from '../../src/planning/dose-refusal.ts';
import type { DutyLine } from '../../src/planning/duty-line.ts';
import type { OutageProspect } from '../../src/planning/outage-prospect.ts';
import type { WorkStep } from '../../src/planning/work-step.ts';
import { bench, buckets, date, entry, gutters, jars, today } from './quarry-lane.ts';

/** One of each kind: the compiler says which kind has no example. */
type OfEach<U extends { readonly kind: string }> = {
  readonly [K in U['kind']]: Extract<U, { readonly kind: K }>;
};

const atMs = Date.parse('2027-05-04T08:00:00+01:00');
const yesterdayMs = Date.parse('2027-05-03T18:00:00+01:00');

export const steps: OfEach<WorkStep> = {
  'measure-first': { kind: 'measure-first', quantity: 'ph' },
  'thin-first': { kind: 'thin-first', product: 'ph-up', waterMl: 99, addMl: 7 },
  add: { kind: 'add', product: 'ph-down', mL: 12.5 },
  'add-one-by-one': {
    kind: 'add-one-by-one',
    amounts: [
      { product: 'nutrient-a', mL: 400 },
      { product: 'nutrient-b', mL: 400 },
    ],
  },
  stir: { kind: 'stir' },
  'flood-once': { kind: 'flood-once' },
  wait: { kind: 'wait', fromMin: 15, toMin: 30 },
  'measure-again': { kind: 'measure-again', quantities: ['ec', 'ph'] },
  'then-the-rest': { kind: 'then-the-rest' },
  unplug: { kind: 'unplug' },
  empty: { kind: 'empty' },
  'old-solution': { kind: 'old-solution' },
  rinse: { kind: 'rinse' },
  'fill-with-water': { kind: 'fill-with-water', litres: 108 },
  'set-ph': { kind: 'set-ph', lowest: 5.5, highest: 6.2 },
  'clean-part': { kind: 'clean-part', part: 'pump-filter' },
};

export const everyCaution: readonly Caution[] = [
  'label-and-data-sheet',
  'goggles-and-gloves',
  'acid-into-water',
  'never-with-bleach',
  'acid-and-alkali-apart',
  'concentrates-apart',
  'rinse-skin-and-eyes',
  'out-of-reach',
  'unplug-before-hands-in',
  'residual-current-device',
  'licensed-electrician',
  'local-rules',
  'no-disinfectant-by-guess',
];

export const refusals: OfEach<DoseRefusal> = {
  'not-measured': { kind: 'not-measured', lastOn: date('2027-05-01') },
  'stale-probe': {
    kind: 'stale-probe',
    probe: 'pen',
    calibratedOn: date('2027-03-01'),
    trustedDays: 35,
  },
  'unfit-probe': { kind: 'unfit-probe', probe: 'pen' },
  'unknown-volume': { kind: 'unknown-volume', litres: 65, litresSd: 30 },
  'meters-disagree': {
    kind: 'meters-disagree',
    one: entry('ec', 1.9, { probe: 'stick' }),
    other: entry('ec', 1.4),
  },
  'looks-like-slip': {
    kind: 'looks-like-slip',
    entry: entry('ph', 7.4),
    before: entry('ph', 5.8, { atMs: yesterdayMs }),
  },
  'beyond-bound': { kind: 'beyond-bound', product: 'ph-down', mL: 900, mostMl: 540 },
  'not-in-stock': { kind: 'not-in-stock', product: 'ph-up', neededMl: 0 },
  'just-dosed': { kind: 'just-dosed', atMs, readyAtMs: atMs + 900_000 },
  'strength-first': { kind: 'strength-first' },
  'too-strong': { kind: 'too-strong', waterL: 30, fits: false },
  'outside-formula': { kind: 'outside-formula', quantity: 'water-temperature' },
};

const reasons: OfEach<AdviceReason> = {
  'out-of-range': {
    kind: 'out-of-range',
    quantity: 'ph',
    value: 7.4,
    measuredAtMs: atMs,
    lowest: 5.5,
    highest: 6.2,
    aim: 5.9,
    wholeMl: 24.37,
    isFirstPart: true,
    litres: 92.4,
    basis: { kind: 'learned', doses: 2 },
    climbsBack: true,
  },
  'before-dose': {
    kind: 'before-dose',
    quantity: 'ph',
    value: 7.4,
    quantities: ['level'],
    because: refusals['unknown-volume'],
  },
  'after-outage': {
    kind: 'after-outage',
    of: 'power',
    restoredAtMs: atMs,
    quantities: ['level', 'ph'],
  },
  calibration: {
    kind: 'calibration',
    lastOn: date('2027-04-10'),
    everyDays: 21,
    verdict: 'good',
    isLearned: true,
  },
  change: {
    kind: 'change',
    because: 'top-ups',
    lastOn: date('2027-04-10'),
    ageDays: 24,
    dueAgeDays: 24,
    toppedUpL: 112.4,
    brimL: 108,
  },
  aeration: { kind: 'aeration', presentMinPerHour: 5, waterC: 27.4, isForecast: true },
  clean: { kind: 'clean', because: { kind: 'fill-time', minutes: 9, usualMinutes: 7 } },
};

const kindsOf = {
  'out-of-range': { kind: 'dose', product: 'ph-down', mL: 8.5 },
  'before-dose': { kind: 'check' },
  'after-outage': { kind: 'check' },
  calibration: { kind: 'calibration', probe: 'pen' },
  change: { kind: 'reservoir-change', litres: 108 },
  aeration: { kind: 'aeration', minutesPerHour: 15 },
  clean: { kind: 'clean', parts: ['pump-filter'] },
} as const;

export const lines: readonly DutyLine[] = (Object.keys(reasons) as (keyof typeof reasons)[]).map(
  (kind) => ({
    duty: { ...kindsOf[kind], system: kind === 'calibration' ? null : buckets, dueOn: today },
    ridesFrom: null,
    reason: reasons[kind],
  }),
);

const doseLine: DutyLine = {
  ...lines[0]!,
  steps: Object.values(steps),
  cautions: { about: everyCaution, inFull: true },
};
const briefLine: DutyLine = { ...doseLine, cautions: { about: everyCaution, inFull: false } };

const prospect: OutageProspect = {
  system: gutters,
  by: 'drying',
  lowHours: 1,
  likelyHours: 2.5,
  highHours: 48,
  lowAtMs: atMs + 3_600_000,
  likelyAtMs: atMs + 9_000_000,
  highAtMs: atMs + 48 * 3_600_000,
  byHand: [
    'scoop-and-pour',
    'battery-air',
    'pour-over-roots',
    'dam-the-channel',
    'water-the-pots',
    'mist-the-roots',
    'shade',
  ],
};

const remarks: OfEach<AdviceRemark> = {
  'next-work': { kind: 'next-work', lines: [doseLine, briefLine] },
  'waits-for-grower': { kind: 'waits-for-grower', lines: [doseLine] },
  'dose-refused': {
    kind: 'dose-refused',
    refused: { system: buckets, quantity: 'ph', value: 7.4, because: refusals['unfit-probe'] },
  },
  'measure-after-dose': {
    kind: 'measure-after-dose',
    system: buckets,
    quantity: 'ph',
    fromMin: 15,
    toMin: 30,
  },
  'probe-state': {
    kind: 'probe-state',
    probe: 'pen',
    measures: 'ph',
    slopeShare: 0.83,
    offsetMv: -12.4,
    verdict: 'unfit',
    suspect: [entry('ph', 5.8, { atMs: yesterdayMs }), entry('ph', 5.9)],
  },
  'meters-disagree': {
    kind: 'meters-disagree',
    one: entry('ec', 1.9, { probe: 'stick' }),
    other: entry('ec', 1.4, { probe: 'pen' }),
  },
  care: { kind: 'care', entry: entry('water-temperature', 28), advice: 'cool-the-water' },
};

const alerts: OfEach<AdviceAlert> = {
  outage: {
    kind: 'outage',
    of: 'power',
    sinceMs: yesterdayMs,
    systems: [prospect, { ...prospect, system: bench, by: 'oxygen' }],
    unaffected: [jars],
    cautions: { about: everyCaution, inFull: false },
  },
  surprise: {
    kind: 'surprise',
    surprise: {
      kind: 'use',
      key: 'use-above:s1:1',
      atMs,
      way: 'above',
      system: bench,
      fromMs: yesterdayMs,
      usedL: 80,
      expectedL: 20,
      lowAtMs: atMs,
    },
  },
  'outage-reminder': { kind: 'outage-reminder', of: 'air-pump', prospect, stage: 'soon' },
  'all-clear': {
    kind: 'all-clear',
    of: 'power',
    sinceMs: yesterdayMs,
    untilMs: atMs,
    systems: [
      { system: gutters, harm: 'likely' },
      { system: bench, harm: 'perhaps' },
      { system: buckets, harm: 'none' },
    ],
  },
  'dose-wanted': { kind: 'dose-wanted', lines: [doseLine], askedBy: 'tomas' },
};

const answers: OfEach<AdviceAnswer> = {
  'how-much': {
    kind: 'how-much',
    lines: [doseLine],
    leftToGrower: [briefLine],
    refused: Object.values(refusals).map((because) => ({
      system: buckets,
      quantity: 'ph',
      value: 7.4,
      because,
    })),
    inRange: [{ system: gutters, quantity: 'ec', value: 1.3 }],
  },
  mix: {
    kind: 'mix',
    litres: 120,
    ecMsPerCm: 1.6,
    waterEcMsPerCm: 0.05,
    concentrates: [
      { product: 'nutrient-a', mL: 530 },
      { product: 'nutrient-b', mL: 530 },
    ],
    basis: { kind: 'usual-strength', strength: 0.35 },
    cautions: { about: ['concentrates-apart'], inFull: true },
  },
  converted: {
    kind: 'converted',
    said: { value: 900, unit: 'ppm' },
    ecMsPerCm: 1.8,
    tdsFactor: 500,
    others: [
      { factor: 640, ecMsPerCm: 1.40625, ppm: 1152 },
      { factor: 700, ecMsPerCm: 1.2857, ppm: 1260 },
    ],
  },
  'fill-with-pump': {
    kind: 'fill-with-pump',
    ratedLPerH: 3000,
    systems: [{ system: bench, litres: 450, leastMin: 9, mostMin: 18, usualMin: 7 }],
  },
  'without-supply': {
    kind: 'without-supply',
    of: 'power',
    systems: [prospect],
    unaffected: [jars],
  },
};

/** Advice of each kind, with its name. */
export const everyAdvice: readonly (readonly [string, Reply])[] = [
  ...Object.values(remarks).map(
    (remark) =>
      [
        `remark ${remark.kind}`,
        { kind: 'receipt', logged: [entry('ph', 7.4)], assumptions: [], remarks: [remark] },
      ] as const,
  ),
  ...Object.values(alerts).map(
    (alert) => [`alert ${alert.kind}`, { kind: 'alert', alert }] as const,
  ),
  ...Object.values(answers).map(
    (answer) => [`answer ${answer.kind}`, { kind: 'answer', answer }] as const,
  ),
  ['round', { kind: 'round', date: today, isLate: false, duties: lines }],
];
