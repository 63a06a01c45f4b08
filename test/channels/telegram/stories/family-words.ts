import quarryLane from '../../../../greenhouses/quarry-lane.json' with { type: 'json' };

/** What a family says in a week, and what it hears, in one language. */
export interface FamilyWords {
  readonly language: 'en' | 'de';
  /** The set-up, with everybody's language and the names that they have for their systems. */
  readonly greenhouse: object;
  readonly invite: string;
  readonly reading: string;
  readonly readingEdited: string;
  readonly correction: RegExp;
  readonly topUp: string;
  readonly toppedUp: RegExp;
  readonly doubtful: string;
  readonly doubt: RegExp;
  readonly howLong: string;
  readonly lasts: RegExp;
  readonly whyNot: string;
  readonly show: string;
  readonly shown: RegExp;
  readonly undo: string;
  readonly undone: RegExp;
  readonly who: string;
  readonly remove: string;
  readonly removed: RegExp;
  readonly takenOut: RegExp;
}

const german = ['Nordtisch', 'Eimerreihe', 'Rinnenstrecke', 'Gläserregal'];
const germanAliases = [['Tisch'], ['Eimer'], ['Rinnen'], ['Gläser']];
const renamed = new Map(quarryLane.systems.map(({ name }, place) => [name, german[place]!]));

export const familyWords: readonly FamilyWords[] = [
  {
    language: 'en',
    greenhouse: quarryLane,
    invite: 'invite a helper',
    reading: 'gutters ph 5.9 ec 1.3',
    readingEdited: 'gutters ph 5.8 ec 1.3',
    correction: /Struck out.*5\.9.*Logged instead.*5\.8/su,
    topUp: 'jsut topped up teh jars 2 l',
    toppedUp: /Jar shelf: topped up 2 L/u,
    doubtful: 'gutters ec 13',
    doubt: /EC 13 for Gutter run/u,
    howLong: 'how long will the gutters last',
    lasts: /Gutter run: about \d+ L left/u,
    whyNot: 'the lid is stuck',
    show: 'show me the jars',
    shown: /Jar shelf: about/u,
    undo: 'undo',
    undone: /Struck out/u,
    who: 'who topped up the jars',
    remove: 'remove Uwe',
    removed: /Uwe is out/u,
    takenOut: /Ines has taken you out of Quarry Lane/u,
  },
  {
    language: 'de',
    greenhouse: {
      ...quarryLane,
      members: quarryLane.members.map((member) => ({ ...member, language: 'de' })),
      systems: quarryLane.systems.map((system, place) => ({
        ...system,
        name: german[place],
        aliases: germanAliases[place],
      })),
      chores: quarryLane.chores.map((chore) => ({ ...chore, system: renamed.get(chore.system) })),
    },
    invite: 'lade jemanden ein',
    reading: 'Rinnen pH 5,9 EC 1,3',
    readingEdited: 'Rinnen pH 5,8 EC 1,3',
    correction: /Gestrichen.*5,9.*5,8/su,
    topUp: 'Gläser 2 l nachgefült',
    toppedUp: /Gläserregal: 2 l nachgefüllt/u,
    doubtful: 'Rinnen EC 13',
    doubt: /EC 13/u,
    howLong: 'wie lange reichen die Rinnen noch',
    lasts: /Rinnenstrecke: .*\d+ l/u,
    whyNot: 'der Deckel klemmt',
    show: 'zeig mir die Gläser',
    shown: /Gläserregal/u,
    undo: 'rückgängig',
    undone: /Gestrichen/u,
    who: 'wer hat zuletzt die Gläser nachgefüllt',
    remove: 'entferne Uwe',
    removed: /Uwe ist nicht mehr dabei/u,
    takenOut: /Ines hat dich aus Quarry Lane herausgenommen/u,
  },
];
