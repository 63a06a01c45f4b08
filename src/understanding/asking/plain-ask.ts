import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { WantedQuantity } from '../../greenhouse/set-up/set-up-change.ts';
import type { TopicAsked } from '../wishes/wish.ts';

/** On which side of what is wanted a value lies. */
export type Side = 'low' | 'high';

/** Questions of somebody who stands in the greenhouse and does not know; of all systems where none is named. */
export type PlainAsk =
  /** `how much is a can`; null: all that there are. */
  | { readonly kind: 'containers'; readonly name: string | null }
  /** `how many plants are in the gutters`, `what is the low mark of the bench`. */
  | { readonly kind: 'grown' }
  /** `where do I get the water from`. */
  | { readonly kind: 'water-source' }
  /** `is it urgent`, `can the gutters wait until Friday`; by: the day spoken of. */
  | { readonly kind: 'urgent'; readonly by: LocalDate | null }
  /** `what do I do if the pH is too high`. */
  | { readonly kind: 'out-of-range'; readonly quantity: WantedQuantity; readonly side: Side }
  /** `why is the pH so low`. */
  | { readonly kind: 'why-reading'; readonly quantity: WantedQuantity; readonly side: Side }
  /** `how much do I need to put in the bench`. */
  | { readonly kind: 'room' }
  /** `what comes next`. */
  | { readonly kind: 'coming' }
  /** `what's first`: the one thing to do next. */
  | { readonly kind: 'first' }
  /** `which is lowest`, `which is fullest`: the one, and the next. */
  | { readonly kind: 'fullest'; readonly side: Side }
  /** `why is the bench drinking so much`. */
  | { readonly kind: 'why-use'; readonly side: Side }
  /** `how did last week go`: what was done on these local dates, both included. */
  | { readonly kind: 'days-told'; readonly from: LocalDate; readonly to: LocalDate }
  /** `does tap water work`: something to be told of a topic. */
  | { readonly kind: 'topic'; readonly of: TopicAsked }
  /** `what's the difference between the buckets and the jars`. */
  | { readonly kind: 'compared' }
  /** `is that too low`, where no value was told. */
  | { readonly kind: 'which-value' };
