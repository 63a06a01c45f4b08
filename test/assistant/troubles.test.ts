import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import type { Greenhouse } from '../../src/greenhouse/greenhouse.ts';
import { openRehearsal, quarryLaneWith } from '../channels/rehearsal/open-rehearsal.ts';
import type { OutLine } from '../channels/rehearsal/rehearse-child.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const at = (clock: string): string => `2027-05-04T${clock}:00+01:00`;

/** What was sent to somebody unasked. */
function alertsTo(handle: string, out: readonly OutLine[]): readonly OutLine[] {
  return out.filter(({ to, kind }) => to === handle && kind === 'alert');
}

function inGerman(greenhouse: Greenhouse): Greenhouse {
  const members = greenhouse.members.map((member) => ({ ...member, language: 'de' as const }));
  return { ...greenhouse, members };
}

describe('Something wrong that a helper tells of', () => {
  it('is passed on to the grower when it is kept, where it hurts nobody', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('07:30') });
    const asked = await talk({ at: at('08:20'), from: 'tomas', text: 'bench leaves yellow' });
    expect(asked[0]!.text).toMatch(/Shall I keep it as a note, and tell Ines\?$/);
    expect(alertsTo('ines', asked)).toEqual([]);
    const kept = await talk({ at: at('08:21'), from: 'tomas', text: 'yes' });
    expect(alertsTo('ines', kept)).toHaveLength(1);
  });

  it('is asked of the grower without a word of telling anybody', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('07:30') });
    const [asked] = await talk({ at: at('08:20'), from: 'ines', text: 'leaves yellow' });
    expect(asked!.text).toMatch(/Shall I keep it as a note\?$/);
  });
});

describe('A pump that was heard to labour', () => {
  const tell = async (...texts: readonly string[]): Promise<readonly OutLine[]> => {
    const talk = openRehearsal(store);
    let out: readonly OutLine[] = [];
    for (const [minute, text] of texts.entries())
      out = await talk({ at: at(`08:${String(20 + minute)}`), from: 'ines', text });
    return out;
  };
  const logged = (out: readonly OutLine[]) => out.flatMap((line) => line.logged ?? []);

  it.each([
    ['gutter pump is rattling', "it's stopped now", 'Gutter run', 'pump'],
    ['gutter pump is rattling', 'dead', 'Gutter run', 'pump'],
    ['the air pump on the dwc is very loud', 'now its off', 'Bucket row', 'air-pump'],
    ['bubbles in the buckets are really weak', 'they stopped completely', 'Bucket row', 'air-pump'],
  ])('may have stopped since: after “%s”, “%s” asks', async (first, then, system, of) => {
    const asked = await tell(first, then);
    expect(asked).toMatchObject([{ kind: 'question' }]);
    expect(asked[0]!.text).toMatch(/stopped altogether\?$/);
    expect(logged(await tell(first, then, 'yes'))).toMatchObject([
      { quantity: 'outage', system, of },
    ]);
    expect(logged(await tell(first, then, 'no'))).toEqual([]);
  });

  it.each(['off to bed now', 'is it off?', "it hasn't stopped", 'it works again'])(
    'has not by “%s”',
    async (then) => {
      const out = await tell('gutter pump is rattling', then);
      expect(out.some(({ text }) => text?.includes('stopped altogether'))).toBe(false);
      expect(logged(out)).toEqual([]);
    },
  );
});

describe('A pump that stopped in tubs that no pump feeds', () => {
  it('is their air: how long the roots have is told', async () => {
    const talk = openRehearsal(store);
    const out = await talk({ at: at('08:20'), from: 'ines', text: 'pump off in the buckets' });
    expect(out.some(({ text }) => text?.includes('until the oxygen in the water runs out'))).toBe(
      true,
    );
  });
});

