// The invented shop as a real server. `node tests/store/serve.ts [port]` serves it until stopped.
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import { goodOf, goods } from './goods.ts';
import { gridPage, roomPart } from './grids.ts';
import { plain } from './html.ts';
import { categoryPage, pageOf, productPage } from './layout.ts';
import { pictureOf, sign } from './pictures.ts';
import { rackAnswer, rackPage } from './rack.ts';
import { silentPages } from './silent.ts';
import { type StructureName, structureNames } from './structures/index.ts';

export type Store = {
  /** `http://localhost:PORT`, without a slash at the end. */
  url: string;
  /** Paths asked for so far, in order. */
  asked: string[];
  /** The same with what came along, and when (ms). */
  requests: { path: string; at: number; cookie?: string | undefined; referer?: string | undefined }[];
  /** While set, pages of the rack are answered so: 429 with a pause, say. */
  refuses?: { status: number; headers: Record<string, string> } | undefined;
  close(): Promise<void>;
};

// Structures whose pages carry a strict policy: nothing inline, nothing from elsewhere, no HTML from strings.
const strict = new Set<StructureName>(['open', 'tabs', 'after-click', 'client-router', 'shadow-root', 'kit']);
const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; frame-src 'self'; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'";

const file = (name: string) => readFileSync(new URL(`./public/${name}`, import.meta.url), 'utf8');

type Answer = {
  type: string;
  body: string;
  status?: number;
  policy?: boolean;
  headers?: Record<string, string>;
};
const html = (body: string, withPolicy = false): Answer => ({ type: 'text/html', body, policy: withPolicy });

/** Fragments for the pages' scripts, as data: elements with text, never HTML. */
function partOf(path: string[]): Answer | undefined {
  const [what, which] = path;
  const json = (body: unknown): Answer => ({ type: 'application/json', body: JSON.stringify(body) });
  const room = what === 'rooms' && roomPart(which ?? '');
  if (room) return json(room);
  if (what === 'shelf' && !which)
    return json([
      { tag: 'h1', words: 'The shelf' },
      ...goods.map((good) => ({ tag: 'a', words: good.name, link: `/shelf/${good.id}` })),
    ]);
  if (what === 'stream') {
    const good = goods[Number(which) % goods.length]!;
    return json([
      { tag: 'h3', words: good.name },
      { tag: 'img', picture: `/pictures/${good.id}.svg` },
      { tag: 'h4', words: 'Ingredients' },
      { tag: 'p', words: good.list },
    ]);
  }
  const good = goodOf(what === 'shelf' ? which! : what!);
  if (!good) return undefined;
  if (what === 'shelf')
    return json([
      { tag: 'h1', words: good.name },
      { tag: 'img', picture: `/pictures/${good.id}.svg` },
      { tag: 'p', words: good.blurb },
      { tag: 'h2', words: 'Ingredients' },
      { tag: 'p', words: good.list },
      { tag: 'a', words: 'Back to the shelf', link: '/shelf' },
    ]);
  if (which === 'frame')
    return html(
      `<!doctype html><html lang="en"><meta charset="utf-8"><title>Label</title><link rel="stylesheet" href="/shop.css"><body class="label-page"><h2>Ingredients</h2><p>${plain(good.list)}</p></body></html>`,
    );
  const list = which === 'variant' ? good.variant?.list : good.list;
  return list
    ? json([
        { tag: 'h2', words: 'Ingredients' },
        { tag: 'p', words: list },
      ])
    : undefined;
}

function answer(url: URL, elsewhere: string): Answer | undefined {
  const [, first = '', ...rest] = url.pathname.split('/');
  const silent = silentPages[url.pathname];
  if (silent) return html(pageOf(silent));
  if (first === '') return html(categoryPage());
  if (first === 'shop.css' || first === 'shop.js' || first === 'grids.js')
    return { type: first.endsWith('css') ? 'text/css' : 'text/javascript', body: file(first) };
  if (first === 'hostile' && /^[a-z]+\.css$/.test(rest[0] ?? ''))
    return { type: 'text/css', body: file(`hostile/${rest[0]}`) };
  if (first === 'pictures') {
    const good = goodOf((rest[0] ?? '').replace(/\.svg$/, ''));
    return { type: 'image/svg+xml', body: good ? pictureOf(good) : sign() };
  }
  if (first === 'parts') return partOf(rest);
  if (first === 'shelf') return html(pageOf({ title: 'The shelf', body: '<div id="shelf"></div>' }), true);
  if (first === 'robots.txt')
    return { type: 'text/plain', body: 'User-agent: *\nDisallow: /rack/private/\n' };
  if (first === 'rack')
    return rest.length === 0
      ? html(rackPage(url))
      : rackAnswer(rest, url.searchParams.get('elsewhere') ?? elsewhere);
  if (first === 'grids' || first === 'rooms') {
    const page = gridPage(first, rest[0] ?? '', Number(url.searchParams.get('n') ?? 120));
    return page === undefined ? undefined : html(page);
  }
  if (first === 'goods') {
    const good = goodOf(rest[0] ?? '');
    if (!good) return undefined;
    const asked = url.searchParams.get('as') as StructureName | null;
    const as = asked && structureNames.includes(asked) ? asked : good.structure;
    const hostile = url.searchParams.get('hostile');
    return html(productPage(good, as, hostile === '1' ? 'unset' : hostile), strict.has(as));
  }
  return undefined;
}

/** Serves the shop on localhost; port 0 takes a free one. */
export async function serveStore(port = 0, elsewhere = 'http://127.0.0.1:9'): Promise<Store> {
  const asked: string[] = [];
  const requests: Store['requests'] = [];
  const server = createServer((request, response) => {
    const url = new URL(request.url ?? '/', 'http://localhost');
    asked.push(url.pathname + url.search);
    const { cookie, referer } = request.headers;
    requests.push({ path: url.pathname, at: Date.now(), cookie, referer });
    let found: Answer | undefined;
    try {
      const refused = url.pathname.startsWith('/rack/') && store.refuses;
      found = refused ? { ...html('<h1>Later</h1>'), ...refused } : answer(url, elsewhere);
    } catch (error) {
      console.error(`${url.pathname}: ${error}`);
    }
    const {
      type,
      body,
      status,
      policy: withPolicy,
      headers = {},
    } = found ?? {
      ...html(pageOf({ title: 'Not on any shelf', body: '<h1>Not on any shelf</h1>' })),
      status: 404,
    };
    response.writeHead(status ?? 200, {
      'content-type': `${type}; charset=utf-8`,
      ...headers,
      ...(withPolicy ? { 'content-security-policy': policy } : {}),
    });
    response.end(body);
  });
  await new Promise<void>((done) => server.listen(port, 'localhost', done));
  const store: Store = {
    url: `http://localhost:${(server.address() as AddressInfo).port}`,
    asked,
    requests,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
  return store;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const store = await serveStore(Number(process.argv[2] ?? 0));
  console.log(store.url);
}
