interface Node<T> {
  readonly next: Map<string, Node<T>>;
  value: T | undefined;
}

/** A class, so that V8 does not take it for one of the many objects whose `value` is a number. */
export class Match<T> {
  readonly value: T;
  /** In words. */
  readonly length: number;

  constructor(value: T, length: number) {
    this.value = value;
    this.length = length;
  }
}

/** Phrases by their words; finds the longest one that starts at a place. */
export class PhraseTrie<T> {
  private readonly root: Node<T> = { next: new Map(), value: undefined };
  /** Of every word that ends a phrase of two, the words that it may stand after. */
  private readonly starts = new Map<string, Set<string>>();

  get(words: readonly string[]): T | undefined {
    let node: Node<T> | undefined = this.root;
    for (const word of words) node = node?.next.get(word);
    return node?.value;
  }

  set(words: readonly string[], value: T): void {
    let node = this.root;
    for (const word of words) {
      let next = node.next.get(word);
      if (!next) node.next.set(word, (next = { next: new Map(), value: undefined }));
      node = next;
    }
    node.value = value;
    const [first, second] = words;
    if (words.length !== 2 || first === undefined || second === undefined) return;
    const before = this.starts.get(second);
    if (before) before.add(first);
    else this.starts.set(second, new Set([first]));
  }

  /** The words that make a phrase of two with the one after them. */
  startsBefore(word: string): readonly string[] {
    return [...(this.starts.get(word) ?? [])];
  }

  /** `wordAt` gives the word at an offset from where the phrase starts, or null at the end. */
  longest(wordAt: (offset: number) => string | null): Match<T> | null {
    let node = this.root;
    let found: Match<T> | null = null;
    for (let length = 1; ; length++) {
      const word = wordAt(length - 1);
      const next = word === null ? undefined : node.next.get(word);
      if (!next) return found;
      if (next.value !== undefined) found = new Match(next.value, length);
      node = next;
    }
  }
}
