import type { Made } from './make-pages.ts';
import { claim, dice, goodFor, label, price, shell } from './make-parts.ts';

type Roll = ReturnType<typeof dice>;
type Page = { body: string; lists: { text: string; product?: string }[]; head?: string; lang?: string };
type Maker = (roll: Roll) => Page;

const headings = [
  'Ingredients',
  'INGREDIENTS',
  'Full ingredients',
  'Ingredients (INCI)',
  'INCI',
  'Composition',
  'Ingredient list',
  'Ingrédients',
  'Liste des ingrédients',
  'Inhaltsstoffe',
  'Inhaltsstoffe / INCI',
  'Bestandteile',
  'Ingredienti',
  'Composizione',
  'Ingredientes',
  'Composición',
  'Composição',
  'Ingrediënten',
  'Samenstelling',
  'Ingredienser',
  'Indhold',
  'Ainesosat',
  'Składniki',
  'Skład',
  'Složení',
  'Összetevők',
  'Sastojci',
  'Состав',
  'Състав',
  'Συστατικά',
  'İçindekiler',
  '成分',
  '全成分',
  '전성분',
  'مكونات',
  'المكونات',
  'What’s inside',
  'Thành phần',
];
const heading = (roll: Roll) => roll.pick(headings);
const one = (text: string, product?: string) => [product ? { text, product } : { text }];
const commas = (roll: Roll, count?: number) => label(roll, count).join(', ') + (roll.next() < 0.4 ? '.' : '');
const product = (roll: Roll, rest: string) =>
  shell(roll, `<h1>${goodFor(roll)}</h1>${price(roll)}<p>${claim(roll)} ${claim(roll)}</p>${rest}`);

