import quarryLane from '../../../greenhouses/quarry-lane.json' with { type: 'json' };
import type { GreenhouseId, Store } from '../../../src/assistant/ports/store.ts';
import { writesOf } from '../../../src/assistant/writes.ts';
import { readGreenhouseFile } from '../../../src/greenhouse/file/read-greenhouse-file.ts';
import type { Greenhouse } from '../../../src/greenhouse/greenhouse.ts';
import type { Member, Role } from '../../../src/greenhouse/member.ts';
import type { Group } from '../../telegram-emulator/members/group.ts';
import type { Member as Person } from '../../telegram-emulator/members/member.ts';

/** The demo greenhouse, with other members where wanted. */
export function demoGreenhouse(members?: readonly Member[], name?: string): Greenhouse {
  const read = readGreenhouseFile(quarryLane);
  if (!read.ok) throw new Error('the demo greenhouse is faulty');
  const { greenhouse } = read;
  return { ...greenhouse, members: members ?? greenhouse.members, name: name ?? greenhouse.name };
}

export interface Placed {
  readonly person: Person;
  readonly role: Role;
}

/** A greenhouse whose members have their accounts already, and its groups tied. */
export async function settledHousehold(
  store: Store,
  placed: readonly Placed[],
  {
    createdAtMs,
    name,
    groups = [],
  }: {
    readonly createdAtMs: number;
    readonly name?: string;
    readonly groups?: readonly Group[];
  },
): Promise<GreenhouseId> {
  const members = placed.map(({ person, role }) => ({
    handle: handleOf(person),
    name: person.name,
    role,
    language: 'en' as const,
  }));
  const id = await store.createGreenhouse(demoGreenhouse(members, name), createdAtMs);
  const household = [
    ...placed.flatMap(({ person }) => {
      const account = { channel: 'telegram', accountId: String(person.id) };
      return [
        { kind: 'account-bound', ...account, handle: handleOf(person) } as const,
        { kind: 'account-turned', ...account } as const,
      ];
    }),
    ...groups.map(
      (group, position) =>
        ({
          kind: 'room-tied',
          channel: 'telegram',
          roomId: String(group.id),
          name: `Family ${position}`,
        }) as const,
    ),
  ];
  await store.transact(id, null, () =>
    Promise.resolve({ writes: writesOf(createdAtMs, { household }), result: null }),
  );
  for (const { person } of placed) person.start();
  return id;
}

export function handleOf({ name }: Person): string {
  return name.toLowerCase().replaceAll(' ', '-');
}
