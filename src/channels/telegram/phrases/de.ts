import type { Phrases } from './phrases.ts';

export const german: Phrases = {
  stranger:
    'Hallo. Ich arbeite nur für einen Haushalt. Wenn es deiner ist, lass dich einladen und öffne den Link.',
  codeIsVoid: 'Dieser Code gilt nicht oder nicht mehr. Bitte lass dich neu einladen.',
  helloGroup:
    'Hallo. Ich weiß noch nicht, zu wem diese Gruppe gehört. Die Leitung kann es sagen: drückt den Knopf, oder erwähnt mich und schreibt „unsere Gruppe“.',
  tieButton: 'Das ist unsere Gruppe',
  onlyGrowersTie: 'Das kann nur die Leitung sagen.',
  notYourButton: 'Dieser Knopf ist für jemand anderen.',
  oldButton: 'Dieser Knopf ist von früher und bewirkt nichts mehr.',
  privacy:
    'Ich behalte, was Mitglieder mir schreiben, die Fotos, die sie dazulegen, und das Logbuch daraus, ihre Namen und ihre Kontonummer hier, um antworten zu können. Es bleibt in der Datenbank derer, die mich betreiben, und geht an niemanden sonst. Aussteigen mit /leave; den Rest kann die Leitung entfernen.',
  commands: {
    today: 'Was zu tun ist',
    undo: 'Das zuletzt Eingetragene zurücknehmen',
    people: 'Wer dabei ist, und andere einladen',
    leave: 'Aus dem Gewächshaus aussteigen',
    help: 'Was ich verstehe',
    privacy: 'Was ich behalte',
  },
  typed: { today: 'was ist zu tun', undo: 'rückgängig', help: 'hilfe' },
};
