import type { DutyMark } from '../../planning/duty-mark.ts';
import { cautionsOnce } from '../spoken/cautions-once.ts';
import { clipped, mostQuoted } from '../spoken/clipped.ts';
import { isOfUsualStrength } from '../spoken/is-of-usual-strength.ts';
import type { Speaker } from '../spoken/speaker.ts';
import type { ToldDuties } from '../spoken/told-duties.ts';
import { isUnfoldedWhenAsked, toldInShort } from '../spoken/told-in-short.ts';
import { howText } from './advice/how-text.ts';
import { dutyText } from './duty-text.ts';
import { levelWanted, whyText } from './why.ts';

/** Duties in the order of the trip, numbered, each with its reason; what rides along comes last. */
export function dutyList(
  told: readonly ToldDuties[],
  s: Speaker,
  isPlain = false,
): readonly string[] {
  const due = told.filter(({ line }) => !line.duty.alongside);
  const alongside = told.filter(({ line }) => line.duty.alongside);
  const inOrder = [...due, ...alongside];
  const careful = cautionsOnce(inOrder.map(({ line }) => toldInShort(line)));
  const isBasisShared = !isPlain && inOrder.filter(isReckonedAsUsual).length > 1;
  const tells = { why: !isPlain, basis: !isBasisShared };
  const lines = inOrder.map((each, position) =>
    numbered({ ...each, line: careful[position] ?? each.line }, position + 1, s, tells),
  );
  const below = [
    ...(isBasisShared ? [SHARED_BASIS] : []),
    ...(isPlain ? [] : unfoldedHint(inOrder, s)),
  ];
  if (alongside.length === 0) return [...lines, ...below];
  const heading = due.length > 0 ? 'Wenn du schon da bist:' : 'Nicht eilig, lohnt sich nebenbei:';
  return [...lines.slice(0, due.length), heading, ...lines.slice(due.length), ...below];
}

const SHARED_BASIS =
  'Die Milliliter sind mit üblicher Stärke gerechnet, da kein Etikett angegeben ist.';

/** Told in full, with millilitres of what nobody knows the strength of. */
function isReckonedAsUsual({ line, mark }: ToldDuties): boolean {
  return mark === null && isOfUsualStrength(line);
}

/** How to get at the steps that are not told here. */
function unfoldedHint(told: readonly ToldDuties[], s: Speaker): readonly string[] {
  const long = told.find(({ line, mark }) => mark === null && isUnfoldedWhenAsked(line));
  if (!long) return [];
  const { kind } = long.line.duty;
  const what =
    kind === 'clean'
      ? `wie reinige ich ${placeOf(long, s)}`
      : `wie wechsle ich die Lösung von ${placeOf(long, s)}`;
  return [`Für die Schritte frag „${what}“.`];
}

function placeOf({ line: { duty } }: ToldDuties, s: Speaker): string {
  return duty.system === null ? s.greenhouse.name : s.system(duty.system).name;
}

/** What is closed needs no reason any more, only who closed it. */
function numbered(
  { line, lines, mark }: ToldDuties,
  place: number,
  s: Speaker,
  tells: { readonly why: boolean; readonly basis: boolean },
): string {
  const what = dutyText(lines, s);
  if (mark) return `${place}. ${markText(what, mark, s)}`;
  const tellsBasis = tells.basis || !isOfUsualStrength(line);
  const why = tells.why ? ` ${whyText(line, s, tellsBasis)}` : levelWanted(line);
  return `${place}. ${what}.${why}${howText(line, s)}`;
}

function markText(what: string, { state, by, note }: DutyMark, s: Speaker): string {
  const who = by === null ? 'ein Sensor' : s.member(by);
  if (state === 'done') return `✓ ${what} (${who}).`;
  const why = note === undefined ? '' : `: ${clipped(note, mostQuoted)}`;
  return `✗ ${what} (ging nicht, ${who}${why}).`;
}
