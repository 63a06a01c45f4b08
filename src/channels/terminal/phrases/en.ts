import type { Phrases } from './phrases.ts';

export const en: Phrases = {
  opening: (greenhouse) => `You are in the greenhouse of ${greenhouse}.`,
  commands: (otherHandle) =>
    `#1 presses the button with that number, /as ${otherHandle} speaks as somebody else, /help shows this again, /quit ends.`,
  speakingAs: (name) => `Speaking as ${name}.`,
  nobody: (handle, handles) =>
    `Nobody here is called "${handle}"; there are ${handles.join(', ')}.`,
  noSuchButton: (number) => `No button has been shown with the number ${number}.`,
  unknownCommand: (command) => `There is no ${command}; /help shows what there is.`,
  tooLong: (length, most) =>
    `The message has ${length} characters; at most ${most} fit. Please send it in parts.`,
  to: (receiver) => `(to ${receiver})`,
  notHandled:
    'Something went wrong here. If the message was stored already, it is handled at the next start.',
};
