/**
 * Everything that a word can mean to the reader. A language lists its words for each; one word may
 * stand under several concepts, and what it means is then decided by what stands around it.
 */

export type GrammarConcept =
  /** the, a, my. */
  | 'article'
  /** Prepositions after which a system may stand: in, on, for, of, from, into, to. */
  | 'place'
  /** Those of them that lead to an amount or a mark: to, up to. */
  | 'to'
  /** Where something goes, and not where it is: into; or an article that makes a word of place say so: in die. */
  | 'where-to'
  /** Such an article of which a word of place may say either: in den. */
  | 'where-or-where-to'
  | 'of'
  /** Of what was told just before: of it, of which. */
  | 'of-it'
  | 'at'
  | 'from'
  | 'with'
  | 'for-somebody'
  /** Words that tie a quantity to its number: is, was, reads, at. */
  | 'link'
  /** Those of them that say it is over: was, had been. */
  | 'was'
  /** Those of them that say it holds at present: now. */
  | 'now'
  | 'before'
  | 'after'
  /** Words that change nothing: also, just, ok, so. */
  | 'filler'
  | 'self'
  /** What the writer did without others: myself. */
  | 'oneself'
  | 'each'
  | 'both'
  | 'all'
  | 'except'
  /** In the one that was spoken of last: there. */
  | 'in-that-one'
  /** Before the one of all that is otherwise: only the jars. */
  | 'only-this'
  | 'about'
  /** Leads to how far off a number may be: plus or minus. */
  | 'tolerance'
  /** about, said after the number: -ish, or so. */
  | 'ish'
  /** more than, under: no reading. */
  | 'beyond'
  | 'couple'
  /** some, a few, a bit. */
  | 'vague-amount'
  | 'another'
  | 'there-is'
  /** What is said of a rest: only so much left, still so much. */
  | 'still-there'
  | 'has'
  | 'pronoun'
  /** One thing that was spoken of: that, that one. */
  | 'that-one'
  | 'and'
  /** A sign of adding: two amounts are one. */
  | 'plus'
  /** Leads to how much something changed, and not to what it is: rose by. */
  | 'by'
  /** Verbs of change that may stand before how much: fell 0.2. */
  /** `lower than`: against something else. */
  | 'compared'
  /** Of a value or an amount: by so much it is over what it should be, or under it. */
  | 'too-much'
  | 'too-little'
  /** Of an amount: so much of it was missing to another. */
  | 'fewer'
  /** Leads to what an amount is held against: more of it than. */
  | 'than'
  | 'moved'
  /** It was near being done: nearly put. */
  | 'almost'
  /** Before an amount it tells either that it is about so much, or that it was near being done. */
  | 'about-or-almost'
  | 'then'
  | 'but'
  | 'or'
  /** Such a word that may give each of two its own: `6 bzw. 5,8`. */
  | 'or-each'
  /** After two values of two systems, that each has its own. */
  | 'respectively'
  /** a, an: one of what follows. */
  | 'indefinite'
  /** The word between whole and decimals: five point eight. */
  | 'point'
  /** A zero after the point, as one reads it out: six point oh. */
  | 'spoken-zero'
  /** Of a number before it so many times as much: eleven hundred. */
  | 'multiplier'
  | 'half-more'
  /** Said of an amount: it was given two times. */
  | 'twice'
  | 'times'
  | 'same'
  /** That something was read once more: again, later. */
  | 'read-anew'
  /** Once more as much as was told before. */
  | 'as-much-again'
  /** too, likewise: the same of one more. */
  | 'alike'
  /** i.e., that is, equals: the same again in other words. */
  | 'that-is'
  /** so, hence: what follows is a saying of its own. */
  | 'so'
  | 'between';

export type QuantityConcept =
  | 'ph'
  | 'ec'
  /** The word that says both quantity and unit. */
  | 'ppm-word'
  | 'cf-word'
  | 'temperature'
  | 'water'
  | 'air'
  | 'inside'
  /** Of the greenhouse where no system is named, else of that system: `34 Grad drin`. */
  | 'in-here'
  | 'outside'
  | 'air-thermometer'
  | 'humidity'
  | 'oxygen'
  | 'level'
  | 'instrument';

export type LevelConcept =
  | 'full'
  | 'empty'
  | 'dry'
  /** Another value may be the right one: maybe 12. */
  | 'maybe'
  | 'left-over'
  | 'down'
  | 'rising'
  | 'brim'
  | 'below'
  | 'low'
  | 'deep'
  | 'whole'
  /** Of a vessel as an amount: a full can, a whole jug. */
  | 'measure-full'
  /** Of an amount of one: a good kilo, a scant can. */
  | 'measure-about'
  /** What is left over of an amount and goes elsewhere: the rest into the jars. */
  | 'remainder';

