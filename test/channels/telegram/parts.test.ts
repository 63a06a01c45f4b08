import fc from 'fast-check';
import { type Api, GrammyError } from 'grammy';
import type { Update } from 'grammy/types';
import { describe, expect, it } from 'vitest';
import { codeHash, newClaimCode } from '../../../src/channels/telegram/arriving/codes.ts';
import { hookApp } from '../../../src/channels/telegram/arriving/hook-app.ts';
import { Poller } from '../../../src/channels/telegram/arriving/poller.ts';
import { wishOf } from '../../../src/channels/telegram/arriving/wish-of.ts';
import { withoutToken } from '../../../src/channels/telegram/describe-error.ts';
import {
  editId,
  keyText,
  pressId,
  readKey,
  readPressId,
} from '../../../src/channels/telegram/message-key.ts';
import type { Said } from '../../../src/channels/telegram/reading/told.ts';
import { documentedRates, Pace } from '../../../src/channels/telegram/sending/pace.ts';
import { splitText } from '../../../src/channels/telegram/sending/split-text.ts';
import { demoGreenhouse } from './household.ts';

describe('a message key', () => {
  it('comes back from each of the ids it stands in', () => {
    const keys = fc.record({
      chatId: fc.integer({ min: -2_000_000_000_000, max: 2_000_000_000_000 }),
      messageId: fc.nat(),
      threadId: fc.option(fc.nat()),
    });
    fc.assert(
      fc.property(keys, fc.nat(), (key, n) => {
        expect(readKey(keyText(key))).toEqual(key);
        expect(readKey(editId(key, n))).toEqual(key);
        expect(readKey(pressId(`${n}`, key))).toEqual(key);
        expect(readPressId(pressId(`${n}`, key))).toBe(`${n}`);
        expect(readPressId(keyText(key))).toBeNull();
      }),
    );
  });
});

describe('a long text', () => {
  const words = fc.array(
    fc.oneof(fc.string({ minLength: 1, maxLength: 12 }), fc.constantFrom('\n', '\n\n', '. ', '🪴')),
    { maxLength: 60 },
  );

  it('is parted without losing a word, into parts that fit', () => {
    fc.assert(
      fc.property(words, fc.integer({ min: 4, max: 60 }), (pieces, most) => {
        const text = pieces.join(' ');
        const parts = splitText({ text, entities: [] }, most);
        expect(parts.every((part) => part.text.length <= most)).toBe(true);
        const bare = (whole: string) => whole.replace(/\s/gu, '');
        expect(bare(parts.map((part) => part.text).join(''))).toBe(bare(text));
        expect(parts.some((part) => /[\uD800-\uDBFF]$/u.test(part.text))).toBe(false);
      }),
    );
  });

  it('keeps its entities on the same characters', () => {
    const text = 'one two three four';
    const parts = splitText({ text, entities: [{ type: 'bold', offset: 4, length: 9 }] }, 9);
    const bold = parts.map((part) =>
      part.entities.map(({ offset, length }) => part.text.slice(offset, offset + length)),
    );
    expect(parts.map((part) => part.text)).toEqual(['one two', 'three', 'four']);
    expect(bold).toEqual([['two'], ['three'], []]);
  });

  it('is parted at paragraphs before lines, and at lines before words', () => {
    const parts = splitText({ text: 'aaa bbb\n\nccc ddd\nee ff gg', entities: [] }, 12);
    expect(parts.map((part) => part.text)).toEqual(['aaa bbb', 'ccc ddd', 'ee ff gg']);
  });
});

describe('the pace', () => {
  it('never lets more through than the platform documents', () => {
    const chats = fc.array(
      fc.integer({ min: -3, max: 3 }).filter((chat) => chat !== 0),
      {
        minLength: 1,
        maxLength: 200,
      },
    );
    fc.assert(
      fc.property(chats, (wanted) => {
        const pace = new Pace(documentedRates);
        const sent: { chat: number; atMs: number }[] = [];
        let nowMs = 1_000_000;
        for (const chat of wanted) {
          nowMs = pace.freeAtMs(chat, nowMs);
          pace.sent(chat, nowMs);
          sent.push({ chat, atMs: nowMs });
        }
        const within = (chat: number | null, windowMs: number) =>
          Math.max(
            ...sent.map(
              ({ atMs }) =>
                sent.filter(
                  (other) =>
                    (chat === null || other.chat === chat) &&
                    other.atMs > atMs - windowMs &&
                    other.atMs <= atMs,
                ).length,
            ),
          );
        expect(within(null, 1000)).toBeLessThanOrEqual(30);
        for (const chat of [-3, -2, -1, 1, 2, 3]) {
          expect(within(chat, 3000)).toBeLessThanOrEqual(3);
          if (chat < 0) expect(within(chat, 60_000)).toBeLessThanOrEqual(20);
        }
      }),
      { numRuns: 30 },
    );
  });
});

