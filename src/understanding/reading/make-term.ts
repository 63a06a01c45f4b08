import type { Measure } from '../numbers/measure.ts';
import type {
  Cut,
  DigitsTerm,
  MarkTerm,
  MeasureTerm,
  NameTerm,
  Place,
  StopTerm,
  Term,
  WordTerm,
} from './term.ts';
import type { Word } from './word.ts';

/** What a name says beside where it stands. */
type Named = Pick<NameTerm, 'systems' | 'sure' | 'slip' | 'singular' | 'everyday'>;

const nobody: Named = { systems: [], sure: false, slip: false, singular: false, everyday: false };

/**
 * Terms of every kind have the same keys in the same order, those of the other kinds empty: every reader
 * looks at terms of all kinds, and V8 looks a key up fast only where a place meets no more than four shapes.
 */
function termOf(
  kind: Term['kind'],
  { from, to, text, glued }: Place,
  word: Word | null,
  measure: Measure | null,
  cut: Cut | null,
  minutes: number,
  { systems, sure, slip, singular, everyday }: Named,
) {
  return {
    kind,
    from,
    to,
    text,
    glued,
    word,
    measure,
    cut,
    minutes,
    systems,
    sure,
    slip,
    singular,
    everyday,
  };
}

export function wordTerm(place: Place, word: Word): WordTerm {
  return termOf('word', place, word, null, null, 0, nobody) as WordTerm;
}

export function measureTerm(place: Place, measure: Measure): MeasureTerm {
  return termOf('measure', place, null, measure, null, 0, nobody) as MeasureTerm;
}

export function nameTerm(place: Place, named: Named): NameTerm {
  return termOf('name', place, null, null, null, 0, named) as NameTerm;
}

export function stopTerm(place: Place, cut: Cut): StopTerm {
  return termOf('stop', place, null, null, cut, 0, nobody) as StopTerm;
}

/** A cut where nothing is written. */
export function stopBefore({ from }: Place, cut: Cut): StopTerm {
  return stopTerm({ from, to: from, text: '', glued: false }, cut);
}

export function markTerm(place: Place, text = place.text): MarkTerm {
  return termOf('mark', { ...place, text }, null, null, null, 0, nobody) as MarkTerm;
}

export function digitsTerm(place: Place): DigitsTerm {
  return termOf('digits', place, null, null, null, 0, nobody) as DigitsTerm;
}

export function clockTerm(place: Place, minutes: number): DigitsTerm {
  return termOf('clock', place, null, null, null, minutes, nobody) as DigitsTerm;
}
