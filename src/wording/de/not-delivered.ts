import type { NotDelivered } from '../../assistant/replies/household-news.ts';
import { clipped, mostQuoted } from '../spoken/clipped.ts';

/** Tells the growers whom a message did not reach, and why. */
export function notDeliveredText({ to, because }: NotDelivered): string {
  switch (because.kind) {
    case 'shut-out':
      return `${to} erreiche ich nicht mehr: ich wurde blockiert oder aus der Gruppe entfernt.`;
    case 'account-gone':
      return `${to} erreiche ich nicht mehr: das Konto gibt es nicht mehr.`;
    case 'answer-lost':
      return `Ich weiß nicht, ob meine Nachricht ankam (${to}): die Verbindung riss zweimal ab.`;
    case 'refused':
      return `Meine Nachricht wurde abgelehnt (${to}): „${clipped(because.words, mostQuoted)}“.`;
  }
}