describe('Something dangerous that a helper tells of', () => {
  it('reaches the grower at once with who said it and the words, and the helper hears what to do first', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('07:30') });
    const told = await talk({ at: at('08:20'), from: 'tomas', text: 'bench leaking' });
    expect(told[0]).toMatchObject({ kind: 'question', to: 'tomas' });
    expect(told[0]!.text).toMatch(/touch no plug or cable that is wet/);
    expect(told[0]!.text).toMatch(/I have told Ines\.\nShall I keep it as a note as well\?$/);
    const alerts = alertsTo('ines', told);
    expect(alerts).toHaveLength(1);
    expect(alerts[0]!.text).toMatch(/^Tomas writes about North bench: “bench leaking”\./);
  });

  it('is told once, whether the note is kept, or the message edited or sent again', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('07:30') });
    const line = { from: 'tomas', text: 'bench leaking', id: 'm1' };
    await talk({ at: at('08:20'), ...line });
    const kept = await talk({ at: at('08:21'), from: 'tomas', text: 'yes' });
    expect(kept.flatMap(({ logged }) => logged ?? [])).toMatchObject([
      { system: 'North bench', quantity: 'note', note: 'bench leaking' },
    ]);
    const later = [
      ...kept,
      ...(await talk({ at: at('08:22'), ...line })),
      ...(await talk({ at: at('08:23'), from: 'tomas', edits: 'm1', text: 'bench leaking a lot' })),
      ...(await talk({ at: at('09:30') })),
    ];
    expect(alertsTo('ines', later)).toEqual([]);
  });

  it('is told when an edit brings it in', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('07:30') });
    await talk({ at: at('08:20'), from: 'tomas', text: 'jars ph 5.9', id: 'm1' });
    const text = 'jars ph 5.9, buckets leaking';
    const edited = await talk({ at: at('08:21'), from: 'tomas', edits: 'm1', text });
    expect(alertsTo('ines', edited)).toHaveLength(1);
  });

  it('alarms nobody where the only grower tells it herself', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('07:30') });
    const told = await talk({ at: at('08:20'), from: 'ines', text: 'the bench is leaking' });
    expect(told).toHaveLength(1);
    expect(told[0]!.text).not.toMatch(/I have told/);
  });

  it('reaches whoever steps in as well, at night too', async () => {
    const talk = openRehearsal(store);
    await talk(
      { at: at('07:30') },
      { at: at('08:00'), from: 'ines', text: 'away from today until 12 May' },
      { at: at('08:01'), from: 'ines', text: 'priya' },
    );
    const told = await talk({ at: at('23:50'), from: 'olli', text: 'smoke from the air pump' });
    expect(alertsTo('ines', told)).toHaveLength(1);
    expect(alertsTo('priya', told)).toHaveLength(1);
  });

  it('is told beside whatever else the message does', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('07:30') });
    for (const [minute, text] of [
      "can't go tonight, the bench is leaking",
      "couldn't do the jars, water on the floor",
      'note: the bench is leaking',
      'left olli a note: the bench is leaking',
      'wrote on the board that the bench is leaking',
      'put 5 l in the jars because they were leaking',
      'done, but there is water on the floor',
    ].entries()) {
      const told = await talk({ at: at(`08:${20 + minute}`), from: 'tomas', text });
      expect(alertsTo('ines', told), text).toHaveLength(1);
      const toTeller = told.filter(({ to }) => to === 'tomas').map((line) => line.text);
      expect(toTeller.join('\n'), text).toMatch(/touch no plug/);
    }
  });

  it('is answered with what to do first where somebody asks what to do if it happens', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('07:30') });
    const text = 'what do I do if the bench leaks?';
    const told = await talk({ at: at('08:20'), from: 'tomas', text });
    expect(told).toMatchObject([{ kind: 'answer', to: 'tomas' }]);
    expect(told[0]!.text).toMatch(/touch no plug/);
  });

  const dangers = {
    en: {
      leak: [
        'leak!',
        'the bench is leeking',
        'water on the floor',
        'about 5 litres of water on the floor under the buckets',
        "can't stop the leak under the bench",
        'no idea why there is water on the floor',
        'help the bench is leaking what do i do?',
        "the bench is leaking I'll turn the pump off",
      ],
      breaker: [
        "there's smoke",
        'smoke coming out of the socket',
        'I got an electric shock from the pump',
        'priya got an electric shock',
        'burning smell by the gutters',
      ],
      rinse: [
        'spilled ph down on my hand',
        'acid in my eye',
        'knocked over the acid, it is on the floor',
        'got nutrient a on my hands',
      ],
    },
    de: {
      leak: [
        'North bench leckt',
        'Wasser auf dem Boden',
        'etwa 5 Liter Wasser auf dem Boden',
        'kann heute nicht, North bench leckt',
        'Hilfe, North bench leckt, was soll ich tun?',
        'keine Ahnung warum da Wasser auf dem Boden ist',
      ],
      breaker: [
        'Rauch aus der Luftpumpe',
        'hab einen Stromschlag von der Pumpe bekommen',
        'es riecht verbrannt',
      ],
      rinse: [
        'Säure im Auge',
        'pH Down auf die Hand verschüttet',
        'die Säure ist umgekippt und läuft über den Boden',
        'habe mich mit pH Down verätzt',
      ],
    },
  };
  const first = {
    en: { leak: /touch no plug/, breaker: /at the breaker/, rinse: /rinse at once/ },
    de: { leak: /keinen Stecker/, breaker: /an der Sicherung/, rinse: /mit viel Wasser spülen/ },
  };

  describe.each(['en', 'de'] as const)('in %s', (language) => {
    it.each(['leak', 'breaker', 'rinse'] as const)('says what to do first: %s', async (what) => {
      const household = quarryLaneWith();
      const talk = openRehearsal(store, language === 'de' ? inGerman(household) : household);
      await talk({ at: at('07:30') });
      for (const [minute, text] of dangers[language][what].entries()) {
        const told = await talk({ at: at(`08:${20 + minute}`), from: 'tomas', text });
        const alerts = alertsTo('ines', told);
        expect(alerts, text).toHaveLength(1);
        expect(alerts[0]!.text, text).toContain(text);
        const toTeller = told.filter(({ to }) => to === 'tomas').map((line) => line.text);
        expect(toTeller.join('\n'), text).toMatch(first[language][what]);
      }
    });

    const harmless = {
      en: [
        'no leaks',
        'is it leaking?',
        'is there smoke?',
        'priya says the bench is leaking',
        "if it leaks I'll tell you",
        'the bench might leak',
        "bench isn't leaking any more",
        'fixed the leak',
        'the leak has stopped',
        'buckets stopped leaking',
        'checked for leaks',
        'nothing leaks',
        'topped up bench 20 l no leaks',
        'topped up the jars 3 l and spilled a bit',
        'added 5 ml ph down to the buckets, spilled some',
        'buckets lost 20 l',
      ],
      de: [
        'kein Leck',
        'leckt es?',
        'leckt da was?',
        'Priya sagt, North bench leckt',
        'wenn es leckt, sag ich Bescheid',
        'North bench leckt nicht mehr',
        'North bench ist nicht undicht',
        'Leck repariert',
        'das Leck ist weg',
        'es leckt nirgends',
        'Licht brennt noch',
      ],
    };
    it('alarms nobody with what is denied, asked, heard, supposed or over', async () => {
      const household = quarryLaneWith();
      const talk = openRehearsal(store, language === 'de' ? inGerman(household) : household);
      await talk({ at: at('07:30') });
      for (const [minute, text] of harmless[language].entries()) {
        const told = await talk({ at: at(`08:${20 + minute}`), from: 'tomas', text });
        expect(alertsTo('ines', told), text).toEqual([]);
      }
    });
  });
});
