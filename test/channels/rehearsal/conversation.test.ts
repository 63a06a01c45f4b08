import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../../src/assistant/ports/store.ts';
import { openTestStore } from '../../storage/open-test-store.ts';
import { openRehearsal } from './open-rehearsal.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const at = (time: string): string => `2027-05-04T${time}:00+01:00`;

describe('A message', () => {
  it('is logged once, however often its id comes', async () => {
    const talk = openRehearsal(store);
    const message = { from: 'tomas', id: 'm1', text: 'topped up the dwc 4 l' };
    const first = await talk({ at: at('08:00'), ...message });
    const second = await talk({ at: at('09:00'), ...message });
    expect(first.map(({ kind }) => kind)).toEqual(['receipt']);
    expect(second).toEqual([]);
  });

  it('has the same id free for another member', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('08:00'), from: 'tomas', id: 'm1', text: 'dwc ph 5.8' });
    const [receipt] = await talk({ at: at('08:01'), from: 'priya', id: 'm1', text: 'nft ph 6' });
    expect(receipt).toMatchObject({ kind: 'receipt', logged: [{ system: 'Gutter run' }] });
  });

  it('replaces what it logged when it is edited, at the time it was first written', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('08:00'), from: 'tomas', id: 'm1', text: 'dwc ph 5.8 ec 1.7' });
    const [correction] = await talk({
      at: at('08:30'),
      from: 'tomas',
      edits: 'm1',
      text: 'dwc ph 5.9',
    });
    expect(correction).toMatchObject({
      kind: 'correction',
      struck: [{ quantity: 'ph', value: 5.8 }, { quantity: 'ec' }],
      logged: [{ quantity: 'ph', value: 5.9, at: at('08:00') }],
    });
  });

  it('has nothing logged any more once it is edited into a question', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('08:00'), from: 'tomas', id: 'm1', text: 'dwc ph 5.8' });
    const out = await talk({ at: at('08:01'), from: 'tomas', edits: 'm1', text: 'ph 5.8' });
    expect(out.map(({ kind }) => kind)).toEqual(['correction', 'question']);
    expect(out[0]).toMatchObject({ struck: [{ value: 5.8 }], logged: [] });
  });
});

describe('A button', () => {
  it('strikes out what its receipt logged, once', async () => {
    const talk = openRehearsal(store);
    const [receipt] = await talk({ at: at('08:00'), from: 'tomas', text: 'dwc ph 5.8' });
    const press = receipt!.buttons![0]![0]!.press;
    const [correction] = await talk({ at: at('08:01'), from: 'tomas', press });
    expect(correction).toMatchObject({ kind: 'correction', struck: [{ quantity: 'ph' }] });
    const [again] = await talk({ at: at('08:02'), from: 'tomas', press });
    expect(again).toMatchObject({ kind: 'answer' });
    expect(again).not.toHaveProperty('struck');
  });

  it('answers the question it stands under, under the message that raised it', async () => {
    const talk = openRehearsal(store);
    const [question] = await talk({ at: at('08:00'), from: 'tomas', id: 'm1', text: 'ph 5.8' });
    const button = question!.buttons!.flat().find(({ label }) => label === 'Gutter run')!;
    const [receipt] = await talk({ at: at('08:01'), from: 'tomas', press: button.press });
    expect(receipt).toMatchObject({
      kind: 'receipt',
      logged: [{ system: 'Gutter run', value: 5.8 }],
    });
    const [late] = await talk({ at: at('08:02'), from: 'tomas', press: button.press });
    expect(late).toMatchObject({ kind: 'answer' });
    const [edited] = await talk({
      at: at('08:03'),
      from: 'tomas',
      edits: 'm1',
      text: 'nft ph 5.9',
    });
    expect(edited).toMatchObject({ kind: 'correction', struck: [{ value: 5.8 }] });
  });

  it('of nonsense is answered kindly and does nothing', async () => {
    const talk = openRehearsal(store);
    for (const press of ['', '1.0', '99999999999.9', 'strike', '1.0.0']) {
      const [answer] = await talk({ at: at('08:00'), from: 'tomas', press });
      expect(answer).toMatchObject({ kind: 'answer' });
    }
  });
});

