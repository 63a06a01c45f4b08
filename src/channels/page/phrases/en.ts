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

const language = 'en';

export const en: Phrases = {
  chat: 'Chat',
  speakingAs: 'Speaking as',
  switchSpeaker: 'Switch',
  setUp: 'Set-up',
  backToChat: 'Back to the chat',
  earlierMessages: 'Earlier messages',
  lookForNews: 'Look for new messages',

  welcome: (greenhouse) =>
    `This is the logbook and the duty list of ${greenhouse}. Write what you measured or did, in your own words, and ask what needs doing.`,
  tryOne: 'Tap one to try it; you can change it before it is sent.',
  whatToType: 'What can I type?',
  yourMessage: 'Your message',
  send: 'Send',
  kindLabel: {
    receipt: 'Logbook',
    question: 'Question',
    answer: 'Answer',
    round: 'Morning round',
    alert: 'Warning',
    refusal: 'Cannot do',
    correction: 'Logbook',
  },
  struckOut: 'Struck out',
  nothingLeftOfIt: 'This was about something that is no longer part of the set-up.',
  you: 'You',
  bot: 'Greenhouse',

  isLive: 'Up to date',
  isReconnecting: 'No connection, trying again…',
  sending: 'Sending…',
  notSentYet: 'Not sent yet. It goes out by itself when the connection is back.',
  newBelow: 'New message below',

  todaysDuties: 'Today’s duties',
  dutiesToday: (count) => (count === 1 ? '1 duty today' : `${count} duties today`),
  nothingDue: 'Nothing needs doing today.',
  comingUp: 'Coming up',
  why: 'Why',
  iDidIt: 'I did it…',
  whileThere: 'while you are there',
  dueSince: (date) => `due since ${date}`,
  todayAtTheLatest: 'today at the latest',
  atTheLatest: (date) => `by ${date} at the latest`,

  setUpExplained: 'Systems, members, probes, stock and chores, as one file.',
  export: 'Export',
  exportExplained:
    'Download the greenhouse file to keep it safe, to change it, or to move to another machine.',
  import: 'Import',
  importExplained:
    'The file is checked whole first. It replaces the set-up; the logbook and the chat stay as they are.',
  greenhouseFile: 'Greenhouse file',
  orPaste: 'or paste its text',
  replaceSetUp: 'Replace the set-up',
  setUpReplaced: (greenhouse) => `The set-up of ${greenhouse} is in use now.`,
  notReplaced: (faults) =>
    faults === 1
      ? 'Nothing was changed: the file has a fault.'
      : `Nothing was changed: the file has ${faults} faults.`,
  faultPath: 'Where',
  faultFound: 'Found',
  faultExpected: 'Expected',

  attachPhoto: 'Photo for a system',
  attachPhotoExplained:
    'It is shown with the steps of that system’s work to whoever asks how it is done: where the tap is, up to which mark to fill.',
  system: 'System',
  photo: 'Photo',
  photoNote: 'What it shows (may stay empty)',
  keepPhoto: 'Keep the photo',
  photoKept: (system) => `The photo is kept with ${system} and comes with the steps of its work.`,

  errorTitle: 'That did not work',
  typeSomething: 'There was nothing in the message. Type something first.',
  tooLong: (length, most) =>
    `The message has ${length} characters; at most ${most} fit. Please send it in parts.`,
  notAMember: (handle) =>
    `Nobody here is called “${handle}”. Choose who is speaking and try again.`,
  notReadable: 'The page could not read what was sent. Please load it again and retry.',
  notFound: 'There is no page at this address.',
  fromElsewhere: 'This was sent from another site, so it was not accepted.',
  tooLarge: (most) => `That is too large; at most ${most} fit.`,
  notHandledYet:
    'Something went wrong here. If your message was stored already, it will be handled as soon as possible; sending it again does no harm.',
  broken: 'Something went wrong here. Please try again in a moment.',
  growersOnly: 'Only a grower changes the set-up. Switch to a grower first.',
  nothingChosen: 'Choose a file or paste its text first.',
  noPhotoChosen: 'Choose a photo first.',
  noPhoto: 'That file cannot be shown as a photo. Choose a JPEG, PNG or WebP picture.',
  noSuchSystem: 'That system is not in the set-up any more. Choose one and try again.',
  noteTooLong: (length, most) =>
    `The words with the photo have ${length} characters; at most ${most} fit.`,

  examples,
  doneMessage,
};

function examples(greenhouse: Greenhouse): readonly string[] {
  const [first, second = first] = greenhouse.systems;
  if (!first || !second) return ['what needs doing?'];
  const ph = typed(middle(first.ph), 1, language);
  const ec = spokenEc(middle(first.ecMsPerCm), greenhouse, language);
  const topUp = spokenVolume(exampleTopUpL(second), greenhouse, language);
  return [
    `${first.name} pH ${ph} EC ${ec}`,
    `topped up ${second.name} with ${topUp}`,
    'what needs doing?',
    `how long will ${second.name} last?`,
  ];
}

function doneMessage(duty: Duty, greenhouse: Greenhouse): string {
  const system = systemName(duty.system, greenhouse);
  const reference = exampleReference(duty.probe, greenhouse, language);
  switch (duty.kind) {
    case 'top-up':
      return duty.litres === undefined
        ? joined('topped up', system, 'with ')
        : joined('topped up', system, 'with', spokenVolume(duty.litres, greenhouse, language));
    case 'check':
      return joined(system, 'pH ');
    case 'dose':
      return joined('added', `${duty.mL ?? ''} mL`, duty.product ?? '', 'to', system);
    case 'reservoir-change':
      return joined('changed the reservoir of', system);
    case 'calibration':
      return reference === ''
        ? joined('calibrated the', duty.probe ?? '')
        : `${joined('calibrated the', duty.probe ?? '')}: ${reference} read `;
    case 'aeration':
      return joined(system, 'aeration', `${duty.minutesPerHour ?? ''} min/h`);
    case 'clean':
      return joined('cleaned', system);
    case 'chore':
      return joined('done:', duty.chore ?? '');
  }
}
