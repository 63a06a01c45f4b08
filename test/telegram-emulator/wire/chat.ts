/** A chat as it stands in messages (`Chat`). */
export type WireChat = {
  readonly id: number;
  readonly type: 'private' | 'group' | 'supergroup';
  readonly title?: string;
  readonly username?: string;
  readonly first_name?: string;
  readonly last_name?: string;
  readonly is_forum?: true;
};
