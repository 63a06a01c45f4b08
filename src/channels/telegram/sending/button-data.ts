import type { GreenhouseId } from '../../../assistant/ports/store.ts';

/** What a button carries, `2:12.0`: numbers are each greenhouse's own, so that it names both. */
export function buttonData(greenhouse: GreenhouseId, token: string): string {
  return `${greenhouse}:${token}`;
}

export function readButtonData(
  data: string,
): { readonly greenhouse: GreenhouseId; readonly token: string } | null {
  const found = /^(\d{1,9}):(\d{1,12}\.\d{1,3})$/.exec(data);
  if (!found) return null;
  return { greenhouse: Number(found[1]) as GreenhouseId, token: found[2]! };
}

/** Under the greeting in a group that belongs to nobody yet. */
export const tieData = 'tie';
