import type { HouseholdWish } from '../../../src/assistant/household/wish.ts';
import type { Action } from '../../../src/assistant/outgoing.ts';
import type { UseCase } from '../../../src/assistant/permissions.ts';

/** Something that a person sends. */
export type Step = { readonly by: string } & (
  | { readonly text: string; readonly repliesToLast?: string }
  | { readonly editsLastOf: string; readonly text: string }
  /** The first button of that action under the latest message to `under` that has one. */
  | { readonly press: Action['kind']; readonly under: string }
  | { readonly wish: HouseholdWish }
);

/** How a use-case is tried by `me`, for what is of `whose`. */
export type Attempt = (me: string, whose: string) => readonly Step[];

interface Attempts {
  readonly try: Attempt;
  /** Whether there is such a thing as wanting it for somebody else. */
  readonly ofOthers?: true;
  /** It writes nothing into the logbook, the set-up or what is settled. */
  readonly onlyTells?: true;
}

const told =
  (text: string): Attempt =>
  (me) => [{ by: me, text }];

/** A change that is shown, and made on a yes. */
const changed =
  (text: string, ...before: readonly string[]): Attempt =>
  (me) => [
    ...before.flatMap((words) => [
      { by: 'ines', text: words },
      { by: 'ines', text: 'yes' },
    ]),
    { by: me, text },
    { by: me, text: 'yes' },
  ];

const wished =
  (wish: HouseholdWish): Attempt =>
  (me) => [{ by: me, wish }];

/** The same said of oneself, or of somebody by name. */
const about =
  (own: string, other: string, ...before: readonly string[]): Attempt =>
  (me, whose) => [
    ...before.map((text) => ({ by: whose, text })),
    { by: me, text: me === whose ? own : other.replace('NAME', whose) },
  ];

const pressed =
  (press: Action['kind'], ...before: readonly string[]): Attempt =>
  (me, whose) => [...before.map((text) => ({ by: whose, text })), { by: me, press, under: whose }];