/** One maker for each structure; each is rolled several times with other headings, lists and surroundings. */
const makers: Record<string, Maker> = {
  accordion: (roll) => {
    const text = commas(roll);
    return {
      body: product(
        roll,
        `<div class="product__accordion"><details><summary><div class="summary__title"><h2>${heading(roll)}</h2></div></summary><div class="rte"><p>${text}</p></div></details><details><summary><h2>How to use</h2></summary><div class="rte"><p>${claim(roll)}</p></div></details></div>`,
      ),
      lists: one(text),
    };
  },
  'far-dialog': (roll) => {
    const text = commas(roll);
    return {
      body: `${product(roll, '<modal-opener data-modal="#Popup-7"><button type="button" aria-haspopup="dialog">Ingredients</button></modal-opener>')}<modal-dialog id="Popup-7"><div role="dialog" aria-label="Ingredients"><button>Close</button><div><h1 class="h2">${heading(roll)}</h1>${text}</div></div></modal-dialog>`,
      lists: one(text),
    };
  },
  'tabs-far-label': (roll) => {
    const text = commas(roll);
    return {
      body: product(
        roll,
        `<div class="tabs-wrapper"><ul class="tabs" role="tablist"><li class="d_tab"><a href="#tab-d" role="tab" id="l-d">Description</a></li><li><a href="#tab-i" role="tab" id="l-i">${heading(roll)}</a></li></ul><div role="tabpanel" id="tab-d" aria-labelledby="l-d"><p>${claim(roll)}</p></div><div role="tabpanel" id="tab-i" aria-labelledby="l-i" style="display: none"><p>${text}</p></div></div>`,
      ),
      lists: one(text),
    };
  },
  'short-list-in-far-tab': (roll) => {
    const text = 'Argania Spinosa Kernel Oil, Tocopherol';
    return {
      body: product(
        roll,
        `<ul class="nav nav-tabs"><li><a data-toggle="tab" href="#description">Description</a></li><li><a data-toggle="tab" href="#extra-0">${heading(roll)}</a></li></ul><div class="tab-content"><div class="tab-pane" id="description"><p>${claim(roll)}</p><p>${claim(roll)}</p><p>${claim(roll)}</p><p>${claim(roll)}</p></div><div class="tab-pane" id="extra-0">${text}</div></div>`,
      ),
      lists: one(text),
    };
  },
  'alternating-title-panel': (roll) => {
    const text = commas(roll);
    return {
      body: product(
        roll,
        `<div role="tablist" class="product data items"><div class="data item title"><a role="tab" id="tab-label-1">Details</a></div><div role="tabpanel" class="data item content" id="x1">${claim(roll)}</div><div class="data item title"><a role="tab" id="tab-label-2">${heading(roll)}</a></div><div role="tabpanel" class="data item content" id="x2">${text}</div></div>`,
      ),
      lists: one(text),
    };
  },
  'spec-table': (roll) => {
    const text = commas(roll);
    const name = heading(roll);
    return {
      body: product(
        roll,
        `<table id="specs"><tbody><tr><th>Weight</th><td data-th="Weight">0.25 kg</td></tr><tr><th>${name}</th><td data-th="${name}">${text}</td></tr><tr><th>Country of origin</th><td>Invented Isles</td></tr></tbody></table>`,
      ),
      lists: one(text),
    };
  },
  'table-label-only-in-attribute': (roll) => {
    const text = 'Simmondsia Chinensis (Jojoba) Seed Oil';
    return {
      body: product(
        roll,
        `<table><tbody><tr><td data-th="Contents">100 ml</td></tr><tr><td class="col data" data-th="Ingredients">${text}</td></tr></tbody></table>`,
      ),
      lists: one(text),
    };
  },
  'definition-list': (roll) => {
    const text = commas(roll);
    return {
      body: product(
        roll,
        `<dl class="data-sheet"><dt>Hair type</dt><dd>Curly, coily</dd><dt>${heading(roll)}:</dt><dd>${text}</dd><dt>EAN</dt><dd>4000000000000</dd></dl>`,
      ),
      lists: one(text),
    };
  },
  'heading-runs': (roll) => {
    const text = commas(roll);
    return {
      lang: 'bg',
      body: product(
        roll,
        `<h3>Описание</h3><p>Лек крем за къдрава коса, който не тежи.</p><h3>Състав</h3><p>${text}</p><h3>Начин на употреба</h3><p>Нанесете върху влажна коса.</p>`,
      ),
      lists: one(text),
    };
  },
  'look-alike-letters': (roll) => {
    const text = label(roll, 20)
      .join(', ')
      .replaceAll('Gl', 'Gl')
      .replaceAll('oc', 'ос')
      .replaceAll('Pa', 'Ра');
    return {
      body: product(roll, `<h3>Състав</h3><p>${text}</p><h3>Начин на употреба</h3><p>Измийте.</p>`),
      lists: one(text),
    };
  },
  'bold-first-line': (roll) => {
    const text = commas(roll);
    return {
      body: product(
        roll,
        `<div class="rte"><p><strong>What it does</strong><br>${claim(roll)}</p><p><strong>${heading(roll)}</strong><br/>${text}</p><p><b>Directions</b><br>${claim(roll)}</p></div>`,
      ),
      lists: one(text),
    };
  },
  'inline-paragraph': (roll) => {
    const text = commas(roll);
    return {
      body: product(
        roll,
        `<div class="rte"><p>${claim(roll)}</p><p><span style="font-size:12px">${heading(roll)}: ${text}</span></p></div>`,
      ),
      lists: one(text),
    };
  },
  'heading-mid-paragraph': (roll) => {
    const text = commas(roll);
    return {
      body: product(roll, `<p>${claim(roll)} ${claim(roll)} <b>Ingredients:</b> ${text}</p>`),
      lists: one(text),
    };
  },
  'bullets-then-breaks': (roll) => {
    const text = label(roll).join(', ');
    return {
      body: product(
        roll,
        `<div id="tab-x" hidden>• Softens<br>• Vegan<br>• ${claim(roll)}<br><br>${text}<br><br><b>Formulated without:</b> Parabens, Mineral Oil, Sodium Lauryl Sulfate, Phthalates, Dimethicone, PEG-8, Formaldehyde, Triclosan</div>`,
      ),
      lists: one(text),
    };
  },
  'four-copies': (roll) => {
    const names = label(roll, 24);
    const text = names.join(', ');
    return {
      body: product(
        roll,
        `<div class="off" aria-hidden="true"><p>Ingredients: ${text}</p></div><div class="short"><h4>Ingredients</h4><p>${names.slice(0, 7).join(', ')}… <a href="#all">See more</a></p></div><div id="important"><h4>Ingredients</h4><p></p><p>${text}</p></div><div class="description"><h3>Ingredients</h3><p>${text}.</p></div>`,
      ),
      lists: one(text),
    };
  },
  'json-ld-only': (roll) => {
    const text = commas(roll, 16);
    return {
      head: `<script type="application/ld+json">${JSON.stringify({ '@context': 'https://schema.org', '@graph': [{ '@type': 'Product', name: 'Quench Curl Cream', additionalProperty: [{ '@type': 'PropertyValue', name: 'Ingredients', value: text }] }] })}</script>`,
      body: product(roll, '<button aria-expanded="false">Ingredients</button>'),
      lists: one(text),
    };
  },
  'json-ld-description': (roll) => {
    const text = label(roll, 16).join(', ');
    return {
      head: `<script type="application/ld+json">${JSON.stringify({ '@type': 'Product', name: 'Linden Rinse', description: `${claim(roll)} Ingredients: ${text}` })}</script>`,
      body: product(roll, ''),
      lists: one(text),
    };
  },
  microdata: (roll) => {
    const text = commas(roll, 14);
    return {
      body: product(
        roll,
        `<div itemscope itemtype="https://schema.org/Product"><meta itemprop="ingredients" content="${text}"></div>`,
      ),
      lists: one(text),
    };
  },
  'shadow-root': (roll) => {
    const text = commas(roll);
    return {
      body: product(
        roll,
        `<shop-accordion><template shadowrootmode="open"><section><h3>${heading(roll)}</h3><shop-text><template shadowrootmode="open"><p>${text}</p></template></shop-text></section></template></shop-accordion>`,
      ),
      lists: one(text),
    };
  },
  'kit-headings': (roll) => {
    const a = commas(roll, 16);
    const b = commas(roll, 18);
    return {
      body: product(
        roll,
        `<h2>Ingredients</h2><h4>Harebell Shampoo</h4><p>${a}</p><h4>Oatfield Conditioner</h4><p>${b}</p>`,
      ),
      lists: [...one(a, 'Harebell Shampoo'), ...one(b, 'Oatfield Conditioner')],
    };
  },
  'kit-inline': (roll) => {
    const a = label(roll, 14).join(', ');
    const b = label(roll, 15).join(', ');
    return {
      body: product(
        roll,
        `<p><strong>Ingredients</strong><br><strong>Lowtide Co-Wash:</strong> ${a}.<br><br><strong>Saltmarsh Gel:</strong> ${b}.</p>`,
      ),
      lists: [...one(`${a}.`, 'Lowtide Co-Wash'), ...one(`${b}.`, 'Saltmarsh Gel')],
    };
  },
  'kit-own-headings': (roll) => {
    const a = label(roll, 14).join(', ');
    const b = label(roll, 15).join(', ');
    return {
      body: product(
        roll,
        `<details><summary>Ingredients</summary><p>Barley Mask Ingredients: ${a}</p><p>Dewpoint Foam Ingredients: ${b}</p></details>`,
      ),
      lists: [...one(a, 'Barley Mask'), ...one(b, 'Dewpoint Foam')],
    };
  },
  'no-heading': (roll) => {
    const text = commas(roll, roll.int(12, 30));
    return {
      body: product(roll, `<div class="fine"><p>${claim(roll)}</p><p>${text}</p></div>`),
      lists: one(text),
    };
  },
  'one-name-a-line': (roll) => {
    const names = label(roll, 16);
    return {
      body: product(
        roll,
        `<h3>${heading(roll)}</h3><ul>${names.map((name) => `<li>${name}</li>`).join('\n')}</ul><h3>Delivery</h3><ul><li>Two days</li></ul>`,
      ),
      lists: one(names.join(' ')),
    };
  },
  'links-with-commas': (roll) => {
    const names = label(roll, 14);
    return {
      body: product(
        roll,
        `<h3>${heading(roll)}</h3><p>${names.map((name) => `<a href="/i/${encodeURIComponent(name)}">${name}</a>`).join(', ')}</p>`,
      ),
      lists: one(names.join(', ')),
    };
  },
  'buttons-without-commas': (roll) => {
    const names = label(roll, 14);
    return {
      body: product(
        roll,
        `<h3>${heading(roll)}</h3><div>${names.map((name) => `<button type="button">${name}</button>`).join('')}</div><p>Tap a name to learn more.</p>`,
      ),
      lists: one(names.join(' ')),
    };
  },
  'spans-without-commas': (roll) => {
    const names = label(roll, 14);
    return {
      body: product(
        roll,
        `<h3>${heading(roll)}</h3><div>${names.map((name) => `<span class="chip">${name}</span>`).join('\n ')}</div>`,
      ),
      lists: one(names.join(' ')),
    };
  },
  tooltips: (roll) => {
    const names = label(roll, 14);
    return {
      body: product(
        roll,
        `<h3>${heading(roll)}</h3><p>${names.map((name) => `<span class="name">${name}<span role="tooltip">This helps the formula to stay together.</span></span>`).join(', ')}</p>`,
      ),
      lists: one(names.join(', ')),
    };
  },
  'read-more-tail': (roll) => {
    const text = label(roll).join(', ');
    return {
      body: product(
        roll,
        `<div class="acc"><div class="t">${heading(roll)}</div><div class="c"><span class="cut">${text}</span> <button>Read more</button></div></div>`,
      ),
      lists: one(text),
    };
  },
  'legal-same-paragraph': (roll) => {
    const text = `${label(roll).join(', ')}.`;
    return {
      body: product(
        roll,
        `<p>${heading(roll)}: ${text} Please be aware that ingredient lists may change or vary from time to time.</p>`,
      ),
      lists: one(text),
    };
  },
  'legal-without-stop': (roll) => {
    const text = label(roll).join(', ');
    return {
      body: product(
        roll,
        `<h3>Ingredients</h3><p>${text} This list may change; always read the label of the pack you bought.</p>`,
      ),
      lists: one(text),
    };
  },
  'legal-next-paragraph': (roll) => {
    const text = commas(roll);
    return {
      body: product(
        roll,
        `<h3>${heading(roll)}</h3><div><p>${text}</p><p>Die Angaben auf der Verpackung gelten, Rezepturen können sich ändern.</p><p><em>Ingredients are subject to change.</em></p></div>`,
      ),
      lists: one(text),
    };
  },
  footnotes: (roll) => {
    const text = label(roll)
      .map((name, i) => (i % 4 === 2 ? `${name}*` : i % 6 === 1 ? `${name}**` : name))
      .join(', ');
    return {
      body: product(
        roll,
        `<p><b>${heading(roll)}</b></p><p>${text}<br>*from organic farming<br>**natural component of essential oils</p>`,
      ),
      lists: one(text),
    };
  },
  'footnote-same-line': (roll) => {
    const text = label(roll)
      .map((name, i) => (i % 4 === 2 ? `${name}*` : name))
      .join(', ');
    return {
      body: product(roll, `<p>${heading(roll)}: ${text}. *Certified organic ingredient</p>`),
      lists: one(`${text}.`),
    };
  },
  allergens: (roll) => {
    const text = commas(roll);
    return {
      body: product(
        roll,
        `<h3>${heading(roll)}</h3><p>${text}</p><h3>Allergens</h3><p>Contains tree nut oils.</p>`,
      ),
      lists: one(text),
    };
  },
  'may-contain': (roll) => {
    const text = label(roll).join(', ');
    return {
      body: product(
        roll,
        `<h3>${heading(roll)}</h3><p>${text}.<br>May contain: CI 77891, CI 77491, CI 77492</p><p>12 g</p>`,
      ),
      lists: one(`${text}. May contain: CI 77891, CI 77491, CI 77492`),
    };
  },
  'plus-minus': (roll) => {
    const text = `${label(roll).join(', ').toUpperCase()}, [+/- CI 77891, CI 77491, CI 77499]`;
    return { body: product(roll, `<h3>${heading(roll)}</h3><p>${text}</p>`), lists: one(text) };
  },
  'denial-after': (roll) => {
    const text = commas(roll);
    return {
      body: product(
        roll,
        `<h3>${heading(roll)}</h3><p>${text}</p><p><strong>Free from:</strong> Sodium Lauryl Sulfate, Parabens, Mineral Oil, Dimethicone, Methylisothiazolinone, Propylene Glycol</p>`,
      ),
      lists: one(text),
    };
  },
  'batch-code': (roll) => {
    const text = label(roll).join(' • ').toUpperCase();
    return {
      body: product(roll, `<h3>Ingredients</h3><p>1048231 07 - ${text}</p><p>Lists are updated often.</p>`),
      lists: one(text),
    };
  },
  'triple-names': (roll) => {
    const text = `AQUA / WATER / EAU • ${label(roll).slice(1).join(' • ').toUpperCase()} • PARFUM / FRAGRANCE`;
    return {
      body: product(roll, `<div class="title">${heading(roll)}</div><div>${text}</div>`),
      lists: one(text),
    };
  },
  'grid-rows': (roll) => {
    const text = commas(roll);
    return {
      body: product(
        roll,
        `<div class="grid"><div><div>Scent</div><div>Linden</div></div><div><div>${heading(roll)}</div><div>${text}</div></div><div><div>Volume</div><div>200 ml</div></div></div>`,
      ),
      lists: one(text),
    };
  },
  'glued-spans': (roll) => {
    const text = commas(roll);
    return {
      body: product(
        roll,
        `<div class="row"><span class="k">Size</span><span class="v">200 ml</span></div><div class="row"><span class="k">${heading(roll)}</span><span class="v">${text}</span></div>`,
      ),
      lists: one(text),
    };
  },
  'article-layout': (roll) => {
    const text = commas(roll);
    return {
      body: shell(
        roll,
        `<article><h1>${goodFor(roll)}</h1><div class="field field--label-above"><div class="field__label">${heading(roll)}</div><div class="field__item"><p>${text}</p></div></div><div class="field"><div class="field__label">Tags</div><div class="field__item"><a href="#">hair</a></div></div></article>`,
      ),
      lists: one(text),
    };
  },
  'many-headings': (roll) => {
    const text = commas(roll);
    return {
      body: product(roll, `<p>Ingredients / Ingrédients / Ingredienti (INCI): ${text}</p>`),
      lists: one(text),
    };
  },
  'lines-in-text': (roll) => {
    const names = label(roll, 14);
    return {
      body: product(
        roll,
        `<h3>${heading(roll)}</h3><div style="white-space: pre-line">${names.join('\n')}</div>`,
      ),
      lists: one(names.join(' ')),
    };
  },
  'other-separators': (roll) => {
    const text = label(roll).join(roll.pick(['; ', ' | ', '. ', ' · ', ' / ', ' - ', ',', ' , ']));
    return {
      body: product(roll, `<h3>${heading(roll)}</h3><p>${text}</p><p>${claim(roll)}</p>`),
      lists: one(text),
    };
  },
  'several-paragraphs': (roll) => {
    const names = label(roll, 24);
    const text = [names.slice(0, 8).join(', '), names.slice(8, 16).join(', '), names.slice(16).join(', ')];
    return {
      body: product(
        roll,
        `<h3>${heading(roll)}</h3>${text.map((part) => `<p>${part},</p>`).join('')}<p>Shake before use.</p>`,
      ),
      lists: one(text.join(', ')),
    };
  },
  'sun-care': (roll) => {
    const text = commas(roll, 18);
    return {
      body: product(
        roll,
        `<p><b>Active ingredients:</b> Avobenzone 3%, Homosalate 10%, Octisalate 5%</p><p><b>Inactive ingredients:</b> ${text}</p><p>Warnings: for external use only.</p>`,
      ),
      lists: one(text),
    };
  },
  percentages: (roll) => {
    const text = label(roll, 14)
      .map((name, i) => (i > 1 && i < 5 ? `${name} (${i}%)` : name))
      .join(', ');
    return { body: product(roll, `<p>${heading(roll)} - ${text}</p>`), lists: one(text) };
  },
  'unknown-heading': (roll) => {
    const text = commas(roll, 16);
    return { body: product(roll, `<p>Comhábhair: ${text}</p><p>${claim(roll)}</p>`), lists: one(text) };
  },
  hangul: (roll) => {
    const text = roll.some(
      [
        '글리세린',
        '부틸렌글라이콜',
        '세테아릴알코올',
        '다이메티콘',
        '판테놀',
        '하이드롤라이즈드케라틴',
        '베타인',
        '동백오일',
        '소듐벤조에이트',
        '시트릭애씨드',
        '향료',
        '리날룰',
        '카보머',
        '토코페롤',
      ],
      11,
    );
    const all = ['정제수', ...text].join(', ');
    return {
      lang: 'ko',
      body: product(
        roll,
        `<table><tr><th>용량</th><td>200ml</td></tr><tr><th>전성분</th><td>${all}</td></tr><tr><th>사용방법</th><td>젖은 모발에 바릅니다.</td></tr></table>`,
      ),
      lists: one(all),
    };
  },
  kana: (roll) => {
    const text = roll.some(
      [
        'グリセリン',
        'セテアリルアルコール',
        'ジメチコン',
        'パンテノール',
        '加水分解ケラチン',
        'ベタイン',
        'ホホバ種子油',
        'フェノキシエタノール',
        'クエン酸',
        '香料',
        'トコフェロール',
        'ベヘントリモニウムクロリド',
      ],
      10,
    );
    const all = ['水', ...text].join('、');
    return {
      lang: 'ja',
      body: product(roll, `<h3>全成分</h3><p>${all}</p><h3>ご使用方法</h3><p>濡れた髪になじませます。</p>`),
      lists: one(all),
    };
  },
  hanzi: (roll) => {
    const text = roll.some(
      [
        '甘油',
        '鲸蜡硬脂醇',
        '聚二甲基硅氧烷',
        '泛醇',
        '水解角蛋白',
        '甜菜碱',
        '苯氧乙醇',
        '柠檬酸',
        '香精',
        '生育酚',
        '丁二醇',
        '黄原胶',
      ],
      10,
    );
    const all = ['水', ...text].join('、');
    return {
      lang: 'zh',
      body: product(
        roll,
        `<div><span>净含量</span><span>200ml</span></div><div><span>成分：</span><span>${all}</span></div>`,
      ),
      lists: one(all),
    };
  },
  'small-maker': (roll) => {
    const text = `Distilled water, ${roll.some(['organic shea butter', 'jojoba oil', 'coconut oil', 'emulsifying wax', 'vegetable glycerin', 'beeswax', 'castor oil', 'aloe vera juice', 'vitamin E oil', 'lavender essential oil', 'rosehip oil'], 7).join(', ')}`;
    return {
      body: product(roll, `<p>Ingredients: ${text}</p><p>Store in a cool place.</p>`),
      lists: one(text),
    };
  },
  soap: (roll) => {
    const text = 'Sodium Olivate, Sodium Cocoate, Aqua, Glycerin, Sodium Shea Butterate';
    return {
      body: product(roll, `<h4>${heading(roll)}</h4>${text}<h4>Care</h4>Keep dry.`),
      lists: one(text),
    };
  },
  'hidden-letters': (roll) => {
    const text = label(roll, 16)
      .map((name) => name.replace('Alcohol', 'Alco\u00adhol').replace('Glyc', 'Gly\u200bc'))
      .join(',\u00a0');
    return { body: product(roll, `<h3>Ingredients</h3><p>\u200b${text}</p>`), lists: one(text) };
  },
  'broken-markup': (roll) => {
    const text = label(roll, 18);
    return {
      body: product(
        roll,
        `<p><span>Ingre</span><span>dients</span>: ${text.map((name, i) => (i % 3 ? name : `<font face=x>${name.slice(0, 4)}</font><!-- c -->${name.slice(4)}`)).join(',\n      ')}</p><p>`,
      ),
      lists: one(text.join(', ')),
    };
  },
  variants: (roll) => {
    const a = label(roll, 18).join(', ');
    const b = label(roll, 18).join(', ');
    return {
      body: product(
        roll,
        `<div data-variant="1"><h3>Ingredients</h3><p>${a}</p></div><div data-variant="2" hidden><h3>Ingredients</h3><p>${b}</p></div>`,
      ),
      lists: [...one(a), ...one(b)],
    };
  },
  'teaser-and-list': (roll) => {
    const text = commas(roll);
    return {
      body: product(
        roll,
        `<h3>Key ingredients</h3><ul><li><b>Argan oil</b>: softens dry ends</li><li><b>Hydrolyzed Keratin</b>: strengthens</li><li>Panthenol</li></ul><p>Full list of ingredients</p><p>${text}</p>`,
      ),
      lists: one(text),
    };
  },
};

export function shopPages(): Made[] {
  const pages: Made[] = [];
  let seed = 1;
  for (const [name, make] of Object.entries(makers)) {
    const rolls = /short|only|hangul|kana|hanzi|soap|microdata|description|kit|unknown/.test(name) ? 1 : 2;
    for (let i = 1; i <= rolls; i++) {
      const roll = dice(1000 + seed++);
      const { lang, head, ...page } = make(roll);
      pages.push({
        id: `${name}-${i}`,
        why: name.replaceAll('-', ' '),
        ...page,
        ...(lang ? { lang } : {}),
        ...(head ? { head } : {}),
      });
    }
  }
  return pages;
}
