import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Desk } from '../../../src/assistant/desk.ts';
import type { Incoming } from '../../../src/assistant/incoming.ts';
import type { Outgoing } from '../../../src/assistant/outgoing.ts';
import { pressToken } from '../../../src/assistant/outgoing.ts';
import {
  type Permission,
  type Person,
  permissions,
  type UseCase,
} from '../../../src/assistant/permissions.ts';
import type { GreenhouseId, Store } from '../../../src/assistant/ports/store.ts';
import type { Member } from '../../../src/greenhouse/member.ts';
import { quarryLaneWith } from '../../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../../storage/open-test-store.ts';
import { attempts, type Step } from './attempts.ts';

/** Who may what: grower, helper, helper shown acids, stranger. Written from the rules, not from the code. */
const table: Readonly<Record<UseCase, string>> = {
  'say-entry': 'yes yes yes no',
  'say-done': 'yes yes yes no',
  'say-ask': 'yes yes yes no',
  'say-taking-back': 'yes own own no',
  edit: 'own own own no',
  'press-tick': 'yes yes yes no',
  'press-cannot': 'yes yes yes no',
  'press-strike': 'yes own own no',
  'press-choose': 'own own own no',
  'press-decline': 'own own own no',
  'press-undo-set-up': 'own own own no',
  'press-undo-settled': 'own own own no',
  'press-guide': 'own no no no',
  'press-how-to': 'yes yes yes no',
  'settle-away': 'yes own own no',
  'settle-back': 'yes own own no',
  'settle-cannot-go': 'yes own own no',
  'settle-can-go': 'yes own own no',
  'settle-covers': 'yes own own no',
  'settle-rota': 'yes own own no',
  'settle-claim': 'yes own own no',
  'settle-release': 'own own own no',
  'settle-news': 'own own own no',
  'settle-who-goes': 'yes yes yes no',
  'settle-when-back': 'yes yes yes no',
  'settle-one-chore': 'yes yes yes no',
  'settle-plan': 'yes yes yes no',
  'settle-how-to': 'yes yes yes no',
  'change-chore-added': 'yes no no no',
  'change-chore-moved': 'yes no no no',
  'change-chore-dropped': 'yes no no no',
  'change-system-added': 'yes no no no',
  'change-system-renamed': 'yes no no no',
  'change-system-dropped': 'yes no no no',
  'change-figure-set': 'yes no no no',
  'change-range-set': 'yes no no no',
  'change-alias-added': 'yes no no no',
  'change-alias-dropped': 'yes no no no',
  'change-planted': 'yes no no no',
  'change-cleared': 'yes no no no',
  'change-language-set': 'yes own own no',
  'change-units-set': 'yes own own no',
  'change-container-set': 'yes no no no',
  'change-container-dropped': 'yes no no no',
  'change-morning-set': 'yes no no no',
  'change-risk-set': 'yes no no no',
  'change-acids-shown': 'yes no no no',
  'change-butt-set': 'yes no no no',
  'change-stock-added': 'yes yes yes no',
  'change-stock-counted': 'yes yes yes no',
  'change-butt-counted': 'yes yes yes no',
  'change-set-up-anew': 'yes no no no',
  'wish-guide': 'yes no no no',
  'wish-chores': 'yes yes yes no',
  'wish-stock': 'yes yes yes no',
  'wish-stock-unsaid': 'yes yes yes no',
  'wish-stock-opened': 'yes yes yes no',
  'wish-rain': 'yes yes yes no',
  'wish-season': 'yes yes yes no',
  'wish-planted-somewhere': 'yes no no no',
  'wish-introduction': 'yes yes yes no',
  'wish-explain': 'yes yes yes no',
  'wish-ask': 'yes yes yes no',
  'wish-wanted': 'yes yes yes no',
  'wish-how-full': 'yes yes yes no',
  'wish-how-long': 'yes yes yes no',
  'wish-who-is-away': 'yes yes yes no',
  'wish-logged': 'yes yes yes no',
  'wish-supply': 'yes yes yes no',
  'wish-where': 'yes yes yes no',
  'wish-mixing': 'yes yes yes no',
  'wish-my-turns': 'yes yes yes no',
  'wish-remind-once': 'yes yes yes no',
  'wish-last': 'yes yes yes no',
  'wish-first-fruit': 'yes yes yes no',
  'wish-what-if': 'yes yes yes no',
  'wish-how-to': 'yes yes yes no',
  'wish-notes': 'yes yes yes no',
  'wish-attach-note': 'yes yes yes no',
  'wish-drop-notes': 'yes no no no',
  'household-invite': 'yes no no no',
  'household-show': 'yes yes yes no',
  'household-remove': 'yes no no no',
  'household-leave': 'own own own no',
  'household-stay': 'own own own no',
  'household-turn-to': 'own own own no',
  'household-tie-room': 'yes no no no',
  'household-untie-room': 'yes no no no',
  'household-no-words': 'yes yes yes no',
  'be-told-strong-doses': 'yes no yes no',
};

