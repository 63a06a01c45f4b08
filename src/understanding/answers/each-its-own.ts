import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Doubt } from '../doubt.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare, isVolume } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure } from '../reading/frame.ts';
import { isMark, means } from '../reading/term.ts';

/** A draft and the amount that the answer gives it. */
export interface OwnAmount {
  readonly draft: EntryDraft;
  readonly measure: Measure;
}

/** `7 in the bench and 3 in the jars`, `jars 2, gutters 8`: every system asked about gets an amount of its own. */
export function eachItsOwn(frame: Frame, doubt: Doubt): readonly OwnAmount[] | null {
  return amountsOfSystems(frame, askedFor(doubt)) ?? amountsInTurn(frame, doubt);
}

/** `20 and 15` after `added A and B`: as many amounts as products or systems, in the order in which those were said. */
function amountsInTurn(frame: Frame, { reason, waiting }: Doubt): readonly OwnAmount[] | null {
  if (reason.kind !== 'missing-amount' || waiting?.for !== 'value') return null;
  const { drafts } = waiting;
  const products = new Set(drafts.map(({ product }) => product));
  const systems = new Set(drafts.map(({ system }) => system));
  const areProducts = products.size === drafts.length && systems.size === 1;
  const areSystems = systems.size === drafts.length && products.size === 1;
  if (drafts.length < 2 || !(areProducts || areSystems)) return null;
  const parts = partsOf(frame);
  if (parts?.length !== drafts.length) return null;
  // `5.9 and 1.2` may as well be readings.
  const isAmount = (part: SystemId | Measure): part is Measure =>
    typeof part !== 'string' && (part.unit !== null || part.decimals === 0);
  return parts.every(isAmount) ? drafts.map((draft, n) => ({ draft, measure: parts[n]! })) : null;
}

/** An amount for each of these drafts, of as many systems, and nothing else. */
export function amountsOfSystems(
  frame: Frame,
  asked: readonly EntryDraft[],
): readonly OwnAmount[] | null {
  if (asked.length < 2) return null;
  const parts = partsOf(frame);
  if (parts?.length !== 2 * asked.length) return null;
  const own: OwnAmount[] = [];
  for (let n = 0; n < parts.length; n += 2) {
    const pair = [parts[n]!, parts[n + 1]!];
    const system = pair.find((part) => typeof part === 'string');
    const measure = pair.find((part) => typeof part !== 'string');
    const draft = asked.find((one) => one.system === system);
    if (!draft || !measure || own.some((one) => one.draft === draft)) return null;
    own.push({ draft, measure });
  }
  return own;
}

/** `40 l, and the jars 2 l` after `topped up the bench`: the amount asked for, and those of other systems. */
export function oneAndOthers(frame: Frame, doubt: Doubt): readonly OwnAmount[] | null {
  const asked = askedFor(doubt);
  const [draft] = asked;
  if (!draft || asked.length > 1 || draft.quantity !== 'top-up') return null;
  // `12 l, topped up the jars 3 l`: more is told, and no answer.
  const tellsAnew = frame.terms.some((term, i) => i > 0 && means(term, 'top-up', 'add'));
  const parts = tellsAnew ? [] : (partsOf(frame) ?? []);
  const [first] = parts;
  const named = first && typeof first !== 'string' ? [draft.system!, ...parts] : parts;
  if (named.length < 4 || named.length % 2 > 0) return null;
  const own = named.flatMap((part, n): OwnAmount[] => {
    const measure = named[n + 1];
    const isPair =
      n % 2 === 0 && typeof part === 'string' && measure && typeof measure !== 'string';
    // `jars 5.9` may as well be a reading.
    const isAmount = isPair && (isVolume(measure) || (isBare(measure) && measure.whole));
    return isAmount ? [{ draft: { ...draft, system: part }, measure }] : [];
  });
  const systems = new Set(own.map((one) => one.draft.system));
  const isWhole = 2 * systems.size === named.length && systems.has(draft.system);
  return isWhole ? own : null;
}

/** The drafts that wait for an amount, one a system. */
function askedFor({ waiting, choices, reason }: Doubt): readonly EntryDraft[] {
  const drafts =
    reason.kind === 'shared-amount'
      ? (choices.find(({ label }) => label.kind === 'each')?.drafts ?? [])
      : reason.kind === 'missing-amount' && waiting?.for === 'value'
        ? waiting.drafts
        : [];
  const systems = new Set(drafts.map(({ system }) => system));
  return systems.size === drafts.length && !systems.has(null) ? drafts : [];
}

/** Names and amounts in the order they are said; null if anything else is said. */
function partsOf(frame: Frame): readonly (SystemId | Measure)[] | null {
  const parts: (SystemId | Measure)[] = [];
  for (const term of frame.terms) {
    if (isMeasure(term)) parts.push(term.measure);
    else if (term.kind === 'name') {
      if (!term.sure || term.systems.length !== 1) return null;
      parts.push(term.systems[0]!);
    } else if (term.kind === 'stop') {
      if (term.cut === 'question') return null;
    } else if (
      !isMark(term, '-', ':') &&
      !means(term, 'article', 'place', 'filler', 'top-up', 'add', 'about', 'ish')
    )
      return null;
  }
  return parts;
}
