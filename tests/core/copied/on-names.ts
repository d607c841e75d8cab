// What befalls single names on the way from the bottle to a shop's page: what people, programs and readers of pictures
// do to them. Where a way has forms of its own, each half of the labels has its own.
import { pick } from '../draws.ts';
import { colours, instead, plants } from './also-called.ts';
import { change, ofHalf, plain, said, type Tools, type Way } from './making.ts';
import * as words from './wordings.ts';

const plantOf = (name: string) =>
  Object.keys(plants).find((latin) => name.toUpperCase().startsWith(`${latin} `));

/** COCOS NUCIFERA OIL as labels write it: Latin and plain name in many orders. */
function ofPlant(name: string, tools: Tools): string {
  const latin = plantOf(name)!;
  const part = name.slice(latin.length + 1);
  const [first, ...rest] = name.slice(0, latin.length).split(' ');
  const written = `${first} ${rest.join(' ').toLowerCase()}`;
  const own = plants[latin]!;
  return ofHalf(
    tools,
    [`${name.slice(0, latin.length)} (${own}) ${part}`, `${own} ${part} (${written})`, `${written} (${own.toLowerCase()}) ${part.toLowerCase()}`, `${name} (${own} ${part})`, `${own} (${written}) ${part}`, `${written} ${part.toLowerCase()}`],
    [`${name.slice(0, latin.length)} (${own} ${part})`, `${written} L. ${part}`, `${own} ${part} [${name.slice(0, latin.length)}]`, `${name} / ${own} ${part}`, `${written} (${own}) ${part}*`, `${name.slice(0, latin.length)}(${own})${part}`],
  );
} // biome-ignore format: one line a half

function ofColour(name: string, tools: Tools): string {
  const number = name.slice(3);
  const own = colours[number];
  const both = own ? [`CI ${number} (${own})`, `${own} (CI ${number})`] : [];
  return ofHalf(
    tools,
    [`CI${number}`, `C.I. ${number}`, `Ci ${number}`, `CI-${number}`, ...both],
    [`C.I.${number}`, `Cl ${number}`, `CI: ${number}`, `ci ${number}`, `CI No. ${number}`, ...both.map((one) => one.replace(/[()]/g, ' / ').trim().replace(/ \/$/, '')), ...(own ? [`CI ${number}/${own}`] : [])],
  );
} // biome-ignore format: one line a half

const confused: [string, string][] = [
  ['w', 'vv'], ['fi', 'ﬁ'], ['fl', 'ﬂ'], ['S', '5'], ['B', '8'], ['t', 'f'], ['e', 'c'], ['h', 'b'], ['l', '|'], ['i', 'í'], ['D', 'O'], ['n', 'ri'], ['nn', 'rm'], ['y', 'v'], ['o', 'c'], ['u', 'ii'],
]; // biome-ignore format: pairs read best side by side

const british: [RegExp, string][] = [
  [/sulf/i, 'sulph'], [/\bAluminum/i, 'Aluminium'], [/Hydrolyzed/i, 'Hydrolysed'], [/Extract$/i, 'Extracts'], [/ Oil$/i, ' Oils'],
  [/Protein$/i, 'Proteins'], [/Amino Acids$/i, 'Aminoacids'], [/Glycol$/i, 'Glycols'], [/Glycerin$/i, 'Glycerine'], [/Chloride$/i, 'Chlorid'],
  [/ Acid$/i, 'acid'], [/\bCetyl/i, 'Cethyl'], [/Panthenol/i, 'Pantenol'], [/ph(?=en)/i, 'f'], [/Methyl/i, 'Metyl'],
]; // biome-ignore format: pairs read best side by side

