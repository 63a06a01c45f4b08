import { DateTime } from 'luxon';
import { expect, test } from 'vitest';
import { inShort } from '../in-short.ts';
import { greenhouseNamed, UnderstandingTalk } from '../understanding-talk.ts';

const writtenAt = '2027-05-04T08:20:00+01:00';

/** One test a line: what is said (lines of one talk parted by `||`), and what the last of them comes to. */
export function understood(
  cases: Readonly<Record<string, string>>,
  greenhouseName = 'quarry-lane',
  from = 'tomas',
): void {
  const greenhouse = greenhouseNamed(greenhouseName);
  test.each(Object.entries(cases))('%s', (said, expected) => {
    const talk = new UnderstandingTalk(greenhouse);
    let found = '';
    said.split(' || ').forEach((text, minute) => {
      const at = DateTime.fromISO(writtenAt, { setZone: true }).plus({ minutes: minute });
      const { statements } = talk.hear({ at: at.toISO() ?? '', from, text });
      found = inShort(statements, greenhouse, at.toMillis());
    });
    expect(found).toBe(expected);
  });
}
