// @vitest-environment happy-dom
import { describe, expect, it } from 'vitest';
import { findLists, rangeOf } from '../../src/page/find-lists.ts';
import { gate } from '../../src/page/read/gate.ts';

const list =
  'Aqua (Water), Cetearyl Alcohol, Glycerin, Behentrimonium Chloride, Hydrolyzed Wheat Protein, Panthenol, Parfum (Fragrance), Linalool';
const page = (body: string) => {
  document.body.innerHTML = body;
  return document;
};
const texts = (body: string) => findLists(page(body)).map((one) => one.text);

it.each([
  ['heading and sibling', `<h2>Ingredients</h2><p>${list}</p><p>Apply to wet hair.</p>`],
  ['details', `<details><summary><h3>Ingredients</h3></summary><div>${list}</div></details>`],
  [
    'table',
    `<table><tr><th>Size</th><td>200 ml</td></tr><tr><th>Ingredients</th><td>${list}</td></tr></table>`,
  ],
  ['dl', `<dl><dt>Inhaltsstoffe:</dt><dd>${list}</dd><dt>Weight</dt><dd>200 g</dd></dl>`],
  [
    'tab',
    `<ul role=tablist><li role=tab id=t aria-controls=p>INCI</li></ul><div id=o>Nice</div><div role=tabpanel id=p>${list}</div>`,
  ],
  [
    'dialog',
    `<button>Ingredients</button><main>Text</main><div role=dialog><h1>Ingredients</h1>${list}</div>`,
  ],
  ['paragraph', `<p>Makes hair soft.</p><p><strong>Ingredients:</strong> ${list}</p>`],
  ['names', `<p>Softens and detangles the lengths.</p><p>${list}</p>`],
])('finds a list in %s', (_name, body) => {
  expect(gate(page(body))).toBe(true);
  expect(texts(body)).toEqual([list]);
});

it('maps every letter back to the page', () => {
  const doc = page(
    `<p><b>Ingredients:</b> Aqua, <i>Cetearyl</i>\n   Alcohol,<br>Glycerin &amp; Panthenol, Parfum,\n Linalool</p>`,
  );
  const [found] = findLists(doc);
  expect(found!.text).toBe('Aqua, Cetearyl Alcohol,\nGlycerin & Panthenol, Parfum, Linalool');
  for (const name of ['Aqua', 'Cetearyl', 'Alcohol', 'Glycerin & Panthenol', 'Linalool']) {
    const from = found!.text.indexOf(name);
    expect(
      rangeOf(found!, from, from + name.length)
        .map(String)
        .join(''),
    ).toBe(name);
  }
});

// Lists without sodium, perfume or glycerin are rare, not unheard of.
it.each([
  'Składniki: Squalane, Allantoin, Threonine, Mannitol',
  'Olea Europaea Fruit Oil, Hydroxyethylcellulose, Cucumis Sativus Fruit Extract, Mica',
  'Cetyl Esters, Benzyl Benzoate, Phytosphingosine, Zinc Gluconate',
  'Stearic Acid, Xanthan Gum, Propanediol, Caprylic/Capric Triglyceride',
])('the gate is open for %s', (names) => {
  expect(gate(page(`<p>Made by hand.</p><p>${names}</p>`))).toBe(true);
});

it.each(['div', 'span', 'shop-text'])('reads the open shadow root of a %s', (tag) => {
  const body = page(`<main><${tag}></${tag}></main>`);
  const host = body.querySelector(tag)!;
  host.attachShadow({ mode: 'open' }).innerHTML = '<h3>Ingredients</h3><p>Aqua, Glycerin, Parfum</p>';
  expect(gate(body)).toBe(true);
});

it('the gate is closed where names are far apart, or the same one again', () => {
  const words = 'Softens and detangles the lengths, in small jars. '.repeat(20);
  expect(gate(page(`<p>With glycerin.</p><p>${words}</p><p>No perfume, no alcohol.</p>`))).toBe(false);
  expect(gate(page('<p>Alcohol duty. Alcohol by volume. Alcohol is not sold to minors.</p>'))).toBe(false);
});

// Names without a usual ending, at the end and far from the last telling one (seen on lists of one name a line).
it.each([
  'Water (Aqua)|Chitosan|Trideceth-6|PTFE|Coconut Alkanes|Macadamia Integrifolia Seed Oil|Adansonia Digitata Seed Oil|Lactic Acid|Methylparaben',
  'Aqua|Glycerin|Cetearyl Alcohol|Sodium Benzoate|Ethylhexyl Palmitate|Parfum|Benzophenone-3|Nylon-12',
  'Aqua|Tocopheryl Acetate|Caprylyl Glycol|Mica|Acetyl Tyrosine|Triheptanoin|Pullulan',
  'Aqua|Behentrimonium Chloride|Cetyl Alcohol|Theobroma Grandiflorum Seed Butter|Silica|Tin Oxide',
])('reads one name a line to its end: %s', (names) => {
  const lines = names.split('|');
  const after = '<h3>Shipping</h3><p>Two days.</p>';
  expect(texts(`<h3>Ingredients</h3><p>${lines.join('<br>')}</p>${after}`)).toEqual([lines.join('\n')]);
  const items = lines.map((line) => `<li>${line}</li>`).join('');
  expect(texts(`<h3>Ingredients</h3><ul>${items}</ul>${after}`)).toEqual([lines.join('\n')]);
});

