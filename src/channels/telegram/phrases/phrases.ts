/** What only this channel says, in one language: to strangers, in foreign groups, about the platform. */
export interface Phrases {
  /** To somebody who is in no greenhouse here; it tells nothing about any. */
  readonly stranger: string;
  readonly codeIsVoid: string;
  /** In a group that belongs to no greenhouse. */
  readonly helloGroup: string;
  readonly tieButton: string;
  readonly onlyGrowersTie: string;
  /** Under a button of somebody else's. */
  readonly notYourButton: string;
  readonly oldButton: string;
  readonly privacy: string;
  readonly commands: Readonly<Record<CommandName, string>>;
  /** What the commands stand for, as a member would type it. */
  readonly typed: Readonly<Record<'today' | 'undo' | 'help', string>>;
}

export const commandNames = ['today', 'undo', 'people', 'leave', 'help', 'privacy'] as const;
export type CommandName = (typeof commandNames)[number];
