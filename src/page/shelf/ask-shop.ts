import type { Manners, UnreadReason } from '../../contract/shelf.ts';

/**
 * The only code of the extension that asks a shop for anything. It runs after a press, on the shop's own page, and
 * asks that shop for pages it links to: GET, no cookies, no referrer, never on to another site.
 */
export type ShopAnswer = { page: string; address: string } | { why: UnreadReason; again?: number };

/** What asking needs from outside; tests hand in their own. */
export type Network = {
  fetch: typeof fetch;
  /** Whether the browser is connected at all. */
  online(): boolean;
  now(): number;
};

/**
 * Asks for one page of this shop.
 * @param address absolute, on the page's own origin
 * @param signal ends it midway: `cancelled`
 * @returns the page's letters and its address after the shop's own redirects, or why there are none; `again` is
 * the moment (ms since 1970) before which the shop does not want to be asked
 */
export async function askShop(
  address: string,
  { bytesAtMost, secondsAtMost }: Manners,
  network: Network,
  signal: AbortSignal,
): Promise<ShopAnswer> {
  if (!network.online()) return { why: 'offline' };
  const late = AbortSignal.timeout(secondsAtMost * 1000);
  const ended = (): UnreadReason | undefined =>
    signal.aborted ? 'cancelled' : late.aborted ? 'too-slow' : undefined;
  try {
    const response = await network.fetch(address, {
      method: 'GET',
      mode: 'same-origin', // a redirect off the shop fails before it is followed
      credentials: 'omit',
      referrerPolicy: 'no-referrer',
      cache: 'default',
      signal: AbortSignal.any([signal, late]),
    });
    const why = refusalOf(response.status);
    if (why) {
      void response.body?.cancel().catch(() => undefined);
      return why === 'shop-busy' ? { why, again: pauseOf(response, network.now()) } : { why };
    }
    if (!/html|xml|^text\/plain/i.test(response.headers.get('content-type') ?? 'text/html')) {
      void response.body?.cancel().catch(() => undefined);
      return { why: 'no-page' };
    }
    const page = await bodyOf(response, bytesAtMost);
    return page === undefined ? { why: 'too-large' } : { page, address: response.url || address };
  } catch {
    return { why: ended() ?? (network.online() ? 'elsewhere' : 'offline') };
  }
}

function refusalOf(status: number): UnreadReason | undefined {
  if (status >= 200 && status < 300) return undefined;
  if (status === 429 || status === 503) return 'shop-busy';
  if (status === 404 || status === 410) return 'not-found';
  if (status === 401 || status === 407) return 'login';
  return status >= 500 ? 'shop-broken' : status >= 400 ? 'refused' : 'elsewhere';
}

const usualPause = 60_000; // where the shop names none

/** `Retry-After` is seconds or a date (RFC 9110, 10.2.3). */
function pauseOf({ headers }: Response, now: number): number {
  const said = headers.get('retry-after')?.trim() ?? '';
  if (/^\d{1,9}$/.test(said)) return now + Number(said) * 1000;
  const date = Date.parse(said);
  return Number.isNaN(date) ? now + usualPause : Math.max(now, date);
}

/** The body as text, or undefined once it is larger than it may be: the rest is not taken. */
async function bodyOf(response: Response, most: number): Promise<string | undefined> {
  if (Number(response.headers.get('content-length') ?? 0) > most) {
    void response.body?.cancel().catch(() => undefined);
    return undefined;
  }
  const reader = response.body?.getReader();
  if (!reader) return '';
  const parts: Uint8Array[] = [];
  let size = 0;
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    size += next.value.byteLength;
    if (size > most) {
      void reader.cancel().catch(() => undefined);
      return undefined;
    }
    parts.push(next.value);
  }
  const whole = new Uint8Array(size);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.byteLength;
  }
  return decoderFor(response, whole).decode(whole);
}

/** The page's own letters: by its header, else by its first kilobyte, else UTF-8. */
function decoderFor({ headers }: Response, whole: Uint8Array): TextDecoder {
  const inHeader = /charset=["']?([\w-]+)/i.exec(headers.get('content-type') ?? '')?.[1];
  const start = new TextDecoder('latin1').decode(whole.subarray(0, 1024));
  const inPage = /<meta[^>]{0,200}charset=["']?([\w-]+)/i.exec(start)?.[1];
  try {
    return new TextDecoder(inHeader ?? inPage ?? 'utf-8');
  } catch {
    return new TextDecoder();
  }
}
