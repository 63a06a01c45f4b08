import type { Phrases } from './phrases.ts';

export const english: Phrases = {
  stranger:
    'Hello. I work for one household only. If it is yours, ask them for an invitation and open its link.',
  codeIsVoid: 'That code is not valid, or not any more. Please ask for a new invitation.',
  helloGroup:
    'Hello. I do not know yet whom this group belongs to. A grower of mine can say so: press the button, or mention me and write “our group”.',
  tieButton: 'This is our group',
  onlyGrowersTie: 'Only a grower can say so.',
  notYourButton: 'This button is meant for somebody else.',
  oldButton: 'This button is from earlier and does nothing any more.',
  privacy:
    'I keep what members write to me, the photos they attach and the log made of it, their names, and their account number here to answer them. It stays in the database of the people who run me and goes to nobody else. Leave with /leave; a grower can remove the rest.',
  commands: {
    today: 'What needs doing',
    undo: 'Take back what was logged last',
    people: 'Who is in, and inviting others',
    leave: 'Leave the greenhouse',
    help: 'What I understand',
    privacy: 'What I keep',
  },
  typed: { today: 'what needs doing', undo: 'undo', help: 'help' },
};
