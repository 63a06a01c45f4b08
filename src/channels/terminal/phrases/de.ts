import type { Phrases } from './phrases.ts';

export const de: Phrases = {
  opening: (greenhouse) => `Du bist im Gewächshaus ${greenhouse}.`,
  commands: (otherHandle) =>
    `#1 drückt den Knopf mit dieser Nummer, /as ${otherHandle} spricht als jemand anderes, /help zeigt das noch einmal, /quit beendet.`,
  speakingAs: (name) => `Es spricht ${name}.`,
  nobody: (handle, handles) => `Hier heißt niemand „${handle}“; es gibt ${handles.join(', ')}.`,
  noSuchButton: (number) => `Kein Knopf trug bisher die Nummer ${number}.`,
  unknownCommand: (command) => `${command} gibt es nicht; /help zeigt, was es gibt.`,
  tooLong: (length, most) =>
    `Die Nachricht hat ${length} Zeichen; höchstens ${most} passen hinein. Bitte in Teilen senden.`,
  to: (receiver) => `(an ${receiver})`,
  notHandled:
    'Hier ist etwas schiefgegangen. Ist die Nachricht schon gespeichert, wird sie beim nächsten Start bearbeitet.',
};
