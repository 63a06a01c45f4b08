import type { Context } from 'hono';
import { getCookie, setCookie } from 'hono/cookie';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { Member } from '../../greenhouse/member.ts';

const cookieName = 'speaker';
const keptForS = 400 * 24 * 3600;

/** The members in the order offered: growers first. */
export function speakers(greenhouse: Greenhouse): readonly Member[] {
  const { members } = greenhouse;
  const growers = members.filter(({ role }) => role === 'grower');
  return [...growers, ...members.filter(({ role }) => role !== 'grower')];
}

/** Who speaks on this device: the one chosen last, at first the grower. */
export function speakerOf(c: Context, greenhouse: Greenhouse): Member {
  const offered = speakers(greenhouse);
  const handle = getCookie(c, cookieName);
  const speaker = offered.find((member) => member.handle === handle) ?? offered[0];
  if (!speaker) throw new Error(`${greenhouse.name} has no members; expected at least a grower`);
  return speaker;
}

export function rememberSpeaker(c: Context, handle: string): void {
  setCookie(c, cookieName, handle, {
    path: '/',
    maxAge: keptForS,
    httpOnly: true,
    sameSite: 'Strict',
  });
}
