import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import type { Greenhouse } from '../../src/greenhouse/greenhouse.ts';
import { openRehearsal, quarryLaneWith, type Talk } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

/** Vitest types its matchers as any. */
const containing = (text: string): unknown => expect.stringContaining(text);

/** A talk on 4 May that goes on by a minute with each message. */
function talking(talk: Talk) {
  let minute = 0;
  const at = (): string => {
    minute += 1;
    const clock = `${String(8 + Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
    return `2027-05-04T${clock}:00+01:00`;
  };
  return {
    say: (from: string, text: string, more: object = {}) => talk({ at: at(), from, text, ...more }),
    press: (from: string, press: string) => talk({ at: at(), from, press }),
  };
}

describe('A change of the set-up', () => {
  it.each([
    ['can is 12 l now', '1 can holds 12 L, not 10 L. Shall I do that?'],
    ['from now on a can holds 12 l', '1 can holds 12 L, not 10 L. Shall I do that?'],
    ['add a tub called Blue tub', containing('How does it grow?')],
    ['add a new system: a dwc tub with peppers', containing('How does it grow?')],
  ])('%s', async (said, text) => {
    const { say } = talking(openRehearsal(store));
    expect(await say('ines', said)).toMatchObject([{ kind: 'question', text }]);
  });

  it('is shown first, made on a yes, and taken back by undo', async () => {
    const { say } = talking(openRehearsal(store));
    const [shown] = await say('ines', 'low mark of the bench is 160 l');
    expect(shown).toMatchObject({
      kind: 'question',
      text: 'Low mark of North bench: 150 L → 160 L. Shall I do that?',
    });
    const [made] = await say('ines', 'yes');
    expect(made).toMatchObject({
      kind: 'answer',
      text: 'Done: low mark of North bench: 160 L. “undo” takes it back.',
    });
    const [again] = await say('ines', 'low mark of the bench is 160 l');
    expect(again).toMatchObject({ kind: 'refusal' });
    const [undone] = await say('ines', 'undo');
    expect(undone).toMatchObject({ text: 'Taken back: low mark of North bench: 160 L.' });
    const [shownAgain] = await say('ines', 'low mark of the bench is 160 l');
    expect(shownAgain).toMatchObject({ kind: 'question' });
  });

  it('is not made on a no, nor without an answer', async () => {
    const { say } = talking(openRehearsal(store));
    await say('ines', 'every 10 days clean the gutter ends');
    const [left] = await say('ines', 'no');
    expect(left).toMatchObject({ kind: 'answer', text: 'All right, everything stays as it is.' });
    await say('ines', 'every 10 days clean the gutter ends');
    const [due] = await say('ines', 'what needs doing');
    expect(JSON.stringify(due)).not.toContain('gutter ends');
  });

  it('can be made and taken back by buttons, each of which works once', async () => {
    const { say, press } = talking(openRehearsal(store));
    const [shown] = await say('ines', 'every 10 days clean the gutter ends');
    const buttons = (line: typeof shown) =>
      (line?.buttons ?? []).flat().map((button) => button.press);
    const [yes] = buttons(shown);
    const [made] = await press('ines', yes!);
    expect(made).toMatchObject({ text: containing('Done: “clean the gutter ends”') });
    const [due] = await say('ines', 'what needs doing');
    expect(due).toMatchObject({
      due: expect.arrayContaining([
        expect.objectContaining({
          duty: 'chore',
          chore: 'clean the gutter ends',
          system: 'Gutter run',
        }),
      ]) as unknown,
    });
    const [undo] = buttons(made);
    const [undone] = await press('ines', undo!);
    expect(undone).toMatchObject({ text: containing('Taken back') });
    const [late] = await press('ines', undo!);
    expect(late).toMatchObject({ text: containing('no longer open') });
  });

  it('is for growers: a helper is told who can make it, and nothing is asked', async () => {
    const { say } = talking(openRehearsal(store));
    const [refused] = await say('tomas', 'drop the gutter run');
    expect(refused).toMatchObject({ kind: 'refusal', text: containing('Ines') });
    const [guide] = await say('tomas', 'set up a new greenhouse');
    expect(guide).toMatchObject({ kind: 'refusal' });
  });

  it('of what was bought, or of one’s own language, is for everybody', async () => {
    const { say } = talking(openRehearsal(store));
    const [bought] = await say('tomas', 'bought 1 l ph down');
    expect(bought).toMatchObject({ kind: 'question' });
    const [language] = await say('tomas', 'speak german to me');
    expect(language).toMatchObject({ kind: 'question' });
    const [done] = await say('tomas', 'yes');
    expect(done).toMatchObject({ text: containing('Erledigt') });
    const [other] = await say('tomas', 'Priya spricht Deutsch');
    expect(other).toMatchObject({ kind: 'refusal' });
  });

  it('is not undone over somebody else’s later change of the same part', async () => {
    const { members } = quarryLaneWith();
    const growers = members.map((member) => ({ ...member, role: 'grower' as const }));
    const { say } = talking(openRehearsal(store, quarryLaneWith({ members: growers })));
    await say('ines', 'low mark of the bench is 160 l');
    await say('ines', 'yes');
    await say('tomas', 'low mark of the bench is 170 l');
    await say('tomas', 'yes');
    const [refused] = await say('ines', 'undo');
    expect(refused).toMatchObject({ text: containing('cannot take that back') });
    const [kept] = await say('priya', 'low mark of the bench is 170 l');
    expect(kept).toMatchObject({ kind: 'refusal' });
  });

  it('that cannot be is refused with the reason', async () => {
    const { say } = talking(openRehearsal(store));
    const text = async (words: string) => (await say('ines', words))[0]?.['text'];
    expect(await text('low mark of the bench is 700 l')).toContain('below the brim');
    expect(await text('rename the jars to dwc')).toContain('Bucket row');
    expect(await text('drop the bench')).toContain('tie up the tomatoes');
    expect(await text('tie up the tomatoes every 5 days')).toContain('so already');
    expect(await text('ph of the jars should be 6.2 to 5.8')).toContain('outside');
  });

  it('is not made of a report, even one that speaks of a chore or of plants', async () => {
    const { say } = talking(openRehearsal(store));
    const reports = ['tied up the tomatoes', 'picked 2 kg of cucumbers', 'dwc down to 80 l'];
    for (const report of reports) {
      const [answered] = await say('ines', report);
      expect(answered?.['text']).not.toContain('Shall I do that?');
    }
  });
});

describe('A dropped system', () => {
  it('is asked for no more, and what was logged of it can still be told', async () => {
    const { say } = talking(openRehearsal(store));
    const [receipt] = await say('ines', 'topped up the nft 5 l');
    await say('ines', 'drop the gutter run');
    await say('ines', 'yes');
    const [due] = await say('ines', 'what needs doing');
    expect(JSON.stringify(due)).not.toContain('Gutter run');
    const [who] = await say('ines', 'who topped up last');
    expect(who).toMatchObject({ text: containing('Gutter run') });
    const [unknown] = await say('ines', 'nft ph 6');
    expect(unknown?.kind).not.toBe('receipt');
    // Its old buttons log nothing into it.
    const [struck] = await say('ines', 'undo', { replyTo: receipt?.['id'] });
    expect(struck).toMatchObject({ kind: 'correction', struck: [{ system: 'Gutter run' }] });
    await say('ines', 'undo');
    const [back] = await say('ines', 'nft ph 6');
    expect(back).toMatchObject({ kind: 'receipt', logged: [{ system: 'Gutter run' }] });
  });
});

describe('Plants', () => {
  it('go in and out, and the season remembers what grew', async () => {
    const { say } = talking(openRehearsal(store));
    await say('ines', 'planted 12 lettuces in the jars today');
    await say('ines', 'yes');
    await say('ines', 'picked 600 g from the jars');
    await say('ines', 'picked 2 kg from the buckets');
    const [season] = await say('ines', 'which did best?');
    expect(season).toMatchObject({ kind: 'answer', text: containing('50 g a plant') });
    expect(season?.['text']).toContain('different crops');
    await say('ines', 'pulled the lettuces');
    const [cleared] = await say('ines', 'yes');
    expect(cleared).toMatchObject({ text: containing('taken out of Jar shelf') });
    const [after] = await say('ines', 'how is it going');
    expect(after).toMatchObject({ text: containing('Jar shelf (12 × lettuce') });
  });
});

describe('The stock', () => {
  it('is counted down by doses, refilled by a word, and told', async () => {
    const { say } = talking(openRehearsal(store));
    await say('ines', '50 ml ph down in the bench');
    expect((await say('ines', 'how much ph down is left'))[0]?.['text']).toContain('800 mL left');
    await say('ines', 'bought 1 l ph down');
    await say('ines', 'yes');
    expect((await say('ines', 'how much ph down is left'))[0]?.['text']).toContain('1.8 L left');
    await say('ines', 'there are 300 ml of ph down left');
    await say('ines', 'yes');
    const [stock] = await say('ines', 'what do we need to buy');
    expect(stock?.['text']).toContain('PH down: 300 mL left'.slice(1));
  });
});

describe('A newcomer’s question', () => {
  it.each([
    ['tomas', 'hello, what is this', 'I keep the logbook of Quarry Lane'],
    ['tomas', 'what does ec mean', 'how much plant food'],
    ['tomas', 'can I mix A and B', 'Never mix concentrates undiluted'],
    ['tomas', 'when do i have to go', 'You are put down for no day.'],
    ['tomas', 'planted 12 lettuces', 'is for Ines to say, so nothing was kept'],
    ['tomas', 'planted 12 lettuces in the jars', 'is for Ines to say, so nothing was kept'],
    ['ines', 'planted 12 lettuces', 'in which system?'],
    ['tomas', 'I can’t, the lid is stuck', 'Which work could not be done?'],
  ])('by %s, “%s”, is answered short', async (from, asked, told) => {
    const { say } = talking(openRehearsal(store));
    const [answer] = await say(from, asked);
    expect(answer).toMatchObject({ text: containing(told) });
    expect(answer).not.toHaveProperty('logged');
    expect(String(answer?.['text']).split('\n').length).toBeLessThan(6);
  });

  it('names the days that were settled', async () => {
    const { say } = talking(openRehearsal(store));
    await say('ines', 'away from Friday to Sunday, tomas covers');
    const [answer] = await say('tomas', 'when do i have to go');
    expect(answer).toMatchObject({ text: containing('Your days: ') });
    expect(String(answer?.['text'])).toContain('7 May');
  });

  it('of when something was done is of the last time, a probe’s of any system', async () => {
    const { say } = talking(openRehearsal(store));
    await say('tomas', 'changed the gutters');
    const [changed] = await say('tomas', 'when did we change the gutters');
    expect(changed).toMatchObject({ text: containing('Tomas: solution changed') });
    const [next] = await say('tomas', 'when do we have to change the gutters');
    expect(next).toMatchObject({ text: containing('Change the solution of Gutter run') });
    await say('tomas', 'calibrated the pen, 7.00 read 7.12');
    const [calibrated] = await say('tomas', 'when was the row last calibrated');
    expect(calibrated).toMatchObject({ text: containing('pen showed 7.12') });
  });
});

describe('A bottle whose size nobody said', () => {
  it('is asked for, and the amount typed then is the stock and no top-up', async () => {
    const { say } = talking(openRehearsal(store));
    const [asked] = await say('tomas', 'half a bottle of ph down left');
    expect(asked).toMatchObject({ kind: 'question', text: containing('should be 850 mL') });
    const [again] = await say('tomas', '400');
    expect(again).toMatchObject({ kind: 'question', text: containing('About how much pH down') });
    const [made, ...rest] = await say('tomas', 'about 400 ml');
    expect(made).toMatchObject({ kind: 'answer', text: containing('400 mL of pH down left') });
    expect(rest.filter((line) => line['kind'])).toEqual([]);
    const [undone] = await say('tomas', 'undo');
    expect(undone).toMatchObject({ text: containing('Taken back') });
    expect((await say('tomas', 'how much ph down is left'))[0]?.['text']).toContain('850 mL left');
  });

  it('is heard in German, and left on a no', async () => {
    const { say } = talking(openRehearsal(store));
    await say('ines', 'speak german to me');
    await say('ines', 'yes');
    await say('ines', 'zwei Flaschen B gekauft');
    const [made] = await say('ines', '2 Flaschen mit 1 l');
    expect(made).toMatchObject({ text: containing('2 l Dünger B gekauft') });
    await say('ines', 'pH minus ist fast leer');
    const [left] = await say('ines', 'nein');
    expect(left).toMatchObject({ kind: 'answer' });
    const [stock] = await say('ines', 'wie viel pH minus ist noch da');
    expect(stock).toMatchObject({ text: containing('850 ml') });
  });

  it('does not stop somebody who says something else', async () => {
    const { say } = talking(openRehearsal(store));
    await say('tomas', 'bought a bottle of A');
    const [receipt] = await say('tomas', 'dwc ph 5.8');
    expect(receipt).toMatchObject({ kind: 'receipt' });
  });

  it('changes nothing where it was opened', async () => {
    const { say } = talking(openRehearsal(store));
    const [told] = await say('tomas', 'opened a new bottle of ph down');
    expect(told).toMatchObject({ kind: 'answer', text: containing('850 mL left') });
    expect(told).toMatchObject({ text: containing('“bought 1 l pH down”') });
  });
});

describe('What is bought while a question is open', () => {
  it('is no answer to it', async () => {
    const { say } = talking(openRehearsal(store));
    await say('tomas', 'ph 54 in the dwc');
    const [asked] = await say('tomas', 'bought 2 x 1 l ph down');
    expect(asked).toMatchObject({ kind: 'question', text: containing('2 L of pH down bought') });
  });
});

describe('The guided set-up', () => {
  it('goes by buttons alone where it can, and lets a report through in its midst', async () => {
    const { say, press } = talking(openRehearsal(store));
    const first = (line: typeof asked) => line!.buttons![0]![0]!.press;
    let [asked] = await say('ines', 'set up a new greenhouse');
    for (let skips = 0; skips < 4; skips++) [asked] = await press('ines', first(asked));
    expect(asked).toMatchObject({ text: containing('How does the first one grow?') });
    const [receipt] = await say('ines', 'dwc ph 5.8');
    expect(receipt).toMatchObject({ kind: 'receipt' });
    [asked] = await press('ines', first(asked));
    [asked] = await press('ines', first(asked));
    expect(asked).toMatchObject({ text: containing('How many litres') });
    const [needed] = await say('ines', 'skip');
    expect(needed).toMatchObject({ text: containing('cannot do without') });
    [asked] = await say('ines', '200');
    for (let skips = 0; skips < 3; skips++) [asked] = await press('ines', first(asked));
    [asked] = await press('ines', first(asked));
    expect(asked).toMatchObject({ text: containing('Shall I set it up like this?') });
    const [made] = await press('ines', first(asked));
    expect(made).toMatchObject({ text: containing('is set up') });
    const [gone] = await say('ines', 'dwc ph 5.8');
    expect(gone?.kind).not.toBe('receipt');
    await say('ines', 'undo');
    const [back] = await say('ines', 'dwc ph 5.8');
    expect(back).toMatchObject({ kind: 'receipt', logged: [{ system: 'Bucket row' }] });
  });

  it('adds one system, shown before it is made', async () => {
    const { say } = talking(openRehearsal(store));
    for (const text of ['add a new system', 'drip', 'Strawberry wall', '60 l', 'skip', 'skip']) {
      await say('ines', text);
    }
    const [shown] = await say('ines', '30 strawberries');
    expect(shown).toMatchObject({
      kind: 'question',
      text: containing('30 × strawberry'),
    });
    await say('ines', 'yes');
    const [receipt] = await say('ines', 'strawberry wall ph 5.8');
    expect(receipt).toMatchObject({ kind: 'receipt', logged: [{ system: 'Strawberry wall' }] });
  });

  it('ends on stop, and changes nothing', async () => {
    const { say } = talking(openRehearsal(store));
    await say('ines', 'set up a new greenhouse');
    const [stopped] = await say('ines', 'stop');
    expect(stopped).toMatchObject({ text: 'All right, everything stays as it is.' });
    const [receipt] = await say('ines', 'dwc ph 5.8');
    expect(receipt).toMatchObject({ kind: 'receipt' });
  });
});

describe('How much running low may be risked', () => {
  it('is said in words, holds for the whole greenhouse, and is taken back', async () => {
    const { say } = talking(openRehearsal(store));
    const [shown] = await say('ines', 'take more risk with the jars');
    expect(shown).toMatchObject({
      kind: 'question',
      text: 'The whole greenhouse, from now on: normal → relaxed, so fewer trips, and now and then a system may run low. Shall I do that?',
    });
    expect((await say('ines', 'yes'))[0]).toMatchObject({ text: containing('Done: the whole') });
    const [again] = await say('ines', "we'd rather not go so often");
    expect(again).toMatchObject({ kind: 'refusal', text: containing('That is so already') });
    expect((await say('ines', 'undo'))[0]).toMatchObject({ text: containing('Taken back') });
    const [back] = await say('ines', 'be careful');
    expect(back).toMatchObject({ text: containing('normal → careful') });
  });

  it('is for growers to say', async () => {
    const { say } = talking(openRehearsal(store));
    const [refused] = await say('priya', 'be careful');
    expect(refused).toMatchObject({ kind: 'refusal' });
  });

  it('moves the trips of the round and of an away plan', async () => {
    const datesUnder = async (risk: Greenhouse['risk']) => {
      const talk = openRehearsal(store, quarryLaneWith({ risk }));
      for (const system of ['bench', 'dwc', 'nft', 'jars']) {
        await talk({ at: '2027-06-01T08:00:00+01:00', from: 'ines', text: `${system} full` });
      }
      const plan = await talk(
        ...['I am away from 2 to 20 June', 'Tomas'].map((text, minute) => ({
          at: `2027-06-01T09:0${String(minute)}:00+01:00`,
          from: 'ines',
          text,
        })),
      );
      const due = await talk({ at: '2027-06-01T09:05:00+01:00', outlook: true });
      const soonest = (due[0]!.outlook as { due: { duty: string; dueOn: string }[] }[])
        .flatMap((each) => each.due)
        .filter(({ duty }) => duty === 'top-up')
        .map(({ dueOn }) => dueOn)
        .sort()[0];
      return { soonest, plan: plan.map(({ text }) => text).join('\n') };
    };
    const [careful, relaxed] = [await datesUnder('careful'), await datesUnder('relaxed')];
    expect(careful.soonest! < relaxed.soonest!).toBe(true);
    expect(careful.plan).not.toEqual(relaxed.plan);
  });
});

describe('Phrasings of a newcomer', () => {
  it.each([
    ['forget about tying up the tomatoes', 'No more “tie up the tomatoes”'],
    ['add a chore: sweep the floor, every Saturday', '“sweep the floor” every 7 days'],
    ['set low mark jars 5 l', 'Low mark of Jar shelf: 4 L → 5 L'],
    ['gutters ph should be 5.6-6.0', 'pH wanted in Gutter run: 5.5 to 6.2 → 5.6 to 6.0'],
    ['there are only 18 tomatoes left on the bench', 'Plants of North bench: 20 → 18'],
    ['the can holds 12 litres', '1 can holds 12 L, not 10 L'],
    ['bought a litre of ph down', '1 L of pH down bought'],
    ['bought 2 bottles of nutrient a, 1 l each', '2 L of nutrient A bought'],
    ['the ph down is empty', '0 mL of pH down left'],
    ['call the bench big bench from now on', 'North bench is called big bench'],
  ])('%s', async (words, shown) => {
    const { say } = talking(openRehearsal(store));
    const [asked] = await say('ines', words);
    expect(asked).toMatchObject({ kind: 'question', text: containing(shown) });
  });

  it('are heard in the midst of the guided set-up', async () => {
    const { say } = talking(openRehearsal(store));
    await say('ines', 'we have a new system');
    const [asked] = await say('ines', 'the can holds 12 litres');
    expect(asked).toMatchObject({ text: containing('1 can holds 12 L') });
  });
});

describe('Something planted without a word of where', () => {
  it.each([
    ['planted 12 lettuces', 'jars', '12 × lettuce planted in Jar shelf today'],
    ['planted 8 basil yesterday', 'in the guters', '8 × basil planted in Gutter run yesterday'],
    ['12 Salate gepflanzt', 'the second one', '12 × lettuce planted in Bucket row today'],
  ])('%s is asked for its system, and “%s” is answer enough', async (words, where, shown) => {
    const { say } = talking(openRehearsal(store));
    const [asked] = await say('ines', words);
    expect(asked).toMatchObject({ kind: 'question', text: containing('in which system?') });
    const [confirmed] = await say('ines', where);
    expect(confirmed).toMatchObject({ kind: 'question', text: containing(shown) });
    expect(await say('ines', 'yes')).toMatchObject([{ text: containing(`Done: ${shown}`) }]);
  });

  it('is placed by a button as well, or left', async () => {
    const { say, press } = talking(openRehearsal(store));
    const [asked] = await say('ines', 'planted 6 chillies');
    const buttons = asked!.buttons!.flat();
    const row = buttons.find(({ label }) => label === 'Bucket row')!;
    const [confirmed] = await press('ines', row.press);
    expect(confirmed).toMatchObject({ text: containing('6 × chilli planted in Bucket row today') });
    await say('ines', 'planted 6 chillies');
    expect(await say('ines', 'leave it')).toMatchObject([{ text: containing('stays as it is') }]);
  });

  it('stays open to something else that is said in between', async () => {
    const { say } = talking(openRehearsal(store));
    await say('ines', 'planted 12 lettuces');
    const [receipt] = await say('ines', 'jars ph 5.9');
    expect(receipt).toMatchObject({ kind: 'receipt', logged: [{ quantity: 'ph', value: 5.9 }] });
  });
});
