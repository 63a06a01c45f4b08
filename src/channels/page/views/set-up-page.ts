import { html } from 'hono/html';
import type { Fault } from '../../../greenhouse/file/fault.ts';
import type { Greenhouse } from '../../../greenhouse/greenhouse.ts';
import type { Language } from '../../../greenhouse/member.ts';
import type { Assets } from '../assets.ts';
import type { Phrases } from '../phrases/phrases.ts';
import { frame, type Markup } from './frame.ts';

export interface SetUpPage {
  readonly greenhouse: Greenhouse;
  readonly phrases: Phrases;
  readonly language: Language;
  readonly assets: Assets;
  readonly outcome: ImportOutcome | null;
}

export type ImportOutcome =
  | { readonly kind: 'replaced'; readonly notices: readonly string[] }
  /** `text`: what was sent, so that it can be put right and sent again. */
  | { readonly kind: 'faults'; readonly faults: readonly Fault[]; readonly text: string }
  | { readonly kind: 'refused'; readonly because: string };

/** Where the greenhouse file goes out and comes in. */
export function setUpPage(page: SetUpPage): Markup {
  const { greenhouse, phrases, language, assets, outcome } = page;
  return frame({
    title: `${phrases.setUp} · ${greenhouse.name}`,
    language,
    assets,
    body: html`<main class="sheet">
<p><a href="/">${phrases.backToChat}</a></p>
<h1>${phrases.setUp}: ${greenhouse.name}</h1>
<p>${phrases.setUpExplained}</p>
${outcome ? outcomeOf(outcome, page) : ''}
<section aria-labelledby="export-title">
<h2 id="export-title">${phrases.export}</h2>
<p>${phrases.exportExplained}</p>
<p><a class="chip" href="/greenhouse.json" download>greenhouse.json</a></p>
</section>
<section aria-labelledby="import-title">
<h2 id="import-title">${phrases.import}</h2>
<p>${phrases.importExplained}</p>
${importForm(page)}
</section>
</main>`,
  });
}

function importForm({ phrases, outcome }: SetUpPage): Markup {
  const text = outcome?.kind === 'faults' ? outcome.text : '';
  return html`<form class="import" action="/set-up" method="post" enctype="multipart/form-data">
<p><label for="file">${phrases.greenhouseFile}</label>
<input id="file" type="file" name="file" accept=".json,application/json"></p>
<p><label for="text">${phrases.orPaste}</label>
<textarea id="text" name="text" rows="10" spellcheck="false" autocomplete="off">
${text}</textarea></p>
<button>${phrases.replaceSetUp}</button>
</form>`;
}

function outcomeOf(outcome: ImportOutcome, { phrases, greenhouse }: SetUpPage): Markup {
  switch (outcome.kind) {
    case 'refused':
      return html`<p class="error" role="alert">${outcome.because}</p>`;
    case 'replaced':
      return html`<div class="good" role="status"><p>${phrases.setUpReplaced(greenhouse.name)}</p>
<ul>${outcome.notices.map((notice) => html`<li>${notice}</li>`)}</ul></div>`;
    case 'faults':
      return html`<div class="error" role="alert"><p>${phrases.notReplaced(outcome.faults.length)}</p></div>
<dl class="faults">${outcome.faults.map((fault) => faultOf(fault, phrases))}</dl>`;
  }
}

function faultOf({ path, found, expected }: Fault, phrases: Phrases): Markup {
  return html`<div>
<dt><span class="hidden">${phrases.faultPath}:</span> <code>${path}</code></dt>
<dd>${phrases.faultFound}: <code>${found}</code></dd>
<dd>${phrases.faultExpected}: ${expected}</dd>
</div>`;
}
