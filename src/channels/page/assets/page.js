// The live part of the page. Without it every form still works; with it messages are sent and shown
// in place. States of a message sent here: waiting (shown, not yet stored by the bot) → taken (its
// bubble came back from the bot, under the same id, and stands for it).

const chat = document.getElementById('chat');
const log = document.getElementById('log');
const messages = document.getElementById('messages');
const duties = document.getElementById('duties');
const toDuties = document.getElementById('to-duties');
const newBelow = document.getElementById('new-below');
const errorLine = document.getElementById('error');
const connection = document.getElementById('connection');
const whatToType = document.getElementById('what-to-type');
const composer = document.getElementById('composer');
const field = document.getElementById('say');
const speaker = document.getElementById('speaker');

const as = chat.dataset.as;
const waitingKey = `waiting-${as}`;
const retryMs = 5000;
const nearEndPx = 80;
/** A sending that takes no longer was not held up. */
const promptMs = 3000;

let cursor = chat.dataset.cursor;

// ---- showing what is new

/** The log counts its scrolling from its end, upwards in negative numbers. */
function isAtEnd() {
  return log.scrollTop > -nearEndPx;
}

function scrollToEnd() {
  log.scrollTop = 0;
  newBelow.hidden = true;
}

function elementOf(html) {
  const template = document.createElement('template');
  template.innerHTML = html;
  return template.content.firstElementChild;
}

/** Whether it put something at the end that is meant to be seen. */
function showItem({ key, html, isQuiet }) {
  const shown = document.getElementById(key);
  const item = elementOf(html);
  if (!shown) {
    messages.append(item);
    return !isQuiet;
  }
  if (shown.outerHTML !== item.outerHTML) {
    const focused = [...shown.querySelectorAll('button')].indexOf(document.activeElement);
    shown.replaceWith(item);
    const buttons = item.querySelectorAll('button');
    const next = buttons[Math.min(focused, buttons.length - 1)] ?? item;
    if (focused >= 0) next.focus({ preventScroll: true });
  }
  return false;
}

/** A redrawn panel keeps open what was open, and the focus where it was. */
function showDuties(html) {
  if (duties.dataset.shown === html) return;
  duties.dataset.shown = html;
  const open = [...duties.querySelectorAll('li')]
    .filter((item) => item.querySelector('details[open]'))
    .map((item) => item.querySelector('.what').textContent);
  const focusable = 'a, summary';
  const focused = [...duties.querySelectorAll(focusable)].indexOf(document.activeElement);
  duties.innerHTML = html;
  for (const item of duties.querySelectorAll('li')) {
    const details = item.querySelector('details');
    if (details && open.includes(item.querySelector('.what').textContent)) details.open = true;
  }
  if (focused >= 0) duties.querySelectorAll(focusable)[focused]?.focus({ preventScroll: true });
}

function showNews(news) {
  const wasAtEnd = isAtEnd();
  const topBefore = messages.getBoundingClientRect().top;
  const isSomethingNew = news.items.map(showItem).some(Boolean);
  showDuties(news.duties);
  toDuties.textContent = news.dutiesToday;
  cursor = news.cursor;
  dropTaken();
  if (wasAtEnd) return scrollToEnd();
  // What is being read stays where it is.
  log.scrollTop += messages.getBoundingClientRect().top - topBefore;
  if (isSomethingNew) newBelow.hidden = false;
}

newBelow.addEventListener('click', scrollToEnd);
log.addEventListener('scroll', () => {
  if (isAtEnd()) newBelow.hidden = true;
});

// ---- the stream: it is opened again with the cursor, so nothing is missed in between

function listen() {
  const query = new URLSearchParams({ as, after: cursor });
  const stream = new EventSource(`/events?${query}`);
  stream.addEventListener('open', () => {
    connection.textContent = '';
    sendWaiting();
  });
  stream.addEventListener('news', (event) => showNews(JSON.parse(event.data)));
  stream.addEventListener('error', () => {
    connection.textContent = chat.dataset.isReconnecting;
    if (stream.readyState === EventSource.CLOSED) setTimeout(listen, retryMs);
  });
}

// ---- sending: what could not be sent is kept on the device and goes out later, under the same id

let isSending = false;

/**
 * Read anew each time: another tab may have added to them.
 * @returns {{ id: string, text: string, writtenAt: number }[]}
 */
function waitingMessages() {
  return JSON.parse(localStorage.getItem(waitingKey) ?? '[]');
}

function keepWaiting(waiting) {
  localStorage.setItem(waitingKey, JSON.stringify(waiting));
}

