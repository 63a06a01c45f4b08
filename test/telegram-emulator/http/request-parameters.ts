/** A file that came with a multipart request. */
export type UploadedFile = { readonly filename: string | undefined; readonly bytes: Uint8Array };

/**
 * The parameters of a call, however they came: in the address, as JSON, as a form or in parts.
 * Forms hold strings only, so every reader takes a string for a number, a flag or JSON as well.
 */
export class RequestParameters {
  readonly #values: ReadonlyMap<string, unknown>;
  readonly #files: ReadonlyMap<string, UploadedFile>;

  constructor(
    values: ReadonlyMap<string, unknown>,
    files: ReadonlyMap<string, UploadedFile> = new Map(),
  ) {
    this.#values = values;
    this.#files = files;
  }

  has(name: string): boolean {
    const value = this.#values.get(name);
    return value !== undefined && value !== null && value !== '';
  }

  text(name: string): string | undefined {
    const value = this.#values.get(name);
    return typeof value === 'string' || typeof value === 'number' ? String(value) : undefined;
  }

  integer(name: string): number | undefined {
    const number = Number(this.text(name) ?? Number.NaN);
    return this.has(name) && Number.isSafeInteger(number) ? number : undefined;
  }

  flag(name: string): boolean {
    return ['true', '1', 'yes', true].includes(
      (this.#values.get(name) ?? false) as string | boolean,
    );
  }

  /** A structured value; undefined if it is missing or no JSON. */
  json(name: string): unknown {
    const value = this.#values.get(name);
    if (typeof value !== 'string') return value ?? undefined;
    try {
      return JSON.parse(value) as unknown;
    } catch {
      return undefined;
    }
  }

  /** A structured value that is an object; undefined otherwise. */
  record(name: string): Readonly<Record<string, unknown>> | undefined {
    const value = this.json(name);
    return typeof value === 'object' && value !== null && !Array.isArray(value)
      ? (value as Record<string, unknown>)
      : undefined;
  }

  /** A file in a part of this name, or one that the value points to as `attach://part`. */
  file(name: string): UploadedFile | undefined {
    const value = this.text(name);
    return value?.startsWith('attach://') === true
      ? this.#files.get(value.slice('attach://'.length))
      : this.#files.get(name);
  }

  /** Everything for the log, structured values parsed, files as their size in bytes. */
  payload(): Readonly<Record<string, unknown>> {
    const values = [...this.#values].map(([name, value]) => [
      name,
      typeof value === 'string' && /^[[{]/.test(value) ? (this.json(name) ?? value) : value,
    ]);
    const files = [...this.#files].map(([name, file]) => [name, { bytes: file.bytes.length }]);
    return Object.fromEntries([...values, ...files]) as Record<string, unknown>;
  }
}
