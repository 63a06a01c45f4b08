import type { Duty } from '../../../greenhouse/duty.ts';
import type { Greenhouse } from '../../../greenhouse/greenhouse.ts';
import {
  exampleReference,
  exampleTopUpL,
  joined,
  middle,
  spokenEc,
  spokenVolume,
  systemName,
  typed,
} from './example-values.ts';
import type { Phrases } from './phrases.ts';

const language = 'de';

export const de: Phrases = {
  chat: 'Unterhaltung',
  speakingAs: 'Es spricht',
  switchSpeaker: 'Wechseln',
  setUp: 'Einrichtung',
  backToChat: 'Zurück zur Unterhaltung',
  earlierMessages: 'Frühere Nachrichten',
  lookForNews: 'Nach neuen Nachrichten sehen',

  welcome: (greenhouse) =>
    `Hier sind Logbuch und Aufgaben von ${greenhouse}. Schreib in eigenen Worten, was du gemessen oder getan hast, und frag, was zu tun ist.`,
  tryOne: 'Zum Ausprobieren antippen; vor dem Senden lässt es sich noch ändern.',
  whatToType: 'Was kann ich schreiben?',
  yourMessage: 'Deine Nachricht',
  send: 'Senden',
  kindLabel: {
    receipt: 'Logbuch',
    question: 'Rückfrage',
    answer: 'Antwort',
    round: 'Morgenrunde',
    alert: 'Warnung',
    refusal: 'Geht nicht',
    correction: 'Logbuch',
  },
  struckOut: 'Gestrichen',
  nothingLeftOfIt: 'Das betraf etwas, das nicht mehr zur Einrichtung gehört.',
  you: 'Du',
  bot: 'Gewächshaus',

  isLive: 'Auf dem neuesten Stand',
  isReconnecting: 'Keine Verbindung, neuer Versuch läuft …',
  sending: 'Wird gesendet …',
  notSentYet: 'Noch nicht gesendet. Es geht von selbst hinaus, sobald die Verbindung wieder steht.',
  newBelow: 'Neue Nachricht weiter unten',

  todaysDuties: 'Heute zu tun',
  dutiesToday: (count) => (count === 1 ? '1 Aufgabe heute' : `${count} Aufgaben heute`),
  nothingDue: 'Heute ist nichts zu tun.',
  comingUp: 'Demnächst',
  why: 'Warum',
  iDidIt: 'Ist erledigt …',
  whileThere: 'wenn du schon da bist',
  dueSince: (date) => `fällig seit ${date}`,
  todayAtTheLatest: 'spätestens heute',
  atTheLatest: (date) => `spätestens ${date}`,

  setUpExplained: 'Systeme, Leute, Messgeräte, Vorräte und Aufgaben in einer Datei.',
  export: 'Ausgeben',
  exportExplained:
    'Die Gewächshausdatei herunterladen, um sie aufzuheben, zu ändern oder auf ein anderes Gerät mitzunehmen.',
  import: 'Einlesen',
  importExplained:
    'Die Datei wird zuerst ganz geprüft. Sie ersetzt die Einrichtung; Logbuch und Unterhaltung bleiben, wie sie sind.',
  greenhouseFile: 'Gewächshausdatei',
  orPaste: 'oder ihren Text einfügen',
  replaceSetUp: 'Einrichtung ersetzen',
  setUpReplaced: (greenhouse) => `Die Einrichtung von ${greenhouse} gilt jetzt.`,
  notReplaced: (faults) =>
    faults === 1
      ? 'Nichts wurde geändert: Die Datei hat einen Fehler.'
      : `Nichts wurde geändert: Die Datei hat ${faults} Fehler.`,
  faultPath: 'Stelle',
  faultFound: 'Gefunden',
  faultExpected: 'Erwartet',

  attachPhoto: 'Foto zu einem System',
  attachPhotoExplained:
    'Es steht bei den Schritten der Arbeit an diesem System, für alle, die fragen, wie sie geht: wo der Hahn ist, bis zu welcher Marke aufgefüllt wird.',
  system: 'System',
  photo: 'Foto',
  photoNote: 'Was es zeigt (kann leer bleiben)',
  keepPhoto: 'Foto behalten',
  photoKept: (system) =>
    `Das Foto gehört jetzt zu ${system} und steht bei den Schritten der Arbeit dort.`,

  errorTitle: 'Das hat nicht geklappt',
  typeSomething: 'Die Nachricht war leer. Schreib zuerst etwas hinein.',
  tooLong: (length, most) =>
    `Die Nachricht hat ${length} Zeichen; höchstens ${most} passen hinein. Bitte in Teilen senden.`,
  notAMember: (handle) =>
    `Hier heißt niemand „${handle}“. Wähle aus, wer spricht, und versuche es noch einmal.`,
  notReadable:
    'Die Seite konnte das Gesendete nicht lesen. Bitte neu laden und noch einmal senden.',
  notFound: 'Unter dieser Adresse ist keine Seite.',
  fromElsewhere: 'Das kam von einer fremden Seite und wurde nicht angenommen.',
  tooLarge: (most) => `Das ist zu groß; höchstens ${most} passen hinein.`,
  notHandledYet:
    'Hier ist etwas schiefgegangen. Wenn deine Nachricht schon gespeichert ist, wird sie so bald wie möglich bearbeitet; noch einmal senden schadet nicht.',
  broken: 'Hier ist etwas schiefgegangen. Bitte gleich noch einmal versuchen.',
  growersOnly: 'Die Einrichtung ändert nur, wem das Gewächshaus gehört. Wechsle zuerst dorthin.',
  nothingChosen: 'Wähle zuerst eine Datei oder füge ihren Text ein.',
  noPhotoChosen: 'Wähle zuerst ein Foto aus.',
  noPhoto: 'Diese Datei lässt sich nicht als Foto zeigen. Wähle ein Bild in JPEG, PNG oder WebP.',
  noSuchSystem:
    'Dieses System gehört nicht mehr zur Einrichtung. Wähle eines aus und versuche es noch einmal.',
  noteTooLong: (length, most) =>
    `Die Worte zum Foto haben ${length} Zeichen; höchstens ${most} passen hinein.`,

  examples,
  doneMessage,
};

