/** The kinds of update this emulator can tell a bot of (`Update`). */
export type UpdateKind =
  | 'message'
  | 'edited_message'
  | 'callback_query'
  | 'my_chat_member'
  | 'chat_member'
  | 'message_reaction';

/** An update: its id and one field named for its kind. */
export type WireUpdate = { readonly update_id: number } & Readonly<
  Partial<Record<UpdateKind, unknown>>
>;
