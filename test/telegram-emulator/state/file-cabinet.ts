/** A file on the platform's disk. */
export type StoredFile = {
  readonly fileId: string;
  readonly uniqueId: string;
  readonly path: string;
  readonly bytes: Uint8Array;
};

/** The files that members and the bot have sent, by id and by path. */
export class FileCabinet {
  readonly #byId = new Map<string, StoredFile>();
  readonly #byPath = new Map<string, StoredFile>();

  /** Keeps the bytes; `folder` and `extension` make up the path that a download asks for. */
  keep(bytes: Uint8Array, folder: string, extension: string): StoredFile {
    const number = this.#byId.size;
    const file: StoredFile = {
      fileId: `AgACAgIAAxkBAAI${String(number).padStart(6, '0')}emulated`,
      uniqueId: `AQADu${String(number).padStart(6, '0')}`,
      path: `${folder}/file_${number}.${extension}`,
      bytes,
    };
    this.#byId.set(file.fileId, file);
    this.#byPath.set(file.path, file);
    return file;
  }

  byId(fileId: string): StoredFile | undefined {
    return this.#byId.get(fileId);
  }

  byPath(path: string): StoredFile | undefined {
    return this.#byPath.get(path);
  }
}
