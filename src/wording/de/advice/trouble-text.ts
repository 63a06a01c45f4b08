import type { Entry, Trouble } from '../../../greenhouse/entry.ts';
import { clipped, mostQuoted } from '../../spoken/clipped.ts';
import { enteredBy } from '../../spoken/entered-by.ts';
import type { Speaker } from '../../spoken/speaker.ts';

/** Was zuerst zu tun ist, mit den Warnungen, wo etwas wehtun kann, und das eine, was ich dann wissen will. */
const FIRST: Readonly<Record<Trouble, string>> = {
  leak: 'Zuerst: keinen Stecker und kein Kabel anfassen, das nass ist. Wo du trocken hinkommst, zieh die Pumpe heraus und stell etwas darunter. Dann sag mir, wie viel noch drin ist, in cm oder Litern.',
  plants:
    'Gib nichts auf Verdacht dazu. Miss dort pH, EC und Wassertemperatur und sag sie mir; ein Foto hilft auch.',
  noise:
    'Eine Pumpe, die sich plagt, läuft oft trocken oder ist verstopft. Zieh den Stecker, bevor du ins Wasser greifst, und sieh nach, ob ihr Ansaugkorb unter Wasser und frei ist. Bleibt sie stehen, schreib mir „Pumpe aus“.',
  fire: 'Nichts dort anfassen, und kein Wasser darauf. Schalte den Strom an der Sicherung ab, wenn du trocken und sicher hinkommst, und bleib weg. Brennt es, alle hinaus und die Feuerwehr rufen.',
};

/** Fragt, ob es behalten werden soll, nach dem, was nicht auf die Antwort warten kann. */
export function troubleQuestion(of: Trouble, tells: readonly string[], s: Speaker): string {
  const told = tells.map((handle) => s.member(handle));
  const keep = told.length === 0 ? '' : ` und ${s.and(told)} davon sagen`;
  return `${FIRST[of]}\nSoll ich es als Notiz behalten${keep}?`;
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
