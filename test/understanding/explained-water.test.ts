import { describe, expect, test } from 'vitest';
import { readDangers } from '../../src/understanding/dangers/read-dangers.ts';
import { greenhouseNamed } from './understanding-talk.ts';

const greenhouse = greenhouseNamed();

function dangersIn(text: string, language: 'en' | 'de'): readonly string[] {
  const members = greenhouse.members.map((member) => ({ ...member, language }));
  const said = readDangers(text, {
    greenhouse: { ...greenhouse, members },
    member: members[1]!,
    writtenAtMs: Date.parse('2027-05-04T08:20:00+01:00'),
    repliedTo: null,
    recentSystem: null,
    openQuestions: [],
    roundDuties: null,
    existsSinceMs: 0,
  });
  return said.map(({ of }) => of);
}

describe('Water on the floor', () => {
  test.each([
    ['en', 'floor is wet but that was me mopping'],
    ['en', 'puddle by the bench, watering can tipped over'],
    ['en', 'floor is wet, the rain came in by the window'],
    ['en', 'spilled 5 l of rinse water on the floor'],
    ['de', 'Boden ist nass, hab gewischt'],
    ['de', 'Boden nass, war ich beim Wischen'],
    ['de', 'Pfütze am Boden, die Gießkanne ist umgekippt'],
  ] as const)('is no danger where it is said how it came there, in %s: %s', (language, text) => {
    expect(dangersIn(text, language)).toEqual([]);
  });

  test.each([
    ['en', 'floor is wet'],
    ['en', 'floor is wet, maybe from mopping'],
    ['en', 'floor is wet, that was not me'],
    ['en', 'water on the floor, mopped it up'],
    ['en', 'puddle under the bench, mopped'],
    ['en', 'floor is wet again, I mopped it'],
    ['en', 'bench leaking but that was me mopping'],
    ['en', 'floor is wet, I mopped, and the bench is dripping'],
    ['de', 'Boden ist nass, hab gewischt, kommt aber wieder'],
    ['de', 'Boden ist nass, wahrscheinlich vom Wischen'],
    ['de', 'Pfütze unter der Wanne, hab gewischt'],
  ] as const)('stays one where that is in doubt, in %s: %s', (language, text) => {
    expect(dangersIn(text, language)).toEqual(['leak']);
  });

  test.each([
    ['en', 'floor under the bench is wet'],
    ['en', 'the floor by the buckets is soaking wet'],
    ['en', 'theres water under the gutters'],
    ['en', 'its all wet under the bench'],
    ['de', 'der Boden unter dem bench ist nass'],
    ['de', 'nasser Boden bei den buckets'],
    ['de', 'da steht Wasser unter den buckets'],
    ['de', 'unterm bench ist alles nass'],
  ] as const)('is a leak wherever it is said to lie, in %s: %s', (language, text) => {
    expect(dangersIn(text, language)).toEqual(['leak']);
  });

  test.each([
    ['en', 'is the floor wet?'],
    ['en', 'the floor is not wet'],
    ['en', 'leaves are wet'],
    ['en', 'water in the bench under 20 degrees'],
    ['en', 'wet leaves on the floor'],
    ['de', 'Boden ist nicht nass'],
    ['de', 'ist der Boden nass?'],
    ['de', 'Wasser unter 20 Grad'],
  ] as const)('is none where nothing is said to lie there, in %s: %s', (language, text) => {
    expect(dangersIn(text, language)).toEqual([]);
  });

  test.each([
    ['smoke from the pump, that was me', 'fire'],
    ['got a shock from the pump, my fault', 'shock'],
    ['spilled acid on the floor, that was me mopping', 'spill'],
  ])('explains nothing else: %s', (text, of) => {
    expect(dangersIn(text, 'en')).toEqual([of]);
  });
});