describe('the words for the household', () => {
  const { members } = demoGreenhouse();
  const wish = (text: string) =>
    wishOf(
      {
        text,
        command: null,
        isAddressed: true,
        place: { chatId: -5, isPrivate: false, title: 'Family', threadId: null },
      } as Said,
      members,
      { readsAll: false },
    );

  it.each([
    ['invite a helper', { kind: 'invite', role: 'helper', handle: null }],
    ['Invite a grower', { kind: 'invite', role: 'grower', handle: null }],
    ['invite Tomas', { kind: 'invite', role: 'helper', handle: 'tomas' }],
    ['lade Priya ein', { kind: 'invite', role: 'helper', handle: 'priya' }],
    ['Olli einladen', { kind: 'invite', role: 'helper', handle: 'olli' }],
    ['remove tomas', { kind: 'remove', handle: 'tomas' }],
    ['wer ist dabei?', { kind: 'show' }],
    ['unsere Gruppe', { kind: 'tie-room', roomId: '-5', title: 'Family', readsAll: false }],
    ['not our group', { kind: 'untie-room' }],
  ])('"%s"', (text, expected) => {
    expect(wish(text)).toEqual(expected);
  });

  it.each(['removed the jars', 'remove the old leaves', 'buckets ph 5.9', 'left the lid open'])(
    '"%s" is about the greenhouse',
    (text) => {
      expect(wish(text)).toBeNull();
    },
  );
});

describe('a claim code', () => {
  it('is the same to the eye however it is typed', () => {
    const code = newClaimCode();
    expect(code).toMatch(/^[2-9A-Z]{4}-[2-9A-Z]{4}-[2-9A-Z]{4}$/u);
    expect(codeHash(code.toLowerCase().replaceAll('-', ''))).toBe(codeHash(code));
    expect(codeHash(newClaimCode())).not.toBe(codeHash(code));
  });
});

describe('the token', () => {
  it('is taken out of any text, whole or its secret half', () => {
    const token = '7000:AAsecret_-x';
    expect(withoutToken(`GET /bot${token}/getMe, AAsecret_-x`, token)).toBe(
      'GET /bot[token]/getMe, [token]',
    );
  });
});

describe('the webhook', () => {
  const taken: Update[] = [];
  const app = hookApp({
    path: '/updates',
    secret: 'open-sesame',
    takeIn: (updates) => {
      if (updates[0]?.update_id === 13) return Promise.reject(new Error('the database is away'));
      taken.push(...updates);
      return Promise.resolve();
    },
    report: () => undefined,
  });
  const post = async (body: string, secret?: string) =>
    (
      await app.request('/updates', {
        method: 'POST',
        body,
        headers: {
          'content-type': 'application/json',
          'content-length': String(body.length),
          ...(secret === undefined ? {} : { 'x-telegram-bot-api-secret-token': secret }),
        },
      })
    ).status;

  it('takes what carries the secret, and nothing else', async () => {
    expect(await post('{"update_id":1}', 'open-sesame')).toBe(200);
    expect(await post('{"update_id":2}')).toBe(401);
    expect(await post('{"update_id":3}', 'open-sesame!')).toBe(401);
    expect(await post('{"update_id":4}', 'close')).toBe(401);
    expect(taken.map(({ update_id }) => update_id)).toEqual([1]);
  });

  it('refuses a body that is too large or no update', async () => {
    const large = JSON.stringify({ update_id: 5, filler: 'x'.repeat(600_000) });
    expect(await post(large, 'open-sesame')).toBe(413);
    expect(await post('{"update_id":"five"}', 'open-sesame')).toBe(400);
    expect(await post('no json', 'open-sesame')).toBe(400);
  });

  it('lets an update come again that could not be stored', async () => {
    expect(await post('{"update_id":13}', 'open-sesame')).toBe(503);
  });
});

describe('the poller', () => {
  const reports: string[] = [];
  const pollerOn = (
    answers: ((signal: AbortSignal) => Promise<readonly Partial<Update>[]>)[],
    taken: number[],
  ) => {
    const offsets: (number | undefined)[] = [];
    const api = {
      getUpdates: ({ offset }: { offset?: number }, signal: AbortSignal) => {
        offsets.push(offset);
        const answer = answers.shift() ?? hangs;
        return answer(signal);
      },
    } as unknown as Api;
    const poller = new Poller({
      api,
      takeIn: (updates) => {
        taken.push(...updates.map(({ update_id }) => update_id));
        return Promise.resolve();
      },
      answered: () => Promise.resolve(),
      heard: () => Promise.resolve(),
      report: (level, sentence) => reports.push(`${level} ${sentence}`),
      watchdogMs: 50,
    });
    return { poller, offsets };
  };
  const hangs = (signal: AbortSignal) =>
    new Promise<never>((_, reject) => {
      signal.addEventListener('abort', () => {
        reject(new Error('aborted'));
      });
    });

  it('gives up a request that hangs, and asks again', async () => {
    const taken: number[] = [];
    const { poller } = pollerOn([hangs, () => Promise.resolve([{ update_id: 7 }])], taken);
    poller.start();
    await expect.poll(() => taken).toEqual([7]);
    await poller.stop();
  });

  it('confirms by what came last, not by what is greatest', async () => {
    const taken: number[] = [];
    const answers = [
      () => Promise.resolve([{ update_id: 900 }, { update_id: 901 }]),
      () => Promise.resolve([{ update_id: 12 }]),
    ];
    const { poller, offsets } = pollerOn(answers, taken);
    poller.start();
    await expect.poll(() => offsets.length).toBeGreaterThan(2);
    await poller.stop();
    expect(offsets.slice(0, 3)).toEqual([undefined, 902, 13]);
  });

  it('explains a conflict with another process', async () => {
    const conflict = () =>
      Promise.reject(
        new GrammyError(
          'refused',
          { ok: false, error_code: 409, description: 'Conflict: terminated by other getUpdates' },
          'getUpdates',
          {},
        ),
      );
    const { poller } = pollerOn([conflict], []);
    poller.start();
    await expect.poll(() => reports.join('\n')).toContain('Stop one of the two');
    await poller.stop();
  });
});
