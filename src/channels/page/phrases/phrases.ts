import type { Reply } from '../../../assistant/replies/reply.ts';
import type { Duty } from '../../../greenhouse/duty.ts';
import type { Greenhouse } from '../../../greenhouse/greenhouse.ts';

/** The page's own words in one language; what the bot says comes from `wording/`. */
export interface Phrases {
  readonly chat: string;
  readonly speakingAs: string;
  readonly switchSpeaker: string;
  readonly setUp: string;
  readonly backToChat: string;
  readonly earlierMessages: string;
  readonly lookForNews: string;

  readonly welcome: (greenhouse: string) => string;
  readonly tryOne: string;
  readonly whatToType: string;
  readonly yourMessage: string;
  readonly send: string;
  readonly kindLabel: Readonly<Record<Reply['kind'], string>>;
  readonly struckOut: string;
  readonly nothingLeftOfIt: string;
  readonly you: string;
  readonly bot: string;

  readonly isLive: string;
  readonly isReconnecting: string;
  readonly sending: string;
  readonly notSentYet: string;
  readonly newBelow: string;

  readonly todaysDuties: string;
  readonly dutiesToday: (count: number) => string;
  readonly nothingDue: string;
  readonly comingUp: string;
  readonly why: string;
  readonly iDidIt: string;
  readonly whileThere: string;
  readonly dueSince: (date: string) => string;
  readonly todayAtTheLatest: string;
  readonly atTheLatest: (date: string) => string;

  readonly setUpExplained: string;
  readonly export: string;
  readonly exportExplained: string;
  readonly import: string;
  readonly importExplained: string;
  readonly greenhouseFile: string;
  readonly orPaste: string;
  readonly replaceSetUp: string;
  readonly setUpReplaced: (greenhouse: string) => string;
  readonly notReplaced: (faults: number) => string;
  readonly faultPath: string;
  readonly faultFound: string;
  readonly faultExpected: string;

  readonly attachPhoto: string;
  readonly attachPhotoExplained: string;
  readonly system: string;
  readonly photo: string;
  readonly photoNote: string;
  readonly keepPhoto: string;
  readonly photoKept: (system: string) => string;

  readonly errorTitle: string;
  readonly typeSomething: string;
  readonly tooLong: (length: number, most: number) => string;
  readonly notAMember: (handle: string) => string;
  readonly notReadable: string;
  readonly notFound: string;
  readonly fromElsewhere: string;
  readonly tooLarge: (most: string) => string;
  readonly notHandledYet: string;
  readonly broken: string;
  readonly growersOnly: string;
  readonly nothingChosen: string;
  readonly noPhotoChosen: string;
  readonly noPhoto: string;
  readonly noSuchSystem: string;
  readonly noteTooLong: (length: number, most: number) => string;

  /** Messages that a newcomer may send as they stand, made of this greenhouse's own names. */
  readonly examples: (greenhouse: Greenhouse) => readonly string[];
  /** What to type when a duty is done; the visitor sets the numbers right before sending it. */
  readonly doneMessage: (duty: Duty, greenhouse: Greenhouse) => string;
}