const people: readonly Person[] = ['grower', 'helper', 'helper-shown-acids', 'stranger'];
/** The one who tries; what is of others is of the second grower, who may have asked for anything. */
const handles: Readonly<Record<Person, string>> = {
  grower: 'ines',
  helper: 'tomas',
  'helper-shown-acids': 'priya',
  stranger: 'sam',
};
const other = 'gale';
const startMs = Date.parse('2027-05-04T08:00:00+01:00');

const member = (handle: string, more: Partial<Member>): Member => ({
  handle,
  name: handle,
  role: 'helper',
  language: 'en',
  ...more,
});
const members = [
  member('ines', { role: 'grower' }),
  member('gale', { role: 'grower' }),
  member('tomas', {}),
  member('priya', { handlesAcids: true }),
];
const greenhouse = quarryLaneWith({ members });
const before = { ...greenhouse, members: [...members, member('sam', {})] };

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

describe('The permission matrix', () => {
  it('is what the bot goes by', () => {
    const written = Object.entries(permissions).map(([useCase, row]) => [
      useCase,
      people.map((person) => row[person]).join(' '),
    ]);
    expect(Object.fromEntries(written)).toEqual(table);
  });

  it.each(Object.keys(table) as UseCase[])('holds at the desk for %s', async (useCase) => {
    let house = await House.open();
    for (const [column, person] of people.entries()) {
      const permission = table[useCase].split(' ')[column] as Permission;
      for (const whose of attempts[useCase].ofOthers ? ['own', 'others'] : ['own']) {
        const isGranted = permission === 'yes' || (permission === 'own' && whose === 'own');
        const expected = person === 'stranger' ? 'unheard' : isGranted ? 'granted' : 'refused';
        const found = await outcomeOf(house, useCase, person, whose === 'own');
        expect(`${person}, ${whose}: ${found}`).toBe(`${person}, ${whose}: ${expected}`);
        // What is refused leaves everything as it was.
        if (isGranted) house = await House.open();
      }
    }
  });
});

/** Plays an attempt up to its first refusal, and tells what became of it. */
async function outcomeOf(
  house: House,
  useCase: UseCase,
  person: Person,
  isOwn: boolean,
): Promise<string> {
  const me = handles[person];
  let changed = 0;
  let answers: readonly Outgoing[] = [];
  for (const step of attempts[useCase].try(me, isOwn ? me : other)) {
    const before = await house.weight();
    const said = await house.play(step);
    if (step.by !== me) continue;
    answers = said;
    changed += (await house.weight()) - before;
    if (said.some(isRefusal))
      return changed === 0 ? 'refused' : 'refused, and changed all the same';
  }
  if (answers.length === 0) return changed === 0 ? 'unheard' : 'changed without a word';
  if (useCase === 'be-told-strong-doses') {
    return JSON.stringify(answers).includes('"next-work"') ? 'granted' : 'refused';
  }
  const writes = attempts[useCase].onlyTells !== true;
  return writes === changed > 0 ? 'granted' : `answered, and ${changed} changed`;
}

