import type { Member } from '../../telegram-emulator/members/member.ts';

export interface Figures {
  readonly readings: number;
  readonly perSecond: number;
  readonly p50Ms: number;
  readonly p99Ms: number;
}

const lateMs = 60_000;

/** The text of the n-th reading: values as people report them, within what is believed. */
function reading(n: number): string {
  return `buckets ph 5.${n % 10}`;
}

/** Every member says all of theirs at once: how fast the pile is worked off. */
export async function flood(people: readonly Member[], each: number): Promise<Figures> {
  const startedMs = performance.now();
  const waits = people.map((person) => {
    const saidMs = new Map<number, number>();
    for (let n = 0; n < each; n += 1) saidMs.set(person.dm(reading(n)).id, performance.now());
    return waitForAll(person, saidMs);
  });
  const latenciesMs = (await Promise.all(waits)).flat();
  return figures(latenciesMs, performance.now() - startedMs);
}

/** Every member says the next when the last was answered: how long one waits. */
export async function inTurn(people: readonly Member[], each: number): Promise<Figures> {
  const startedMs = performance.now();
  const waits = people.map(async (person) => {
    const latenciesMs: number[] = [];
    for (let n = 0; n < each; n += 1) {
      const said = new Map([[person.dm(reading(n)).id, performance.now()]]);
      latenciesMs.push(...(await waitForAll(person, said)));
    }
    return latenciesMs;
  });
  const latenciesMs = (await Promise.all(waits)).flat();
  return figures(latenciesMs, performance.now() - startedMs);
}

async function waitForAll(person: Member, saidMs: Map<number, number>): Promise<number[]> {
  const latenciesMs: number[] = [];
  while (saidMs.size > 0) {
    const { replyTo = 0 } = await person.chat.next(
      (message) => saidMs.has(message.replyTo ?? 0),
      lateMs,
    );
    latenciesMs.push(performance.now() - saidMs.get(replyTo)!);
    saidMs.delete(replyTo);
  }
  return latenciesMs;
}

function figures(latenciesMs: readonly number[], tookMs: number): Figures {
  const sorted = latenciesMs.toSorted((one, other) => one - other);
  const at = (share: number) =>
    sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))]!;
  return {
    readings: sorted.length,
    perSecond: (sorted.length * 1000) / tookMs,
    p50Ms: at(0.5),
    p99Ms: at(0.99),
  };
}
