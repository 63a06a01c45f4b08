import { Busboy } from '@fastify/busboy';
import { RequestParameters, type UploadedFile } from './request-parameters.ts';

/** Reads a `multipart/form-data` body. Rejects if it is no such thing. */
export const readMultipart = (contentType: string, body: Uint8Array): Promise<RequestParameters> =>
  new Promise((resolve, reject) => {
    const values = new Map<string, unknown>();
    const files = new Map<string, UploadedFile>();
    const parts = new Busboy({ headers: { 'content-type': contentType } });
    parts.on('field', (name, value) => {
      values.set(name, value);
    });
    parts.on('file', (name, stream, filename) => {
      const chunks: Buffer[] = [];
      stream.on('data', (chunk: Buffer) => chunks.push(chunk));
      stream.on('end', () => {
        files.set(name, { filename, bytes: new Uint8Array(Buffer.concat(chunks)) });
      });
    });
    parts.on('finish', () => {
      resolve(new RequestParameters(values, files));
    });
    parts.on('error', reject);
    parts.end(Buffer.from(body));
  });
