import { createInterface } from 'node:readline';
import { type Outgoing, pressToken } from '../../assistant/outgoing.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { Member } from '../../greenhouse/member.ts';
import { inWordsAlone } from '../../wording/in-words-alone.ts';
import { readerOf } from '../../wording/reader-of.ts';
import type { TerminalIncoming } from './incoming-body.ts';
import type { Phrases } from './phrases/phrases.ts';
import { phrasesOf } from './phrases/phrases-of.ts';
import { Road } from './road.ts';
import { Screen } from './screen.ts';
import type { TerminalOptions } from './terminal-options.ts';
import { mostCharacters, readTypedLine, type TypedLine } from './typed-line.ts';

/** The conversation with the bot in a terminal, or over a pipe. */
export class Terminal {
  readonly #options: TerminalOptions;
  readonly #road: Road;
  readonly #screen: Screen;
  /** Tokens of the buttons shown, by their number from 1; no number is used twice. */
  readonly #tokens: string[] = [];
  /** The handle of who types; null: the grower. */
  #speaking: string | null = null;
  /** Messages are printed in turns, so that none is torn by another. */
  #printing: Promise<void> = Promise.resolve();

  constructor(options: TerminalOptions) {
    this.#options = options;
    this.#road = new Road(options);
    this.#screen = new Screen(options.output);
  }

  /** Talks until `/quit` or the end of the input; what was typed before is handled by then. */
  async run(): Promise<void> {
    const { input, output, isInteractive } = this.#options;
    await this.#road.recover();
    await this.deliver();
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
    const delivering = this.#printing.then(() =>
      this.#road.deliver((outgoing) => this.#print(outgoing)),
    );
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

  async #takeIn(incoming: TerminalIncoming, phrases: Phrases): Promise<void> {
    try {
      await this.#road.takeIn(incoming);
      await this.deliver();
    } catch (error) {
      this.#options.report(error, 'handling what was typed');
      this.#screen.print(phrases.notHandled);
    }
  }

  async #print({ no, atMs, to, reply, buttons }: Outgoing): Promise<void> {
    const greenhouse = await this.#greenhouse();
    const speaker = await this.#speaker();
    const { language } = greenhouse.members.find(({ handle }) => handle === to) ?? speaker;
    const wording = this.#options.wordings[language];
    const reader = readerOf(to, greenhouse, atMs);
    let position = 0;
    const rows = buttons.map((row) =>
      row.map(({ label }) => {
        const number = this.#tokens.push(pressToken(no, position++));
        return `#${number} ${wording.button(label, reader)}`;
      }),
    );
    const lines = [
      ...(to === speaker.handle ? [] : [phrasesOf[speaker.language].to(to)]),
      ...inWordsAlone(wording, reply, reader).split('\n'),
      ...buttonLines(rows),
    ];
    this.#screen.print(lines.map((line) => `  ${line}`).join('\n'));
  }

  async #showHelp({ handle, language }: Member): Promise<void> {
    const { wordings, nowMs } = this.#options;
    const greenhouse = await this.#greenhouse();
    const phrases = phrasesOf[language];
    const other = greenhouse.members.find((member) => member.handle !== handle) ?? { handle };
    const reader = readerOf(handle, greenhouse, nowMs());
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

/** Rows of several buttons stand in lines of their own; single ones share a line. */
function buttonLines(rows: readonly (readonly string[])[]): readonly string[] {
  const isList = rows.some((row) => row.length > 1);
  const lines = isList ? rows : rows.length > 0 ? [rows.flat()] : [];
  return lines.map((line) => line.join('   '));
}
