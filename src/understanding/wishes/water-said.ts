import type { WaterKind } from '../../greenhouse/entry.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { EntryStatement, Statement } from '../statement.ts';
import { wishWords } from '../vocabulary/wishes/wish-languages.ts';

/**
 * Statements with the water that top-ups and changes of solution were made with, where the message
 * says so: the first that is named from the statement's own words to those of the next one.
 */
export function withWaterSaid(
  statements: readonly Statement[],
  foldedText: string,
  { rainButt }: Greenhouse,
): readonly Statement[] {
  if (!rainButt) return statements;
  const named = watersIn(foldedText);
  if (named.length === 0) return statements;
  const poured = statements.filter(isPoured).toSorted((a, b) => a.span.from - b.span.from);
  return statements.map((statement) => {
    if (!isPoured(statement)) return statement;
    const at = poured.indexOf(statement);
    const from = at === 0 ? 0 : statement.span.from;
    const until = poured[at + 1]?.span.from ?? foldedText.length;
    const found = named.find((each) => each.at >= from && each.at < until);
    return found ? { ...statement, draft: { ...statement.draft, water: found.water } } : statement;
  });
}

function isPoured(statement: Statement): statement is EntryStatement {
  if (statement.kind !== 'entry') return false;
  const { quantity } = statement.draft;
  return quantity === 'top-up' || quantity === 'reservoir-change';
}

function watersIn(text: string): readonly { readonly water: WaterKind; readonly at: number }[] {
  const found = Object.values(wishWords).flatMap(({ waters }) =>
    (['rain', 'mains'] as const).flatMap((water) =>
      waters[water].flatMap((words) => {
        const at = new RegExp(`(?<![\\p{L}])${words}(?![\\p{L}])`, 'u').exec(text)?.index;
        return at === undefined ? [] : [{ water, at }];
      }),
    ),
  );
  return found.toSorted((one, other) => one.at - other.at);
}
