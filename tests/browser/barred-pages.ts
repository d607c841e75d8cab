// A product page as crowded as shops make them: bars that stay in view, a basket, a chat, a consent, letters to the edge. Invented goods.

/** How such a page is laid out. */
type Layout = { dir?: 'ltr' | 'rtl'; zoom?: number; consent?: boolean; dense?: boolean };

const filler =
  'Words of the shop before and after the list, which say nothing of note and go on for a while about the harbour, the kettle and the weather. ';

const css = `
*{box-sizing:border-box}
body{margin:0;font:15px/1.4 sans-serif}
header,footer,.consent{position:sticky;top:0;display:flex;gap:8px;align-items:center;min-height:56px;padding:6px 12px;background:#dfe7ea}
footer{position:fixed;inset:auto 0 0}
.chat{position:fixed;inset-inline-end:16px;bottom:76px;width:56px;height:56px;border:0;border-radius:28px;background:#345}
.consent{position:fixed;inset:auto 8px 68px;max-width:420px;margin-inline:auto;background:#fff7dd;border:1px solid}
main{padding:12px}
.two{display:flex;flex-wrap:wrap;gap:12px}
.dense main{padding:12px 0;text-align:justify;word-break:break-all}
button{min-height:32px}`;

/** The page around one label; whatever must stay free carries `data-free`. */
export function barredPage(label: string, { dir = 'ltr', zoom = 1, consent, dense }: Layout): string {
  const words = `<p>${filler.repeat(dense ? 9 : 2)}</p>`;
  return `<!doctype html><html lang="en" dir="${dir}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Barred</title><style>${css}html{zoom:${zoom}}</style></head>
<body class="${dense ? 'dense' : ''}"><header data-free><b>Shop</b><button>Menu</button><button>Basket</button></header>
<main><h1>Barred Mask</h1>${words}<div class="two"><button data-free>Put in the basket</button><button data-free>Remember</button></div>
${words}<h3>Ingredients</h3><p class="list" data-list>${label}</p>${words.repeat(dense ? 3 : 1)}<p><button data-free>Ask a question</button></p>${words.repeat(6)}</main>
<footer data-free><b>9.50</b><button>Buy now</button></footer><button class="chat" data-free aria-label="Chat"></button>
${consent ? '<div class="consent" data-free>Invented cookies? <button>Yes</button><button>No</button></div>' : ''}</body></html>`;
}

/** The layouts that are tried, by the name of their page. */
export const barred: Record<string, Layout> = {
  barred: {},
  'barred-rtl': { dir: 'rtl' },
  'barred-consent': { consent: true },
  'barred-zoomed': { zoom: 1.5 },
  'barred-dense': { dense: true, consent: true },
  'barred-dense-rtl': { dense: true, dir: 'rtl', zoom: 1.25 },
};
