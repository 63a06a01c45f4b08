import { randomUUID } from 'node:crypto';
import { html } from 'hono/html';
import type { Assets } from '../assets.ts';
import { cursorText } from '../cursor.ts';
import { mostCharacters } from '../message-form.ts';
import { speakers } from '../speaker.ts';
import type { Talk } from '../talk.ts';
import { dutiesPanel } from './duties-panel.ts';
import { frame, type Markup } from './frame.ts';
import { messageItem } from './message-item.ts';

export interface ChatPage {
  readonly talk: Talk;
  readonly assets: Assets;
  /** What stands in the message field already. */
  readonly say: string;
  /** Why the last message was not taken. */
  readonly error: string | null;
  /** The address that shows more of the past; null: all is shown. */
  readonly earlierHref: string | null;
}

/** The chat and the duties beside it. */
export function chatPage(page: ChatPage): Markup {
  const { talk, assets } = page;
  const { greenhouse, member, phrases } = talk;
  return frame({
    title: greenhouse.name,
    language: member.language,
    assets,
    isLive: true,
    body: html`${header(talk)}
<div class="columns">
<main id="chat" class="chat" data-as="${member.handle}" data-cursor="${cursorText(talk.cursor)}"
  data-is-live="${phrases.isLive}" data-is-reconnecting="${phrases.isReconnecting}"
  data-sending="${phrases.sending}" data-not-sent-yet="${phrases.notSentYet}">
<h2 class="hidden">${phrases.chat}</h2>
${log(page)}
<button type="button" id="new-below" class="new-below" hidden>${phrases.newBelow}</button>
<p id="error" class="error" role="alert" ${page.error === null ? 'hidden' : ''}>${page.error ?? ''}</p>
${whatToType(talk)}
${composer(page)}
</main>
<aside id="duties" class="duties-panel" aria-labelledby="duties-title">${dutiesPanel(talk)}</aside>
</div>`,
  });
}

function header({ greenhouse, member, phrases, board }: Talk): Markup {
  const offered = speakers(greenhouse);
  return html`<header class="top">
<h1>${greenhouse.name}</h1>
<a class="to-duties" id="to-duties" href="#duties">${phrases.dutiesToday(board.today.length)}</a>
<form class="speaker" action="/speaker" method="post" id="speaker">
<label for="as">${phrases.speakingAs}</label>
<select id="as" name="as" autocomplete="off">${offered.map(
    ({ handle, name }) =>
      html`<option value="${handle}" ${handle === member.handle ? 'selected' : ''}>${name}</option>`,
  )}</select>
<button id="switch" hidden>${phrases.switchSpeaker}</button>
<noscript><button>${phrases.switchSpeaker}</button></noscript>
</form>
<a class="to-set-up" href="/set-up">${phrases.setUp}</a>
<p id="connection" class="connection" role="status"></p>
</header>`;
}

function log({ talk, earlierHref }: ChatPage): Markup {
  const { items, phrases, greenhouse } = talk;
  return html`<div id="log" class="log" role="log" aria-label="${phrases.chat}" tabindex="0">
<div>
${earlierHref === null ? '' : html`<p class="earlier"><a href="${earlierHref}">${phrases.earlierMessages}</a></p>`}
${items.length === 0 ? html`<p class="welcome">${phrases.welcome(greenhouse.name)}</p>` : ''}
<ol id="messages">${items.map((item, i) => messageItem(item, items[i - 1], talk))}</ol>
<p id="latest"></p>
</div>
</div>`;
}

/** A first visitor finds it open. */
function whatToType({ items, phrases, greenhouse }: Talk): Markup {
  return html`<details id="what-to-type" class="what-to-type" ${items.length === 0 ? 'open' : ''}>
<summary>${phrases.whatToType}</summary>
<p>${phrases.tryOne}</p>
<ul>${phrases
    .examples(greenhouse)
    .map(
      (say) =>
        html`<li><a class="chip" href="/?say=${encodeURIComponent(say)}#say" data-say="${say}">${say}</a></li>`,
    )}</ul>
</details>`;
}

function composer({ talk, say }: ChatPage): Markup {
  const { phrases, member } = talk;
  return html`<form id="composer" class="composer" action="/messages" method="post">
<input type="hidden" name="as" value="${member.handle}">
<input type="hidden" name="id" value="${randomUUID()}" autocomplete="off">
<label class="hidden" for="say">${phrases.yourMessage}</label>
<textarea id="say" name="text" rows="1" maxlength="${mostCharacters}" required autocomplete="off"
  enterkeyhint="send" placeholder="${phrases.yourMessage}" ${say ? 'autofocus' : ''}>
${say}</textarea>
<button>${phrases.send}</button>
</form>
<noscript><p class="no-script"><a href="/#latest">${phrases.lookForNews}</a></p></noscript>`;
}
