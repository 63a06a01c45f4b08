import { describe, expect, it } from 'vitest';
import { wordings } from '../../../src/wording/wordings.ts';
import { householdNews } from '../every-reply.ts';
import { reader } from '../quarry-lane.ts';

describe('English news of the household', () => {
  it.each([
    [
      'welcome',
      'Welcome to Quarry Lane, Priya. You are in as a helper. Ask “what needs doing”, or tell me what you measured.',
    ],
    ['already-in', 'You are already in, Priya, as a helper.'],
    ['has-joined', 'Priya has joined as a helper.'],
    [
      'invited',
      'This link lets somebody new in as a helper. It works once, until 11 May at 08:20.',
    ],
    [
      'who-is-in',
      'Ines: a grower\nOlli: a helper, cannot be reached\nPriya: a helper, not in yet\nGroups: Family and Neighbours',
    ],
    ['growers-only', 'Only Ines can do that.'],
    [
      'really-leave',
      'Do you want to leave Quarry Lane? What you logged stays. You are the last grower: nobody else can let people in.',
    ],
    [
      'room-tied',
      'This group now belongs to Quarry Lane. I see replies to me, mentions of me and buttons here, nothing else.',
    ],
  ] as const)('tells %s', (kind, told) => {
    const answer = { kind: 'household', news: householdNews[kind] } as const;
    expect(wordings.en.reply({ kind: 'answer', answer }, reader)).toBe(told);
  });

  it.each([
    [{ kind: 'shut-out' }, 'I cannot reach Olli any more: I was blocked, or put out of the group.'],
    [{ kind: 'account-gone' }, 'I cannot reach Olli any more: the account is gone.'],
    [
      { kind: 'answer-lost' },
      'I do not know whether my message reached Olli: the connection was lost twice.',
    ],
    [
      { kind: 'refused', words: 'Bad Request: too long' },
      'My message to Olli was refused: “Bad Request: too long”.',
    ],
  ] as const)('tells a grower why a message did not arrive, case %#', (because, told) => {
    const alert = { kind: 'not-delivered', to: 'Olli', because } as const;
    expect(wordings.en.reply({ kind: 'alert', alert }, reader)).toBe(told);
  });
});
