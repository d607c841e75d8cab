// Pages that want to learn what we say, to act in the reader's name or to throw us. Invented.
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { label } from './bare-pages.ts';

const page = (head: string, body: string) =>
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Label</title><style>body{font:14px/1.5 sans-serif;margin:0;padding:24px;max-width:760px;min-height:1400px}</style>${head}</head><body><h1>Label</h1>${body}</body></html>`;
const list = `<section><h3>Ingredients</h3><p class="list">${label}</p></section>`;

const fonts = [
  'system-ui',
  'sans-serif',
  'serif',
  'Georgia',
  'Palatino',
  'Palatino Linotype',
  'Iowan Old Style',
];
const faces = fonts.map((name) => `@font-face{font-family:"${name}";src:url("/leak/${name}")}`).join('');
const tokens = [
  'paper',
  'raised',
  'ink',
  'quiet',
  'line',
  'edge',
  'plum',
  'teal',
  'ochre',
  'sans',
  'serif',
  'back',
];
const registered = tokens
  .map(
    (name) =>
      `CSS.registerProperty({name:'--${name}',syntax:'<color>',inherits:false,initialValue:'transparent'})`,
  )
  .join(';');

const forms = [
  'parentElement',
  'parentNode',
  'contains',
  'getBoundingClientRect',
  'assignedSlot',
  'getRootNode',
]
  .concat([
    'checkVisibility',
    'closest',
    'matches',
    'children',
    'id',
    'classList',
    'shadowRoot',
    'localName',
    'attributes',
  ])
  .map((name) => `<input type="hidden" name="${name}">`)
  .join('');

export const spies: Record<string, string> = {
  plain: page('', list),
  nothing: page('', '<p>Opening hours and how to find us.</p>'),
  // Our element, by the name it once had, with a constructor that hands out its shadow root.
  names: page(
    `<script>for (const name of ['strandline-label', 'strandline-strip']) customElements.define(name, class extends HTMLElement {
      constructor() { super(); try { window.caught = this.attachInternals(); } catch {} } });</script>`,
    list,
  ),
  styles: page(
    `<style>${faces} html > div, div {${tokens.map((name) => `--${name}: transparent !important`).join(';')};color: transparent !important;font-family: Georgia !important;opacity: 0 !important;visibility: hidden !important;display: none !important}</style><script>${registered}</script>`,
    list.replaceAll('<section>', '<section style="display:block!important">'),
  ),
  globals: page(
    '',
    `${[
      'querySelector',
      'querySelectorAll',
      'fonts',
      'documentElement',
      'head',
      'title',
      'prerendering',
      'createElement',
      'createElementNS',
    ]
      .concat([
        'elementFromPoint',
        'elementsFromPoint',
        'caretPositionFromPoint',
        'createTreeWalker',
        'createRange',
        'body',
      ])
      .concat(['addEventListener', 'adoptedStyleSheets', 'getElementById', 'baseURI', 'implementation'])
      .map((name) => `<img name="${name}" alt="">`)
      .join('')}${['ours', 'strandline', 'strandlinePainter', 'navigation']
      .map((name) => `<iframe name="${name}" hidden></iframe><a id="${name}"></a>`)
      .join('')}${list}`,
  ),
  // The browser itself gives a script no door to its extension here: a page can always be rid of us.
  'no-door': page('', `<iframe name="chrome" hidden></iframe><iframe name="browser" hidden></iframe>${list}`),
  form: page('', `<form>${forms}<h3>Ingredients</h3><p class="list">${label}</p></form>`),
  'form-alone': page('', `<h3>Ingredients</h3><form class="list">${forms}${label}</form>`),
  // Says what was asked for by us or through us.
  overlay: page(
    '',
    `${list}<div id="over" popover="manual" style="position:fixed;inset:0;width:100%;height:100%;margin:0;border:0;background:#fffc;pointer-events:none">You have won</div>`,
  ),
  'overlay-in-shadow': page(
    '',
    `${list}<script>addEventListener('load', () => { const host = document.createElement('p'); document.body.append(host); const root = host.attachShadow({mode:'closed'}); root.innerHTML = '<div popover="manual" style="position:fixed;inset:0;width:100%;height:100%;margin:0;border:0;background:#fffc;pointer-events:none">You have won</div>'; window.cover = () => root.firstChild.showPopover(); })</script>`,
  ),
};

export async function serveSpies() {
  const leaks: string[] = [];
  const server = createServer(({ url = '/' }, answer) => {
    if (url.startsWith('/leak')) leaks.push(decodeURI(url));
    answer.setHeader('content-type', 'text/html; charset=utf-8');
    answer.end(spies[url.slice(1)] ?? '');
  });
  await new Promise<void>((ready) => server.listen(0, 'localhost', ready));
  return {
    leaks,
    url: (name: string) => `http://localhost:${(server.address() as AddressInfo).port}/${name}`,
    close: () => new Promise((closed) => server.close(closed)),
  };
}

/** What a page's own script can learn of what we drew; run in the page. `words` are some that the strip shows. */
export const spy = (words: string[]) => {
  const hosts = [...document.querySelectorAll('html > div')] as HTMLElement[];
  const host = hosts[0];
  const internals = () => {
    try {
      return String(host?.attachInternals().shadowRoot);
    } catch {
      return 'refused';
    }
  };
  const find = (window as unknown as { find(words: string, ...how: boolean[]): boolean }).find;
  const learnt = {
    hosts: hosts.length,
    tag: host?.localName,
    attributes: host?.getAttributeNames(),
    root: host ? host.shadowRoot : undefined,
    internals: internals(),
    caught: String((window as unknown as { caught?: ElementInternals }).caught?.shadowRoot ?? 'nothing'),
    found: words.filter((word) => find(word, false, false, true)),
    text: `${host?.textContent}`,
    // biome-ignore lint/performance/useDomNodeTextContent: what is drawn is asked for, not what stands there
    drawn: document.documentElement.innerText,
    selected: '',
    highlights: [...CSS.highlights.keys()],
    rules: ['strandline-large', 'strandline-4', 'large'].map(
      (name) =>
        getComputedStyle(document.querySelector('.list') ?? document.body, `::highlight(${name})`)
          .textDecorationStyle,
    ),
    globals: Object.getOwnPropertyNames(window).filter((name) => /strand/i.test(name)),
  };
  getSelection()?.selectAllChildren(document.documentElement);
  learnt.selected = String(getSelection());
  return learnt;
};
