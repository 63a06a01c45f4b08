import type { Caution, Cautions } from '../../../planning/caution.ts';

const IN_FULL: Readonly<Record<Caution, string>> = {
  'label-and-data-sheet':
    'Etikett und Sicherheitsdatenblatt des Mittels stehen über meiner Angabe.',
  'goggles-and-gloves': 'Schutzbrille und Handschuhe tragen, lüften.',
  'acid-into-water': 'Säure oder Lauge ins Wasser, nie Wasser in Säure oder Lauge.',
  'never-with-bleach':
    'Säure nie mit Chlorreiniger zusammenbringen, dabei entsteht Chlorgas; Chlorreiniger nie mit Ammoniak.',
  'acid-and-alkali-apart': 'Säure und Lauge nie mischen und getrennt aufbewahren.',
  'concentrates-apart':
    'Konzentrate nie unverdünnt mischen: eines in den vollen Behälter, umrühren, dann das andere.',
  'rinse-skin-and-eyes':
    'Auf der Haut oder im Auge: 15 bis 20 Minuten mit Wasser spülen und Giftnotruf oder Notruf anrufen.',
  'out-of-reach':
    'In der beschrifteten Originalflasche lassen, nie in Getränkeflaschen, unerreichbar für Kinder und Tiere.',
  'unplug-before-hands-in': 'Netzgeräte ausstecken, bevor die Hände ins Wasser gehen.',
  'residual-current-device':
    'Netzstrom am Wasser nur mit FI-Schutzschalter bis 30 mA, Steckdosen über dem Wasser und Kabel mit Tropfschlaufe.',
  'licensed-electrician': 'Feste Leitungen nur durch den Elektriker.',
  'local-rules': 'Alte Lösung nach den örtlichen Vorschriften entsorgen, nie in Bach oder Teich.',
  'no-disinfectant-by-guess':
    'Desinfektionsmittel nur nach Etikett, nie nach einer Zahl von mir; danach gut spülen.',
};

/** Once they have been read in full. */
const BRIEFLY: Readonly<Record<Caution, string>> = {
  'label-and-data-sheet': 'Etikett geht vor',
  'goggles-and-gloves': 'Brille und Handschuhe',
  'acid-into-water': 'ins Wasser, nicht umgekehrt',
  'never-with-bleach': 'nie mit Chlorreiniger',
  'acid-and-alkali-apart': 'Säure und Lauge getrennt',
  'concentrates-apart': 'A und B nie unverdünnt zusammen',
  'rinse-skin-and-eyes': 'Spritzer: 15 Minuten spülen',
  'out-of-reach': 'weg von Kindern',
  'unplug-before-hands-in': 'erst ausstecken, dann hineingreifen',
  'residual-current-device': 'FI-Schutz',
  'licensed-electrician': 'feste Leitungen: Elektriker',
  'local-rules': 'alte Lösung nach Vorschrift',
  'no-disinfectant-by-guess': 'Desinfektion nur nach Etikett',
};

/** `Vorsicht: …`, whole sentences the first time, a few words afterwards. */
export function cautionText({ about, inFull }: Cautions): string {
  if (inFull) return `Vorsicht: ${about.map((caution) => IN_FULL[caution]).join(' ')}`;
  return `Vorsicht: ${about.map((caution) => BRIEFLY[caution]).join('; ')}.`;
}
