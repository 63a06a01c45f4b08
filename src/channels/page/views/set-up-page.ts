import { randomUUID } from 'node:crypto';
import { html } from 'hono/html';
import type { Fault } from '../../../greenhouse/file/fault.ts';
import type { Greenhouse } from '../../../greenhouse/greenhouse.ts';
import type { Language } from '../../../greenhouse/member.ts';
import type { Assets } from '../assets.ts';
import { mostNoteCharacters, type PhotoFields } from '../photo-form.ts';
import type { Phrases } from '../phrases/phrases.ts';
import { frame, type Markup } from './frame.ts';

export interface SetUpPage {
  readonly greenhouse: Greenhouse;
  readonly phrases: Phrases;
  readonly language: Language;
  readonly assets: Assets;
  readonly outcome: SetUpOutcome | null;
}

export type SetUpOutcome =
  | { readonly kind: 'replaced'; readonly notices: readonly string[] }
  /** `text`: what was sent, so that it can be put right and sent again. */
  | { readonly kind: 'faults'; readonly faults: readonly Fault[]; readonly text: string }
  | { readonly kind: 'refused'; readonly because: string }
  /** `system`: its name. */
  | { readonly kind: 'photo-kept'; readonly system: string }
  | { readonly kind: 'photo-refused'; readonly because: string; readonly filledIn: PhotoFields };

/** Where the greenhouse file goes out and comes in, and photos are attached to systems. */
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
<section aria-labelledby="photo-title">
<h2 id="photo-title">${phrases.attachPhoto}</h2>
<p>${phrases.attachPhotoExplained}</p>
${photoForm(page)}
</section>
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

function photoForm({ greenhouse, phrases, outcome }: SetUpPage): Markup {
  const filledIn = outcome?.kind === 'photo-refused' ? outcome.filledIn : { system: '', note: '' };
  return html`<form class="import" action="/set-up/photos" method="post" enctype="multipart/form-data">
<input type="hidden" name="id" value="${randomUUID()}" autocomplete="off">
<p><label for="system">${phrases.system}</label>
<select id="system" name="system" autocomplete="off">${greenhouse.systems.map(
    ({ id, name }) =>
      html`<option value="${id}" ${id === filledIn.system ? 'selected' : ''}>${name}</option>`,
  )}</select></p>
<p><label for="photo">${phrases.photo}</label>
<input id="photo" type="file" name="photo" accept="image/jpeg,image/png,image/webp" required></p>
<p><label for="note">${phrases.photoNote}</label>
<input id="note" type="text" name="note" value="${filledIn.note}" maxlength="${mostNoteCharacters}" autocomplete="off"></p>
<button>${phrases.keepPhoto}</button>
</form>`;
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

function outcomeOf(outcome: SetUpOutcome, { phrases, greenhouse }: SetUpPage): Markup {
  switch (outcome.kind) {
    case 'refused':
    case 'photo-refused':
      return html`<p class="error" role="alert">${outcome.because}</p>`;
    case 'replaced':
      return html`<div class="good" role="status"><p>${phrases.setUpReplaced(greenhouse.name)}</p>
<ul>${outcome.notices.map((notice) => html`<li>${notice}</li>`)}</ul></div>`;
    case 'photo-kept':
      return html`<p class="good" role="status">${phrases.photoKept(outcome.system)}</p>`;
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