function examples(greenhouse: Greenhouse): readonly string[] {
  const [first, second = first] = greenhouse.systems;
  if (!first || !second) return ['Was ist zu tun?'];
  const ph = typed(middle(first.ph), 1, language);
  const ec = spokenEc(middle(first.ecMsPerCm), greenhouse, language);
  const topUp = spokenVolume(exampleTopUpL(second), greenhouse, language);
  return [
    `${first.name} pH ${ph} EC ${ec}`,
    `${second.name} ${topUp} nachgefüllt`,
    'Was ist zu tun?',
    `Wie lange reicht ${second.name}?`,
  ];
}

function doneMessage(duty: Duty, greenhouse: Greenhouse): string {
  const system = systemName(duty.system, greenhouse);
  const reference = exampleReference(duty.probe, greenhouse, language);
  switch (duty.kind) {
    case 'top-up':
      return duty.litres === undefined
        ? joined(system, 'nachgefüllt: ')
        : joined(system, spokenVolume(duty.litres, greenhouse, language), 'nachgefüllt');
    case 'check':
      return joined(system, 'pH ');
    case 'dose':
      return joined(system, `${duty.mL ?? ''} mL`, duty.product ?? '', 'zugegeben');
    case 'reservoir-change':
      return joined(system, 'Wasser gewechselt');
    case 'calibration':
      return reference === ''
        ? joined(duty.probe ?? '', 'kalibriert')
        : `${joined(duty.probe ?? '', 'kalibriert')}, ${reference} zeigte `;
    case 'aeration':
      return joined(system, 'Belüftung', `${duty.minutesPerHour ?? ''} min/h`);
    case 'clean':
      return joined(system, 'gereinigt');
    case 'chore':
      return joined('erledigt:', duty.chore ?? '');
  }
}