/** How each use-case is tried. The compiler asks for one for each. */
export const attempts: Readonly<Record<UseCase, Attempts>> = {
  'say-entry': { try: told('bench ph 6') },
  'say-done': { try: told('tied up the tomatoes') },
  'say-ask': { try: told('how full is the bench?'), onlyTells: true },
  'say-taking-back': {
    try: (me, whose) => [
      { by: whose, text: 'bench ph 6' },
      { by: me, text: 'undo', repliesToLast: whose },
    ],
    ofOthers: true,
  },
  edit: {
    try: (me, whose) => [
      { by: whose, text: 'bench ph 6' },
      { by: me, editsLastOf: whose, text: 'bench ph 6.2' },
    ],
    ofOthers: true,
  },
  'press-tick': { try: (me) => [{ by: me, press: 'tick', under: 'ines' }] },
  'press-cannot': { try: (me) => [{ by: me, press: 'cannot', under: 'ines' }] },
  'press-strike': { try: pressed('strike', 'bench ph 6'), ofOthers: true },
  'press-choose': { try: pressed('choose', 'bought 1 l ph down'), ofOthers: true },
  'press-decline': {
    try: pressed('decline', 'bought 1 l ph down'),
    ofOthers: true,
    onlyTells: true,
  },
  'press-undo-set-up': {
    try: pressed('undo-set-up', 'bought 1 l ph down', 'yes'),
    ofOthers: true,
  },
  'press-undo-settled': {
    try: pressed('undo-settled', "i can't go on saturday"),
    ofOthers: true,
  },
  'press-guide': {
    try: pressed('guide', 'set up a new greenhouse'),
    ofOthers: true,
    onlyTells: true,
  },
  'press-how-to': {
    try: (me) => [
      { by: me, text: 'how do i do that?' },
      { by: me, press: 'how-to', under: me },
    ],
    onlyTells: true,
  },
  'settle-away': {
    try: about('away from friday to sunday', 'NAME is away from friday to sunday'),
    ofOthers: true,
  },
  'settle-back': {
    try: about("i'm back", 'NAME is back', 'away from today to sunday'),
    ofOthers: true,
  },
  'settle-cannot-go': {
    try: about("i can't go on saturday", "NAME can't go on saturday"),
    ofOthers: true,
  },
  'settle-can-go': {
    try: about(
      'i can go on saturday after all',
      'NAME can go on saturday after all',
      "i can't go on saturday",
    ),
    ofOthers: true,
  },
  'settle-covers': { try: about('i cover saturday', 'NAME covers saturday'), ofOthers: true },
  'settle-rota': { try: about('i go on mondays', 'NAME goes on mondays'), ofOthers: true },
  'settle-claim': {
    try: about("i'll do the jars tonight", 'NAME does the jars tonight'),
    ofOthers: true,
  },
  'settle-release': {
    try: (me) => [
      { by: me, text: "i'll do the jars tonight" },
      { by: me, text: 'can someone else do the jars' },
    ],
  },
  'settle-news': { try: told('only alerts') },
  'settle-who-goes': { try: told('who goes on saturday?'), onlyTells: true },
  'settle-when-back': { try: told('when is ines back?'), onlyTells: true },
  'settle-one-chore': {
    try: (me) => [
      { by: me, text: `can ${me === 'tomas' ? 'priya' : 'tomas'} do the filters on saturday` },
    ],
    onlyTells: true,
  },
  'settle-plan': { try: told("what's the plan"), onlyTells: true },
  'settle-how-to': { try: told('how do i top up the bench?'), onlyTells: true },
  'change-chore-added': { try: changed('every 10 days wash the jug') },
  'change-chore-moved': { try: changed('tie up the tomatoes every 9 days') },
  'change-chore-dropped': { try: changed('stop reminding me to tie up the tomatoes') },
  'change-system-added': {
    try: (me) => [
      { by: me, text: 'add a new system' },
      { by: me, text: 'jars' },
      { by: me, text: 'Window jars' },
      { by: me, text: '24 l' },
      { by: me, text: 'skip' },
      { by: me, text: 'skip' },
      { by: me, text: '12 lettuces' },
      { by: me, text: 'yes' },
    ],
  },
  'change-system-renamed': { try: changed('rename the jar shelf to window shelf') },
  'change-system-dropped': { try: changed('drop the gutter run') },
  'change-figure-set': { try: changed('low mark of the bench is 160 l') },
  'change-range-set': { try: changed('keep the ph of the bench between 5.9 and 6.3') },
  'change-alias-added': { try: changed('the bench is also called long table') },
  'change-alias-dropped': {
    try: changed('the bench is no longer called long table', 'the bench is also called long table'),
  },
  'change-planted': { try: changed('planted 12 lettuces in the jars') },
  'change-cleared': { try: changed('pulled the lettuces') },
  'change-language-set': {
    try: (me, whose) => [
      { by: me, text: me === whose ? 'speak german to me' : `speak german to ${whose}` },
      { by: me, text: 'yes' },
    ],
    ofOthers: true,
  },
  'change-units-set': {
    try: (me, whose) => [
      { by: me, text: me === whose ? 'show me gallons' : `use gallons for ${whose}` },
      { by: me, text: 'yes' },
    ],
    ofOthers: true,
  },
  'change-container-set': { try: changed('a bucket is 8 litres') },
  'change-container-dropped': { try: changed('forget the container jug') },
  'change-acids-shown': { try: changed('tomas can handle acids now') },
  'change-butt-set': { try: changed('our rain butt holds 200 litres') },
  'change-butt-counted': {
    try: changed('the butt is full', 'our rain butt holds 200 litres'),
  },
  'change-risk-set': { try: changed('set the risk to low') },
  'change-morning-set': { try: changed('the round at 7:30') },
  'change-stock-added': { try: changed('bought 1 l ph down') },
  'change-stock-counted': { try: changed('there are 300 ml of ph down left') },
  'change-set-up-anew': {
    try: (me) =>
      [
        ...[
          'set up a new greenhouse',
          'Plum Yard',
          'Galway',
          'skip',
          'none',
          'jars',
          'Window jars',
        ],
        ...['24 l', 'skip', 'skip', '12 lettuces', 'done', 'yes'],
      ].map((text) => ({ by: me, text })),
  },
  'wish-guide': { try: told('set up a new greenhouse'), onlyTells: true },
  'wish-chores': { try: told('what chores are there'), onlyTells: true },
  'wish-stock': { try: told('what do we need to buy'), onlyTells: true },
  'wish-stock-unsaid': { try: told('half a bottle of A left'), onlyTells: true },
  'wish-stock-opened': { try: told('opened a new bottle of A'), onlyTells: true },
  'wish-rain': { try: told('how much rain water is left?'), onlyTells: true },
  'wish-first-fruit': { try: told('first tomato on the bench') },
  'wish-what-if': { try: told('what if i go on friday instead?'), onlyTells: true },
  'wish-how-to': { try: told('how do i do that?'), onlyTells: true },
  'wish-notes': { try: told('show the notes about the bench'), onlyTells: true },
  'wish-attach-note': { try: told('note for the bench: the tap is behind the door') },
  'wish-drop-notes': {
    try: (me) => [
      { by: 'ines', text: 'note for the bench: the tap is behind the door' },
      { by: me, text: 'forget the notes about the bench' },
    ],
  },
  'wish-planted-somewhere': { try: told('planted 12 lettuces'), onlyTells: true },
  'wish-introduction': { try: told('who are you?'), onlyTells: true },
  'wish-explain': { try: told('what does EC mean?'), onlyTells: true },
  'wish-ask': { try: told('how much is a can'), onlyTells: true },
  'wish-wanted': { try: told('what pH should the bench be'), onlyTells: true },
  'wish-how-full': { try: told('how much is in the buckets'), onlyTells: true },
  'wish-how-long': { try: told('what is the weather doing to it'), onlyTells: true },
  'wish-who-is-away': { try: told('who is away'), onlyTells: true },
  'wish-logged': { try: told('what have I logged'), onlyTells: true },
  'wish-supply': { try: told('is the pump on'), onlyTells: true },
  'wish-where': { try: told('where is the pH pen'), onlyTells: true },
  'wish-mixing': { try: told('can I mix A and B?'), onlyTells: true },
  'wish-remind-once': { try: told('remind me to clean the filter on Friday'), onlyTells: true },
  'wish-my-turns': { try: told('when do I have to go?'), onlyTells: true },
  'wish-last': { try: told('last pH of the bench and the jars'), onlyTells: true },
  'wish-season': { try: told('which system did best?'), onlyTells: true },
  'household-invite': {
    try: wished({ kind: 'invite', role: 'helper', handle: null }),
    onlyTells: true,
  },
  'household-show': { try: wished({ kind: 'show' }), onlyTells: true },
  'household-remove': { try: wished({ kind: 'remove', handle: 'gale' }), onlyTells: true },
  'household-leave': { try: wished({ kind: 'leave' }), onlyTells: true },
  'household-stay': { try: wished({ kind: 'stay' }), onlyTells: true },
  'household-turn-to': {
    try: (me) => [{ by: me, wish: { kind: 'turn-to', accountId: me } }],
    onlyTells: true,
  },
  'household-tie-room': {
    try: wished({ kind: 'tie-room', roomId: '-1', title: 'Quarry', readsAll: true }),
    onlyTells: true,
  },
  'household-untie-room': { try: wished({ kind: 'untie-room' }), onlyTells: true },
  'household-no-words': { try: wished({ kind: 'no-words' }), onlyTells: true },
  'be-told-strong-doses': {
    try: (me) => [
      { by: 'ines', text: 'bench level 600 l' },
      { by: me, text: 'bench ph 7' },
    ],
  },
};
