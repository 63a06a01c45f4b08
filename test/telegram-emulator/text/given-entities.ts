import type { WireEntity } from '../wire/entity.ts';
import { badRequest, type Refusal } from '../wire/refusal.ts';
import { byteOffset } from './styled-text.ts';

/** Documented: what a bot may ask for. The server finds the other kinds by itself and ignores them here. */
const STYLES: readonly string[] = [
  'bold',
  'italic',
  'underline',
  'strikethrough',
  'spoiler',
  'blockquote',
  'expandable_blockquote',
  'code',
  'pre',
  'text_link',
  'text_mention',
  'custom_emoji',
];
const FOUND_BY_SERVER: readonly string[] = [
  'mention',
  'hashtag',
  'cashtag',
  'bot_command',
  'url',
  'email',
  'phone_number',
];
/** Documented: at most 100 entities are kept. */
const MOST_ENTITIES = 100;

/** Checks the `entities` or `caption_entities` of a call against the text they are for. */
export const checkEntities = (
  text: string,
  given: unknown,
): { readonly kind: 'entities'; readonly entities: readonly WireEntity[] } | Refusal => {
  if (!Array.isArray(given)) return badRequest("can't parse entities: expected an Array");
  const entities: WireEntity[] = [];
  for (const raw of given as readonly unknown[]) {
    const entity = readEntity(raw);
    if (entity === undefined) {
      return badRequest(
        "can't parse MessageEntity: expected an Object with type, offset and length",
      );
    }
    if (FOUND_BY_SERVER.includes(entity.type)) continue;
    const reason = complaint(text, entity);
    if (reason !== undefined) return badRequest(reason);
    if (entity.length > 0) entities.push(entity);
  }
  return { kind: 'entities', entities: entities.slice(0, MOST_ENTITIES) };
};

const readEntity = (raw: unknown): WireEntity | undefined => {
  if (typeof raw !== 'object' || raw === null) return undefined;
  const { type, offset, length } = raw as Partial<WireEntity>;
  const whole = Number.isInteger(offset) && Number.isInteger(length);
  return typeof type === 'string' && whole ? (raw as WireEntity) : undefined;
};

const complaint = (text: string, entity: WireEntity): string | undefined => {
  const { type, offset, length } = entity;
  const end = offset + length;
  if (!STYLES.includes(type)) return "can't parse MessageEntity: Unsupported type specified";
  if (type === 'text_link' && entity.url === undefined) {
    return `can't parse MessageEntity: Can't find field "url"`;
  }
  if (offset < 0) return `receive an entity with incorrect offset ${offset}`;
  if (length < 0) return `receive an entity with incorrect length ${length}`;
  if (end > text.length) {
    return `entity beginning at UTF-16 offset ${offset} ends after the end of the text at UTF-16 offset ${end}`;
  }
  if (splitsCharacter(text, offset)) {
    return `entity begins in a middle of a UTF-16 symbol at byte offset ${byteOffset(text, offset + 1)}`;
  }
  if (splitsCharacter(text, end)) {
    return `entity beginning at UTF-16 offset ${offset} ends in a middle of a UTF-16 symbol at byte offset ${byteOffset(text, end + 1)}`;
  }
  return undefined;
};

/** True between the two halves of a surrogate pair. */
const splitsCharacter = (text: string, at: number): boolean =>
  /[\uDC00-\uDFFF]/.test(text[at] ?? '') && /[\uD800-\uDBFF]/.test(text[at - 1] ?? '');
