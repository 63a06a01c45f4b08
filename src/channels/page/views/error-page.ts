import { html } from 'hono/html';
import type { Language } from '../../../greenhouse/member.ts';
import type { Assets } from '../assets.ts';
import type { Phrases } from '../phrases/phrases.ts';
import { frame, type Markup } from './frame.ts';

/** One sentence that says what happened, and the way back. */
export function errorPage(
  sentence: string,
  phrases: Phrases,
  language: Language,
  assets: Assets,
): Markup {
  return frame({
    title: phrases.errorTitle,
    language,
    assets,
    body: html`<main class="sheet">
<h1>${phrases.errorTitle}</h1>
<p>${sentence}</p>
<p><a class="chip" href="/">${phrases.backToChat}</a></p>
</main>`,
  });
}
