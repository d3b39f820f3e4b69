/** Largest answer that is read, bytes: a batch of documents of the largest size. */
export const largestAnswerBytes = 120_000_000;
/** After so long without an answer or its next piece, ms, the server counts as gone. */
const silenceMs = 60_000;

/** Of what is attached to a document. */
export const bytesType = 'application/octet-stream';

export type ServerFault = 'network' | 'too-large' | 'unreadable';

/** Why a server's answer was not used. */
export class ServerAnswer extends Error {
  constructor(readonly fault: ServerFault) {
    super(`The server's answer was not used: ${fault}`);
    this.name = 'ServerAnswer';
  }
}

interface Limits {
  bytes?: number;
  silenceMs?: number;
}

/**
 * Fetches from a server that may send anything: no redirects, no cookies, no more than a bound of bytes, JSON or the bytes of a
 * piece.
 *
 * @throws ServerAnswer
 */
export function guardedFetch(
  fetchIt: typeof fetch,
  { bytes: most = largestAnswerBytes, silenceMs: silence = silenceMs }: Limits = {},
): typeof fetch {
  return async (address, options = {}) => {
    const abort = new AbortController();
    const { signal } = options;
    const stop = () => abort.abort();
    if (signal?.aborted === true) stop();
    signal?.addEventListener('abort', stop);
    let timer = setTimeout(stop, silence);
    const heard = () => {
      clearTimeout(timer);
      timer = setTimeout(stop, silence);
    };
    try {
      const answer = await fetchIt(address, {
        ...options,
        headers: new Headers([...(new Headers(options.headers) as Iterable<[string, string]>)]),
        credentials: 'omit',
        redirect: 'error',
        referrerPolicy: 'no-referrer',
        cache: 'no-store',
        signal: abort.signal,
      });
      const pieces: Uint8Array<ArrayBuffer>[] = [];
      let bytes = 0;
      const reader = answer.body?.getReader();
      for (let next = await reader?.read(); next?.done === false; next = await reader?.read()) {
        heard();
        bytes += next.value.length;
        if (bytes > most) throw new ServerAnswer('too-large');
        pieces.push(next.value);
      }
      const type = answer.headers.get('Content-Type') === bytesType ? bytesType : 'application/json';
      const body = new Blob(pieces, { type });
      if (type !== bytesType) assertJson(await body.text());
      return new Response(body, { status: answer.status, headers: { 'Content-Type': type } });
    } catch (error) {
      stop();
      if (signal?.aborted === true || error instanceof ServerAnswer) throw error;
      throw new ServerAnswer('network');
    } finally {
      clearTimeout(timer);
      signal?.removeEventListener('abort', stop);
    }
  };
}

function assertJson(text: string): void {
  try {
    const data: unknown = JSON.parse(text);
    if (typeof data === 'object' && data !== null) return;
  } catch {
    // Said below.
  }
  throw new ServerAnswer('unreadable');
}
