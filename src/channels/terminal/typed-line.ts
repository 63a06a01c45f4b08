/** What one typed line asks for. */
export type TypedLine =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'message'; readonly text: string }
  | { readonly kind: 'press'; readonly number: number }
  | { readonly kind: 'speak-as'; readonly handle: string }
  | { readonly kind: 'help' }
  | { readonly kind: 'quit' }
  | { readonly kind: 'unknown-command'; readonly command: string }
  | { readonly kind: 'too-long'; readonly length: number };

/** The longest message taken, in UTF-16 units; the longest that Telegram takes as well. */
export const mostCharacters = 4096;

export function readTypedLine(line: string): TypedLine {
  const text = line.trim();
  if (text === '') return { kind: 'nothing' };
  if (text.length > mostCharacters) return { kind: 'too-long', length: text.length };
  const pressed = /^#\s*(\d{1,6})$/.exec(text);
  if (pressed) return { kind: 'press', number: Number(pressed[1]) };
  const [command = '', argument = ''] = text.split(/\s+/, 2);
  if (!command.startsWith('/')) return { kind: 'message', text };
  switch (command) {
    case '/as':
      return { kind: 'speak-as', handle: argument.replace(/^@/, '').toLowerCase() };
    case '/help':
      return { kind: 'help' };
    case '/quit':
      return { kind: 'quit' };
    default:
      return { kind: 'unknown-command', command };
  }
}
