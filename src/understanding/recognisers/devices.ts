import { hasAirPump, hasPump } from '../../greenhouse/devices.ts';
import type { System, SystemId } from '../../greenhouse/system.ts';
import type { Frame } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';

/** The one system that has such a device; null if none or several have. */
export function onlySystemWith(frame: Frame, has: (system: System) => boolean): SystemId | null {
  const having = frame.context.greenhouse.systems.filter(has);
  return having.length === 1 ? having[0]!.id : null;
}

function hasVenturi({ aeration }: System): boolean {
  return aeration?.kind === 'venturi';
}

/** The system that a device in the clause belongs to, where only one has it. */
export function systemOfDevice(frame: Frame, term: Term | undefined): SystemId | null {
  if (means(term, 'venturi')) return onlySystemWith(frame, hasVenturi);
  if (means(term, 'air-stones'))
    return (
      onlySystemWith(frame, ({ aeration }) => aeration?.kind === 'air-stones') ??
      onlySystemWith(frame, hasAirPump)
    );
  if (means(term, 'air-pump', 'no-bubbles')) return onlySystemWith(frame, hasAirPump);
  if (means(term, 'aeration')) return onlySystemWith(frame, ({ aeration }) => aeration !== null);
  if (means(term, 'pump') && means(term, 'flood'))
    return onlySystemWith(frame, ({ floods }) => floods !== null);
  if (means(term, 'pump', 'no-flow')) return onlySystemWith(frame, hasPump);
  return null;
}

/** The system whose crop it is, where only one grows it. */
export function systemOfCrop(frame: Frame, term: Term | undefined): SystemId | null {
  if (term?.kind !== 'word' || term.word.crop === null) return null;
  const { crop } = term.word;
  return onlySystemWith(
    frame,
    (system) => system.crop !== null && cropOf(frame, system.crop) === crop,
  );
}

/** A crop's name as the vocabulary groups it, whatever language the greenhouse file is written in. */
function cropOf(frame: Frame, crop: string): string {
  const called = crop.toLowerCase();
  const { lexicon } = frame;
  for (const { vocabulary } of [lexicon.own, ...lexicon.others]) {
    for (const [id, names] of Object.entries(vocabulary.crops))
      if (id === called || names.includes(called)) return id;
  }
  return called;
}
