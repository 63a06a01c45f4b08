import type { Greenhouse } from '../greenhouse/greenhouse.ts';

/**
 * The probes that a question about calibrating means, by name: those that its words name, or else those that measure
 * what they name. Empty: they name none.
 */
export function probesMeant(words: readonly string[], { probes }: Greenhouse): readonly string[] {
  const isSaid = (name: string): boolean =>
    name
      .toLowerCase()
      .split(' ')
      .every((word) => words.includes(word));
  const called = probes.filter(({ name }) => isSaid(name));
  const meant =
    called.length > 0
      ? called
      : probes.filter(({ measures }) => measures.some((each) => words.includes(each)));
  return meant.map(({ name }) => name);
}
