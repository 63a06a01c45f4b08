import { createInterface } from 'node:readline';
import { type Outgoing, pressToken } from '../../assistant/outgoing.ts';
import type { InboxNo } from '../../assistant/ports/store.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { Member } from '../../greenhouse/member.ts';
import { readIncomingBody, type TerminalIncoming } from './incoming-body.ts';
import type { Phrases } from './phrases/phrases.ts';
import { phrasesOf } from './phrases/phrases-of.ts';
import { Screen } from './screen.ts';
import { channel, type TerminalOptions } from './terminal-options.ts';
import { mostCharacters, readTypedLine, type TypedLine } from './typed-line.ts';

/** How many messages are taken from the outbox at a time. */
const batch = 50;

/** The conversation with the bot in a terminal, or over a pipe. */
export class Terminal {
  readonly #options: TerminalOptions;
  readonly #screen: Screen;
  /** Tokens of the buttons shown, by their number from 1; no number is used twice. */
  readonly #tokens: string[] = [];
  /** The handle of who types; null: the grower. */
  #speaking: string | null = null;
  /** Messages are printed in turns, so that none is torn by another. */
  #printing: Promise<void> = Promise.resolve();

  constructor(options: TerminalOptions) {
    this.#options = options;
    this.#screen = new Screen(options.output);
  }

