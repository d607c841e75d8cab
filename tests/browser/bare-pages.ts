// Bare pages for tests of painting: one label under styles and structures that make painting hard. Invented goods.
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { entries } from '../../dictionary/index.ts';
import { barred, barredPage } from './barred-pages.ts';

export const label =
  'Aqua, Cetearyl Alcohol, Glycerin, Behentrimonium Methosulfate, Hydrolyzed Wheat Protein, Hydrolyzed Silk, ' +
  'Propylene Glycol, Dimethicone, Silk Amino Acids, Petrolatum, Helianthus Annuus Seed Oil, Phenoxyethanol, ' +
  'Panthenol, Hydrolyzed Keratin, Citric Acid, Parfum';
export const shortLabel = 'Aqua, Glycerin, Cetearyl Alcohol, Hydrolyzed Wheat Protein, Panthenol, Parfum';
export const bareLabel =
  'Aqua, Cetearyl Alcohol, Glycerin, Behentrimonium Methosulfate, Phenoxyethanol, Parfum';

const section = (text: string, css = '', tag = 'p') =>
  `<section style="${css}"><h3>Ingredients</h3><${tag} class="list" style="margin:0">${text}</${tag}></section>`;

const page = (title: string, body: string, css = '') =>
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${title}</title><style>body{font:14px/1.5 sans-serif;margin:0;padding:24px;max-width:760px}section{margin-bottom:30px}${css}</style></head><body><h1>${title}</h1><p>These goods are invented.</p>${body}</body></html>`;

const filler = '<p>Words of the shop before and after the list, which say nothing of note.</p>';

/** Type settings under which glyphs must still find room, or stay away. */
export const settings = [
  '16px/1.75 serif',
  '14px/1.5 sans-serif',
  '13px/1.4 sans-serif',
  '12px/1.3 sans-serif',
  '14px/1.2 sans-serif',
  '12px/1 sans-serif',
  '20px/1.5 serif',
  '15px/1.6 monospace',
];

// A label that repeats itself is read once: five hundred names that differ.
const many = entries
  .filter(({ name, moisture }) => moisture?.length && /^[A-Za-z -]+$/.test(name))
  .slice(0, 500)
  .map(({ name }) => name);

const pages: Record<string, string> = {
  plain: page('Plain', `${section(label)}${filler}`),
  roomy: page('Roomy', `${section(shortLabel, 'max-width:420px;margin-bottom:400px')}${filler}`),
  bare: page('Bare', section(bareLabel)),
  settings: page(
    'Settings',
    settings.map((font, i) => section(`${label}, Sample${i}`, `font:${font}`)).join(''),
  ),
  upper: page('Upper', section(`${label}, Upper`, 'text-transform:uppercase')),
  dark: page('Dark', section(label, 'background:#1b1b1f;color:#eee;padding:16px')),
  rtl: page('Rtl', section(label, 'direction:rtl')),
  scroller: page(
    'Scroller',
    `<div id="box" style="height:120px;overflow:auto;border:1px solid">${filler}${section(label)}${filler.repeat(6)}</div>${filler.repeat(40)}`,
  ),
  sticky: page(
    'Sticky',
    `<header style="position:sticky;top:0;height:90px;background:#ddd;z-index:5">A header that stays</header>${section(label)}${filler.repeat(60)}`,
  ),
  details: page(
    'Details',
    `<details><summary>Ingredients</summary><p class="list">${label}</p></details>${filler}`,
  ),
  dialog: page(
    'Dialog',
    `${section(shortLabel)}<dialog><h3>Ingredients</h3><p class="list">${label}</p><button onclick="this.closest('dialog').close()">Close</button></dialog><button id="open" onclick="document.querySelector('dialog').showModal()">Open</button>`,
  ),
  zoomed: page('Zoomed', `${section(label)}`, 'html{font-size:40px;zoom:1.4}'),
  scaled: page('Scaled', section(label, 'transform:scale(1.2) rotate(0.001deg);transform-origin:0 0')),
  bigbody: page(
    'Transformed body',
    section(label),
    'body{transform:translate(40px,30px) scale(1.1);transform-origin:0 0}html{padding:10px}',
  ),
  hostile: page(
    'Hostile',
    section(label),
    '*{all:unset!important}head,style,title,script{display:none!important}p,section,h1,h3{display:block!important}',
  ),
  above: page(
    'Above',
    `${section(shortLabel)}<div style="position:fixed;inset:0;z-index:2147483647;pointer-events:none"></div>`,
  ),
  many: page('Many', section(many.join(', '))),
  several: page('Several', `${section(label)}${filler}${section(shortLabel)}${filler}${section(bareLabel)}`),
  routes: page(
    'Routes',
    `<main>${section(label)}</main><button id="leave">Leave</button><script>
      document.querySelector('#leave').onclick = () => { history.pushState({}, '', '?left'); document.querySelector('main').innerHTML = '<p>Another place.</p>'; };
    </script>`,
  ),
  remover: page(
    'Remover',
    `${section(label)}<script>new MutationObserver(() => document.querySelector('[data-strandline]')?.remove()).observe(document, { childList: true, subtree: true })</script>`,
  ),
  strict: page('Strict', section(label)),
  ...Object.fromEntries(Object.entries(barred).map(([name, layout]) => [name, barredPage(label, layout)])),
  prose: page('Prose', '<p class="words">Aqua, Hydrolyzed Silk, Table, Chair</p>'),
};

const strict =
  "default-src 'none'; style-src 'unsafe-inline'; require-trusted-types-for 'script'; trusted-types 'none'; frame-ancestors 'none'";

/** Serves them at /<name>; `strict` under a content security policy that allows nothing. */
export async function serveBarePages() {
  const asked: string[] = [];
  const server = createServer((request, response) => {
    const name = new URL(request.url ?? '/', 'http://localhost').pathname.slice(1);
    asked.push(request.url ?? '');
    const body = pages[name];
    response.writeHead(body ? 200 : 404, {
      'content-type': 'text/html; charset=utf-8',
      ...(name === 'strict' ? { 'content-security-policy': strict } : {}),
    });
    response.end(body ?? 'no such page');
  });
  await new Promise<void>((ready) => server.listen(0, ready));
  return {
    url: (name: string) => `http://localhost:${(server.address() as AddressInfo).port}/${name}`,
    asked,
    close: () =>
      new Promise<void>((closed) => {
        server.close(() => closed());
        server.closeAllConnections();
      }),
  };
}
