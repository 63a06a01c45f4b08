import { isDeed, isLabel } from '../moods/clause-kinds.ts';
import { stopBefore, stopTerm } from './make-term.ts';
import { isTakenBackBy } from './put-right.ts';
import { means, type NameTerm, type Term } from './term.ts';

/** `10 l in the row, no, in the bench`: a clause of nothing but another name puts that in the first one's place. */
export function putNamesRight(terms: readonly Term[]): readonly Term[] {
  const kept = cutBeforeNames(cutAtDashes(terms));
  for (let cut = 1; cut < kept.length; cut++) {
    if (kept[cut]!.kind !== 'stop') continue;
    const before = clauseBefore(kept, cut);
    const names = before.filter((i) => kept[i]!.kind === 'name');
    if (names.length !== 1 || before.length === 1) continue;
    const meant = nameMeant(kept, cut);
    if (meant === null) continue;
    kept[names[0]!] = { ...meant.name, glued: kept[names[0]!]!.glued };
    kept.splice(cut, meant.to - cut);
    cut--;
  }
  return kept;
}

/** `ph 5.9 - no wait, that was the gutters - buckets 6.1`: what is put in between dashes is cut off by them. */
function cutAtDashes(terms: readonly Term[]): Term[] {
  let isWithin = false;
  return terms.map((term, i) => {
    if (!isDash(term)) return term;
    const opens = means(terms[i + 1], 'no-wait') && !means(terms[i + 1], 'filler');
    const closes = isWithin && terms[i - 1]?.kind === 'name';
    isWithin = opens || (isWithin && !closes);
    return opens || closes ? stopTerm(term, 'comma') : term;
  });
}

function isDash({ kind, text }: Term): boolean {
  return (kind === 'mark' || kind === 'stop') && ['-', '–', '—'].includes(text);
}

/** `gutters ec 1.4 i mean jars`: what takes a name back is a clause of its own, without a comma as well. */
function cutBeforeNames(terms: Term[]): Term[] {
  if (!terms.some(isTakenBackBy)) return terms;
  let hasMeasure = false;
  return terms.flatMap((term, i): Term[] => {
    if (term.kind === 'stop') hasMeasure = false;
    if (term.kind === 'measure') hasMeasure = true;
    const isCut = hasMeasure && isTakenBackBy(term) && nameMeant(terms, i - 1) !== null;
    if (!isCut) return [term];
    return [stopBefore(term, 'comma'), term];
  });
}

function clauseBefore(terms: readonly Term[], cut: number): number[] {
  const found: number[] = [];
  for (let i = cut - 1; i >= 0; i--) {
    const term = terms[i]!;
    // `bench ph 6.1 and ec 2.2, no, the dwc`: both are taken back.
    if (term.kind === 'stop' && term.cut !== 'and') break;
    if (term.kind !== 'stop') found.push(i);
  }
  return found.reverse();
}

/** The name alone in what follows a cut, behind words like `no wait`; `to`: where that ends. */
function nameMeant(
  terms: readonly Term[],
  cut: number,
): { readonly name: NameTerm; readonly to: number } | null {
  let isTakenBack = false;
  let name: NameTerm | null = null;
  for (let i = cut + 1; i < terms.length; i++) {
    const term = terms[i]!;
    if (term.kind === 'stop' && name !== null) return isTakenBack ? { name, to: i } : null;
    if (term.kind === 'stop' && (term.cut === 'comma' || term.cut === 'sentence')) continue;
    if (term.kind === 'name') {
      // `no jars` counts none of them; `jars i mean` says the name first.
      const leads = isTakenBack || leadsClause(terms, cut, i);
      if (name !== null || !term.sure || !leads || means(terms[i - 1], 'no')) return null;
      name = term;
    } else if (isTakenBackBy(term) || (means(term, 'no-wait') && name === null)) {
      isTakenBack = true;
    } else if (name !== null) {
      if (!means(term, 'link', 'pronoun', 'filler', 'meant')) return null;
    } else if (isTakenBack) {
      if (!means(term, 'place', 'article', 'to', 'pronoun', 'was', 'meant', 'link')) return null;
    } else if (i === cut + 1 && isItself(terms, i)) {
      isTakenBack = true;
    } else if (!leadsClause(terms, cut, i + 1) && !isLedBack(terms, i)) return null;
  }
  return isTakenBack && name !== null ? { name, to: terms.length } : null;
}

/** Nothing but an article before it. */
function leadsClause(terms: readonly Term[], cut: number, i: number): boolean {
  return i === cut + 1 || (i === cut + 2 && means(terms[cut + 1], 'article'));
}

/** `that's the gutters`: what was told before is of that system. */
function isItself(terms: readonly Term[], i: number): boolean {
  const next = means(terms[i + 1], 'article') ? terms[i + 2] : terms[i + 1];
  const isIt = means(terms[i], 'that-is', 'meant') && means(terms[i], 'link', 'was', 'pronoun');
  return isIt && next?.kind === 'name';
}

/** `…, the other way round i mean jars`: a few words, and then what takes back. */
function isLedBack(terms: readonly Term[], i: number): boolean {
  for (let j = i; j < terms.length && j <= i + longestExcuse; j++) {
    const term = terms[j]!;
    if (isTakenBackBy(term)) return true;
    if (term.kind !== 'word' || isLabel(term) || isDeed(term)) return false;
  }
  return false;
}

/** So many words tell of a slip; more tell of something else. */
const longestExcuse = 8;
