import type { FamilyAlert } from '../../../assistant/replies/family.ts';
import type { Entry, Trouble } from '../../../greenhouse/entry.ts';
import type { DoubtReason } from '../../../understanding/statement.ts';
import { clipped, mostQuoted } from '../../spoken/clipped.ts';
import { enteredBy } from '../../spoken/entered-by.ts';
import type { Speaker } from '../../spoken/speaker.ts';

/** What to do first, with the cautions where something can hurt, and the one thing worth knowing next. */
const FIRST: Readonly<Record<Trouble, string>> = {
  leak: 'First: touch no plug or cable that is wet. Where you can stay dry, unplug the pump, and put something under it. Then tell me how much is left in it, in cm or litres.',
  plants:
    'Add nothing on a guess. Measure pH, EC and the water temperature there and tell me; a photo helps too.',
  solution:
    'Add nothing on a guess, and no cleaner. Look at the roots, keep light off the water, and measure pH, EC and the water temperature there and tell me. What smells rotten is changed as a rule.',
  air: 'A clogged stone, a kinked or loose hose, or a tired air pump. Unplug the pump before you touch it, with dry hands, and keep it higher than the water. If nothing bubbles at all, tell me “no bubbles”.',
  noise:
    'A pump that labours is often dry or clogged. Unplug it before your hands go into the water, and look whether its intake is under water and free. If it stops, tell me “pump off”.',
  fire: 'Touch nothing there, and no water on it. Switch the power off at the breaker if you can reach it dry and safely, and stay away. If it burns, get everybody out and call the fire brigade.',
  shock:
    'Touch neither it nor the water again. Switch the power off at the breaker if you can reach it dry and safely; if somebody is still held by it, do not touch them before the power is off. Whoever got a shock should see a doctor today; faint, short of breath, a pounding heart or a burn: call the emergency number now.',
  spill:
    'On skin or in eyes: rinse at once with plenty of water, for 15 to 20 minutes, and call the poison or emergency number. Swallowed: call at once, and bring nothing up. On the floor: keep everybody off it and air the place, no bleach or other cleaner on it; goggles and gloves, then as the label says.',
};

/** Asks whether to keep it, after what cannot wait for the answer. */
export function troubleQuestion(
  { of, tells, told }: Extract<DoubtReason, { kind: 'trouble' }>,
  s: Speaker,
): string {
  if (told) return `${dangerAnswer(of, tells, s)}\nShall I keep it as a note as well?`;
  const who = tells.map((handle) => s.member(handle));
  const keep = who.length === 0 ? '' : `, and tell ${s.and(who)}`;
  return `${FIRST[of]}\nShall I keep it as a note${keep}?`;
}

/** What to do first, and who has heard of it by now. */
export function dangerAnswer(of: Trouble, told: readonly string[], s: Speaker): string {
  const who = s.and(told.map((handle) => s.member(handle)));
  return told.length === 0 ? FIRST[of] : `${FIRST[of]}\nI have told ${who}.`;
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

/** In the teller's own words, at once. */
export function dangerAlert(
  { of, by, words, system }: Extract<FamilyAlert, { kind: 'danger' }>,
  s: Speaker,
): string {
  const place = system === null ? '' : ` about ${s.system(system).name}`;
  return `${s.member(by)} writes${place}: “${clipped(words, mostQuoted)}”. ${FIRST[of]}`;
}
