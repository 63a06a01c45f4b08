import { badRequest, type Refusal } from '../wire/refusal.ts';
import { readMultipart } from './multipart-form.ts';
import { RequestParameters } from './request-parameters.ts';

/** The parameters of a GET or POST request in any of the documented forms. */
export const readRequest = async (request: Request): Promise<RequestParameters | Refusal> => {
  const inAddress = [...new URL(request.url).searchParams];
  const contentType = request.headers.get('content-type') ?? '';
  if (request.method === 'GET' || contentType === '') {
    return new RequestParameters(new Map(inAddress));
  }
  if (contentType.startsWith('multipart/form-data')) {
    try {
      return await readMultipart(contentType, new Uint8Array(await request.arrayBuffer()));
    } catch {
      return badRequest("can't parse multipart form data");
    }
  }
  const body = await request.text();
  if (!contentType.startsWith('application/json')) {
    return new RequestParameters(new Map([...inAddress, ...new URLSearchParams(body)]));
  }
  try {
    const values: unknown = body === '' ? {} : JSON.parse(body);
    if (typeof values !== 'object' || values === null) throw new TypeError('not an object');
    return new RequestParameters(new Map([...inAddress, ...Object.entries(values)]));
  } catch {
    return badRequest("can't parse request: can't parse JSON object");
  }
};
