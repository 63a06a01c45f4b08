import { describe, expect, it } from 'vitest';
import type { Member } from '../../../src/greenhouse/member.ts';
import { readWish } from '../../../src/understanding/wishes/read-wish.ts';
import { quarryLane } from '../../wording/quarry-lane.ts';
import { greenhouseOf, readCases } from '../message-case.ts';

const atMs = Date.parse('2027-05-04T09:00:00+01:00');
const ines = quarryLane.members[0]!;
const karl: Member = { handle: 'karl', name: 'Karl', role: 'grower', language: 'de' };
const greenhouse = { ...quarryLane, members: [...quarryLane.members, karl] };

function changeOf(text: string, member: Member = ines): object | null {
  const wish = readWish(text, greenhouse, member, atMs);
  if (wish === null) return null;
  return wish.kind === 'change' ? wish.change : wish;
}

const tieUp = 'tie up the tomatoes';

describe('A wish in English', () => {
  it.each([
    [
      'every 10 days clean the gutter ends',
      {
        kind: 'chore-added',
        chore: { name: 'clean the gutter ends', system: 's3', everyDays: 10, lastDoneOn: null },
      },
    ],
    [
      'Remind me to wash the cans every two weeks, please',
      {
        kind: 'chore-added',
        chore: { name: 'wash the cans', system: null, everyDays: 14, lastDoneOn: null },
      },
    ],
    [
      'prune the cucumbers weekly',
      {
        kind: 'chore-added',
        chore: { name: 'prune the cucumbers', system: 's2', everyDays: 7, lastDoneOn: null },
      },
    ],
    ['stop reminding me to tie up the tomatoes', { kind: 'chore-dropped', name: tieUp }],
    ['tie up the tomatos every 4 days', { kind: 'chore-moved', name: tieUp, everyDays: 4 }],
    [
      'tie up tomatoes every other day from now on',
      { kind: 'chore-moved', name: tieUp, everyDays: 2 },
    ],
    [
      'rename the jars to Window shelf',
      { kind: 'system-renamed', system: 's4', name: 'Window shelf' },
    ],
    ['drop the gutter run', { kind: 'system-dropped', system: 's3' }],
    [
      'the brim of the bench is 620 l',
      { kind: 'figure-set', system: 's1', figure: 'brimL', value: 620 },
    ],
    [
      'low mark of the bench is 160',
      { kind: 'figure-set', system: 's1', figure: 'lowL', value: 160 },
    ],
    ['the bench is 82 cm deep', { kind: 'figure-set', system: 's1', figure: 'depthCm', value: 82 }],
    [
      'the jars have 10 plants now',
      { kind: 'figure-set', system: 's4', figure: 'plants', value: 10 },
    ],
    [
      'ph of the jars should be 5.8 to 6.2',
      { kind: 'range-set', system: 's4', quantity: 'ph', range: [5.8, 6.2] },
    ],
    [
      'keep the ec of the dwc between 1.7 and 2.1',
      { kind: 'range-set', system: 's2', quantity: 'ec', range: [1.7, 2.1] },
    ],
    ['the jars are also called glasses', { kind: 'alias-added', system: 's4', alias: 'glasses' }],
    [
      'planted 12 lettuces in the jars today',
      { kind: 'planted', system: 's4', crop: 'lettuce', plants: 12, on: '2027-05-04' },
    ],
    [
      'yesterday we planted six basil in the nft',
      { kind: 'planted', system: 's3', crop: 'basil', plants: 6, on: '2027-05-03' },
    ],
    ['pulled the cucumbers', { kind: 'cleared', system: 's2', on: '2027-05-04' }],
    ['karl speaks English', { kind: 'language-set', handle: 'karl', language: 'en' }],
    ['speak german to me', { kind: 'language-set', handle: 'ines', language: 'de' }],
    ['a bucket is 12 litres', { kind: 'container-set', name: 'bucket', litres: 12 }],
    ['rounds at 6:30', { kind: 'morning-set', morning: '06:30' }],
    ['send the round at 8 am', { kind: 'morning-set', morning: '08:00' }],
    ['be careful', { kind: 'risk-set', risk: 'careful' }],
    ['Please be careful with the jars', { kind: 'risk-set', risk: 'careful' }],
    ["we'd rather be on the safe side", { kind: 'risk-set', risk: 'careful' }],
    ["don't take any risks", { kind: 'risk-set', risk: 'careful' }],
    ["we'd rather not go so often", { kind: 'risk-set', risk: 'relaxed' }],
    ['take more risk with the jars', { kind: 'risk-set', risk: 'relaxed' }],
    ['take a bit more risk', { kind: 'risk-set', risk: 'relaxed' }],
    ['fewer trips please', { kind: 'risk-set', risk: 'relaxed' }],
    ['be a bit more careful', { kind: 'risk-set', risk: 'careful' }],
    ['risk: relaxed', { kind: 'risk-set', risk: 'relaxed' }],
    ['bought 1 l ph down', { kind: 'stock-added', product: 'ph-down', mL: 1000 }],
    ['new bottle of A, 5 l', { kind: 'stock-added', product: 'nutrient-a', mL: 5000 }],
    ['there are 300 ml of ph down left', { kind: 'stock-counted', product: 'ph-down', mL: 300 }],
    ['bought 2 x 1 l ph down', { kind: 'stock-added', product: 'ph-down', mL: 2000 }],
    [
      'bought a bottle of nutrient b, 5 l',
      { kind: 'stock-added', product: 'nutrient-b', mL: 5000 },
    ],
    ['got another 1 litre bottle of B', { kind: 'stock-added', product: 'nutrient-b', mL: 1000 }],
    ['bought a bottle of A', { kind: 'stock-unsaid', product: 'nutrient-a', is: 'bought' }],
    ["we're out of A", { kind: 'stock-counted', product: 'nutrient-a', mL: 0 }],
    ['B ran out', { kind: 'stock-counted', product: 'nutrient-b', mL: 0 }],
    ['half a bottle of A left', { kind: 'stock-unsaid', product: 'nutrient-a', is: 'left' }],
    [
      'ph down is running low, maybe 100 ml left',
      { kind: 'stock-counted', product: 'ph-down', mL: 100 },
    ],
    ['ph up nearly out: 50 ml left', { kind: 'stock-counted', product: 'ph-up', mL: 50 }],
    ['1/2 l of A left', { kind: 'stock-counted', product: 'nutrient-a', mL: 500 }],
    ['half the bottle of B is gone', { kind: 'stock-unsaid', product: 'nutrient-b', is: 'left' }],
    ['ph down is nearly empty', { kind: 'stock-unsaid', product: 'ph-down', is: 'left' }],
    ["we're running low on ph up", { kind: 'stock-unsaid', product: 'ph-up', is: 'left' }],
    ['opened a new bottle of ph down', { kind: 'stock-opened', product: 'ph-down' }],
    ['how much ph down is left?', { kind: 'stock', product: 'ph-down' }],
    ['what do we need to buy?', { kind: 'stock', product: null }],
    ['which did best?', { kind: 'season', asks: 'best' }],
    ['hello, what is this', { kind: 'introduction' }],
    ['who are you?', { kind: 'introduction' }],
    ['what does EC mean', { kind: 'explain', term: 'ec' }],
    ["what's a top-up?", { kind: 'explain', term: 'top-up' }],
    ['what is the ph', null],
    ['can I mix A and B?', { kind: 'mixing', products: ['nutrient-a', 'nutrient-b'] }],
    ['when do i have to go', { kind: 'my-turns' }],
    ['remind me to clean the filter on friday', { kind: 'remind-once' }],
    ['remind me tomorrow to buy ph down', { kind: 'remind-once' }],
    ['can you remind me about the filter', { kind: 'remind-once' }],
    [
      'last ph of the jars and the gutters',
      { kind: 'last', quantity: 'ph', systems: ['s4', 's3'] },
    ],
    [
      'planted 12 lettuces',
      {
        kind: 'planted-somewhere',
        planting: { crop: 'lettuce', plants: 12, on: '2027-05-04' },
      },
    ],
    ['how much did we harvest', { kind: 'season', asks: 'harvest' }],
    ['set up a new greenhouse', { kind: 'guide', of: 'greenhouse' }],
    ['setup a new grenhouse', { kind: 'guide', of: 'greenhouse' }],
    ['whats ec', { kind: 'explain', term: 'ec', isBare: true }],
    ['what is a calibration', { kind: 'explain', term: 'calibration' }],
    ['is the power back', { kind: 'supply', of: 'power' }],
    [
      'can i go tomorrow instead',
      { kind: 'what-if', scenario: { kind: 'go-on', on: '2027-05-05' } },
    ],
    [
      'what happens if i dont go',
      { kind: 'what-if', scenario: { kind: 'go-on', on: '2027-05-05' } },
    ],
    ['who is away', { kind: 'who-is-away' }],
    ['what have i logged today', { kind: 'logged', handle: 'ines', on: '2027-05-04' }],
    ['what ph should the dwc be', { kind: 'wanted', quantity: 'ph', systems: ['s2'] }],
    ['how much is in the buckets', { kind: 'how-full', systems: ['s2'] }],
    ['where is the pen', { kind: 'where', what: 'pen' }],
    ['add a new system', { kind: 'guide', of: 'system' }],
  ])('is read from “%s”', (text, expected) => {
    expect(changeOf(text)).toEqual(expected);
  });
});

