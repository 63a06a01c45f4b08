import { badRequest } from '../wire/refusal.ts';
import type { Method } from './method.ts';

/** Documented: bots can download files of up to 20 MB. */
const LARGEST_DOWNLOAD_BYTES = 20 * 1024 * 1024;

export const getFile: Method = ({ platform, parameters }) => {
  const file = platform.files.byId(parameters.text('file_id') ?? '');
  if (file === undefined) return badRequest('wrong file_id or the file is temporarily unavailable');
  if (file.bytes.length > LARGEST_DOWNLOAD_BYTES) return badRequest('file is too big');
  return {
    result: {
      file_id: file.fileId,
      file_unique_id: file.uniqueId,
      file_size: file.bytes.length,
      file_path: file.path,
    },
  };
};
