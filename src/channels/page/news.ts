import { type Cursor, cursorText, isAfter } from './cursor.ts';
import type { Talk } from './talk.ts';
import { dutiesPanel } from './views/duties-panel.ts';
import { messageItem } from './views/message-item.ts';

interface NewsItem {
  readonly key: string;
  readonly html: string;
  /** It need not draw anybody's eye. */
  readonly isQuiet: boolean;
}

/** What an open page has to change to be up to date: JSON for the page's script. */
export interface News {
  readonly cursor: string;
  /** Bubbles to put in place of those with the same key, or below the others. */
  readonly items: readonly NewsItem[];
  /** The whole panel. */
  readonly duties: string;
  /** `2 duties today`. */
  readonly dutiesToday: string;
}

/**
 * All that came after the cursor; and earlier bubbles that may have changed since they were shown,
 * because they were answered, struck out or edited.
 */
export async function newsSince(cursor: Cursor, talk: Talk): Promise<News> {
  const { items, phrases, board } = talk;
  const wanted = items.map((item, position) => ({
    item,
    markup: messageItem(item, items[position - 1], talk),
  }));
  // The first bubble of a cut past carries a day that an open page has further up.
  const sent = wanted
    .slice(talk.isCut ? 1 : 0)
    .filter(({ item }) => isAfter(item.key, cursor) || (item.kind === 'bot' && item.hasChanged));
  return {
    cursor: cursorText(talk.cursor),
    items: await Promise.all(
      sent.map(async ({ item, markup }) => ({
        key: item.key,
        html: String(await markup),
        isQuiet: item.kind === 'bot' && item.isInPassing,
      })),
    ),
    duties: String(await dutiesPanel(talk)),
    dutiesToday: phrases.dutiesToday(board.today.length),
  };
}

/** The news without what an open page was shown last time; null where nothing is left. */
export function unseen(news: News, shown: News | null): News | null {
  const shownItems = new Map(shown?.items.map(({ key, html }) => [key, html]));
  const items = news.items.filter(({ key, html }) => shownItems.get(key) !== html);
  return items.length === 0 && news.duties === shown?.duties ? null : { ...news, items };
}