export type DeedConcept =
  /** topped up, filled: they need litres. */
  | 'top-up'
  /** added, poured, gave, put: they need an amount only where water or a product is their object. */
  | 'add'
  /** add, pour: what somebody does or should do. */
  | 'add-plainly'
  /** went, fitted: of an amount that goes into a system, it was added. */
  | 'goes-in'
  | 'fill'
  | 'change'
  | 'changed-solution'
  | 'empty-out'
  | 'refill'
  | 'fresh'
  /** mixed, made up: a solution, in a vessel or for a system. */
  | 'mixed'
  /** reservoir, tank. */
  | 'reservoir'
  /** water, solution: what a reservoir holds and a top-up is made of. */
  | 'solution'
  | 'calibrate'
  | 'check'
  | 'read-as'
  | 'pick'
  /** Of a crop: it hangs there still. */
  | 'unpicked'
  | 'flood'
  | 'took'
  | 'set'
  | 'aeration'
  | 'nonstop'
  | 'take-away'
  /** bought, ordered: it is in stock, and in no system. */
  | 'bought'
  /** measured out, put ready: it is at hand, and in no system yet. */
  | 'set-ready'
  /** Behind what was put somewhere: out, aside. */
  | 'put-by'
  /** Of a feed in two bottles, one of them: part. */
  | 'feed-part'
  /** Deeds as something to do, not as something done: top up, add, change. */
  | 'plain-deed'
  | 'other-deed';

export type SupplyConcept =
  | 'power'
  | 'pump'
  | 'air-pump'
  | 'venturi'
  | 'air-stones'
  /** Nothing is in it. */
  | 'none-left'
  /** No water, in it or given. */
  | 'no-water-in'
  | 'broken'
  | 'working'
  /** Of a device that is off, but need not have failed. */
  | 'switched-off'
  /** The first half of `works again` and `does not work` where a language parts them: läuft … nicht. */
  /** Of a pump that does not run. */
  | 'stands'
  | 'runs'
  | 'again'
  | 'no-power'
  /** no power cut: nothing was out. */
  | 'no-outage'
  /** Of what had stopped, with nothing that names it: it just started. */
  | 'started'
  /** What was told to have failed had not. */
  | 'false-alarm'
  | 'no-bubbles'
  /** Nothing flows where a pump is to bring it. */
  | 'no-flow'
  /** This and no more. */
  | 'merely'
  /** Of a fuse: the power is back. */
  | 'put-back-in';

/** What is wrong, said outright. */
export type TroubleConcept =
  | 'leak'
  /** How ailing plants look, and what sits on them. */
  | 'ailing'
  /** What it is seen on, for words that may be said of other things: leaves, roots. */
  | 'plant-part'
  /** Colours and shapes that are trouble on a part of a plant only: yellow, brown. */
  | 'off-colour'
  /** Seen of water that should be clear: green, cloudy, foaming. */
  | 'murky'
  /** What grows or smells in it, whatever it is said of: algae, stinks. */
  | 'foul'
  /** Bubbles there are, but few. */
  | 'weak-bubbles'
  | 'weak'
  | 'labouring'
  | 'burning'
  | 'shock'
  /** Strong stuff by its kind, where it is no product in stock: bleach, lye. */
  | 'caustic'
  | 'spilling'
  | 'on-floor'
  /** Water that lies there, wherever it came from: a puddle. */
  | 'lying-water'
  | 'wet-floor'
  /** What one walks on, and how it can be; beside each other a wet floor. */
  | 'floor'
  | 'wet'
  /** Where water has no business: under a system. */
  | 'beneath'
  /** Why a floor is wet that nobody need fear: mopping. */
  | 'wet-work'
  /** Water that may be spilled: the watering can's, the rain's. */
  | 'harmless-water'
  /** By whoever tells it: that was me. */
  | 'own-doing'
  /** Not sure, or there again: a cause named so settles nothing. */
  | 'in-doubt'
  /** Said of it: it is over. */
  | 'ceased'
  /** Where it hurts: on the skin, in the eye, swallowed. */
  | 'on-body'
  /** It hurts already: a chemical burn. */
  | 'burnt-by-it';

