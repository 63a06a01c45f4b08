/** What a run of digits and points says. */
export type Numeral =
  | { readonly kind: 'number'; readonly values: readonly number[] }
  | { readonly kind: 'clock'; readonly minutes: number }
  | { readonly kind: 'date' }
  /** A phone number, a serial number: no quantity. */
  | { readonly kind: 'digits' };

const digitsOfNoQuantity = 7;
const minutesAnHour = 60;

/** Reads `5.8`, `5,8`, `1,413`, `1.234,5`, `8:15`, `2027-05-03`, `3.5.2027`, `087`. */
export function readNumeral(run: string): Numeral {
  if (run.includes(':')) return readClock(run);
  if (run.includes('-')) return { kind: 'date' };
  const parts = run.split(/[.,]/);
  const digits = run.replaceAll(/[.,]/g, '');
  const whole = parts[0]!;
  if (parts.length === 1) {
    const leadingZero = whole.length > 1 && whole.startsWith('0');
    if (leadingZero || digits.length >= digitsOfNoQuantity) return { kind: 'digits' };
    return { kind: 'number', values: [Number(whole)] };
  }
  const marks = run.replaceAll(/\d/g, '');
  if (parts.length === 2) return { kind: 'number', values: valuesOfOneMark(whole, parts[1]!) };
  const sameMark = marks === marks.charAt(0).repeat(marks.length);
  if (sameMark && parts.slice(1).every((part) => part.length === 3) && whole.length <= 3) {
    return { kind: 'number', values: [Number(digits)] };
  }
  if (sameMark && parts.length === 3 && marks.startsWith('.')) return { kind: 'date' };
  const inThrees = parts.slice(1, -1).every((part) => part.length === 3);
  const lastDiffers = marks.lastIndexOf(marks[0]!) === marks.length - 2;
  if (!sameMark && inThrees && lastDiffers) {
    const value = Number(`${parts.slice(0, -1).join('')}.${parts.at(-1)!}`);
    return { kind: 'number', values: [value] };
  }
  return { kind: 'digits' };
}

function valuesOfOneMark(whole: string, rest: string): readonly number[] {
  const asDecimal = Number(`${whole === '' ? '0' : whole}.${rest}`);
  const mayBeThousands = rest.length === 3 && /^[1-9]\d{0,2}$/.test(whole);
  return mayBeThousands ? [asDecimal, Number(whole + rest)] : [asDecimal];
}

function readClock(run: string): Numeral {
  const [hour = '', minute = ''] = run.split(':');
  if (minute.length !== 2 || Number(hour) > 24 || Number(minute) >= minutesAnHour) {
    return { kind: 'digits' };
  }
  return { kind: 'clock', minutes: Number(hour) * minutesAnHour + Number(minute) };
}
