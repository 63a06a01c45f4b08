import type { WireEntity } from '../wire/entity.ts';
import { badRequest, type Refusal } from '../wire/refusal.ts';
import { byteOffset, type StyledText } from './styled-text.ts';

/** Documented marks of `parse_mode: MarkdownV2`, longest first, with the server's names for them. */
const MARKS = [
  { mark: '||', type: 'spoiler', name: 'Spoiler' },
  { mark: '__', type: 'underline', name: 'Underline' },
  { mark: '*', type: 'bold', name: 'Bold' },
  { mark: '_', type: 'italic', name: 'Italic' },
  { mark: '~', type: 'strikethrough', name: 'Strikethrough' },
] as const;

/** Documented: these must be escaped wherever they are no mark. */
const RESERVED = /[\]()>#+\-=|{}.!]/u;

/** Reads `parse_mode: MarkdownV2`, but for block quotations and custom emoji, which are refused. */
export const parseMarkdownV2 = (markup: string): StyledText | Refusal => {
  const entities: WireEntity[] = [];
  const open: { readonly mark: string; readonly offset: number; readonly at: number }[] = [];
  let text = '';
  let at = 0;
  while (at < markup.length) {
    const rest = markup.slice(at);
    const escaped = /^\\([\x01-\x7e])/u.exec(rest);
    const code = /^(```(?:([^\s`]+)\n|\n?)|`)/u.exec(rest);
    if (escaped) {
      text += escaped[1]!;
      at += 2;
    } else if (code) {
      const fence = rest.startsWith('```') ? '```' : '`';
      const end = endOfCode(markup, at + code[0].length, fence);
      if (end === undefined) return unended(fence === '`' ? 'Code' : 'Pre', markup, at);
      const body = markup.slice(at + code[0].length, end).replace(/\\([`\\])/gu, '$1');
      const span = { offset: text.length, length: body.length };
      const language = code[2] === undefined ? {} : { language: code[2] };
      entities.push({ type: fence === '`' ? 'code' : 'pre', ...span, ...language });
      text += body;
      at = end + fence.length;
    } else if (rest.startsWith('[')) {
      open.push({ mark: '[', offset: text.length, at });
      at += 1;
    } else if (open.at(-1)?.mark === '[' && rest.startsWith('](')) {
      const link = /^\]\(((?:\\.|[^)\\])*)\)/u.exec(rest);
      if (!link)
        return badRequest(
          `can't parse entities: Can't find end of a URL at byte offset ${byteOffset(markup, at)}`,
        );
      const { offset } = open.pop()!;
      const url = link[1]!.replace(/\\(.)/gu, '$1');
      entities.push({ type: 'text_link', offset, length: text.length - offset, url });
      at += link[0].length;
    } else {
      const style = MARKS.find(({ mark }) => rest.startsWith(mark));
      if (style) {
        const opened = open.at(-1);
        if (opened?.mark === style.mark) {
          open.pop();
          const length = text.length - opened.offset;
          if (length > 0) entities.push({ type: style.type, offset: opened.offset, length });
        } else open.push({ mark: style.mark, offset: text.length, at });
        at += style.mark.length;
      } else if (RESERVED.test(rest[0]!)) {
        return badRequest(
          `can't parse entities: Character '${rest[0]!}' is reserved and must be escaped with the preceding '\\'`,
        );
      } else {
        text += rest[0]!;
        at += 1;
      }
    }
  }
  const left = open.at(-1);
  if (left === undefined) return { text, entities };
  return unended(MARKS.find(({ mark }) => mark === left.mark)?.name ?? 'TextUrl', markup, left.at);
};

const endOfCode = (markup: string, from: number, fence: string): number | undefined => {
  for (let at = from; at < markup.length; at += 1) {
    if (markup[at] === '\\') at += 1;
    else if (markup.startsWith(fence, at)) return at;
  }
  return undefined;
};

const unended = (name: string, markup: string, at: number): Refusal =>
  badRequest(
    `can't parse entities: Can't find end of ${name} entity at byte offset ${byteOffset(markup, at)}`,
  );