export type MoodConcept =
  | 'not'
  /** Negations that carry their verb: didn't, haven't. */
  | 'did-not'
  | 'no'
  | 'intention'
  /** What comes next on a walk round, be it read or still to do: next up. */
  | 'next-in-turn'
  /** Of an intention, when in the day: after lunch. Later on the same day it may be done. */
  | 'part-of-day'
  | 'condition'
  | 'hearsay'
  | 'according-to'
  | 'says'
  /** Asks whether there is one at all: any, and not something. */
  | 'any-at-all'
  /** Something that is not as it should be, in general: problems, wrong. */
  | 'amiss'
  /** Looked at or measured, and nobody says what it was: checked. */
  | 'checked'
  /** As much as ever: the usual. */
  | 'as-ever'
  /** Of whoever or whatever was named: their, its. */
  | 'of-its-own'
  /** That it was done in the way somebody said, and nothing of what they said: as you said, as agreed. */
  | 'as-told'
  /** Leads to whose word something was done by: as, like. */
  | 'in-the-way'
  /** Of somebody, before what they are to do: told, asked, got. */
  | 'orders'
  /** What somebody is told by: a note, a message; `written on the board`. */
  | 'message'
  /** Leads to what a message says: saying, asking. */
  | 'message-says'
  /** Opens what somebody was told of others: that he. */
  | 'that-clause'
  /** A deed that an order and a report say alike: put. */
  | 'may-be-order'
  | 'target'
  /** After what was aimed at: what it came to. */
  | 'outcome'
  | 'forgot'
  | 'to-say'
  | 'habit'
  | 'each-time'
  | 'up-next'
  | 'beside'
  | 'long-ago'
  /** Between a was and its value: at some time that nobody tells. */
  | 'at-some-time'
  | 'extreme'
  | 'forecast'
  /** What is said is said to try the bot out. */
  | 'trial'
  | 'buffer'
  /** Water that is in no system: the rain barrel, the tap. */
  | 'other-water'
  | 'money'
  | 'counted'
  | 'numbered'
  /** What plants are grown in, of whatever kind: a tub, a rack. Where it is no name, it is of no system here. */
  | 'planter'
  | 'phone'
  | 'size'
  | 'vessel'
  | 'third-person'
  /** Whoever it was: someone else. */
  | 'another-person'
  /** Not the one that was spoken of: the other one. */
  | 'other-one'
  /** The name of a member of the household; no vocabulary lists them. */
  | 'member'
  | 'capacity';

export type TakingBackConcept =
  | 'undo'
  /** Before the one thing that is to be struck out: forget the. */
  | 'strike-the'
  /** Of a value told before: is wrong. */
  | 'untrue'
  /** Of a value told before, that another is to stand in its place: make, change. */
  | 'turn-into'
  | 'put-back'
  /** Alone, that what was just undone was right: no wait. */
  | 'called-off'
  | 'sorry'
  | 'meant'
  /** Of a value told before, what it was in truth: should have been. */
  | 'ought-to-have-been'
  | 'ought-to-be'
  | 'had-said'
  | 'every'
  | 'received'
  | 'carry'
  | 'told-past'
  | 'the-most'
  | 'in-the-right'
  | 'instead-of'
  /** What was told stands in the place of one another: the other way round. */
  | 'swapped'
  | 'after-all'
  | 'no-wait'
  | 'rather';

export type DutyConcept =
  | 'done'
  | 'did'
  | 'do'
  | 'tick'
  | 'all-good'
  | 'could-not'
  /** The first half of it where a language parts them: konnte … nicht. */
  | 'could'
  | 'clean'
  | 'because'
  /** What keeps somebody from work: stuck, locked, no key. */
  | 'hindered';

export type AskConcept =
  | 'what'
  | 'when'
  | 'when-past'
  | 'why'
  | 'how'
  | 'how-much'
  | 'how-long'
  | 'who'
  | 'which'
  /** Verbs that open a question: is, does, should, can. */
  | 'is-it'
  | 'need'
  | 'due'
  | 'anything'
  | 'job'
  | 'next'
  | 'last-out'
  | 'most-recent'
  | 'use'
  | 'show'
  | 'picture'
  | 'judged'
  /** Judged by how warm it is. */
  | 'warmth'
  | 'exactly'
  | 'going'
  | 'help'
  /** What may hurt somebody, and what guards against it. */
  | 'safety'
  | 'unanswered';

export type TimeConcept =
  | 'yesterday'
  | 'day-before-yesterday'
  | 'today'
  | 'tomorrow'
  | 'tonight'
  /** The night nearest: before noon the one that has passed. */
  | 'this-night'
  | 'this'
  | 'last'
  | 'morning'
  | 'noon'
  | 'afternoon'
  | 'evening'
  | 'night'
  | 'midnight'
  /** Said of what holds day by day: at night. */
  | 'part-of-every-day'
  | 'ago'
  | 'ago-before'
  | 'since'
  | 'for-so-long'
  | 'at-hour'
  | 'on-day'
  /** Before a bare day of the month: `am 10.` */
  | 'on-date'
  | 'o-clock'
  /** The hour before it is one of 24. */
  | 'o-clock-of-24'
  | 'am'
  | 'pm'
  | 'just-now'
  /** Of what was done, more than of how it stands: just now. */
  | 'moment-ago'
  | 'earlier'
  | 'until'
  /** As long as that lasts: all night, the whole day. */
  | 'throughout'
  /** Between how late it was and what happened then: when I got here. */
  | 'by-the-time'
  | 'week'
  | 'this-month'
  | 'last-month'
  /** As long as anything is kept of it: this season, this year. */
  | 'season';

export type TalkConcept =
  /** keep it: as a note. */
  'keep' | 'note' | 'greeting' | 'thanks' | 'chatter' | 'yes' | 'said-no' | 'in-all';

export type Concept =
  | GrammarConcept
  | QuantityConcept
  | LevelConcept
  | DeedConcept
  | SupplyConcept
  | TroubleConcept
  | MoodConcept
  | TakingBackConcept
  | DutyConcept
  | AskConcept
  | TimeConcept
  | TalkConcept;
