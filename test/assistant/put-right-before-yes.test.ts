import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal, quarryLaneWith } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

interface Said {
  readonly text: string;
  readonly kinds: readonly unknown[];
  readonly told: readonly unknown[];
}

/** A household that is read to in one language; says lines, a minute apart, on Tuesday 4 May. */
function household(language: 'en' | 'de' = 'en') {
  const members = quarryLaneWith().members.map((member) => ({ ...member, language }));
  const talk = openRehearsal(store, quarryLaneWith({ members }));
  let minute = 0;
  return async (from: string, ...texts: readonly string[]): Promise<Said> => {
    let said: Said = { text: '', kinds: [], told: [] };
    for (const text of texts) {
      minute += 1;
      const at = `2027-05-04T08:${String(minute).padStart(2, '0')}:00+01:00`;
      const out = await talk({ at, from, text });
      const own = out.filter((line) => line.to === from);
      said = {
        text: own.map((line) => line.text).join('\n'),
        kinds: own.map((line) => line.kind),
        told: out.flatMap((line) => (line.kind === 'alert' ? [line.to] : [])),
      };
    }
    return said;
  };
}

describe('An absence that was just told is put right', () => {
  it.each(['no, from saturday', 'sorry, from saturday', 'no wait, from saturday'])(
    'by its first day, and keeps the last: %s',
    async (said) => {
      const { text } = await household()('ines', 'away from friday to sunday', said);
      expect(text).toMatch(/^Away from Saturday 8 May to Sunday 9 May\./u);
    },
  );

  it('by its last day, or both', async () => {
    const say = household();
    await say('ines', 'away from friday to sunday');
    expect((await say('ines', 'no, until monday')).text).toMatch(/^Away from Friday 7 May to Mon/u);
    expect((await say('ines', 'sorry, saturday to tuesday')).text).toMatch(
      /^Away from Sat.* to Tu/u,
    );
  });

  it('and is asked for where one day could be either', async () => {
    const { text } = await household()('ines', 'away from friday to sunday', 'no, saturday');
    expect(text).toMatch(/^From when to when\?/u);
  });

  it('in German', async () => {
    const { text } = await household('de')(
      'ines',
      'weg von freitag bis sonntag',
      'nein, ab samstag',
    );
    expect(text).toMatch(/^Weg von Samstag, 8\. Mai bis Sonntag, 9\. Mai\./u);
  });

  it.each(['no, from saturday', 'not tomas, priya'])(
    'by nothing that follows a report: %s',
    async (said) => {
      const say = household();
      await say('ines', 'away from friday to sunday', 'topped up the jars 1 l');
      expect((await say('ines', said)).text).not.toMatch(/^(?:Away from Sat|Priya goes)/u);
    },
  );
});

describe('Who goes is put right by another name', () => {
  it.each(['not tomas, priya', 'actually priya does it', 'no, priya', 'priya instead of tomas'])(
    'for all of the same days, and both hear of it: %s',
    async (said) => {
      const say = household();
      const { text, told } = await say('ines', 'away from friday to sunday', 'tomas', said);
      expect(text).toBe('Priya goes from Friday 7 May to Sunday 9 May.');
      expect([...told].toSorted()).toEqual(['priya', 'tomas']);
    },
  );

  it('before anybody was named', async () => {
    const { text } = await household()('ines', 'away from friday to sunday', 'not tomas, priya');
    expect(text).toMatch(/^Priya goes from Friday 7 May to Sunday 9 May\./u);
  });

  it('in German', async () => {
    const say = household('de');
    await say('ines', 'weg von freitag bis sonntag', 'tomas');
    expect((await say('ines', 'nicht tomas, sondern priya')).text).toMatch(/^Priya geht von Frei/u);
    expect((await say('ines', 'doch lieber olli')).text).toMatch(/^Olli geht von Freitag, 7\./u);
  });

  it('and not by what a name is denied', async () => {
    const { text } = await household()('ines', 'away friday to sunday', 'tomas', "no, priya can't");
    expect(text).not.toMatch(/Priya goes/u);
  });
});

describe('A change of plan that says no more', () => {
  it('asks for the days of an absence that is settled', async () => {
    const say = household();
    await say('ines', 'away from friday to sunday', 'nobody');
    expect((await say('ines', 'change of plan')).text).toMatch(/^From when to when\?/u);
    const { text } = await say('ines', 'from saturday to monday');
    expect(text).toMatch(/^Away from Saturday 8 May to Monday 10 May\./u);
  });

  it('in German', async () => {
    const say = household('de');
    await say('ines', 'weg von freitag bis sonntag', 'niemand');
    expect((await say('ines', 'planänderung')).text).toMatch(/^Von wann bis wann\?/u);
  });

  it('asks nobody who is not away, nor beside what it changes', async () => {
    const say = household();
    expect((await say('ines', 'change of plan')).text).not.toMatch(/From when/u);
    await say('ines', 'away from friday to sunday', 'nobody');
    const { text } = await say('ines', 'change of plan, jars ph 6.0');
    expect(text).not.toMatch(/From when/u);
  });
});