/** The bot's bubble of a message carries the id it was sent under; then the one shown here goes. */
function dropTaken() {
  for (const item of messages.querySelectorAll('.is-mine[data-sent-as]')) {
    for (const mine of messages.querySelectorAll('[data-waiting]')) {
      if (item.dataset.sentAs.includes(mine.dataset.waiting)) mine.remove();
    }
  }
}

function showWaiting({ id, text }) {
  const item = elementOf(
    '<li class="message is-mine"><div class="bubble"><p class="text"></p><p class="waiting"></p></div></li>',
  );
  item.dataset.waiting = id;
  item.querySelector('.text').textContent = text;
  item.querySelector('.waiting').textContent = chat.dataset.sending;
  messages.append(item);
  scrollToEnd();
}

function sayOfWaiting(id, words) {
  const line = messages.querySelector(`[data-waiting="${id}"] .waiting`);
  if (line) line.textContent = words;
}

async function post(path, fields) {
  const answer = await fetch(path, {
    method: 'POST',
    headers: { Accept: 'application/json' },
    body: new URLSearchParams({ ...fields, as, after: cursor }),
  });
  return { status: answer.status, body: await answer.json() };
}

function showError(words) {
  errorLine.textContent = words;
  errorLine.hidden = words === '';
}

async function sendWaiting() {
  if (isSending) return;
  isSending = true;
  try {
    for (let [next] = waitingMessages(); next; [next] = waitingMessages()) await sendOne(next);
  } catch {
    for (const { id } of waitingMessages()) sayOfWaiting(id, chat.dataset.notSentYet);
    setTimeout(sendWaiting, retryMs);
  } finally {
    isSending = false;
  }
}

/** Throws where it must be tried again. */
async function sendOne({ id, text, writtenAt }) {
  const passedMs = Date.now() - writtenAt;
  const heldMs = passedMs > promptMs ? passedMs : 0;
  const { status, body } = await post('/messages', { id, text, heldMs });
  if (status >= 500) throw new Error(body.error);
  keepWaiting(waitingMessages().filter((message) => message.id !== id));
  if (status === 200) return showNews(body);
  // It will not be taken as it stands: back into the field, or left to be read where that is in use.
  showError(body.error);
  sayOfWaiting(id, body.error);
  if (field.value !== '') return;
  field.value = text;
  messages.querySelector(`[data-waiting="${id}"]`)?.remove();
}

/** `crypto.randomUUID` is missing where the page comes over plain http from another machine. */
function newId() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

composer.addEventListener('submit', (event) => {
  event.preventDefault();
  const text = field.value.trim();
  field.focus();
  if (text === '') return;
  showError('');
  const message = { id: newId(), text, writtenAt: Date.now() };
  keepWaiting([...waitingMessages(), message]);
  field.value = '';
  whatToType.open = false;
  showWaiting(message);
  sendWaiting();
});

field.addEventListener('keydown', (event) => {
  if (event.key !== 'Enter' || event.shiftKey || event.isComposing) return;
  event.preventDefault();
  composer.requestSubmit();
});

/** Whether it answers what was pressed with a bubble of its own. */
function isToBeSeen({ key, isQuiet }) {
  return !isQuiet && !document.getElementById(key);
}

messages.addEventListener('submit', async (event) => {
  const form = event.target.closest('[data-press]');
  if (!form) return;
  event.preventDefault();
  if (form.ariaBusy === 'true') return;
  form.ariaBusy = 'true';
  whatToType.open = false;
  showError('');
  try {
    const { status, body } = await post('/presses', { token: event.submitter.value });
    if (status === 200) {
      if (body.items.some(isToBeSeen)) scrollToEnd();
      showNews(body);
    } else {
      showError(body.error);
    }
  } catch {
    showError(chat.dataset.isReconnecting);
  } finally {
    form.ariaBusy = 'false';
  }
});

// ---- small comforts

/** Puts an example or a duty's message into the field, to be changed before it is sent. */
document.addEventListener('click', (event) => {
  const chip = event.target.closest('[data-say]');
  if (!chip) return;
  event.preventDefault();
  field.value = chip.dataset.say;
  field.focus();
  field.setSelectionRange(field.value.length, field.value.length);
  composer.scrollIntoView({ block: 'nearest' });
});

// With the keyboard each step through the list is a change: then a button says when it is meant.
let isByKeyboard = false;
speaker.addEventListener('keydown', () => {
  isByKeyboard = true;
});
speaker.addEventListener('pointerdown', () => {
  isByKeyboard = false;
});
speaker.addEventListener('change', () => {
  if (isByKeyboard) document.getElementById('switch').hidden = false;
  else speaker.requestSubmit();
});

waitingMessages().forEach(showWaiting);
addEventListener('online', sendWaiting);
listen();
if (matchMedia('(pointer: fine)').matches) field.focus();
