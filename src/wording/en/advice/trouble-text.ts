import type { Entry, Trouble } from '../../../greenhouse/entry.ts';
import { clipped, mostQuoted } from '../../spoken/clipped.ts';
import { enteredBy } from '../../spoken/entered-by.ts';
import type { Speaker } from '../../spoken/speaker.ts';

/** What to do first, with the cautions where something can hurt, and the one thing worth knowing next. */
const FIRST: Readonly<Record<Trouble, string>> = {
  leak: 'First: touch no plug or cable that is wet. Where you can stay dry, unplug the pump, and put something under it. Then tell me how much is left in it, in cm or litres.',
  plants:
    'Add nothing on a guess. Measure pH, EC and the water temperature there and tell me; a photo helps too.',
  noise:
    'A pump that labours is often dry or clogged. Unplug it before your hands go into the water, and look whether its intake is under water and free. If it stops, tell me “pump off”.',
  fire: 'Touch nothing there, and no water on it. Switch the power off at the breaker if you can reach it dry and safely, and stay away. If it burns, get everybody out and call the fire brigade.',
};

/** Asks whether to keep it, after what cannot wait for the answer. */
export function troubleQuestion(of: Trouble, tells: readonly string[], s: Speaker): string {
  const told = tells.map((handle) => s.member(handle));
  const keep = told.length === 0 ? '' : `, and tell ${s.and(told)}`;
  return `${FIRST[of]}\nShall I keep it as a note${keep}?`;
}

export function troubleRemark(told: readonly string[], s: Speaker): string {
  return `${s.and(told.map((handle) => s.member(handle)))} will hear of it from me.`;
}

export function troubleAlert(entry: Entry, s: Speaker): string {
  const by = enteredBy(entry, s);
  const place = entry.system === null ? '' : ` about ${s.system(entry.system).name}`;
  const quoted = `“${clipped(entry.note ?? '', mostQuoted)}”`;
  return `${by ?? 'Somebody'} writes${place}: ${quoted}. ${FIRST[entry.trouble ?? 'plants']}`;
}