/** Ways that change single names. */
export const onNames: Record<string, Way> = {
  'other names': (making, tools) => {
    making.printed = making.printed.map((name) => {
      const also = instead[name.toUpperCase()]?.split('|')[tools.half === 'looked at' ? 0 : 1]?.split('; ');
      return also ? pick(tools.draw, also) : name;
    });
  },
  'plants in two tongues': (making, tools) =>
    change(making, tools.draw, 9, (name) => ofPlant(name, tools), (name) => plain(name) && !!plantOf(name)),
  'colours by their index': (making, tools) =>
    change(making, tools.draw, 9, (name) => ofColour(name, tools), (name) => /^CI \d{5}$/.test(name)),
  'numbers joined otherwise': (making, tools) =>
    change(making, tools.draw, 4, (name) => name.replace(/-(?=\d)/, ofHalf(tools, [' ', '\u2011', '–', '-\n'], ['', ' – ', '\u2010', '--'])), (name) => /[A-Za-z]-\d+/.test(name)),
  'spelled in another land': (making, tools) =>
    change(making, tools.draw, 3, (name) => {
      const [from, to] = pick(tools.draw, british.filter(([from]) => from.test(name)));
      return name.replace(from, to);
    }, (name) => plain(name) && british.some(([from]) => from.test(name))),
  'read from a photo': (making, tools) =>
    change(making, tools.draw, 2, (name) => {
      const [from, to] = pick(tools.draw, confused.filter(([from]) => name.includes(from)));
      const at = pick(tools.draw, [...name.matchAll(new RegExp(from.replace('|', '\\|'), 'g'))]).index;
      return name.slice(0, at) + to + name.slice(at + from.length);
    }, (name) => plain(name) && name.length > 7 && confused.some(([from]) => name.includes(from))),
  'hyphens at line ends': (making, tools) =>
    change(making, tools.draw, 3, (name) => name.replace(/(?<=[a-z]{4})(?=[a-z]{4})/, ofHalf(tools, ['- ', '\u00ad', '-\n', '-<br>'], ['-\n ', '\u00ad\n', '¬ ', '-\r\n']))),
  'what it does': (making, tools) =>
    change(making, tools.draw, 4, (name) => {
      const doing = said(tools, words.doings);
      return ofHalf(tools, [`${name} (${doing})`, `${name} – ${doing}`, `${name} [${doing}]`], [`${name} (${doing[0]!.toUpperCase()}${doing.slice(1)})`, `${name} = ${doing}`, `${name} (as ${/^[a-z -]+$/.test(doing) ? doing : 'emollient'})`, `${name} {${doing}}`]);
    }),
  'where it comes from': (making, tools) => change(making, tools.draw, 3, (name) => `${name} (${said(tools, words.froms)})`),
  'praised before': (making, tools) =>
    change(making, tools.draw, 3, (name) => `${said(tools, words.befores)} ${name}`.replace('- ', '-'), (name) => /(?:Oil|Extract|Butter|Juice|Water|Wax|Powder)$/.test(name)),
  shares: (making, tools) =>
    change(making, tools.draw, 3, (name) => ofHalf(tools, [`${name} 2%`, `${name} (0.5 %)`, `${name} (2% w/w)`, `${name} 10,0 %`, `${name} q.s.`], [`5% ${name}`, `${name} (min. 10%)`, `${name} <0.1%`, `${name} - 1.5%`, `${name} (<1%)`, `${name} (0,2-0,5 %)`])),
  'numbers of registers': (making, tools) =>
    change(making, tools.draw, 2, (name) => ofHalf(tools, [`${name} (CAS 56-81-5)`, `${name} (E422)`], [`${name} (CAS No. 7732-18-5)`, `${name} [68424-85-1]`, `${name} (E 330)`])),
  'signs of trade': (making, tools) => change(making, tools.draw, 2, (name) => name + ofHalf(tools, ['®', '(R)', '&reg;', ' ™'], ['Â®', '(TM)', '&trade;', ' (®)'])),
  'one sentence in small letters': (making, tools) => {
    making.printed = making.printed.map((name, i) => (i === 0 && tools.half === 'looked at' ? name : name.toLowerCase()));
  },
}; // biome-ignore format: one line a way
