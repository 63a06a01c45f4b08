import { test as base } from '../../telegram-emulator/emulated.ts';
import { SmallHouse } from './small-house.ts';

/** A test with a house of its own, not started yet. */
export const test = base.extend<{ readonly house: SmallHouse }>({
  house: async ({ emulator }, use) => {
    const house = await SmallHouse.open({ emulator });
    await use(house);
    await house.close();
  },
});
