import type { Interface } from 'node:readline';
import { clearLine, cursorTo } from 'node:readline';
import type { Writable } from 'node:stream';

/** Prints lines without tearing apart what is being typed. */
export class Screen {
  readonly #output: Writable;
  /** The line being typed; null where nobody types. */
  #typing: Interface | null = null;

  constructor(output: Writable) {
    this.#output = output;
  }

  showPrompt(typing: Interface, prompt: string): void {
    this.#typing = typing;
    typing.setPrompt(prompt);
    typing.prompt();
  }

  hidePrompt(): void {
    this.#typing = null;
  }

  print(text: string): void {
    if (!this.#typing) {
      this.#output.write(`${text}\n`);
      return;
    }
    clearLine(this.#output, 0);
    cursorTo(this.#output, 0);
    this.#output.write(`${text}\n`);
    this.#typing.prompt(true);
  }
}
