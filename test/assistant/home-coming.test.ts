import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal, quarryLaneWith } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const german = { handle: 'max', name: 'Max', role: 'grower' as const, language: 'de' as const };
const household = quarryLaneWith({ members: [...quarryLaneWith().members, german] });

/** A talk in June 2027; gives what the speaker is answered. */
function talking() {
  const talk = openRehearsal(store, household);
  return async (day: number, clock: string, from: string, text: string) => {
    const at = `2027-06-${String(day).padStart(2, '0')}T${clock}:00+01:00`;
    const said = await talk({ at, from, text });
    return said
      .filter(
        ({ to, kind, at: saidAt }) =>
          to === from && kind === 'answer' && Date.parse(saidAt ?? '') === Date.parse(at),
      )
      .map((line) => line.text)
      .join('\n');
  };
}

describe('Whoever comes home', () => {
  it('hears of a cut that two told of once, with its length', async () => {
    const say = talking();
    await say(1, '08:00', 'ines', 'away from the 2nd to the 5th, Tomas steps in');
    await say(3, '10:00', 'tomas', 'power is out since 9:45');
    await say(3, '10:20', 'priya', 'power out in the greenhouse');
    await say(3, '11:45', 'priya', 'power is back');
    const home = await say(5, '18:00', 'ines', "I'm back");
    expect(home.match(/power out/g)).toHaveLength(1);
    expect(home).toContain('power out, on Thursday at 09:45, for 2 hours');
  });

  it('hears what nobody measured meanwhile, and not after a day or two', async () => {
    const say = talking();
    await say(1, '08:00', 'ines', 'away from the 2nd to the 6th, Tomas steps in');
    await say(3, '10:00', 'tomas', 'bench ph 6.1 ec 2.4, topped up the bench 20 l');
    await say(3, '10:01', 'tomas', 'topped up the jars 2 l');
    const home = await say(6, '18:00', 'ines', "I'm back");
    expect(home).toContain(
      'Not measured meanwhile: pH, EC and water level of Bucket row and Gutter run; pH and EC of Jar shelf.',
    );
    expect(home).not.toContain('Nothing odd');
    const brief = talking();
    await brief(1, '08:00', 'ines', 'away from the 2nd to the 3rd, Tomas steps in');
    expect(await brief(3, '18:00', 'ines', "I'm back")).not.toContain('Not measured');
  });

  it('hears of an alert that was given meanwhile, in the language they read', async () => {
    const say = talking();
    let litres = 108;
    await say(1, '07:30', 'ines', 'dwc 108 l');
    for (const [day, loss] of [2.6, 2.1, 2.8, 2.4, 3.1, 2.3, 2.9, 2.5].entries()) {
      litres -= loss;
      await say(day + 2, '18:00', 'tomas', `dwc level ${litres.toFixed(1)} l`);
    }
    await say(9, '19:00', 'ines', 'away from the 10th to the 12th, Tomas steps in');
    await say(9, '19:01', 'max', 'ich bin vom 10. bis 12. weg');
    await say(10, '18:00', 'tomas', `dwc level ${(litres - 24).toFixed(1)} l`);
    const home = await say(12, '18:00', 'ines', "I'm back");
    expect(home).toMatch(
      /Bucket row used about 24 L where about .* was to be expected, alert on Thursday at 18:00/,
    );
    expect(home).not.toContain('Nothing odd');
    expect(await say(12, '18:01', 'max', 'ich bin wieder da')).toMatch(
      /Bucket row hat etwa 24 l verbraucht, wo etwa .* zu erwarten waren, Warnung am Donnerstag um 18:00/,
    );
  });
});
