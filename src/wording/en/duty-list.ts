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

/** Duties in the order of the trip, numbered, each with its reason unless plain words will do; what rides along comes last. */
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
  const heading =
    due.length > 0 ? 'While you are there:' : 'Not urgent, but worth doing on a trip:';
  return [...lines.slice(0, due.length), heading, ...lines.slice(due.length), ...below];
}

const SHARED_BASIS =
  'The millilitres are reckoned with a usual strength, since no label was given.';

/** Told in full, with millilitres of what nobody knows the strength of. */
function isReckonedAsUsual({ line, mark }: ToldDuties): boolean {
  return mark === null && isOfUsualStrength(line);
}

/** How to get at the steps that are not told here. */
function unfoldedHint(told: readonly ToldDuties[], s: Speaker): readonly string[] {
  const long = told.find(({ line, mark }) => mark === null && isUnfoldedWhenAsked(line));
  if (!long) return [];
  const { kind } = long.line.duty;
  const what = `${kind === 'clean' ? 'clean' : 'change the solution of'} ${placeOf(long, s)}`;
  return [`For the steps ask “how do I ${what}”.`];
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
  const who = by === null ? 'a sensor' : s.member(by);
  if (state === 'done') return `✓ ${what} (${who}).`;
  const why = note === undefined ? '' : `: ${clipped(note, mostQuoted)}`;
  return `✗ ${what} (not done, ${who}${why}).`;
}
