/** A photo by the channel that it came through and that channel's own name for it. Its bytes are kept apart. */
export interface PhotoRef {
  readonly channel: string;
  readonly id: string;
}