describe('Taking back', () => {
  it('undoes the last receipt, and then the one before', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('08:00'), from: 'tomas', text: 'dwc ph 5.8' });
    await talk({ at: at('08:01'), from: 'tomas', text: 'nft ph 6.1' });
    const [first] = await talk({ at: at('08:02'), from: 'tomas', text: 'undo' });
    const [second] = await talk({ at: at('08:03'), from: 'tomas', text: 'undo' });
    const [third] = await talk({ at: at('08:04'), from: 'tomas', text: 'undo' });
    expect(first).toMatchObject({ struck: [{ system: 'Gutter run' }] });
    expect(second).toMatchObject({ struck: [{ system: 'Bucket row' }] });
    expect(third).toMatchObject({ kind: 'answer' });
  });

  it('reads a depth anew for the system that was meant', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('08:00'), from: 'tomas', text: 'bench level 20cm' });
    const [moved] = await talk({ at: at('08:01'), from: 'tomas', text: 'I meant the buckets' });
    expect(moved).toMatchObject({
      kind: 'correction',
      struck: [{ system: 'North bench', value: 150 }],
      logged: [{ system: 'Bucket row', value: 72 }],
    });
  });

  it('is refused to a helper for what somebody else logged, and allowed to the grower', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('08:00'), from: 'tomas', id: 'm1', text: 'dwc ph 5.8' });
    const undo = { text: 'undo', replyTo: 'm1' };
    const [refused] = await talk({ at: at('08:01'), from: 'priya', ...undo });
    const [done] = await talk({ at: at('08:02'), from: 'ines', ...undo });
    expect(refused).toMatchObject({ kind: 'refusal' });
    expect(done).toMatchObject({ kind: 'correction', struck: [{ value: 5.8 }] });
  });

  it('of an entry a week old changes the estimates as if it had never been', async () => {
    const said = [
      { at: at('08:00'), from: 'ines', text: 'changed the bench, 600 l' },
      { at: '2027-05-06T08:00:00+01:00', from: 'ines', text: 'bench level 540 l' },
      {
        at: '2027-05-08T08:00:00+01:00',
        from: 'ines',
        text: 'topped up the bench 110 l to the brim',
      },
    ];
    const later = { at: '2027-05-13T08:00:00+01:00', outlook: true };
    const straight = openRehearsal(store);
    const [never] = (await straight(...said, later)).filter(({ outlook }) => outlook);
    const detour = openRehearsal(store);
    await detour(said[0]!, {
      at: '2027-05-05T08:00:00+01:00',
      from: 'ines',
      id: 'slip',
      text: 'bench level 200 l',
    });
    await detour(said[1]!, said[2]!);
    const undo = { from: 'ines', text: 'undo', replyTo: 'slip' };
    await detour({ at: '2027-05-12T08:00:00+01:00', ...undo });
    const [struck] = (await detour(later)).filter(({ outlook }) => outlook);
    const water = ({ outlook }: { outlook?: readonly Record<string, unknown>[] } = {}) =>
      outlook?.map(({ system, litres, usePerDay, lowOn }) => ({
        system,
        litres,
        usePerDay,
        lowOn,
      }));
    expect(water(struck)).toEqual(water(never));
  });
});

describe('A sensor', () => {
  it('writes into the log, in its own unit or one that can be turned into it', async () => {
    const talk = openRehearsal(store);
    const sensor = { system: 'Gutter run', quantity: 'ec', value: 1300, unit: 'µS/cm' };
    expect(await talk({ at: at('08:00'), sensor })).toEqual([]);
    const [answer] = await talk({
      at: at('08:01'),
      from: 'ines',
      text: 'what was the last ec in the nft',
    });
    expect(answer?.text).toContain('1.3');
  });

  it('that speaks nonsense is told what is wrong, and logs nothing', async () => {
    const talk = openRehearsal(store);
    const good = { system: 'Gutter run', quantity: 'ph', value: 6, unit: 'pH' };
    for (const [change, error] of [
      [{ system: 'Moon' }, /^sensor\.system: found Moon/],
      [{ quantity: 'joy' }, /^sensor\.quantity: found joy/],
      [{ unit: 'furlong' }, /^sensor\.unit: found furlong, expected pH/],
      [{ value: 61 }, /^sensor\.value: found 61 pH, expected 3 to 9 pH/],
    ] as const) {
      const [fault] = await talk({ at: at('08:00'), sensor: { ...good, ...change } });
      expect(fault?.error).toMatch(error);
    }
  });
});
