import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal, quarryLaneWith, type Talk } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const german = { handle: 'max', name: 'Max', role: 'grower' as const, language: 'de' as const };
const household = quarryLaneWith({ members: [...quarryLaneWith().members, german] });

/** A talk on 4 May that goes on by a minute with each message. */
function talking(talk: Talk) {
  let minute = 0;
  const at = (): string => {
    minute += 1;
    return `2027-05-04T08:${String(minute).padStart(2, '0')}:00+01:00`;
  };
  return {
    say: (from: string, text: string, more: object = {}) => talk({ at: at(), from, text, ...more }),
    press: (from: string, press: string) => talk({ at: at(), from, press }),
  };
}

describe('A note kept with a system', () => {
  it('is shown with the steps of its work, and can be changed, removed and taken back', async () => {
    const { say } = talking(openRehearsal(store, household));
    const [kept] = await say('ines', 'note for the gutters: the tap is behind the door');
    expect(kept).toMatchObject({
      kind: 'receipt',
      logged: [{ system: 'Gutter run', quantity: 'note', note: 'the tap is behind the door' }],
    });
    const [steps] = await say('tomas', 'how do I top up the gutters');
    expect(steps?.text).toContain('Note: the tap is behind the door');
    const [others] = await say('tomas', 'how do I top up the jars');
    expect(others?.text).not.toContain('behind the door');
    const [changed] = await say('ines', 'change the note for the gutters to: left of the door');
    expect(changed).toMatchObject({ kind: 'correction', logged: [{ note: 'left of the door' }] });
    await say('ines', 'forget the note for the gutters');
    const [gone] = await say('ines', 'notes');
    expect(gone?.text).toContain('Nothing is noted yet');
  });

  it('is about one kind of work where it says so', async () => {
    const { say } = talking(openRehearsal(store, household));
    await say('ines', 'tip for topping up the jars: use the small can');
    const [topUp] = await say('tomas', 'how do I top up the jars');
    expect(topUp?.text).toContain('small can');
    const [check] = await say('tomas', 'how do I check the jars');
    expect(check?.text).not.toContain('small can');
  });

  it('of a helper stays a note in the logbook', async () => {
    const { say } = talking(openRehearsal(store, household));
    await say('tomas', 'note for the gutters: pour twice as much of everything');
    const [steps] = await say('priya', 'how do I top up the gutters');
    expect(steps?.text).not.toContain('twice');
  });

  it('is understood in German', async () => {
    const { say } = talking(openRehearsal(store, household));
    await say('max', 'Notiz für gutters: der Hahn ist hinter der Tür');
    const [notes] = await say('max', 'welche Notizen gibt es');
    expect(notes?.text).toContain('Gutter run: „der Hahn ist hinter der Tür“');
  });
});

describe('How to calibrate', () => {
  it('is told of the probe that is named, whether it is due or not', async () => {
    const { say } = talking(openRehearsal(store, household));
    const [steps] = await say('tomas', 'how do i calibrate the pen');
    expect(steps?.text).toContain('Calibrate the pen');
  });

  it('asks which probe where none is named and there are several', async () => {
    const { say } = talking(openRehearsal(store, household));
    const [choice] = await say('tomas', 'how do i calibrate');
    expect(choice?.text).toContain('Which of these');
  });
});

describe('A photo', () => {
  it('whose caption names a system comes with the steps of its work', async () => {
    const { say } = talking(openRehearsal(store, household));
    await say('ines', 'gutters: this is the tap', { photo: 'tap.jpg' });
    const [, photo] = await say('tomas', 'how do I top up the gutters');
    expect(photo).toMatchObject({ photo: 'tap.jpg', text: 'Photo: Gutter run, this is the tap' });
  });

  it('without a word is asked about', async () => {
    const { say } = talking(openRehearsal(store, household));
    const [asked] = await say('ines', '', { photo: 'tap.jpg' });
    expect(asked).toMatchObject({ kind: 'question' });
    const [kept] = await say('ines', 'the jars');
    expect(kept).toMatchObject({
      kind: 'receipt',
      logged: [{ system: 'Jar shelf', photo: 'tap.jpg' }],
    });
  });

  it('of a reading leaves the reading what it is', async () => {
    const { say } = talking(openRehearsal(store, household));
    const [logged] = await say('ines', 'bench 5.9 2.2', { photo: 'meter.jpg' });
    expect(logged).toMatchObject({ logged: [{ quantity: 'ph' }, { quantity: 'ec' }] });
  });

  it('of a helper is kept with nothing', async () => {
    const { say } = talking(openRehearsal(store, household));
    const [answer] = await say('tomas', '', { photo: 'x.jpg' });
    expect(answer).toMatchObject({ kind: 'answer' });
  });
});

