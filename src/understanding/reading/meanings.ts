import type { Concept } from '../vocabulary/concept.ts';

/**
 * The concepts that one word may stand for. They are few, and a short list is looked through faster than
 * a set is hashed; a message is read by some thousand such looks.
 */
export class Meanings {
  private readonly concepts: readonly Concept[];

  constructor(concepts: Iterable<Concept> = []) {
    this.concepts = [...new Set(concepts)];
  }

  get size(): number {
    return this.concepts.length;
  }

  has(wanted: Concept): boolean {
    for (const concept of this.concepts) if (concept === wanted) return true;
    return false;
  }

  hasAny(wanted: readonly Concept[]): boolean {
    for (const concept of this.concepts) for (const one of wanted) if (concept === one) return true;
    return false;
  }

  [Symbol.iterator](): Iterator<Concept> {
    return this.concepts[Symbol.iterator]();
  }
}
