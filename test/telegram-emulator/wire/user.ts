/** A person or a bot as the Bot API writes it (`User`). */
export type WireUser = {
  readonly id: number;
  readonly is_bot: boolean;
  readonly first_name: string;
  readonly last_name?: string;
  readonly username?: string;
  readonly language_code?: string;
};
