import { bigint, customType } from 'drizzle-orm/pg-core';

/** An instant in milliseconds since 1970, exact. */
export function instantMs(name: string) {
  return bigint(name, { mode: 'number' });
}

/** A quick look for what may have to be replaced: most texts hold none of it. */
const suspects = /[\0\ud800-\udfff]/;
const loneSurrogates = /\p{Surrogate}/gu;

/**
 * Text as people and platforms send it. PostgreSQL takes neither the character U+0000 nor half of
 * a surrogate pair; both become the replacement character.
 */
export const plainText = customType<{ data: string; driverData: string }>({
  dataType: () => 'text',
  toDriver: storable,
});

/** A text as the database will give it back. */
export function storable(text: string): string {
  if (!suspects.test(text)) return text;
  return text.replaceAll('\u0000', '\ufffd').replaceAll(loneSurrogates, '\ufffd');
}

/**
 * A document kept whole. `json` and not `jsonb`, which refuses an escaped U+0000 and forgets the
 * order of keys. Both drivers are told to leave its text alone, so that a document that is itself
 * a string comes back as it went in.
 */
export const document = customType<{ data: unknown; driverData: string }>({
  dataType: () => 'json',
  toDriver: (value) => JSON.stringify(value),
  fromDriver: (text) => JSON.parse(text) as unknown,
});

/** The object identifier of the type `json`, the same in every PostgreSQL. */
export const jsonTypeOid = 114;

/** A file as it is. */
export const bytes = customType<{ data: Uint8Array; driverData: Uint8Array }>({
  dataType: () => 'bytea',
});
