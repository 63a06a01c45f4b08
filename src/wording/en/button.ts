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
      return 'Undo';
    case 'choice':
      return clipped(s.capital(choiceText(label.choice, s)), mostOnButton);
    case 'log-nothing':
      return 'Log nothing';
    case 'leave-as-is':
      return 'Leave it';
    case 'guide':
      return clipped(s.capital(guideOptionText(label.option)), mostOnButton);
    case 'tick':
      return clipped(`✓ ${s.capital(dutyName(label.duty, s))}`, mostOnButton);
    case 'cannot':
      return "Can't";
    case 'untick':
      return clipped(`Undo: ${dutyName(label.duty, s)}`, mostOnButton);
    case 'how-to':
      return clipped(`How? ${s.capital(dutyName(label.duty, s))}`, mostOnButton);
    case 'how':
      return 'How?';
    case 'no-reason':
      return 'No reason';
    case 'cover':
      if (label.handles.length === 0) return 'Nobody';
      if (label.isAll && label.handles.length > 1) return 'All in turn';
      return clipped(s.and(label.handles.map((handle) => s.member(handle))), mostOnButton);
    case 'news':
      return label.every === 'day' ? 'One line a day' : 'Only alerts';
    case 'take-over':
      return clipped(`I'll do it: ${dutyName(label.duty, s)}`, mostOnButton);
    case 'picture': {
      const { name } = s.system(label.system);
      const what = label.of === 'water' ? 'Water' : 'pH, EC';
      return clipped(`Picture: ${what}, ${name}`, mostOnButton);
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
      if (choice.asWater) return 'water';
      if (choice.quantity === 'level') return 'in it now';
      return choice.quantity === 'top-up' ? 'added' : quantityNames[choice.quantity];
    case 'quantity-of-each':
      return choice.quantity === 'level' ? 'in each now' : 'added to each';
    case 'value':
      return valueText(choice.quantity, choice.value, s);
    case 'amount':
      return choice.text;
    case 'product':
      return productName(choice.product);
    case 'each':
      return 'for each';
    case 'in-all':
      return 'in all';
    case 'time':
      return dayAndTime(choice.atMs, s);
    case 'yes':
      return 'yes';
    case 'no':
      return 'no';
    case 'one-top-up':
      return 'the same one';
    case 'two-top-ups':
      return 'another one';
    case 'done-without-figures':
      return 'done, no figures';
    case 'still-out':
      return 'still out';
    case 'keep-as-note':
      return 'keep as a note';
    case 'work':
      return s.and(choice.duties.map((duty) => dutyName(duty, s)));
    case 'all-work':
      return 'everything';
  }
}

function systemsText(names: readonly string[], s: Speaker): string {
  const listed = s.and(names);
  if (listed.length <= mostOnButton) return listed;
  return names.length === 2 ? 'both' : `all ${names.length}`;
}
