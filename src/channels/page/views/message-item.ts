import { html } from 'hono/html';
import { isoAt, localDateOf, localTimeOf } from '../../../greenhouse/local-time.ts';
import type { BotItem, ButtonRow, ChatItem, SaidItem } from '../chat-item.ts';
import type { Talk } from '../talk.ts';
import type { Markup } from './frame.ts';

/** One bubble; its day stands above it where it differs from that of the bubble before. */
export function messageItem(item: ChatItem, before: ChatItem | undefined, talk: Talk): Markup {
  const day = dayAbove(item, before, talk);
  return html`<li id="${item.key}" class="message ${sideOf(item)}" tabindex="-1"
    data-sent-as="${item.kind === 'said' ? item.platformId : ''}">
${day ? html`<p class="day"><span>${day}</span></p>` : ''}
<div class="bubble">${item.kind === 'said' ? said(item, talk) : fromBot(item, talk)}</div>
</li>`;
}

function sideOf(item: ChatItem): string {
  if (item.kind === 'said') return 'is-mine';
  const struck = item.isStruck ? ' is-struck' : '';
  return `is-${item.replyKind}${struck}${item.isInPassing ? ' is-in-passing' : ''}`;
}

function said(item: SaidItem, talk: Talk): Markup {
  return html`<p class="head"><span class="hidden">${talk.phrases.you}</span>${clock(item, talk)}</p>
${item.text === '' ? '' : html`<p class="text">${item.text}</p>`}
${shown(item)}`;
}

function fromBot(item: BotItem, talk: Talk): Markup {
  const { phrases } = talk;
  const label = item.isStruck ? phrases.struckOut : phrases.kindLabel[item.replyKind];
  return html`<p class="head"><span class="hidden">${phrases.bot}:</span><span class="label">${label}</span>${clock(item, talk)}</p>
<p class="text">${item.text}</p>
${shown(item)}
${item.isInPassing ? '' : buttons(item, talk)}`;
}

function shown({ picture }: ChatItem): Markup | '' {
  if (!picture) return '';
  return html`<img class="picture" src="${picture.path}" alt="${picture.alt}" loading="lazy">`;
}

function buttons({ rows, isStruck }: BotItem, talk: Talk): Markup | '' {
  const shown = isStruck ? [] : rows.filter((row) => row.kind === 'open' || row.pressed !== null);
  if (shown.length === 0) return '';
  return html`<form class="buttons" action="/presses" method="post" data-press>
<input type="hidden" name="as" value="${talk.member.handle}">
${shown.map(buttonRow)}
</form>`;
}

function buttonRow(row: ButtonRow): Markup {
  // Once answered, a row keeps only the answer that was given.
  if (row.kind === 'closed') return html`<p class="pressed">✓ ${row.pressed}</p>`;
  const all = row.buttons.map(
    ({ token, label }) => html`<button name="token" value="${token}">${label}</button>`,
  );
  return all.length === 1 ? html`${all}` : html`<div class="row">${all}</div>`;
}

function clock(item: ChatItem, { greenhouse }: Talk): Markup {
  const { timeZone } = greenhouse;
  const time = localTimeOf(item.atMs, timeZone).toFormat('HH:mm');
  return html`<time datetime="${isoAt(item.atMs, timeZone)}">${time}</time>`;
}

function dayAbove(item: ChatItem, before: ChatItem | undefined, talk: Talk): string | null {
  const { timeZone } = talk.greenhouse;
  const day = localDateOf(item.atMs, timeZone);
  if (before && localDateOf(before.atMs, timeZone) === day) return null;
  return localTimeOf(item.atMs, timeZone)
    .setLocale(talk.member.language === 'en' ? 'en-GB' : 'de')
    .toLocaleString({ weekday: 'long', day: 'numeric', month: 'long' });
}
