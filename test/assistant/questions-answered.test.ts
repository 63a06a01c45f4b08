import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal, quarryLaneWith } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const household = quarryLaneWith({
  members: [
    ...quarryLaneWith().members,
    { handle: 'max', name: 'Max', role: 'helper' as const, language: 'de' as const },
  ],
});

/** What a question is answered on the morning of 8 May 2027, after the others have told what they measured. */
async function answerTo(from: string, ...texts: readonly string[]): Promise<string> {
  const say = openRehearsal(store, household);
  await say({ at: '2027-05-07T18:00:00+01:00', from: 'ines', text: 'bench full, jars full' });
  await say({ at: '2027-05-08T08:00:00+01:00', from: 'olli', text: 'gutters ph 6.6 ec 1.1' });
  await say({ at: '2027-05-08T08:01:00+01:00', from: 'olli', text: 'topped up 3 l in the jars' });
  let text = '';
  for (const [i, said] of texts.entries()) {
    const lines = await say({ at: `2027-05-08T09:0${i}:00+01:00`, from, text: said });
    text = lines.flatMap((line) => (line.to === from ? [line.text] : [])).join('\n');
    if (said === texts.at(-1)) expect(lines.flatMap(({ logged = [] }) => logged)).toEqual([]);
  }
  return text;
}

describe('A question is answered with what it asks for', () => {
  it.each([
    ['ines', 'who measured the gutters last', /^Olli: pH 6\.6 \(Gutter run\), today at 08:00\./u],
    ['ines', 'when were the gutters last checked', /^Olli: pH 6\.6/u],
    [
      'max',
      'wer hat die gutters zuletzt gemessen',
      /^Olli: pH 6,6 \(Gutter run\), heute um 08:00/u,
    ],
    ['ines', 'when is the pen due', /^Calibrate the pen: [^\n]+$/u],
    ['ines', 'when was the pen last calibrated', /By the set-up:\nPen: last on 24 April\.$/u],
    ['ines', 'which one drinks most', /^North bench drinks most: about .+ a day\. Then come /u],
    ['max', 'wer säuft am meisten', /^North bench trinkt am meisten: etwa .+ am Tag\. Danach: /u],
    ['ines', 'anything for tomorrow', /^To do by tomorrow:\n/u],
    ['ines', 'what is coming up this week', /^To do by tomorrow:\n/u],
    ['max', 'gibts morgen was zu tun', /^Zu tun bis morgen:\n/u],
    ['ines', 'is everything ok?', /^To do today:/u],
    ['ines', 'how big is the bench', /^North bench: about .+ of 600 L/u],
    ['ines', 'is it too warm in the jars', /^Jar shelf: no water temperature .+ 14 to 24 °C/u],
    ['ines', "what's left", /^To do today:/u],
    ['ines', 'can it wait til friday', /^If the next trip is on Friday/u],
    ['ines', 'what if it gets really hot at the weekend', /^If it gets hot/u],
    ['ines', 'whens the next reservoir change', /^Change the solution of /u],
    ['ines', 'who did what today', /Olli: topped up 3 L \(Jar shelf\)/u],
    ['ines', 'are we running out of nutrients', /^Nutrient A: 4\.2 L left/u],
    ['ines', 'what temperature is it in the greenhouse', /^No air temperature/u],
    ['ines', 'has there been a power cut', /^Nobody has told me that the power was off/u],
    ['max', 'gab es einen stromausfall', /^„Strom weg“ hat mir niemand gemeldet/u],
    ['max', 'wie mach ich einen wasserwechsel', /^Für welches System/u],
    ['ines', 'how much is a can', /^Can: 10 L\.$/u],
    ['ines', 'how often must i check the buckets', /^Check Bucket row: .+, next /u],
    ['ines', 'is it urgent', /^For today, not to be put off:\n- /u],
    ['olli', 'what do i do if the ph is too low', /^pH too low: .+ please add nothing yourself\./u],
    ['ines', 'what do i do if the ph is too low', /^pH too low: .+ Wear goggles and gloves/su],
    ['ines', 'why is the ph so high', /^pH mostly rises .+\nGutter run: last pH 6\.6, /su],
    ['olli', "i'm in the greenhouse now what do i do", /^To do today:/u],
    ['ines', 'is that too warm?', /^Which value do you mean\?/u],
    ['ines', 'whats a good ec for the jars', /^Jar shelf: .+ 1\.0 to 1\.6 mS\/cm is wanted/u],
    ['ines', 'can i put 200 ml ph down in the jars', /^No: 200 mL pH down is far too much/u],
    ['ines', 'how much do i need to put in the bench', /^North bench: about .+ fits in\.$/u],
    ['ines', 'how does anna join', /^The grower writes to me .+“invite a helper”/u],
    ['ines', 'my neighbour wants to help', /^The grower writes to me/u],
    ['max', 'wie kann ich jemanden einladen', /^Die Leitung schreibt mir/u],
    ['ines', 'which method did best', /^Nothing can be compared yet: no harvest was weighed/u],
    ['ines', 'what works best', /^Nothing can be compared yet/u],
    ['ines', 'compare the methods', /^Nothing can be compared yet/u],
    ['max', 'welche methode hat sich gelohnt', /^Zu vergleichen gibt es noch nichts/u],
    ['ines', 'how did the season go', /^Gutter run [^\n]+1 day with a visit/mu],
    ['max', 'wie lief die saison', /^Gutter run /mu],
    ['ines', 'what will i need to buy', /^Nutrient A: 4\.2 L left/u],
    ['ines', 'what did the jars drink this month', /^Jar shelf: topped up 3 L since [^\n]+$/u],
    ['ines', 'how much did the jars drink last month', /topped up 0 L from 1 April to 30 April/u],
    ['ines', 'how much water this season', /^North bench: topped up 0 L since yesterday/u],
    ['max', 'wie viel haben die jars diesen monat getrunken', /^Jar shelf: [^\n]*3 l nachgefüllt/u],
    ['max', 'stimmt was nicht mit der bench', /^North bench: noch etwa/u],
    ['max', 'kann die bench bis freitag warten', /^North bench: lieber nicht bis Freitag warten/u],
  ])('%s: %s', async (from, text, expected) => {
    expect(await answerTo(from, text)).toMatch(expected);
  });
});

describe('A question that names no system is of the one spoken of', () => {
  it.each([
    ['gutters ph 6.6', 'how much ph down is that', /^Gutter run: [^\n]+$/u],
    ['gutters ph 6.6', 'how long does it last', /^Gutter run: about [^\n]+$/u],
    ['jars ph 6.1', 'how full are they', /^Jar shelf: [^\n]+$/u],
    ['gutters ph 6.6', 'is that too high', /^pH 6\.6 is too high for Gutter run/u],
  ])('%s, %s', async (said, text, expected) => {
    expect(await answerTo('ines', said, text)).toMatch(expected);
  });

  it('and of all of them where it asks for all', async () => {
    expect(await answerTo('ines', 'jars ph 6.1', 'which of them drinks most')).toContain('North');
  });
});
