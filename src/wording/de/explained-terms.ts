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
  nft: [
    'NFT (Nährfilmtechnik): ein dünner Film Lösung läuft Tag und Nacht durch Rinnen; daraus nehmen die Wurzeln Nahrung und Luft.',
    'Es ist wenig Wasser darin, darum trocknen die Wurzeln in Stunden, wenn die Pumpe steht.',
  ],
  dwc: [
    'DWC (Tiefwasserkultur): die Wurzeln hängen ständig in der Lösung, und Luft wird hindurchgeblasen.',
    'Ohne Luft geht dem Wasser in Stunden der Sauerstoff aus, darum ist die Luftpumpe das Wichtigste.',
  ],
  'flood-and-drain': [
    'Ebbe und Flut: eine Pumpe flutet den Tisch ab und zu, dann läuft das Wasser zurück, und die Wurzeln atmen.',
    'Gemessen und zugegeben wird im Behälter, wenn der Tisch leergelaufen ist.',
  ],
  'tap-water': [
    'Leitungswasser enthält meist Kalk: es treibt den pH immer wieder hoch, braucht mehr Säure und bringt Salze mit, die die Pflanzen übrig lassen. Regenwasser enthält kaum etwas davon.',
    'Besser als ein leerer Behälter ist es trotzdem: im Notfall damit auffüllen, es aufschreiben („Notiz: Leitungswasser in …“), dann pH und EC messen.',
  ],
  drinking: [
    'Nein. Darin sind Dünger und vielleicht Säure oder Lauge; niemand soll es trinken, auch kein Tier.',
    'Wer etwas geschluckt hat, ruft sofort den Giftnotruf an und sagt vom Etikett, was darin ist. Nicht erbrechen.',
  ],
  children: [
    'Neben einem Erwachsenen dürfen Kinder klares Wasser gießen, schauen, zählen und ernten. Säure, Lauge und Konzentrate, Kalibrierlösungen und Stecker sind nichts für sie.',
    'Die Flaschen unerreichbar aufbewahren. Wer Säure geben darf, sagt mir die Gärtnerin oder der Gärtner: nur Erwachsene, denen es gezeigt wurde.',
  ],
  photos: [
    'Die Gärtnerin oder der Gärtner kann mir ein Foto mit dem Namen eines Systems oder einer Arbeit schicken: ich behalte es und zeige es bei den Schritten.',
    'Was auf dem Bild ist, sehe ich nicht; sag also in Worten, was du gefunden hast, zum Beispiel „braune Wurzeln in …“.',
  ],
  languages: [
    'Ich verstehe Deutsch und Englisch, gleich in welcher Sprache du schreibst, und antworte dir in deiner.',
    '„sprich Englisch mit mir“ oder „talk German to me“ ändert sie.',
  ],
  privacy: [
    'Was du meldest, steht mit deinem Namen und der Zeit im Logbuch, und alle im Haushalt können danach fragen. Von Gefahren und von dem, was auf sie wartet, erfährt die Gärtnerin oder der Gärtner.',
    'Was mir geschrieben wird, behalte ich. Was nicht eingetragen ist, sage ich niemandem weiter; schreib mir trotzdem nichts, was keiner sehen darf.',
  ],
  sureness: [
    'Ich kann mich irren. Selbst sehe ich nichts: meine Zahlen beruhen auf dem, was gesagt und gemessen wurde, auf dem Wetter, und sonst auf dem, was üblich ist.',
    '„warum genau“ nennt die Rechnung. Sieht es dort anders aus, miss und sag es mir: was gemessen wurde, gilt.',
  ],
  'putting-right': [
    'Nichts ist verloren: „rückgängig“ nimmt zurück, was du zuletzt gesagt hast, auch mit dem Knopf unter meinem Beleg.',
    'Oder sag einfach, was stimmt: „sorry, 5,6 statt 5,4“, „ich meinte die …“. Du kannst auch deine Nachricht bearbeiten.',
  ],
  overdosing: [
    'Aufhören, nichts mehr zugeben, und vor allem nicht nach Gefühl das Gegenmittel. Umrühren oder laufen lassen, 15 bis 30 Minuten warten, pH und EC messen und mir sagen, auch wie viel hineinkam.',
    'Ist es weit daneben, muss die Hälfte des Wassers oder alles gewechselt werden: sag es gleich der Gärtnerin oder dem Gärtner.',
  ],
  joining: [
    'Die Leitung schreibt mir im Messenger, unter vier Augen: „lade einen Helfer ein“, oder „lade … ein“ mit dem Namen, wenn jemand schon eingetragen ist. Ich antworte mit einem Link; wer ihn öffnet, ist dabei und kann mir schreiben.',
    'Bis dahin gibt jemand, der dabei ist, weiter, was getan wurde.',
  ],
  'running-dry': [
    'Ohne Wasser trocknen die Wurzeln: in Stunden, wo sie in der Luft oder im dünnen Film hängen, später, wo Blähton oder Wolle etwas halten. Gleich auffüllen und nach den Blättern sehen.',
    'Eine Pumpe, die trocken läuft, geht kaputt: ausstecken, bis wieder Wasser da ist.',
  ],
};

export function explainedText(term: ExplainedTerm): string {
  return explained[term].join('\n');
}
