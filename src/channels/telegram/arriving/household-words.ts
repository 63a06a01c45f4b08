/**
 * How people say what they want of the household, whole messages only. A group named `who` holds a
 * name. In every language at once: families mix them.
 */
export const householdWords: Readonly<
  Record<'invite' | 'show' | 'remove' | 'leave' | 'tie' | 'untie', readonly RegExp[]>
> = {
  invite: [
    /^(?:please )?invite(?: (?:an? )?(?:new )?(?<who>.+?))?[.!]?$/iu,
    /^(?:bitte )?lade? (?<who>.+?) ein[.!]?$/iu,
    /^(?:(?<who>.+?) )?einladen[.!]?$/iu,
  ],
  show: [
    /^who(?:'s| is) (?:in|here)\??$/iu,
    /^(?:people|household|members)\??$/iu,
    /^wer ist (?:alles )?(?:dabei|hier)\??$/iu,
    /^(?:leute|haushalt|mitglieder)\??$/iu,
  ],
  remove: [
    /^remove (?<who>.+?)[.!]?$/iu,
    /^entferne (?<who>.+?)[.!]?$/iu,
    /^(?<who>.+?) entfernen[.!]?$/iu,
  ],
  leave: [
    /^(?:leave|i am leaving|i'm leaving|let me out)[.!]?$/iu,
    /^(?:aussteigen|ich steige aus)[.!]?$/iu,
  ],
  tie: [
    /^(?:this is )?our group[.!]?$/iu,
    /^tie(?: (?:this|us))?[.!]?$/iu,
    /^(?:das ist )?unsere gruppe[.!]?$/iu,
  ],
  untie: [
    /^(?:no longer|not) our group[.!]?$/iu,
    /^untie(?: (?:this|us))?[.!]?$/iu,
    /^nicht (?:mehr )?unsere gruppe[.!]?$/iu,
  ],
};

/** Whom an invitation is for, where it is nobody by name. */
export const newcomerWords: Readonly<Record<'grower' | 'helper', RegExp>> = {
  grower: /^(?:growers?|leitung)$/iu,
  helper: /^(?:helpers?|someone|somebody|aushilfe|jemand(?:en)?|helfer(?:in)?)$/iu,
};
