import { type Agent, request as requestPlainly } from 'node:http';
import { request as requestSafely } from 'node:https';
import { pipeline, type Readable } from 'node:stream';

/** As the Bot API's client asks. */
interface Asked {
  readonly method: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly agent: Agent;
  /** JSON, or a form with files. */
  readonly body: string | Readable;
  readonly signal: AbortSignal;
}

/**
 * What the Bot API's client needs of `fetch`, and no more: a request, and its answer read as JSON,
 * without redirects and compression. It takes half the processor's time of the client's own, which
 * every message pays at least twice.
 */
export async function plainFetch(
  address: string,
  asked: Asked,
): Promise<{ readonly json: () => Promise<unknown> }> {
  const text = await answerTo(new URL(address), asked);
  return { json: () => Promise.resolve(parsed(text)) };
}

function answerTo(url: URL, { method, headers, agent, body, signal }: Asked): Promise<string> {
  return new Promise((resolve, reject) => {
    const request = (url.protocol === 'https:' ? requestSafely : requestPlainly)(
      url,
      { method, headers, agent },
      (response) => {
        let text = '';
        response.setEncoding('utf8');
        response.on('data', (chunk: string) => {
          text += chunk;
        });
        response.once('end', () => {
          resolve(text);
        });
        response.once('error', reject);
      },
    );
    request.once('error', reject);
    const abort = (): void => {
      request.destroy(Object.assign(new Error('aborted'), { name: 'AbortError' }));
    };
    if (signal.aborted) abort();
    else signal.addEventListener('abort', abort, { once: true });
    if (typeof body === 'string') request.end(body);
    else {
      pipeline(body, request, (error) => {
        if (error) reject(error);
      });
    }
  });
}

/** @throws Error of the code `invalid-json` where something else than the Bot API has answered. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (cause) {
    throw Object.assign(new Error('the answer is no JSON', { cause }), { code: 'invalid-json' });
  }
}
