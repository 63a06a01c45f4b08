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

describe('Two people with a day each', () => {
  it.each([
    'tomas goes on mondays and priya on thursdays',
    'tomas mondays and priya thursdays',
    'on mondays tomas goes and on thursdays priya',
    'tomas goes on mondays and on thursdays priya',
  ])('go each on their own: %s', async (said) => {
    const say = household();
    expect(await say(said)).toBe('Tomas goes on Mondays.\nPriya goes on Thursdays.');
    expect(await say('who goes on thursday')).toBe('Thursday 6 May: Priya.');
  });

  it.each([
    'tomas geht montags und priya donnerstags',
    'montags geht tomas und donnerstags priya',
    'montags geht tomas und donnerstags geht priya',
  ])('in German: %s', async (said) => {
    expect(await household('de')(said)).toBe('Tomas geht montags.\nPriya geht donnerstags.');
  });

  it('and one with two days has both', async () => {
    expect(await household()('tomas goes on mondays and thursdays')).toBe(
      'Tomas goes on Mondays and Thursdays.',
    );
  });

  it('cannot go, each on their own', async () => {
    expect(await household()("tomas can't on friday and priya on saturday")).toBe(
      'Tomas cannot go on Friday. I plan around it.\nPriya cannot go on Saturday. I plan around it.',
    );
    expect(await household('de')('tomas kann am freitag nicht und priya am samstag')).toMatch(
      /Freitag kann Tomas nicht.*\n.*Samstag kann Priya nicht/u,
    );
  });
});

describe('An absence of so many weeks', () => {
  it.each([
    ["we're away a week", /^Away from Tuesday 4 May to Monday 10 May\./u],
    ['away a week from thursday', /^Away from Thursday 6 May to Wednesday 12 May\./u],
    ['a week away from thursday', /^Away from Thursday 6 May to Wednesday 12 May\./u],
    ['away two weeks from friday', /^Away from Friday 7 May to Thursday 20 May\./u],
    ['away this week', /^Away from Tuesday 4 May to Sunday 9 May\./u],
  ])('has all of their days: %s', async (said, days) => {
    expect(await household()(said)).toMatch(days);
  });

  it.each([
    ['bin eine woche weg', /^Weg von Dienstag, 4\. Mai bis Montag, 10\. Mai\./u],
    ['ich bin ab donnerstag eine woche weg', /^Weg von Donnerstag, 6\. Mai bis Mittwoch, 12\./u],
    ['bin eine woche weg ab donnerstag', /^Weg von Donnerstag, 6\. Mai bis Mittwoch, 12\./u],
    // A Friday that is the seventh: no day of the month is meant.
    ['ab freitag sieben tage weg', /^Weg von Freitag, 7\. Mai bis Donnerstag, 13\./u],
    ['ich bin ab freitag zwei wochen weg', /^Weg von Freitag, 7\. Mai bis Donnerstag, 20\./u],
  ])('in German: %s', async (said, days) => {
    expect(await household('de')(said)).toMatch(days);
  });
});