describe('A wish in German', () => {
  it.each([
    [
      'alle 10 Tage Rinnenenden putzen',
      {
        kind: 'chore-added',
        chore: { name: 'Rinnenenden putzen', system: null, everyDays: 10, lastDoneOn: null },
      },
    ],
    ['tie up the tomatoes alle 4 Tage', { kind: 'chore-moved', name: tieUp, everyDays: 4 }],
    ['Erinnere mich nicht mehr an tie up the tomatoes', { kind: 'chore-dropped', name: tieUp }],
    [
      'Jar shelf heißt jetzt Fensterbrett',
      { kind: 'system-renamed', system: 's4', name: 'Fensterbrett' },
    ],
    [
      '12 Salate in Jar shelf gepflanzt',
      { kind: 'planted', system: 's4', crop: 'lettuce', plants: 12, on: '2027-05-04' },
    ],
    ['Gurken rausgerissen', { kind: 'cleared', system: 's2', on: '2027-05-04' }],
    ['wir haben 1 l pH minus gekauft', { kind: 'stock-added', product: 'ph-down', mL: 1000 }],
    ['2 x 1 l pH minus gekauft', { kind: 'stock-added', product: 'ph-down', mL: 2000 }],
    ['Flasche Dünger B gekauft, 5 l', { kind: 'stock-added', product: 'nutrient-b', mL: 5000 }],
    ['Habe eine Flasche A gekauft', { kind: 'stock-unsaid', product: 'nutrient-a', is: 'bought' }],
    ['A ist alle', { kind: 'stock-counted', product: 'nutrient-a', mL: 0 }],
    ['uns ist B ausgegangen', { kind: 'stock-counted', product: 'nutrient-b', mL: 0 }],
    ['noch eine halbe Flasche A da', { kind: 'stock-unsaid', product: 'nutrient-a', is: 'left' }],
    [
      'pH minus ist fast leer, nur noch 100 ml drin',
      { kind: 'stock-counted', product: 'ph-down', mL: 100 },
    ],
    ['pH minus geht zur Neige', { kind: 'stock-unsaid', product: 'ph-down', is: 'left' }],
    ['neue Flasche pH minus aufgemacht', { kind: 'stock-opened', product: 'ph-down' }],
    ['wie viel pH minus ist noch da?', { kind: 'stock', product: 'ph-down' }],
    ['Was müssen wir einkaufen?', { kind: 'stock', product: null }],
    ['Ein Eimer fasst 12 Liter', { kind: 'container-set', name: 'Eimer', litres: 12 }],
    ['Schick die Runde um 6:30', { kind: 'morning-set', morning: '06:30' }],
    ['Sei vorsichtig', { kind: 'risk-set', risk: 'careful' }],
    ['bitte etwas mehr Risiko bei Jar shelf', { kind: 'risk-set', risk: 'relaxed' }],
    ['wir möchten lieber nicht so oft gehen', { kind: 'risk-set', risk: 'relaxed' }],
    ['lieber auf Nummer sicher', { kind: 'risk-set', risk: 'careful' }],
    ['Geh kein Risiko ein', { kind: 'risk-set', risk: 'careful' }],
    ['Stell das Risiko auf gelassen', { kind: 'risk-set', risk: 'relaxed' }],
    ['weniger Gänge bitte', { kind: 'risk-set', risk: 'relaxed' }],
    ['Priya spricht Deutsch', { kind: 'language-set', handle: 'priya', language: 'de' }],
    ['hallo, was ist das hier', { kind: 'introduction' }],
    ['was ist ec', { kind: 'explain', term: 'ec', isBare: true }],
    ['was ist eine kalibrierung', { kind: 'explain', term: 'calibration' }],
    ['ist der strom wieder da', { kind: 'supply', of: 'power' }],
    [
      'kann ich auch erst morgen gehen',
      { kind: 'what-if', scenario: { kind: 'go-on', on: '2027-05-05' } },
    ],
    ['wer ist weg', { kind: 'who-is-away' }],
    ['was hat ines heute eingetragen', { kind: 'logged', handle: 'ines', on: '2027-05-04' }],
    ['welchen ph braucht die dwc', { kind: 'wanted', quantity: 'ph', systems: ['s2'] }],
    ['was heißt EC', { kind: 'explain', term: 'ec' }],
    ['was ist ein Reservoir?', { kind: 'explain', term: 'reservoir' }],
    ['Kann ich A und B mischen?', { kind: 'mixing', products: ['nutrient-a', 'nutrient-b'] }],
    ['wann bin ich dran', { kind: 'my-turns' }],
    ['erinnere mich freitag an den filter', { kind: 'remind-once' }],
    [
      'letzter pH von Jar shelf und Gutter run',
      { kind: 'last', quantity: 'ph', systems: ['s4', 's3'] },
    ],
    [
      '12 Salate gepflanzt',
      {
        kind: 'planted-somewhere',
        planting: { crop: 'lettuce', plants: 12, on: '2027-05-04' },
      },
    ],
    ['Neues Gewächshaus einrichten', { kind: 'guide', of: 'greenhouse' }],
    ['Welches System war am besten?', { kind: 'season', asks: 'best' }],
    [
      'pH von North bench soll 5,8 bis 6,2 sein',
      { kind: 'range-set', system: 's1', quantity: 'ph', range: [5.8, 6.2] },
    ],
  ])('is read from “%s”', (text, expected) => {
    expect(changeOf(text, karl)).toEqual(expected);
  });
});

describe('A report', () => {
  it.each(['english-open', 'english-sealed', 'german-open', 'german-sealed'])(
    'in the corpus %s is never taken for a wish',
    (corpus) => {
      const taken = readCases(`understanding/corpus/${corpus}.jsonl`).filter((messageCase) => {
        const greenhouse = greenhouseOf(messageCase);
        const { text = '', from } = messageCase.line as { text?: string; from?: string };
        const member = greenhouse.members.find(({ handle }) => handle === from) ?? ines;
        const wish = readWish(text, greenhouse, member, atMs);
        return wish?.kind === 'change' || (wish !== null && messageCase.expect.logged.length > 0);
      });
      expect(taken.map(({ line }) => line.text)).toEqual([]);
    },
  );
});
