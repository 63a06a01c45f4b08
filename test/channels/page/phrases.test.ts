import { describe, expect, it } from 'vitest';
import { phrasesOf } from '../../../src/channels/page/phrases/phrases-of.ts';
import type { Duty } from '../../../src/greenhouse/duty.ts';
import type { Greenhouse } from '../../../src/greenhouse/greenhouse.ts';
import { type Language, languages } from '../../../src/greenhouse/member.ts';
import { understand } from '../../../src/understanding/understand.ts';
import { morning, quarryLane } from './page-under-test.ts';

function read(text: string, greenhouse: Greenhouse, language: Language) {
  const member = { ...greenhouse.members[0]!, language };
  return understand(text, {
    greenhouse: { ...greenhouse, members: [member, ...greenhouse.members.slice(1)] },
    member,
    writtenAtMs: morning,
    repliedTo: null,
    recentSystem: null,
    openQuestions: [],
    roundDuties: null,
    existsSinceMs: morning - 24 * 3_600_000,
  }).statements;
}

const spoken: readonly (readonly [string, Partial<Greenhouse['units']>])[] = [
  ['litres and mS/cm', {}],
  ['gallons and ppm', { volume: 'gal', conductivity: 'ppm', tdsFactor: 500 }],
  ['litres and µS/cm', { conductivity: 'uS/cm' }],
  ['litres and CF', { conductivity: 'CF' }],
];

describe.each(languages)('what the page offers to type in "%s"', (language) => {
  it.each(spoken)('is understood without a question in %s', (_units, units) => {
    const lane = quarryLane();
    const greenhouse = { ...lane, units: { ...lane.units, ...units } };
    const [reading, topUp, due, lasting] = phrasesOf[language].examples(greenhouse);
    const [first, second] = greenhouse.systems;
    expect(read(reading!, greenhouse, language)).toMatchObject([
      { kind: 'entry', draft: { system: first!.id, quantity: 'ph', value: 6.1 } },
      { kind: 'entry', draft: { system: first!.id, quantity: 'ec' } },
    ]);
    const [added] = read(topUp!, greenhouse, language);
    expect(added).toMatchObject({
      kind: 'entry',
      draft: { system: second!.id, quantity: 'top-up' },
    });
    expect(added?.kind === 'entry' && added.draft.value).toBeCloseTo(11, 0);
    expect(read(due!, greenhouse, language)).toMatchObject([
      { kind: 'ask', ask: { kind: 'what-is-due' } },
    ]);
    expect(read(lasting!, greenhouse, language)).toMatchObject([
      { kind: 'ask', ask: { kind: 'how-long', system: second!.id } },
    ]);
  });

  it.each([
    ['a top-up', { kind: 'top-up', litres: 2.5 }, '', 'top-up', 2.5],
    ['a dose', { kind: 'dose', mL: 12, product: 'ph-down' }, '', 'dose', 12],
    ['aeration', { kind: 'aeration', minutesPerHour: 15 }, '', 'aeration', 15],
    ['a check, its value added', { kind: 'check' }, '6.0', 'ph', 6],
    [
      'a calibration, what was read added',
      { kind: 'calibration', probe: 'pen' },
      '7.12',
      'calibration',
      7,
    ],
  ])('logs %s as it was asked for', (_what, duty, added, quantity, value) => {
    const greenhouse = quarryLane();
    const system = quantity === 'calibration' ? null : greenhouse.systems[3]!.id;
    const asked = { ...duty, system, dueOn: '2027-05-04' } as Duty;
    const say = phrasesOf[language].doneMessage(asked, greenhouse) + added;
    expect(read(say, greenhouse, language)).toMatchObject([
      { kind: 'entry', draft: { system, quantity, value } },
    ]);
  });

  it('closes a chore by its name', () => {
    const greenhouse = quarryLane();
    const [chore] = greenhouse.chores;
    const duty = { kind: 'chore', system: chore!.system, chore: chore!.name, dueOn: '2027-05-04' };
    const say = phrasesOf[language].doneMessage(duty as Duty, greenhouse);
    expect(read(say, greenhouse, language)).toMatchObject([{ kind: 'done', chore: chore!.name }]);
  });
});
