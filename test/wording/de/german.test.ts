import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../src/assistant/replies/answer.ts';
import type { Receipt } from '../../../src/assistant/replies/reply.ts';
import type { Doubt } from '../../../src/understanding/doubt.ts';
import { wordings } from '../../../src/wording/wordings.ts';
import { answers, assumptions, doubtReasons, entries, remarks } from '../every-reply.ts';
import {
  bench,
  benchTopUp,
  buckets,
  check,
  date,
  entry,
  gutters,
  jarTopUp,
  nowMs,
  reader,
  tieUp,
  today,
} from '../quarry-lane.ts';

const { reply, button, duty, why } = wordings.de;
const hourMs = 3_600_000;

function receipt(parts: Partial<Receipt>): string {
  return reply({ kind: 'receipt', logged: [], assumptions: [], remarks: [], ...parts }, reader);
}

describe('a German receipt', () => {
  it('tells one system in one line, parting decimals by semicolons', () => {
    const logged = [entry('ph', 5.8), entry('ec', 1.7), entry('top-up', 12)];
    expect(receipt({ logged })).toBe(
      'Eingetragen für Bucket row: pH 5,8; EC 1,7 mS/cm; 12 l nachgefüllt.',
    );
  });

  it('gives each of several systems a line of its own', () => {
    const logged = [entry('ph', 5.9), entry('ph', 6, { system: gutters })];
    expect(receipt({ logged })).toBe('Eingetragen:\nBucket row: pH 5,9\nGutter run: pH 6,0');
  });

  it.each([
    [nowMs - 60_000, ''],
    [nowMs - 2 * hourMs, ', um 06:20'],
    [nowMs - 14 * hourMs, ', gestern um 18:20'],
    [nowMs - 3 * 24 * hourMs, ', am Samstag um 08:20'],
    [nowMs - 30 * 24 * hourMs, ', am 4. April um 08:20'],
  ])('tells the time %d only where it was not just now', (atMs, told) => {
    expect(receipt({ logged: [entry('ph', 5.8, { atMs })] })).toBe(
      `Eingetragen für Bucket row${told}: pH 5,8.`,
    );
  });

  it.each([
    ['level', 'Eingetragen für Bucket row: Stand 90 l (5 cm unter dem Rand).'],
    ['top-up', 'Eingetragen für Bucket row: etwa 12 l nachgefüllt.'],
    ['dose', 'Eingetragen für Bucket row: 10 ml pH-Minus zugegeben.'],
    ['calibration', 'Eingetragen: pen zeigte 7,12 in pH 7,00.'],
    ['harvest', 'Eingetragen für Bucket row: 1,2 kg geerntet.'],
    ['outage', 'Eingetragen, gestern um 18:00: Strom weg.'],
    ['duty-done', 'Eingetragen für Bucket row: „tie up the tomatoes“ erledigt.'],
    ['duty-failed', 'Eingetragen für Bucket row: Nachfüllen nicht erledigt (lid is stuck).'],
    ['note', 'Eingetragen für Bucket row: Notiz „leaves look pale“.'],
  ] as const)('tells %s', (quantity, told) => {
    expect(receipt({ logged: [entries[quantity]] })).toBe(told);
  });

  it.each([
    ['system-from-conversation', 'Als Bucket row verstanden, aus deiner letzten Nachricht.'],
    ['bare-volume', 'Menge in Litern gelesen.'],
    ['bare-conductivity', 'EC in mS/cm gelesen.'],
    ['tds-factor', 'EC 1,4 mS/cm aus 700 ppm, Faktor 500.'],
    ['shorthand', 'Gelesen in der Reihenfolge pH, EC, Wassertemperatur.'],
    ['brim-volume', 'Ohne Menge, daher als bis zum Rand gefüllt genommen.'],
    ['slip-in-name', '„bukcets“ als Bucket row gelesen.'],
  ] as const)('tells that it took %s for granted', (kind, told) => {
    const logged = [entry('ph', 5.9), entry('ec', 1.4), entry('water-temperature', 21)];
    expect(receipt({ logged, assumptions: [assumptions[kind]] })).toBe(
      `Eingetragen für Bucket row: pH 5,9; EC 1,4 mS/cm; Wasser 21 °C.\n${told}`,
    );
  });

  it.each([
    ['outside-range', 'pH 5,3 ist zu niedrig für Bucket row, gewünscht: 5,5 bis 6,2.'],
    [
      'far-from-expected',
      'pH 7,4 weicht bei Bucket row stark ab, zu erwarten war etwa pH 5,8. Bitte miss zur Sicherheit noch einmal.',
    ],
    ['already-known', 'Das hatte ich schon, es wurde nichts doppelt eingetragen.'],
    ['lasts-until', 'Bucket row dürfte bis Sonntag reichen.'],
  ] as const)('remarks %s', (kind, told) => {
    expect(receipt({ remarks: [remarks[kind]] })).toBe(told);
  });
});

