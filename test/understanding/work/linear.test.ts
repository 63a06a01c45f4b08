import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readGreenhouseFile } from '../../../src/greenhouse/file/read-greenhouse-file.ts';
import type { Context } from '../../../src/understanding/context.ts';
import { countWork } from './count-work.ts';
import { pieces } from './pieces.ts';

function contextOf(file: string, handle: string): Context {
  const text = readFileSync(new URL(file, import.meta.url), 'utf8');
  const read = readGreenhouseFile(JSON.parse(text));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const { greenhouse } = read;
  return {
    greenhouse,
    member: greenhouse.members.find((member) => member.handle === handle)!,
    writtenAtMs: Date.parse('2027-05-04T08:20:00+01:00'),
    repliedTo: null,
    recentSystem: null,
    openQuestions: [],
    roundDuties: null,
    existsSinceMs: 0,
  };
}

const languages = {
  en: contextOf('../../../greenhouses/quarry-lane.json', 'tomas'),
  de: contextOf('../corpus/greenhouses/lindenhof.json', 'jonas'),
};

/** Four times the text may take four times the looks, and a little for what is done once. */
function growth(unit: string, context: Context): number {
  const shortly = countWork(unit.repeat(60), context);
  return countWork(unit.repeat(240), context) / shortly;
}
/** Numbers without an end are paired with what stands near them: somewhat more than four times. */
const mostGrowth = 7;

describe.each(['en', 'de'] as const)('What reading a message takes, in %s,', (language) => {
  const context = languages[language];

  it('grows with its length and no faster, whatever is said over and over', () => {
    const grown = pieces[language].map((unit) => ({ unit, times: growth(unit, context) }));
    expect(grown.filter(({ times }) => times > mostGrowth)).toEqual([]);
  });
});
