import type { PhotoRef } from '../../greenhouse/photo.ts';
import type { ChannelName, GreenhouseId } from './store.ts';

/** The photos that members attached, so that they can be shown wherever the household looks. */
export interface PhotoStore {
  /** Which photos of a channel are here, by the channel's own names for them. */
  idsOf(greenhouse: GreenhouseId, channel: ChannelName): Promise<ReadonlySet<string>>;
  /**
   * Keeping the same photo again changes nothing. Kept is the picture alone, without the place and the
   * time that cameras write into it.
   */
  keep(greenhouse: GreenhouseId, photo: PhotoRef, bytes: Uint8Array): Promise<void>;
  /** Null: it is not here, or not yet. */
  bytes(greenhouse: GreenhouseId, photo: PhotoRef): Promise<Uint8Array | null>;
}