describe('a German correction', () => {
  it('says what was struck out and what stands instead', () => {
    const struck = [entry('ph', 5.4)];
    const logged = [entry('ph', 5.6)];
    expect(reply({ kind: 'correction', struck, logged, remarks: [] }, reader)).toBe(
      'Gestrichen für Bucket row: pH 5,4.\nStattdessen eingetragen für Bucket row: pH 5,6.',
    );
  });
});

describe('a German question', () => {
  it.each([
    ['which-system', 'pH: welches System ist „ntf“?'],
    ['which-quantity', 'Was ist 5.8? Sag es bitte mit einem Wort, zum Beispiel „pH 5,8“.'],
    ['in-it-or-added', '12 l: ist das jetzt drin, oder hast du das nachgefüllt?'],
    ['which-unit', 'Wasserstand 95: Liter, % oder cm?'],
    ['out-of-range', 'pH 54 liegt außerhalb des Möglichen (3 bis 9). Was ist der richtige Wert?'],
    ['conflict', 'pH 5,9 und pH 6,2: was stimmt?'],
    ['missing-amount', 'Wie viele Liter hast du nachgefüllt?'],
    ['litres-to-brim', 'Wie viele Liter waren es bis zum Rand?'],
    ['shared-amount', '10 l: jeweils oder zusammen?'],
    ['which-time', '„at 18:00“ kann ich nicht einordnen. Wann war das?'],
    [
      'since-when',
      'Seit wann ist der Strom weg? „since 14:30“ kommt heute erst noch, daher habe ich es ab jetzt eingetragen.',
    ],
    [
      'how-long-out',
      'Wie lange war der Strom weg? Zum Beispiel „2 Stunden“. Bis dahin trage ich nichts ein.',
    ],
    ['is-it-a-reading', 'Soll ich das eintragen, oder war es eine Frage?'],
    [
      'shorthand-does-not-fit',
      'Diese Zahlen passen nicht zur Reihenfolge pH, EC, Wassertemperatur. Was ist was? Zum Beispiel „pH 5,9, EC 1,7, Wasser 21“.',
    ],
    ['which-duties', 'Was ist erledigt? Zum Beispiel „North bench erledigt“.'],
    ['why-not', 'North bench nachfüllen: woran lag es? Ein Wort genügt.'],
    ['unclear', 'Das habe ich nicht verstanden. Soll ich es als Notiz behalten?'],
  ] as const)('asks about %s', (kind, told) => {
    const doubt: Doubt = { reason: doubtReasons[kind], choices: [], waiting: null };
    expect(reply({ kind: 'question', questionId: 'q1', doubt }, reader)).toBe(told);
  });

  it('names the system at hand, and the likely slip', () => {
    const label = { kind: 'value', quantity: 'ph', value: 5.4 } as const;
    const doubt: Doubt = {
      reason: doubtReasons['out-of-range'],
      choices: [{ label, drafts: [entry('ph', 5.4)] }],
      waiting: null,
    };
    expect(reply({ kind: 'question', questionId: 'q1', doubt }, reader)).toBe(
      'pH 54 bei Bucket row liegt außerhalb des Möglichen (3 bis 9). Meinst du pH 5,4?',
    );
    expect(button({ kind: 'choice', choice: label }, reader)).toBe('pH 5,4');
  });
});

