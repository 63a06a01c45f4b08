import type { EntryDraft } from '../../greenhouse/entry.ts';
import { isDeed, isLabel } from '../moods/clause-kinds.ts';
import { type Frame, isMeasure, isName } from '../reading/frame.ts';
import { isMark, means, type Term } from '../reading/term.ts';
import type { TakingBack } from '../statement.ts';

/**
 * `oh wait i didn't, they're still standing here`, `ach nee hab ich gar nicht`: that what was just logged was not done,
 * with no word of what it was, and why it is known.
 */
export function denyJustLogged(frame: Frame): TakingBack | null {
  return denyOfNamed(frame) ?? denyUnnamed(frame);
}

/** `halt, in die Wanne kam gar nichts`, `no wait, nothing went into the tub`: of the one thing just told of it. */
function denyOfNamed({ context, terms, places }: Frame): TakingBack | null {
  const { justLogged } = context;
  if (justLogged === undefined || !places.hasAny(['not', 'did-not'])) return null;
  if (!means(terms[0], 'no-wait', 'called-off', 'said-no', 'sorry')) return null;
  const [name, ...others] = places.where(isName);
  const named = name === undefined ? undefined : terms[name];
  if (named?.kind !== 'name' || others.length > 0 || named.systems.length !== 1) return null;
  const [entry, ...more] = justLogged.filter(({ system }) => system === named.systems[0]);
  if (!entry || more.length > 0 || !isPutIn(entry)) return null;
  const isPlain = terms.every((term) =>
    term.kind === 'stop'
      ? term.cut === 'comma' || term.cut === 'sentence'
      : isName(term) || isOfDenial(term),
  );
  return isPlain ? { kind: 'deny', system: entry.system, quantity: entry.quantity } : null;
}

function isPutIn({ quantity }: EntryDraft): boolean {
  return quantity === 'top-up' || quantity === 'dose';
}

function isOfDenial(term: Term): boolean {
  return means(
    term,
    'no-wait',
    'called-off',
    'said-no',
    'sorry',
    'not',
    'did-not',
    'anything',
    'place',
    'article',
    'self',
    'filler',
    'pronoun',
    'link',
    'was',
    'has',
    'add',
    'add-plainly',
    'top-up',
    'fill',
    'goes-in',
    'received',
    'told-past',
    'water',
  );
}

function denyUnnamed(frame: Frame): TakingBack | null {
  const { context, terms, clauses, places } = frame;
  if (isFalseAlarm(frame)) return { kind: 'deny', system: null, quantity: 'outage' };
  if (context.justLogged === undefined || !places.hasAny(['did-not', 'not'])) return null;
  if (!means(terms[0], 'no-wait', 'sorry') || !places.hasAny(['self'])) return null;
  const [first] = clauses.filter(({ from, to }) => to > from);
  if (!first || places.hasWhere(tellsMore, 0, terms.length)) return null;
  const said = terms.slice(first.from, first.to);
  const isDenial = said.every((term) =>
    means(term, 'no-wait', 'sorry', 'self', 'did-not', 'not', 'filler', 'pronoun', 'link'),
  );
  // `sorry, hab ich nicht gemessen` denies something else.
  const isDenied = endsInNot(frame, said.at(-1)!);
  return isDenial && isDenied ? { kind: 'undo' } : null;
}

/** `false alarm, the timer just hadn't come on yet`: of what is out, or was told to be just now. */
function isFalseAlarm({ context, terms, places }: Frame): boolean {
  if (!places.hasAny(['false-alarm'])) return false;
  const { justLogged = [], outage } = context;
  const isOut = outage !== undefined || justLogged.some(({ quantity }) => quantity === 'outage');
  return isOut && !places.hasWhere(isMeasure, 0, terms.length);
}

/** `did not`, `gar nicht`, and not a phrase that ends in what was not done: `nicht gemessen`. */
function endsInNot({ lexicon }: Frame, term: Term): boolean {
  if (!means(term, 'did-not', 'not')) return false;
  const last = term.text.slice(term.text.lastIndexOf(' ') + 1);
  const alone = lexicon.own.phrases.get([last])?.concepts;
  return alone?.has('not') === true || alone?.has('did-not') === true;
}

function tellsMore(term: Term): boolean {
  if (term.kind === 'stop') return term.cut === 'question';
  if (term.kind === 'name' || term.kind === 'measure' || isLabel(term)) return true;
  return isMark(term, '?') || (isDeed(term) && !means(term, 'link', 'filler'));
}
