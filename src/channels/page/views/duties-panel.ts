import { html } from 'hono/html';
import type { Round } from '../../../assistant/replies/reply.ts';
import { type LocalDate, localDateOf } from '../../../greenhouse/local-time.ts';
import { spokenDate } from '../phrases/example-values.ts';
import type { Talk } from '../talk.ts';
import type { Markup } from './frame.ts';

type Line = Round['duties'][number];

/** How many of the coming duties are shown. */
const mostLater = 6;

/** Today's duties with their reasons, and what comes up next. */
export function dutiesPanel(talk: Talk): Markup {
  const { phrases, board } = talk;
  const today =
    board.today.length === 0
      ? html`<p class="nothing-due">${phrases.nothingDue}</p>`
      : html`<ul class="duties">${board.today.map((line) => dueToday(line, talk))}</ul>`;
  const later = board.later.slice(0, mostLater);
  return html`<h2 id="duties-title">${phrases.todaysDuties}</h2>
${today}
${
  later.length === 0
    ? ''
    : html`<h3>${phrases.comingUp}</h3>
<ul class="later">${later.map((line) => comingUp(line, talk))}</ul>`
}`;
}

function dueToday(line: Line, talk: Talk): Markup {
  const { phrases, wording, greenhouse } = talk;
  const reader = { greenhouse, nowMs: talk.nowMs };
  const say = phrases.doneMessage(line.duty, greenhouse);
  const when = urgency(line, talk);
  return html`<li>
<p class="what">${wording.duty(line, reader)}</p>
${when ? html`<p class="when">${when}</p>` : ''}
<div class="duty-actions">
<details><summary>${phrases.why}</summary><p>${wording.why(line, reader)}</p></details>
<a class="chip" href="/?say=${encodeURIComponent(say)}#say" data-say="${say}">${phrases.iDidIt}</a>
</div>
</li>`;
}

function comingUp(line: Line, talk: Talk): Markup {
  const { wording, greenhouse, nowMs, member } = talk;
  const { dueOn } = line.duty;
  return html`<li><time datetime="${dueOn}">${spokenDate(dueOn, member.language)}</time>
<span>${wording.duty(line, { greenhouse, nowMs })}</span></li>`;
}

/** How pressing a duty is, beyond that it is today's. */
function urgency({ duty }: Line, { phrases, greenhouse, nowMs, member }: Talk): string {
  const today = localDateOf(nowMs, greenhouse.timeZone);
  const said = (date: LocalDate): string => spokenDate(date, member.language);
  if (duty.alongside) return phrases.whileThere;
  if (duty.latestOn !== undefined && duty.latestOn <= today) return phrases.todayAtTheLatest;
  if (duty.dueOn < today) return phrases.dueSince(said(duty.dueOn));
  return duty.latestOn === undefined ? '' : phrases.atTheLatest(said(duty.latestOn));
}
