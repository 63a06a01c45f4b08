import type { FamilyAlert } from '../../../assistant/replies/family.ts';
import type { Entry, Trouble } from '../../../greenhouse/entry.ts';
import type { DoubtReason } from '../../../understanding/statement.ts';
import { clipped, mostQuoted } from '../../spoken/clipped.ts';
import { enteredBy } from '../../spoken/entered-by.ts';
import type { Speaker } from '../../spoken/speaker.ts';

/** Was zuerst zu tun ist, mit den Warnungen, wo etwas wehtun kann, und das eine, was ich dann wissen will. */
const FIRST: Readonly<Record<Trouble, string>> = {
  leak: 'Zuerst: keinen Stecker und kein Kabel anfassen, das nass ist. Wo du trocken hinkommst, zieh die Pumpe heraus und stell etwas darunter. Dann sag mir, wie viel noch drin ist, in cm oder Litern.',
  plants:
    'Gib nichts auf Verdacht dazu. Miss dort pH, EC und Wassertemperatur und sag sie mir; ein Foto hilft auch.',
  solution:
    'Gib nichts auf Verdacht dazu, auch kein Putzmittel. Sieh dir die Wurzeln an, halte Licht vom Wasser fern, miss dort pH, EC und Wassertemperatur und sag sie mir. Was faul riecht, wird in der Regel gewechselt.',
  air: 'Ein verstopfter Stein, ein geknickter oder loser Schlauch oder eine müde Luftpumpe. Zieh den Stecker der Pumpe mit trockenen Händen, bevor du sie anfasst, und lass sie höher stehen als das Wasser. Blubbert gar nichts mehr, schreib mir „keine Blasen“.',
  noise:
    'Eine Pumpe, die sich plagt, läuft oft trocken oder ist verstopft. Zieh den Stecker, bevor du ins Wasser greifst, und sieh nach, ob ihr Ansaugkorb unter Wasser und frei ist. Bleibt sie stehen, schreib mir „Pumpe aus“.',
  fire: 'Nichts dort anfassen, und kein Wasser darauf. Schalte den Strom an der Sicherung ab, wenn du trocken und sicher hinkommst, und bleib weg. Brennt es, alle hinaus und die Feuerwehr rufen.',
  shock:
    'Weder das Gerät noch das Wasser wieder anfassen. Schalte den Strom an der Sicherung ab, wenn du trocken und sicher hinkommst; hängt jemand daran, fass ihn nicht an, bevor der Strom aus ist. Wer einen Schlag bekommen hat, geht heute noch zum Arzt; Ohnmacht, Atemnot, Herzrasen oder eine Verbrennung: sofort den Notruf wählen.',
  spill:
    'Auf der Haut oder im Auge: sofort 15 bis 20 Minuten mit viel Wasser spülen und Giftnotruf oder Notruf anrufen. Verschluckt: sofort anrufen, nicht erbrechen. Auf dem Boden: alle fernhalten und lüften, kein Chlorreiniger und kein anderes Mittel darauf; Schutzbrille und Handschuhe, dann wie auf dem Etikett.',
};

/** Fragt, ob es behalten werden soll, nach dem, was nicht auf die Antwort warten kann. */
export function troubleQuestion(
  { of, tells, told }: Extract<DoubtReason, { kind: 'trouble' }>,
  s: Speaker,
): string {
  if (told) return `${dangerAnswer(of, tells, s)}\nSoll ich es auch als Notiz behalten?`;
  const who = tells.map((handle) => s.member(handle));
  const keep = who.length === 0 ? '' : ` und ${s.and(who)} davon sagen`;
  return `${FIRST[of]}\nSoll ich es als Notiz behalten${keep}?`;
}

/** Was zuerst zu tun ist, und wer es inzwischen weiß. */
export function dangerAnswer(of: Trouble, told: readonly string[], s: Speaker): string {
  const who = told.map((handle) => s.member(handle));
  const verb = who.length === 1 ? 'weiß' : 'wissen';
  return who.length === 0 ? FIRST[of] : `${FIRST[of]}\n${s.and(who)} ${verb} es schon von mir.`;
}

export function troubleRemark(told: readonly string[], s: Speaker): string {
  const verb = told.length === 1 ? 'erfährt' : 'erfahren';
  return `${s.and(told.map((handle) => s.member(handle)))} ${verb} es von mir.`;
}

export function troubleAlert(entry: Entry, s: Speaker): string {
  const by = enteredBy(entry, s);
  const place = entry.system === null ? '' : ` zu ${s.system(entry.system).name}`;
  const quoted = `„${clipped(entry.note ?? '', mostQuoted)}“`;
  return `${by ?? 'Jemand'} schreibt${place}: ${quoted}. ${FIRST[entry.trouble ?? 'plants']}`;
}

/** In den Worten dessen, der es schreibt, sofort. */
export function dangerAlert(
  { of, by, words, system }: Extract<FamilyAlert, { kind: 'danger' }>,
  s: Speaker,
): string {
  const place = system === null ? '' : ` zu ${s.system(system).name}`;
  return `${s.member(by)} schreibt${place}: „${clipped(words, mostQuoted)}“. ${FIRST[of]}`;
}
