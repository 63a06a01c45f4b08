import { describe, expect, it } from 'vitest';
import { newPlace, type Subject } from './storage-under-test.ts';

export function photoSuite(subject: Subject): void {
  describe('a photo', () => {
    it('is kept byte by byte under the name its channel gave it, once a greenhouse', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const other = await newPlace(subject);
      const photo = { channel, id: 'AgACAg' };
      const bytes = Uint8Array.from({ length: 300 }, (_, place) => place % 256);
      expect(await store.photos.bytes(greenhouse, photo)).toBeNull();
      await store.photos.keep(greenhouse, photo, bytes);
      await store.photos.keep(greenhouse, photo, new Uint8Array([1]));
      expect([...(await store.photos.bytes(greenhouse, photo))!]).toEqual([...bytes]);
      expect([...(await store.photos.idsOf(greenhouse, channel))]).toEqual(['AgACAg']);
      expect(await other.store.photos.bytes(other.greenhouse, photo)).toBeNull();
    });
  });
}
