import { Meanings } from './meanings.ts';

/** All that a word or phrase can mean. */
export interface Word {
  readonly concepts: Meanings;
  readonly number: number | null;
  readonly fraction: number | null;
  readonly ordinal: number | null;
  readonly product: string | null;
  /** A product's short name that is another word as well. */
  readonly shyProduct: string | null;
  readonly anyProduct: boolean;
  readonly probe: string | null;
  readonly crop: string | null;
  /** 1 to 7, Monday first. */
  readonly weekday: number | null;
  /** 1 to 12. */
  readonly month: number | null;
  readonly clockTurn: number | null;
}

export const meaningless: Word = {
  concepts: new Meanings(),
  number: null,
  fraction: null,
  ordinal: null,
  product: null,
  shyProduct: null,
  anyProduct: false,
  probe: null,
  crop: null,
  weekday: null,
  month: null,
  clockTurn: null,
};

/** Two words read as one phrase that means all that either means. */
export function both(a: Word, b: Word): Word {
  return {
    concepts: new Meanings([...a.concepts, ...b.concepts]),
    number: a.number ?? b.number,
    fraction: a.fraction ?? b.fraction,
    ordinal: a.ordinal ?? b.ordinal,
    product: a.product ?? b.product,
    shyProduct: a.shyProduct ?? b.shyProduct,
    anyProduct: a.anyProduct || b.anyProduct,
    probe: a.probe ?? b.probe,
    crop: a.crop ?? b.crop,
    weekday: a.weekday ?? b.weekday,
    month: a.month ?? b.month,
    clockTurn: a.clockTurn ?? b.clockTurn,
  };
}
