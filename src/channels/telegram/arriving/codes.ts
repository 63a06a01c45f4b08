import { createHash, createHmac, randomInt } from 'node:crypto';
import type { GreenhouseId } from '../../../assistant/ports/store.ts';

/** What is kept of a code. Case and dashes do not count, since people type them. */
export function codeHash(code: string): string {
  return createHash('sha256').update(code.replace(/-/gu, '').toUpperCase()).digest('hex');
}

const invitationLength = 24;

/**
 * The code of an invitation asked for by one message or button. It follows from the bot's token, so
 * that it need not be kept to be shown again where a message is sent a second time.
 */
export function invitationCode(token: string, greenhouse: GreenhouseId, askedBy: string): string {
  return createHmac('sha256', token)
    .update(`invitation ${greenhouse} ${askedBy}`)
    .digest('hex')
    .slice(0, invitationLength);
}

/** Letters and digits that are not taken for one another. */
const claimLetters = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ';
const claimGroups = 3;
const claimGroupLength = 4;

/** A code that a person can type: `K7QF-2M9T-XW4H`, 60 bits. */
export function newClaimCode(): string {
  const letter = () => claimLetters[randomInt(claimLetters.length)]!;
  return Array.from({ length: claimGroups }, () =>
    Array.from({ length: claimGroupLength }, letter).join(''),
  ).join('-');
}

/** Whether a text is a claim code as it is printed, or nearly so. */
export function looksLikeClaim(text: string): boolean {
  return /^[2-9A-HJ-NP-Z]{4}-?[2-9A-HJ-NP-Z]{4}-?[2-9A-HJ-NP-Z]{4}$/iu.test(text.trim());
}