  /** Talks until `/quit` or the end of the input; what was typed before is handled by then. */
  async run(): Promise<void> {
    const { input, output, isInteractive } = this.#options;
    await this.#recover();
    await this.#showHelp(await this.#speaker());
    let { handle } = await this.#speaker();
    // Nothing is awaited between opening the input and reading it: lines would be lost.
    const typing = createInterface({ input, output, terminal: isInteractive });
    if (isInteractive) this.#screen.showPrompt(typing, `${handle}> `);
    for await (const line of typing) {
      const typed = readTypedLine(line);
      if (typed.kind === 'quit') break;
      this.#screen.hidePrompt();
      await this.#act(typed);
      ({ handle } = await this.#speaker());
      if (isInteractive) this.#screen.showPrompt(typing, `${handle}> `);
    }
    this.#screen.hidePrompt();
    typing.close();
  }

  /** Prints what waits in the outbox for the terminal; call it whenever something may wait there. */
  deliver(): Promise<void> {
    const delivering = this.#printing.then(() => this.#printPending());
    // The caller hears of a failure; the next delivery does not.
    this.#printing = delivering.catch(() => undefined);
    return delivering;
  }

  async #act(typed: Exclude<TypedLine, { kind: 'quit' }>): Promise<void> {
    const member = await this.#speaker();
    const phrases = phrasesOf[member.language];
    const from = { from: member.handle, chat: null };
    switch (typed.kind) {
      case 'nothing':
        return;
      case 'message': {
        const writtenAtMs = this.#options.nowMs();
        const { text } = typed;
        return this.#takeIn(
          { kind: 'message', ...from, text, writtenAtMs, replyTo: null },
          phrases,
        );
      }
      case 'press': {
        const token = this.#tokens[typed.number - 1];
        if (token === undefined) {
          this.#screen.print(phrases.noSuchButton(typed.number));
          return;
        }
        return this.#takeIn({ kind: 'press', ...from, token }, phrases);
      }
      case 'speak-as':
        return this.#speakAs(typed.handle, phrases);
      case 'help':
        return this.#showHelp(member);
      case 'unknown-command':
        this.#screen.print(phrases.unknownCommand(typed.command));
        return;
      case 'too-long':
        this.#screen.print(phrases.tooLong(typed.length, mostCharacters));
        return;
    }
  }

  /** Stored first, then handled, then answered. */
  async #takeIn(incoming: TerminalIncoming, phrases: Phrases): Promise<void> {
    const { store, greenhouseId, nowMs, report } = this.#options;
    const receivedAtMs = nowMs();
    try {
      const { no, platformId } = await store.receive({
        greenhouse: greenhouseId,
        channel,
        // A terminal has no ids of its own: the inbox gives one.
        platformId: null,
        receivedAtMs,
        writtenAtMs: receivedAtMs,
        chat: incoming.from,
        body: incoming,
      });
      await this.#handle(no, platformId, incoming);
      await this.deliver();
    } catch (error) {
      report(error, 'handling what was typed');
      this.#screen.print(phrases.notHandled);
    }
  }

  /** Handles what was stored and never handled, since the process died in between. */
  async #recover(): Promise<void> {
    const { store, report, greenhouseId } = this.#options;
    const left = await store.unhandled(channel);
    for (const stored of left.filter(({ greenhouse }) => greenhouse === greenhouseId)) {
      try {
        await this.#handle(stored.no, stored.platformId, readIncomingBody(stored.body));
      } catch (error) {
        report(error, `handling the stored message ${stored.platformId}`);
      }
    }
    await this.deliver();
  }

  #handle(no: InboxNo, platformId: string, incoming: TerminalIncoming): Promise<void> {
    const { desk, greenhouseId, nowMs } = this.#options;
    return desk.handle(greenhouseId, no, { channel, platformId, incoming }, nowMs());
  }

  async #printPending(): Promise<void> {
    const { store, nowMs } = this.#options;
    for (;;) {
      const pending = await store.pending(channel, nowMs(), batch);
      for (const { greenhouse, outgoing } of pending) {
        await this.#print(outgoing);
        const atMs = nowMs();
        await store.settle(greenhouse, outgoing.no, { kind: 'sent', platformId: null, atMs });
      }
      if (pending.length < batch) return;
    }
  }

  async #print({ no, atMs, to, reply, buttons }: Outgoing): Promise<void> {
    const greenhouse = await this.#greenhouse();
    const speaker = await this.#speaker();
    const { language } = greenhouse.members.find(({ handle }) => handle === to) ?? speaker;
    const wording = this.#options.wordings[language];
    const reader = { greenhouse, nowMs: atMs };
    const labels = buttons.flat().map(({ label }, position) => {
      const number = this.#tokens.push(pressToken(no, position));
      return `#${number} ${wording.button(label, reader)}`;
    });
    const lines = [
      ...(to === speaker.handle ? [] : [phrasesOf[speaker.language].to(to)]),
      ...wording.reply(reply, reader).split('\n'),
      ...(labels.length > 0 ? [labels.join('   ')] : []),
    ];
    this.#screen.print(lines.map((line) => `  ${line}`).join('\n'));
  }

  async #showHelp({ handle, language }: Member): Promise<void> {
    const { wordings, nowMs } = this.#options;
    const greenhouse = await this.#greenhouse();
    const phrases = phrasesOf[language];
    const other = greenhouse.members.find((member) => member.handle !== handle) ?? { handle };
    const reader = { greenhouse, nowMs: nowMs() };
    this.#screen.print(phrases.opening(greenhouse.name));
    this.#screen.print(
      wordings[language].reply({ kind: 'answer', answer: { kind: 'help' } }, reader),
    );
    this.#screen.print(`${phrases.commands(other.handle)}\n`);
  }

  async #speakAs(handle: string, phrases: Phrases): Promise<void> {
    const { members } = await this.#greenhouse();
    const member = members.find((candidate) => candidate.handle.toLowerCase() === handle);
    if (!member) {
      const handles = members.map((known) => known.handle);
      this.#screen.print(phrases.nobody(handle, handles));
      return;
    }
    this.#speaking = member.handle;
    this.#screen.print(phrasesOf[member.language].speakingAs(member.name));
  }

  async #speaker(): Promise<Member> {
    const { name, members } = await this.#greenhouse();
    const speaker =
      members.find(({ handle }) => handle === this.#speaking) ??
      members.find(({ role }) => role === 'grower') ??
      members[0];
    if (!speaker) throw new Error(`${name} has no members; expected at least a grower`);
    return speaker;
  }

  async #greenhouse(): Promise<Greenhouse> {
    const { desk, greenhouseId } = this.#options;
    return (await desk.standing(greenhouseId)).greenhouse;
  }
}
