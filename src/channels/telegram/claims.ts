import { codeHash, newClaimCode } from './arriving/codes.ts';
import { channel } from './channel-name.ts';
import type { TelegramOptions } from './telegram-options.ts';

const claimTermMs = 30 * 24 * 3_600_000;

/** A greenhouse whose grower is not here yet, and the code that lets them in. */
export interface Claim {
  readonly greenhouse: string;
  readonly code: string;
}

/** Makes a code for every greenhouse that no grower can reach from here; earlier codes are void. */
export async function openClaims(options: TelegramOptions): Promise<readonly Claim[]> {
  const { store, desk, nowMs } = options;
  const { accounts } = await store.household.directory(channel);
  const claims: Claim[] = [];
  for (const { id, name } of await store.greenhouses()) {
    const { members } = (await desk.standing(id)).greenhouse;
    const growers = members.filter(({ role }) => role === 'grower');
    const isClaimed = growers.some(({ handle }) =>
      accounts.some((account) => account.greenhouse === id && account.handle === handle),
    );
    if (isClaimed) continue;
    const code = newClaimCode();
    await store.household.keepClaim({
      greenhouse: id,
      codeHash: codeHash(code),
      role: 'grower',
      handle: growers[0]?.handle ?? null,
      madeBy: null,
      expiresAtMs: nowMs() + claimTermMs,
      usedAtMs: null,
    });
    claims.push({ greenhouse: name, code });
  }
  return claims;
}
