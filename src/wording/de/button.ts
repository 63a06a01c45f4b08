import type { ButtonLabel } from '../../assistant/outgoing.ts';
import type { ChoiceLabel } from '../../understanding/statement.ts';
import { clipped, mostOnButton } from '../spoken/clipped.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { dayAndTime } from './day-text.ts';
import { dutyName } from './duty-text.ts';
import { guideOptionText } from './keeping/guide-text.ts';
import { productName, quantityNames } from './names.ts';
import { valueText } from './value-text.ts';
import { wishText } from './wish-text.ts';

/** At most 30 characters. */
export function buttonText(label: ButtonLabel, s: Speaker): string {
  switch (label.kind) {
    case 'strike-out':
      return 'Rückgängig';
    case 'choice':
      return clipped(s.capital(choiceText(label.choice, s)), mostOnButton);
    case 'log-nothing':
      return 'Nichts eintragen';
    case 'leave-as-is':
      return 'So lassen';
    case 'guide':
      return clipped(s.capital(guideOptionText(label.option)), mostOnButton);
    case 'tick':
      return clipped(`✓ ${s.capital(dutyName(label.duty, s))}`, mostOnButton);
    case 'cannot':
      return 'Geht nicht';
    case 'untick':
      return clipped(`Zurück: ${dutyName(label.duty, s)}`, mostOnButton);
    case 'how-to':
      return clipped(`Wie? ${s.capital(dutyName(label.duty, s))}`, mostOnButton);
    case 'how':
      return 'Wie?';
    case 'no-reason':
      return 'Kein Grund';
    case 'cover':
      if (label.handles.length === 0) return 'Niemand';
      if (label.isAll && label.handles.length > 1) return 'Alle abwechselnd';
      return clipped(s.and(label.handles.map((handle) => s.member(handle))), mostOnButton);
    case 'news':
      return label.every === 'day' ? 'Eine Zeile am Tag' : 'Nur Alarm';
    case 'take-over':
      return clipped(`Ich mache es: ${dutyName(label.duty, s)}`, mostOnButton);
    case 'picture': {
      const { name } = s.system(label.system);
      const what = label.of === 'water' ? 'Wasser' : 'pH, EC';
      return clipped(`Bild: ${what}, ${name}`, mostOnButton);
    }
    case 'household':
      return clipped(wishText(label.wish, s), mostOnButton);
  }
}

/** An answer offered, as it stands in a sentence or on a button. */
export function choiceText(choice: ChoiceLabel, s: Speaker): string {
  switch (choice.kind) {
    case 'system':
      return s.system(choice.system).name;
    case 'systems':
      return systemsText(
        choice.systems.map((id) => s.system(id).name),
        s,
      );
    case 'quantity':
      if (choice.asWater) return 'Wasser';
      if (choice.quantity === 'level') return 'jetzt drin';
      return choice.quantity === 'top-up' ? 'nachgefüllt' : quantityNames[choice.quantity];
    case 'quantity-of-each':
      return choice.quantity === 'level' ? 'jetzt in jedem' : 'in jedes nachgefüllt';
    case 'value':
      return valueText(choice.quantity, choice.value, s);
    case 'amount':
      return choice.text;
    case 'product':
      return productName(choice.product);
    case 'each':
      return 'jeweils';
    case 'in-all':
      return 'zusammen';
    case 'time':
      return dayAndTime(choice.atMs, s);
    case 'yes':
      return 'ja';
    case 'no':
      return 'nein';
    case 'one-top-up':
      return 'dieselbe';
    case 'two-top-ups':
      return 'eine weitere';
    case 'done-without-figures':
      return 'erledigt, ohne Zahlen';
    case 'still-out':
      return 'noch aus';
    case 'keep-as-note':
      return 'als Notiz behalten';
    case 'work':
      return s.and(choice.duties.map((duty) => dutyName(duty, s)));
    case 'all-work':
      return 'alles';
  }
}

function systemsText(names: readonly string[], s: Speaker): string {
  const listed = s.and(names);
  if (listed.length <= mostOnButton) return listed;
  return names.length === 2 ? 'beide' : `alle ${names.length}`;
}