it('is silent on a recipe', () => {
  const body =
    '<h2>Ingredients</h2><ul><li>2 cups flour</li><li>1 tsp salt</li><li>3 eggs</li><li>Sugar</li></ul>';
  expect(texts(body)).toEqual([]);
});

describe('in an element too large to be read whole', () => {
  const filler = '<p>Some words that a shop writes.</p>'.repeat(120);
  const far = `${'x '.repeat(2000)}Ingredients: ${list}. ${'y '.repeat(2000)}`;

  it.each([
    ['a script', `<script type="application/json">{"a":"${far}"}</script>`],
    ['a style', `<style>/* ${far} */</style>`],
    ['navigation', `<nav>${'<a>Words</a> '.repeat(800)} ${list}</nav>`],
    ['a choice', `<select>${`<option>${list.replaceAll(', ', '</option><option>')}`.repeat(9)}</select>`],
    [
      'boxes to tick',
      `<div>${filler}${list
        .split(', ')
        .map((name) => `<label><input type=checkbox>${name}</label>`)
        .join('')}${filler}</div>`,
    ],
  ])('%s is no list', (_what, body) => {
    expect(texts(`<main>${filler}${body}${filler}</main>`)).toEqual([]);
  });

  it('a script between a heading and its list parts them no more than nothing', () => {
    const short = 'Glycerin, Dimethicone, Panthenol, Parfum';
    const body = `<div>${filler}<h3>Ingredients</h3><script>let words = 1;</script><p>${short}</p>${filler}</div>`;
    expect(texts(body)).toEqual([short]);
  });

  it('preformatted lines stay lines', () => {
    const lines = list.split(', ').join('\n');
    expect(texts(`<div>${filler}<h3>Ingredients</h3><pre>${lines}</pre>${filler}</div>`)).toEqual([lines]);
  });

  it('the end of one block and the start of the next are two lines', () => {
    const body = `<div>${filler}Ingredients</div><div>${list}<div>${filler}</div></div>`;
    expect(texts(body)).toEqual([list]);
  });
});

const hostile: [string, string, number][] = [
  ['2 MB of headings', `<p>${'Ingredients, '.repeat(150_000)}</p>`, 0],
  ['5,000 commas', `<p>Ingredients: ${','.repeat(5000)}</p>`, 0],
  [
    'unbalanced brackets',
    '<p>Ingredients: Aqua, Glycerin ((( Cetyl Alcohol, Panthenol [[, Parfum, Linalool</p>',
    1,
  ],
  ['one endless word', `<p>Ingredients: ${'A'.repeat(300_000)} glycerin panthenol parfum</p>`, 0],
  ['200,000 spaces', `<p>Ingredients:${' '.repeat(200_000)}${list}</p>`, 1],
  ['20,000 links', `<p>Ingredients: glycerin panthenol parfum ${'<a>x</a>'.repeat(20_000)}</p>`, 0],
  [
    'a list lost among 800 cards',
    `${'<div><h4>Good</h4><p>With argan oil.</p></div>'.repeat(800)}<h3>INCI</h3><p>${list}</p>`,
    1,
  ],
];
it.each(hostile)('reads %s in bounded time', (_what, body, lists) => {
  expect(findLists(page(body))).toHaveLength(lists);
});

it('boxes to tick are a choice among names, not a list', () => {
  const box = (name: string, n: number) => `<li><label><input type=checkbox>${name}</label> (${n})</li>`;
  expect(texts(`<aside><h4>Ingredients</h4><ul>${list.split(', ').map(box).join('')}</ul></aside>`)).toEqual(
    [],
  );
});

it('a table of names and functions is the names alone, each where it stands', () => {
  const names = ['Aqua', 'Cetearyl Alcohol', 'Behentrimonium Chloride', 'Glycerin', 'Panthenol', 'Parfum'];
  const rows = names.map((name) => `<tr><td><b>${name}</b></td><td>Emollient</td></tr>`).join('');
  const [found, ...more] = findLists(page(`<h3>Ingredients</h3><table>${rows}</table>`));
  expect(more).toEqual([]);
  expect(found!.text).toBe(names.join('\n'));
  expect(found!.ranges.map(String)).toEqual(names);
  const at = found!.text.indexOf('Glycerin');
  expect(rangeOf(found!, at, at + 'Glycerin'.length).map(String)).toEqual(['Glycerin']);
});
