/** The terminal's own words in one language; what the bot says comes from `wording/`. */
export interface Phrases {
  readonly opening: (greenhouse: string) => string;
  readonly commands: (otherHandle: string) => string;
  readonly speakingAs: (name: string) => string;
  readonly nobody: (handle: string, handles: readonly string[]) => string;
  readonly noSuchButton: (number: number) => string;
  readonly unknownCommand: (command: string) => string;
  readonly tooLong: (length: number, most: number) => string;
  readonly to: (receiver: string) => string;
  readonly notHandled: string;
}
