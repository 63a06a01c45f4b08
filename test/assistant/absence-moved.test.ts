import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openTestStore } from '../storage/open-test-store.ts';
import { growerTalk } from './grower-talk.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const household = (language?: 'en' | 'de') => growerTalk(store, language);

describe('Who goes, asked for an absence, is answered', () => {
  it.each(['priya does it', 'priya can do it', 'priya does it all', 'priya'])(
    'for all of its days by “%s”',
    async (said) => {
      const say = household();
      expect(await say('away from friday to monday', said)).toMatch(
        /^Priya goes from Friday 7 May to Monday 10 May\./u,
      );
      expect(await say('who goes on saturday')).toBe('Saturday 8 May: Priya.');
    },
  );

  it('in German', async () => {
    const say = household('de');
    const said = await say('weg von freitag bis montag', 'priya macht das');
    expect(said).toMatch(/^Priya geht von Freitag, 7\. Mai bis Montag, 10\. Mai/u);
  });

  it('and a turn taken today is still one of today where nothing was asked', async () => {
    expect(await household()("i'll do it")).toMatch(/^You take the round today\./u);
  });
});

describe('What the bot is asked to do itself', () => {
  it.each(['can you do that for me', 'can you do the jars tonight', 'could you top up the bench'])(
    'is no turn that whoever asks takes: %s',
    async (said) => {
      expect(await household()(said)).not.toMatch(/^You take/u);
    },
  );
});

describe('A trip on other days than told', () => {
  it.each([
    'we leave a day later',
    'change of plan, we leave a day later',
    "we're staying two days longer",
    'back a day earlier than planned',
    "i'm home a day later",
  ])('is asked for anew: %s', async (said) => {
    const say = household();
    await say('away from friday to monday', 'nobody');
    expect(await say(said)).toMatch(/^From when to when\?/u);
    expect(await say('saturday to the 11th')).toMatch(/^Away from Saturday 8 May to Tuesday 11/u);
    await say('nobody');
    expect(await say('when am i away')).toMatch(/from Saturday 8 May until Tuesday 11 May/u);
  });

  it('keeps its first day where only the last is told', async () => {
    const say = household();
    await say('away from friday to monday', 'nobody', "we're staying two days longer");
    expect(await say('until the 12th')).toMatch(/^Away from Friday 7 May to Wednesday 12 May\./u);
  });

  it('in German', async () => {
    const say = household('de');
    await say('weg von freitag bis montag', 'niemand');
    expect(await say('wir fahren einen tag später')).toMatch(/^Von wann bis wann\?/u);
  });

  it.each(['the bench drinks a day longer', 'topped up a day later'])(
    'is nothing that is said of the greenhouse: %s',
    async (said) => {
      expect(await household()(said)).not.toMatch(/^From when/u);
    },
  );
});

describe('When somebody is back', () => {
  it.each(['when am i back', 'when are we back'])(
    'tells whoever asks of themselves: %s',
    async (said) => {
      const say = household();
      expect(await say('away from friday to monday', 'nobody', said)).toMatch(
        /^You are away until Monday 10 May\./u,
      );
    },
  );
});