describe('a German duty', () => {
  it('puts the system first and counts cans without a plural', () => {
    expect(duty(benchTopUp, reader)).toBe(
      'North bench: bis zu 43 l (4½ × can) nachfüllen, bis zum Rand',
    );
    expect(duty(check(buckets), reader)).toBe('Bucket row: pH und EC messen');
  });

  it('never sends a non-circulating system back to its brim', () => {
    expect(duty(jarTopUp, reader)).toBe(
      'Jar shelf: etwa 2,5 l nachfüllen, höchstens auf 15 l, 6,8 cm unter dem Rand',
    );
  });

  it('gives the numbers behind it', () => {
    expect(why(benchTopUp, reader)).toBe(
      'Noch etwa 180 l drin, Verbrauch etwa 24 l am Tag; die untere Marke (150 l) könnte am Donnerstag erreicht sein.',
    );
    expect(why(tieUp, reader)).toBe('Alle 5 Tage dran, zuletzt am Freitag gemacht.');
  });
});

describe('a German round', () => {
  it('lists the duties of the trip in order, alike checks as one, the rest while there', () => {
    const duties = [benchTopUp, check(bench), check(buckets), tieUp];
    expect(reply({ kind: 'round', date: today, isLate: false, duties }, reader)).toBe(
      [
        'Dienstag, 4. Mai: 2 Aufgaben.',
        '1. North bench: bis zu 43 l (4½ × can) nachfüllen, bis zum Rand. Noch etwa 180 l drin, Verbrauch etwa 24 l am Tag; die untere Marke (150 l) könnte am Donnerstag erreicht sein.',
        '2. North bench und Bucket row: pH und EC messen. Zuletzt gestern gemessen.',
        'Wenn du schon da bist:',
        '3. Tie up the tomatoes (North bench). Alle 5 Tage dran, zuletzt am Freitag gemacht.',
      ].join('\n'),
    );
  });

  it('is one line where nothing is due, and says that it is late', () => {
    expect(reply({ kind: 'round', date: today, isLate: true, duties: [] }, reader)).toBe(
      'Dienstag, 4. Mai (verspätet: um 07:00 lief ich nicht): nichts zu tun.',
    );
  });
});

describe('a German answer', () => {
  const tell = (answer: Answer): string => reply({ kind: 'answer', answer }, reader);

  it('says what comes next where nothing is due', () => {
    const next = [{ ...benchTopUp, duty: { ...benchTopUp.duty, dueOn: date('2027-05-06') } }];
    expect(tell({ kind: 'due', system: null, today, duties: [], next })).toBe(
      'Heute nichts zu tun. Als Nächstes am Donnerstag: North bench nachfüllen.',
    );
  });

  it.each([
    ['when-next', 'Am Donnerstag: North bench nachfüllen.'],
    [
      'how-long',
      'Bucket row: noch etwa 90 l, Verbrauch etwa 5 l am Tag, untere Marke voraussichtlich am Freitag (frühestens am Donnerstag, spätestens am 12. Mai).',
    ],
    ['last-reading', 'Bucket row: pH 5,8, gestern um 18:00.\nGutter run: pH 6,1, heute um 08:20.'],
    ['use', 'North bench: seit Samstag 120 l nachgefüllt; Verbrauch etwa 24 l am Tag.'],
    [
      'is-it-right',
      'pH 5,4 ist zu niedrig für Bucket row, gewünscht: 5,5 bis 6,2.\nJar shelf: pH noch nicht eingetragen, gewünscht: 5,5 bis 6,5.',
    ],
    ['who', 'Tomas: 3 l nachgefüllt (Jar shelf), gestern um 18:00.'],
    [
      'help',
      'Sag mir, was du gemessen oder gemacht hast: „North bench pH 6,1 EC 2,4 mS/cm“, „Bucket row 12 l nachgefüllt“, „rückgängig“.\nOder frag: „was ist zu tun“, „wie lange reicht North bench“ oder „wie war der letzte pH“.',
    ],
    ['nothing-to-take-back', 'Da gibt es nichts zurückzunehmen.'],
    [
      'nothing-to-put-right',
      'Ich finde nichts von dir, was das richtigstellen würde, und habe nichts geändert. Sag es bitte im Ganzen, mit dem System und was es ist, zum Beispiel „pH 5,8“.',
    ],
    ['nothing-to-put-back', 'Es ist nichts gestrichen, was ich wieder eintragen könnte.'],
    ['left-out', 'Gut, es wurde nichts eingetragen.'],
    ['thanks', 'Gern.'],
    ['greeted', 'Hallo.'],
    ['heard', 'Alles klar.'],
  ] as const)('tells %s', (kind, told) => {
    expect(tell(answers[kind])).toBe(told);
  });
});