describe('Whoever goes in the place of one who cannot', () => {
  it.each(["tomas can't on friday, priya goes instead", "tomas can't on friday, priya does it"])(
    'goes on that day: %s',
    async (said) => {
      const { text } = await household()('ines', said);
      expect(text).toBe('Tomas cannot go on Friday. I plan around it.\nPriya goes on Friday.');
    },
  );

  it('is for the grower to say, but that a helper cannot go is kept', async () => {
    const { text, kinds } = await household()('tomas', "I can't on friday, priya goes");
    expect(kinds).toEqual(['answer', 'refusal']);
    expect(text).toMatch(/^You cannot go on Friday\. I plan around it\./u);
  });

  it('is nobody who is only spoken to', async () => {
    const { text } = await household()('tomas', "I can't on friday, priya");
    expect(text).toBe('You cannot go on Friday. I plan around it.');
  });
});

describe('A change that is shown is put right by another figure', () => {
  it.each([
    ['bought 5 l of A', 'no, 3 l', /^3 L of nutrient A bought/u],
    ['bought 5 l of A', 'no, 3', /^3 L of nutrient A bought/u],
    ['used up the B', 'no, 200 ml', /^200 mL of nutrient B left/u],
    ['can you move the round to 8', 'no, 9', /→ 09:00/u],
    ['can you move the round to 8', 'sorry, half past 8', /→ 08:30/u],
    ['my can is 12 l', 'no, 11', /^1 can holds 11 L/u],
    ['low mark of the jars 5', '6', /→ 6 L/u],
    ['planted 8 basil in the jars', 'no wait, 10', /^10 × basil/u],
  ])('%s, %s', async (shown, said, anew) => {
    const say = household();
    await say('ines', 'jars full');
    const { text, kinds } = await say('ines', shown, said);
    expect(text).toMatch(anew);
    // Nothing that was logged before is corrected by it.
    expect(kinds).toEqual(['question']);
  });

  it('in German', async () => {
    const say = household('de');
    expect((await say('ines', '5 l A gekauft', 'nein, 3 l')).text).toMatch(
      /^3 l Dünger A gekauft/u,
    );
    expect((await say('ines', 'runde bitte um 8', 'nein, 9')).text).toMatch(/→ 09:00/u);
  });

  it('and what was logged after it is what a figure corrects', async () => {
    const say = household();
    await say('ines', 'bought 5 l of A', 'topped up the jars 1 l');
    const { kinds, text } = await say('ines', 'no, 2 l');
    expect(kinds).toEqual(['correction']);
    expect(text).toMatch(/topped up 2 L/u);
  });
});

describe('The set-up, in the words of a household', () => {
  it.each([
    ['the low mark of the bench is 200 now', /150 L → 200 L/u],
    ['bench low mark now 180', /150 L → 180 L/u],
    ['low mark of the jars is 5 l from now on', /4 L → 5 L/u],
    ['the round is too early, can it come at 8', /07:00 → 08:00/u],
    ['can the round come at half past six', /07:00 → 06:30/u],
    ['pulled the old cucumbers out of the buckets', /^6 × cucumber taken out of Bucket row/u],
    ['took all the lettuces out of the jars', /^12 × lettuce taken out of Jar shelf/u],
    ['the jars are empty of plants now', /^12 × lettuce taken out of Jar shelf/u],
  ])('is shown first: %s', async (said, shown) => {
    const { text, kinds } = await household()('ines', said);
    expect(text).toMatch(shown);
    expect(kinds).toEqual(['question']);
  });

  it.each([
    ['die niedrigmarke vom north bench ist jetzt 200', /150 l → 200 l/u],
    ['untere marke der jars auf 5', /4 l → 5 l/u],
    ['die runde ist zu früh, kann sie um 8 kommen', /07:00 → 08:00/u],
    ['hab die alten gurken aus den buckets gerissen', /^6 × Gurke heute aus Bucket row genommen/u],
  ])('in German: %s', async (said, shown) => {
    expect((await household('de')('ines', said)).text).toMatch(shown);
  });

  it.each(['the round is too early, can it come at 8', 'the low mark of the bench is 200 now'])(
    'is for the grower: %s',
    async (said) => {
      const { kinds, text } = await household()('tomas', said);
      expect(kinds).toEqual(['refusal']);
      expect(text).toMatch(/Ask Ines/u);
    },
  );

  it.each([
    // A system is no can: so much may be in it.
    ['the bench is 200 now', /holds 200|low mark/iu],
    ['the bench is at 200 l now', /low mark of North bench:|holds/iu],
    ['pulled the pump out of the buckets', /taken out of/u],
    ['took 5 lettuces out of the jars', /taken out of/u],
    ['took the cucumbers out of the buckets, 2 kg', /taken out of/u],
    ['did the round at 8', /→ 08:00/u],
  ])('and no such wish is made of %s', async (said, wish) => {
    expect((await household()('ines', said)).text).not.toMatch(wish);
  });
});
