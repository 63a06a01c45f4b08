import type { Context } from 'hono';
import type { ContentfulStatusCode } from 'hono/utils/http-status';
import type { Greenhouse } from '../../../greenhouse/greenhouse.ts';
import type { Language } from '../../../greenhouse/member.ts';
import type { Assets } from '../assets.ts';
import type { PageOptions } from '../page-options.ts';
import type { Phrases } from '../phrases/phrases.ts';
import { phrasesOf } from '../phrases/phrases-of.ts';
import type { Road } from '../road.ts';
import { speakerOf } from '../speaker.ts';
import { errorPage } from '../views/error-page.ts';
import type { Watchers } from '../watchers.ts';

/** What every route works with. */
export interface Rooms {
  readonly options: PageOptions;
  readonly assets: Assets;
  readonly road: Road;
  readonly watchers: Watchers;
}

export async function greenhouseOf({ options }: Rooms): Promise<Greenhouse> {
  const { greenhouse } = await options.desk.standing(options.greenhouseId);
  return greenhouse;
}

/** Whether the page's script asks, which wants JSON back, or a plain form. */
export function isFromScript(c: Context): boolean {
  return c.req.header('Accept') === 'application/json';
}

/** Answers with one sentence, chosen in the visitor's language where that can be known. */
export async function answerError(
  c: Context,
  rooms: Rooms,
  status: ContentfulStatusCode,
  sentence: (phrases: Phrases) => string,
): Promise<Response> {
  const language = await languageOf(c, rooms);
  const phrases = phrasesOf[language];
  const said = sentence(phrases);
  if (isFromScript(c)) return c.json({ error: said }, status);
  return c.html(errorPage(said, phrases, language, rooms.assets), status);
}

async function languageOf(c: Context, rooms: Rooms): Promise<Language> {
  try {
    return speakerOf(c, await greenhouseOf(rooms)).language;
  } catch {
    // The database may be what failed; the sentence is still owed.
    return 'en';
  }
}
