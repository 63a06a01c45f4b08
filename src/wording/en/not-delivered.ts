import type { NotDelivered } from '../../assistant/replies/household-news.ts';
import { clipped, mostQuoted } from '../spoken/clipped.ts';

/** Tells the growers whom a message did not reach, and why. */
export function notDeliveredText({ to, because }: NotDelivered): string {
  switch (because.kind) {
    case 'shut-out':
      return `I cannot reach ${to} any more: I was blocked, or put out of the group.`;
    case 'account-gone':
      return `I cannot reach ${to} any more: the account is gone.`;
    case 'answer-lost':
      return `I do not know whether my message reached ${to}: the connection was lost twice.`;
    case 'refused':
      return `My message to ${to} was refused: “${clipped(because.words, mostQuoted)}”.`;
  }
}
