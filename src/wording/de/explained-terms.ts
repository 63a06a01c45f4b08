import type { ExplainedTerm } from '../../understanding/wishes/wish.ts';

/** Words of the trade for somebody who has never grown anything, in two lines each. */
const explained: Readonly<Record<ExplainedTerm, readonly [string, string]>> = {
  ec: [
    'EC (die Leitfähigkeit) sagt, wie viel Dünger im Wasser gelöst ist: je höher, desto stärker.',
    'Das EC-Messgerät zeigt ihn an. Zu wenig: die Pflanzen hungern; zu viel: die Wurzeln leiden.',
  ],
  ph: [
    'Der pH-Wert sagt, wie sauer das Wasser ist: 7 ist neutral, darunter sauer, darüber basisch.',
    'Das pH-Messgerät zeigt ihn an. Außerhalb des Bereichs können die Pflanzen den Dünger nicht aufnehmen.',
  ],
  reservoir: [
    'Das Reservoir ist der Behälter mit dem Wasser und dem Dünger darin.',
    'Daraus trinken die Wurzeln, also darf es nie leer werden.',
  ],
  'top-up': [
    'Nachfüllen heißt: Wasser zu dem geben, was noch im Behälter ist, ohne etwas wegzuschütten.',
    'Sag mir, wie viel hineinging, dann weiß ich, wie schnell die Pflanzen trinken.',
  ],
  kratky: [
    'Kratky heißt: Anbau über stehendem Wasser, ohne Pumpe und Luft; sinkt das Wasser, wachsen die Wurzeln hinterher.',
    'Im Luftspalt über dem Wasser atmen sie, darum wird so ein Glas nie wieder bis zum Rand gefüllt.',
  ],
  brim: [
    'Der Rand ist der höchste vorgesehene Füllstand eines Behälters, nicht seine äußerste Kante.',
    'Von ihm aus wird gezählt: 50 % ist die Hälfte dessen, was bis zum Rand hineinpasst.',
  ],
  'low-mark': [
    'Die Mindestmarke ist der Stand, unter den ein Behälter nicht sinken soll.',
    'Ich bitte ums Nachfüllen, bevor er erreicht ist.',
  ],
  calibration: [
    'Kalibrieren heißt: das Messgerät in eine Lösung mit bekanntem Wert halten und sehen, was es anzeigt.',
    'Messgeräte verstellen sich: danach weiß ich, um wie viel, und kann den Werten trauen.',
  ],
  'reservoir-change': [
    'Lösungswechsel heißt: die alte Lösung weggießen und bis zum Rand neu ansetzen.',
    'Ich sage, wann er dran ist. „wie wechsle ich …“ mit dem Namen eines Systems nennt die Schritte.',
  ],
  round: [
    'Die Runde ist die Liste dessen, was dran ist; ich schicke sie jeden Morgen.',
    'Antworte darauf mit dem, was gemessen und getan wurde; „was ist zu tun“ zeigt sie wieder.',
  ],
  'ph-down': [
    'pH-Minus ist eine Säure, die den pH des Wassers senkt, immer nur ein paar ml.',
    'Frag „wie viel pH-Minus“, bevor etwas hineinkommt. Schutzbrille und Handschuhe tragen.',
  ],
  'ph-up': [
    'pH-Plus ist eine Lauge, die den pH des Wassers hebt, immer nur ein paar ml.',
    'Frag „wie viel pH-Plus“, bevor etwas hineinkommt. Schutzbrille und Handschuhe tragen.',
  ],
};

export function explainedText(term: ExplainedTerm): string {
  return explained[term].join('\n');
}
