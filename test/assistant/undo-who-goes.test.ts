import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal, quarryLaneWith, type Talk } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

/** A talk on 4 May that goes on by a minute with each message. */
function talking(talk: Talk) {
  let minute = 0;
  const at = (): string => {
    minute += 1;
    return `2027-05-04T08:${String(minute).padStart(2, '0')}:00+01:00`;
  };
  return {
    say: (from: string, text: string) => talk({ at: at(), from, text }),
    press: (from: string, press: string) => talk({ at: at(), from, press }),
  };
}

describe('Undo after something was settled about who goes', () => {
  it('takes that back, and not the reading that was logged before it', async () => {
    const { say } = talking(openRehearsal(store));
    await say('tomas', 'bench 5.9 2.2');
    await say('tomas', "I'll do the jars tonight");
    const [undone] = await say('tomas', 'undo');
    expect(undone).toMatchObject({
      kind: 'answer',
      text: 'Taken back: You take Jar shelf tonight.',
    });
    const [struck] = await say('tomas', 'undo');
    expect(struck).toMatchObject({ kind: 'correction', struck: [{ value: 5.9 }, { value: 2.2 }] });
  });

  it('lets what was settled before stand again', async () => {
    const { say } = talking(openRehearsal(store));
    await say('ines', 'Tomas covers Friday');
    await say('ines', 'Priya covers Friday');
    await say('ines', 'undo');
    const [roster] = await say('ines', 'who goes on Friday');
    expect(roster?.text).toContain('Tomas');
    expect(roster?.text).not.toContain('Priya');
  });

  it('takes back an absence, whose plan is gone with it', async () => {
    const { say } = talking(openRehearsal(store));
    await say('ines', 'away from Friday to the 16th');
    const [undone] = await say('ines', 'undo');
    expect(undone?.text).toBe('Taken back: You are away from Friday 7 May to Sunday 16 May.');
    const [plan] = await say('ines', 'show me the plan');
    expect(plan?.text).toContain('Nobody is away');
  });

  it('works by the button, once', async () => {
    const { say, press } = talking(openRehearsal(store));
    const [settled] = await say('ines', 'nobody can go on Friday');
    const [undo] = (settled?.buttons ?? []).flat();
    const [undone] = await press('ines', undo!.press);
    expect(undone).toMatchObject({ text: 'Taken back: Nobody can go on Friday.' });
    const [again] = await press('ines', undo!.press);
    expect(again).toMatchObject({ text: 'That is no longer open, so nothing was changed.' });
  });

  it('speaks German to whoever reads German', async () => {
    const german = { handle: 'max', name: 'Max', role: 'helper' as const, language: 'de' as const };
    const { say } = talking(
      openRehearsal(store, quarryLaneWith({ members: [...quarryLaneWith().members, german] })),
    );
    await say('max', 'ich übernehme heute Abend die Gläser');
    await say('max', 'am Freitag kann ich nicht');
    const [undone] = await say('max', 'rückgängig');
    expect(undone?.text).toContain('Zurückgenommen: Am Freitag kannst du nicht gehen.');
  });
});
