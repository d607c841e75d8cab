// What befalls a whole list on the way from the bottle to a shop's page: what is added to it, what joins its names. Where
// a way has forms of its own, each half of the labels has its own.
import { change, ofHalf, plain, said, type Way } from './making.ts';
import * as words from './wordings.ts';

/** A letter as it comes out where UTF-8 is read as Latin-1. */
const entities: Record<string, string> = { é: 'Ã©', è: 'Ã¨', ê: 'Ãª', ö: 'Ã¶', ü: 'Ã¼', ä: 'Ã¤', í: 'Ã­', ó: 'Ã³', á: 'Ã¡', ç: 'Ã§', ã: 'Ã£', '’': 'â€™', '–': 'â€“', '•': 'â€¢', '®': 'Â®', '°': 'Â°', '¹': 'Â¹' }; // biome-ignore format: pairs read best side by side

/** Ways that add to a label or join its names. */
export const onLabels: Record<string, Way> = {
  'a mark with its legend': (making, tools) => {
    const mark = ofHalf(tools, ['*', '**', '¹', '°', '•', '+', '(1)'], ['*', '***', '²', '†', '^', '#', '(*)', '[1]']);
    const before = tools.draw() < 0.2 && mark.length === 1;
    change(making, tools.draw, 4, (name) => (before ? mark + name : name + mark));
    making.tail += `${ofHalf(tools, ['. ', ' ', '\n', '.\n'], ['; ', ' | ', ', ', '\n\n'])}${mark}${ofHalf(tools, ['', ' ', '= '], ['', ': ', ' – '])}${said(tools, words.legends)}${ofHalf(tools, ['.', ''], ['', ';'])}`;
  },
  'two marks with legends': (making, tools) => {
    const [one, two] = ofHalf(tools, [['*', '**'], ['¹', '²'], ['°', '*']], [['*', '†'], ['^', '*'], ['(a)', '(b)'], ['1', '2']]); 
    change(making, tools.draw, 3, (name) => name + one, (name) => plain(name) && /[a-z]$/.test(name));
    change(making, tools.draw, 3, (name) => name + two, (name) => plain(name) && /[a-z]$/.test(name));
    making.tail += `${ofHalf(tools, ['. ', '\n', ' '], ['\n\n', '; ', '. '])}${one}${ofHalf(tools, ['', ' '], [' = ', ' '])}${said(tools, words.legends)}${ofHalf(tools, [', ', '. ', ' '], [' / ', '\n', '; '])}${two}${ofHalf(tools, ['', ' '], [' = ', ' '])}${said(tools, words.legends)}`;
  },
  'allergens apart': (making, tools) => {
    const own = making.names.filter((name) => !['Limonene', 'Linalool', 'Citral', 'Parfum', 'Coumarin', 'Geraniol'].includes(name));
    making.printed = making.printed.filter((_, i) => own.includes(making.names[i]!));
    const words_ = said(tools, words.allergens);
    const three = ofHalf(tools, [['Limonene', 'Linalool', 'Citral'], ['Linalool', 'Coumarin']], [['Geraniol', 'Limonene'], ['Citral', 'Linalool', 'Coumarin']]);
    const isPerfume = /^(?:Parfum|Perfume|Fragrance \()/.test(words_) || words_ === 'Fragrance:';
    making.names = [...own, ...(isPerfume ? ['Parfum'] : []), ...three];
    const shut = words_.includes('[') ? ']' : words_.includes('(') ? ')' : '';
    if (/\*/.test(words_)) making.tail = `${making.sign}${words_}. *${ofHalf(tools, ['contains ', ''], ['Contains: ', 'includes '])}${three.join(', ')}${making.tail}`;
    else making.tail = `${isPerfume ? making.sign : '. '}${words_} ${three.join(', ')}${shut}${making.tail}`;
  },
  'what may be in it': (making, tools) => {
    const own = [...new Set([tools.more(), tools.more()])].filter((name) => !making.names.includes(name));
    const said_ = said(tools, words.mayContain);
    making.names.push(...own);
    making.tail = `${ofHalf(tools, ['. ', ' ', ', '], ['\n', '; ', '. '])}${said_} ${own.join(', ')}${said_.startsWith('[') ? ']' : ''}${making.tail}`;
  },
  'the last of it': (making, tools) => {
    const at = Math.floor(making.printed.length * 0.7);
    making.printed.splice(at - 1, 2, `${making.printed[at - 1]}${ofHalf(tools, ['. ', ', '], ['; ', '\n'])}${said(tools, words.lessThan)} ${making.printed[at]}`);
  },
  'named as drugs are': (making, tools) => {
    making.head = ofHalf(tools, ['Active Ingredient: Pyrithione Zinc 1%. Inactive Ingredients: ', 'Active ingredients: Salicylic Acid (3%). Inactive ingredients: '], ['Active Ingredient (w/w): Ketoconazole 1%\nInactive Ingredients: ', 'Drug Facts Active ingredient Coal Tar 0.5% Inactive ingredients ']);
    making.names.push(/Pyri|Sali|Keto|Coal/.exec(making.head)![0] === 'Pyri' ? 'Zinc Pyrithione' : /Salicylic Acid|Ketoconazole|Coal Tar/.exec(making.head)![0]);
  },
  'blends named together': (making, tools) => {
    const at = Math.floor(tools.draw() * (making.printed.length - 1));
    making.printed.splice(at, 2, `${making.printed[at]} ${said(tools, words.blends)} ${making.printed[at + 1]}`);
  },
  numbered: (making, tools) => {
    making.sign = ofHalf(tools, [', ', '\n'], [' ', '\n']);
    making.printed = making.printed.map((name, i) => ofHalf({ ...tools, draw: () => 0 }, [`${i + 1}. ${name}`], [`${i + 1}) ${name}`]));
  },
  'quoted by a program': (making, tools) => {
    const [open, sign, shut] = ofHalf(tools, [['["', '","', '"]'], ['"', ', ', '"']], [['[\'', "', '", "']"], ['“', '”, “', '”'], ['{"ingredients":"', ', ', '"}']]);
    making.head += open; making.sign = sign; making.tail = shut + making.tail;
  },
  'leftovers of a page': (making, tools) => {
    const [head, tail] = ofHalf(tools, [['<p>', '</p>'], ['<strong>', '</strong>'], ['<div class="tab">', '</div>'], ['&lt;p&gt;', '&lt;/p&gt;']], [['<b>', '</b>'], ['<span style="color:#333">', '</span><br />'], ['<li>', '</li>'], ['<!-- list --><p>', '</p>&nbsp;']]);
    making.head = head + making.head; making.tail += tail;
    making.sign = ofHalf(tools, [', ', ',&nbsp;', ',<br>', ', \u200b'], [',<br/>', ', &nbsp;', ',\u00a0', '&#44; ', ' &bull; ']);
  },
  'in another encoding': (making, tools) => {
    making.sign = ofHalf(tools, [', ', ' â€¢ ', ',Â '], [' Â· ', ', ', ',\u00c2\u00a0', ' \ufffd ']);
    change(making, tools.draw, 2, (name) => `${name}${ofHalf(tools, ['®', '°', 'Â '], ['’', '¹', '\ufffd'])}`);
    making.tail += `${ofHalf(tools, ['. ', '\n'], [' ', '. '])}${said(tools, words.tails)}`;
    for (const part of ['head', 'tail'] as const) making[part] = [...making[part]].map((letter) => entities[letter] ?? letter).join('');
    making.printed = making.printed.map((name) => [...name].map((letter) => entities[letter] ?? letter).join(''));
  },
  'a code': (making, tools) => { making.tail += `${ofHalf(tools, ['. ', ' ', ', '], [' - ', '\n', ' '])}${said(tools, words.codes)}`; },
  'what follows on the page': (making, tools) => { making.tail += `${ofHalf(tools, ['. ', '\n', '.\n\n'], ['. ', ' | ', '\n'])}${said(tools, words.tails)}`; },
  'two things that follow': (making, tools) => { making.tail += `${ofHalf(tools, ['.\n', '\n'], ['\n\n', '. '])}${said(tools, words.tails)}${ofHalf(tools, [' ', '\n'], [' ', '\n'])}${said(tools, words.tails)}`; },
  'a set of two': (making, tools) => {
    const at = Math.floor(making.printed.length / 2);
    const after = ofHalf(tools, [': ', '\n'], [' – ', ':\n']);
    const [one, two] = [said(tools, words.kits), said(tools, words.kits)].map((kit) => kit.replace(/:$/, ''));
    making.head = `${one}${after}${making.head}`;
    making.printed.splice(at, 2, `${making.printed[at]}${ofHalf(tools, ['\n', '.\n\n'], [' // ', '. '])}${two}${after}${making.printed[at + 1]}`);
  },
  'other signs between': (making, tools) => { making.sign = ofHalf(tools, ['; ', ' • ', '\n', ' - ', ' ,', '\t'], [' · ', ' | ', ' – ', ',\n', ' * ', '、', ' ; ', '.  ']); },
  'broken where the column ends': (making, tools) => {
    const text = making.printed.join(', ').split(' ');
    const width = ofHalf(tools, [28, 40], [22, 34]);
    let line = 0;
    making.printed = [text.map((word) => { line += word.length + 1; if (line > width) { line = word.length; return `\n${word}`; } return ` ${word}`; }).join('').trim()];
  },
  'a comma lost or doubled': (making, tools) => {
    const at = Math.floor(tools.draw() * (making.printed.length - 1));
    making.printed.splice(at, 2, making.printed[at] + ofHalf(tools, [' ', '. ', ',, '], [', ,', ' . ', ': ']) + making.printed[at + 1]);
  },
  capitals: (making) => { making.printed = making.printed.map((name) => name.toUpperCase()); },
}; // biome-ignore format: one line a way