function isRefusal({ reply }: Outgoing): boolean {
  if (reply.kind === 'refusal') return true;
  if (reply.kind !== 'answer') return false;
  const { answer } = reply;
  const kind = answer.kind === 'household' ? answer.news.kind : answer.kind;
  return [
    'growers-only',
    'too-late',
    'left-out',
    'nothing-to-take-back',
    'nothing-to-put-right',
  ].includes(kind);
}

/** A greenhouse of its own, spoken to at its desk. */
class House {
  readonly #desk = new Desk({ store, channelOf: () => 'desk' });
  readonly #id: GreenhouseId;
  readonly #told: Outgoing[] = [];
  readonly #lastIds = new Map<string, string>();
  #minutes = 0;
  #setUp = '';
  #setUps = 0;

  private constructor(id: GreenhouseId) {
    this.#id = id;
  }

  /** The round is out, and one member is none any more. */
  static async open(): Promise<House> {
    const house = new House(await store.createGreenhouse(before, startMs - 86_400_000));
    await house.#desk.sendDue(house.#id, startMs);
    await house.#desk.replaceSetUp(house.#id, greenhouse, startMs);
    await house.#takeSent();
    return house;
  }

  async play(step: Step): Promise<readonly Outgoing[]> {
    const nowMs = startMs + (this.#minutes += 1) * 60_000;
    const incoming = this.#incomingOf(step, nowMs);
    const platformId = `${this.#id}/${step.by}/${this.#minutes}`;
    if (incoming.kind === 'message') this.#lastIds.set(step.by, platformId);
    const raw = {
      greenhouse: this.#id,
      channel: 'desk',
      platformId,
      receivedAtMs: nowMs,
      writtenAtMs: nowMs,
      chat: step.by,
      body: incoming,
    };
    const { said } = await this.#desk.takeIn(this.#id, [{ raw, incoming }], nowMs);
    const answers = [...said.values()].flat();
    this.#told.push(...answers);
    return answers;
  }

  /** How much is written down: it grows with everything that is. */
  async weight(): Promise<number> {
    const { logbook, arrangements, greenhouse: setUp } = await this.#desk.standing(this.#id);
    const struck = logbook.all.filter((entry) => entry.struck !== null).length;
    const text = JSON.stringify(setUp);
    if (text !== this.#setUp) this.#setUps += 1;
    this.#setUp = text;
    return logbook.all.length + struck + arrangements.length + this.#setUps;
  }

  async #takeSent(): Promise<void> {
    for (;;) {
      const pending = await store.pending('desk', startMs, 50);
      if (pending.length === 0) return;
      for (const { greenhouse: of, outgoing } of pending) {
        if (of === this.#id) this.#told.push(outgoing);
        await store.settle(of, outgoing.no, { kind: 'sent', platformId: null, atMs: startMs });
      }
    }
  }

  #incomingOf(step: Step, writtenAtMs: number): Incoming {
    const said = { from: step.by, chat: null };
    if ('wish' in step) {
      return { ...said, kind: 'wish', wish: step.wish, invitationHash: `hash ${this.#id}` };
    }
    if ('press' in step) return { ...said, kind: 'press', token: this.#tokenOf(step) };
    const idOf = (handle: string): string => this.#lastIds.get(handle) ?? 'none';
    const { text } = step;
    if ('editsLastOf' in step) {
      return { ...said, kind: 'edit', edits: idOf(step.editsLastOf), text };
    }
    const replyTo =
      step.repliesToLast === undefined
        ? null
        : { kind: 'message' as const, ids: [idOf(step.repliesToLast)] };
    return { ...said, kind: 'message', text, writtenAtMs, replyTo };
  }

  #tokenOf({ press, under }: Extract<Step, { press: unknown }>): string {
    const isMeant = ({ action }: Outgoing['buttons'][number][number]): boolean =>
      action.kind === press;
    const message = this.#told.findLast(
      ({ to, buttons }) => to === under && buttons.flat().some(isMeant),
    );
    if (!message) return 'none';
    return pressToken(message.no, message.buttons.flat().findIndex(isMeant));
  }
}
