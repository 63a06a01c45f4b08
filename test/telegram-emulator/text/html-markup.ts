import type { WireEntity } from '../wire/entity.ts';
import { badRequest, type Refusal } from '../wire/refusal.ts';
import { byteOffset, type StyledText } from './styled-text.ts';

/** Documented tags of `parse_mode: HTML` and the entities they stand for. */
const TYPE_BY_TAG: Readonly<Record<string, string>> = {
  b: 'bold',
  strong: 'bold',
  i: 'italic',
  em: 'italic',
  u: 'underline',
  ins: 'underline',
  s: 'strikethrough',
  strike: 'strikethrough',
  del: 'strikethrough',
  a: 'text_link',
  code: 'code',
  pre: 'pre',
  blockquote: 'blockquote',
  span: 'spoiler',
  'tg-spoiler': 'spoiler',
  'tg-emoji': 'custom_emoji',
};

const CHARACTER_BY_NAME: Readonly<Record<string, string>> = {
  lt: '<',
  gt: '>',
  amp: '&',
  quot: '"',
};

type OpenTag = { readonly tag: string; readonly attributes: string; readonly offset: number };

/** Reads `parse_mode: HTML`. */
export const parseHtml = (markup: string): StyledText | Refusal => {
  const open: OpenTag[] = [];
  const entities: WireEntity[] = [];
  let text = '';
  let at = 0;
  for (const match of markup.matchAll(/<(\/?)([a-z0-9-]*)([^>]*)>|&(#?\w+);|</giu)) {
    text += markup.slice(at, match.index);
    at = match.index + match[0].length;
    const where = byteOffset(markup, match.index);
    const [whole, slash, rawTag = '', attributes = '', name] = match;
    const tag = rawTag.toLowerCase();
    if (name !== undefined) text += character(name) ?? whole;
    else if (slash === undefined) return broken(`Unclosed start tag at byte offset ${where}`);
    else if (slash === '') {
      if (TYPE_BY_TAG[tag] === undefined) {
        return broken(`Unsupported start tag "${tag}" at byte offset ${where}`);
      }
      open.push({ tag, attributes, offset: text.length });
    } else {
      const opened = open.pop();
      if (opened === undefined) return broken(`Unexpected end tag at byte offset ${where}`);
      if (tag !== '' && tag !== opened.tag) {
        return broken(
          `Unmatched end tag at byte offset ${where}, expected "</${opened.tag}>", found "</${tag}>"`,
        );
      }
      if (text.length > opened.offset) entities.push(entityOf(opened, text));
    }
  }
  const left = open.at(-1);
  if (left !== undefined) {
    return broken(`Can't find end tag corresponding to start tag "${left.tag}"`);
  }
  return { text: text + markup.slice(at), entities };
};

const entityOf = (opened: OpenTag, text: string): WireEntity => {
  const span = { offset: opened.offset, length: text.length - opened.offset };
  const value = /=\s*["']?([^"'\s]+)/u.exec(opened.attributes)?.[1] ?? '';
  if (opened.tag === 'a') {
    return { type: 'text_link', ...span, url: value === '' ? text.slice(opened.offset) : value };
  }
  if (opened.tag === 'tg-emoji') return { type: 'custom_emoji', ...span, custom_emoji_id: value };
  const expandable = opened.tag === 'blockquote' && opened.attributes.includes('expandable');
  return { type: expandable ? 'expandable_blockquote' : TYPE_BY_TAG[opened.tag]!, ...span };
};

const character = (name: string): string | undefined => {
  if (!name.startsWith('#')) return CHARACTER_BY_NAME[name];
  const code = name[1] === 'x' ? Number.parseInt(name.slice(2), 16) : Number(name.slice(1));
  return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : undefined;
};

const broken = (reason: string): Refusal => badRequest(`can't parse entities: ${reason}`);