describe('The steps of a duty', () => {
  it('are offered by button where several are due', async () => {
    const { say, press } = talking(openRehearsal(store, household));
    const [which] = await say('tomas', 'how do I do that?');
    const button = (which?.buttons ?? []).flat().find(({ label }) => label.includes('Jar shelf'));
    const [steps] = await press('tomas', button!.press);
    expect(steps?.text).toContain('5.2 cm below the brim');
  });

  it('of calibrating a meter of strength speak of standards and not of pH buffers', async () => {
    const { say } = talking(openRehearsal(store, household));
    const [steps] = await say('tomas', 'how do I calibrate the stick');
    expect(steps?.text).toContain('EC standard');
    expect(steps?.text).not.toContain('pH 7');
  });
});

describe('Rain water', () => {
  it('is counted down by top-ups, other water is not, and a word refills it', async () => {
    const { say } = talking(openRehearsal(store, household));
    await say('ines', 'rain butt 200 l');
    await say('ines', 'yes');
    await say('ines', 'butt is full');
    await say('ines', 'yes');
    await say('tomas', 'topped up the bench 80 l');
    await say('tomas', 'topped up the buckets 10 l tap water');
    const [left] = await say('ines', 'how much rain water is left');
    expect(left?.text).toContain('about 120 L of 200 L');
    const [shown] = await say('tomas', 'butt is half full');
    expect(shown?.text).toContain('100 L in the rain butt now, where I reckoned 120 L');
    await say('tomas', 'yes');
    const [undone] = await say('tomas', 'undo');
    expect(undone?.text).toContain('Taken back');
  });

  it('stands in the round when it is nearly gone', async () => {
    const talk = openRehearsal(store, household);
    const { say } = talking(talk);
    await say('ines', 'rain butt 100 l');
    await say('ines', 'yes');
    await say('ines', 'butt is full');
    await say('ines', 'yes');
    await say('ines', 'topped up the bench 95 l');
    const [round] = await talk({ at: '2027-05-05T08:00:00+01:00' });
    expect(round?.text).toContain('Rain butt: about 5 L of 100 L left');
  });
});

describe('A helper shown how to handle acids', () => {
  it('is so by a grower’s word, with the cautions read, and no longer after undo', async () => {
    const { say } = talking(openRehearsal(store, household));
    const [refused] = await say('tomas', 'Priya can handle acids now');
    expect(refused).toMatchObject({ kind: 'refusal' });
    const [shown] = await say('ines', 'Tomas can handle acids now');
    expect(shown?.text).toContain('goggles and gloves');
    await say('ines', 'yes');
    await say('ines', 'bench full, ph 6.9');
    const [told] = await say('tomas', 'how much ph down for the bench');
    expect(told).toMatchObject({ due: [{ duty: 'dose' }] });
    await say('ines', 'Tomas must not touch acids any more');
    await say('ines', 'yes');
    const [left] = await say('tomas', 'how much ph down for the bench');
    expect(left).toMatchObject({ due: [] });
  });
});

describe('The season', () => {
  it.each([
    ['how is it going', 'Nothing has been logged yet'],
    ['how much did we harvest', 'Nothing has been picked'],
    ['which did best', 'Nothing can be compared yet'],
  ])('answers “%s” on the first day in a line without zeros', async (asked, told) => {
    const { say } = talking(openRehearsal(store));
    const [answer] = await say('ines', asked);
    expect(answer?.text).toContain(told);
    expect(answer?.text).not.toMatch(/\b0\b|\n/);
  });

  it('tells of the harvest alone where that is asked, and which have given none', async () => {
    const { say } = talking(openRehearsal(store));
    await say('ines', 'topped up the bench 12 l');
    await say('ines', 'picked 400 g tomatoes from the bench');
    const [harvest] = await say('ines', 'how much have we picked so far');
    expect(harvest?.text).toContain('North bench (20 × tomato): 400 g picked');
    expect(harvest?.text).toContain('Not yet: Bucket row, Gutter run and Jar shelf.');
    expect(harvest?.text).not.toContain('12 L');
  });

  it('knows the first fruit, and answers which did best before all figures', async () => {
    const { say } = talking(openRehearsal(store, household));
    const [first] = await say('tomas', 'first tomato on the bench!');
    expect(first).toMatchObject({ logged: [{ system: 'North bench', quantity: 'note' }] });
    const [going] = await say('ines', 'how is it going');
    expect(going?.text).toContain('first fruit on 4 May');
    await say('ines', 'harvested 400 g tomatoes from the bench');
    await say('ines', 'harvested 300 g cucumbers from the buckets');
    const [best] = await say('ines', 'which did best');
    expect(best?.text?.split('\n')[0]).toContain('Most a plant: Bucket row');
    expect(best?.text).toContain('they grow different crops');
  });
});
