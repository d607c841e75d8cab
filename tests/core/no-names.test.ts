import { describe, expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readLabel } from '../../src/core/reading/reading.ts';

const lookup = createLookup(entries, patterns, limits);
const list = 'Aqua, Cetearyl Alcohol, Glycerin, Behentrimonium Chloride, Parfum, Limonene, Citric Acid';
const unread = (text: string) =>
  readLabel(text, lookup).mentions.flatMap(({ raw, found }) => (found.how === 'none' ? [raw] : []));

// What shops and bottles print after a list; written for this test, invented throughout.
const tails = `
. Fabriqué en France
. Senza siliconi. Etico
. Fără parabeni
. Kann Spuren von Nüssen enthalten
. Hergestellt in Deutschland
. Hecho en España
. **Contains naturally occurring allergens
. ** composants naturels des huiles essentielles
 *Organic ingredients. 98% of total is of natural origin
. 99% naturally derived ingredients
. 100% du total est d'origine naturelle
. Contains egg
. Enthält Weizen
. Contient du lait
. May contain traces of nuts
. Evitar el contacto con los ojos. Uso externo
. Tested under dermatological control
. Shake well before use
. Store below 25 °C
. Always check the pack for the latest list
. Exp: see crimp
. PZN 12345678
. PAO 12 months
. Patent pending
. US Patent 1234567
. Distributed by Example Ltd, London
. Net wt 8 oz / 236 ml
. pH 5.5
. © 2021 Example
. www.example.com
. 0% parabens, 0% silicones
. † derived from coconut
. ◊ Fair trade
. Rev. 04/23
. PR-118203
 08/2026
. Ver más
. Mehr anzeigen
. Copy to clipboard
. Non testato su animali
. If irritation occurs, discontinue use
. *procedente de aceites esenciales
. °luonnonmukaisesti viljelty
. ¹ din agricultură ecologică
. *βιολογικής καλλιέργειας
. Silicone free, colour safe, suitable for vegans
. Parfümfrei
. pflegt das Haar, ohne zu beschweren
, and love
, humectant, softens, fine lines
. Restorative treatment mask
. (F.I.L. C12345/1)
. *issu de l'agriculture biologique **transformé à partir d'ingrédients biologiques
. **obtenus à partir d’ingrédients biologiques
. *aus kbA
. *składnik pochodzący z upraw ekologicznych
. *ingredienti provenienti da agricoltura biologica
`
  .split('\n')
  .filter(Boolean);

describe('what stands after a list and is no name is no mention', () => {
  it.each(tails)('%s', (tail) => {
    expect(unread(list + tail)).toEqual([]);
    expect(readLabel(list + tail, lookup).mentions.length).toBeGreaterThanOrEqual(7);
  });
});

it.each(['Zyraxyl', 'Velmora Honey', 'Lait de chèvre', 'Zyrax Complex B'])(
  '%s is still asked about',
  (name) => {
    const printed = `${list.replace('Parfum', `${name}, Parfum`)}`;
    expect(readLabel(printed, lookup).mentions.map(({ raw }) => raw)).toContain(name);
  },
);

// Written before the code; the marks and wordings of issue and labels, invented lists.
it.each<[printed: string, names: string[]]>([
  ['Linalool *kbA', ['Linalool']],
  ['Parfum *kbA', ['Parfum']],
  ['Parfum *z upraw ekologicznych', ['Parfum']],
  ['Parfum *da agricoltura biologica', ['Parfum']],
  ['Linalool². ¹from organic farming', ['Linalool']],
  ['Linalool² ¹from organic farming ²natural constituents of essential oils', ['Linalool']],
  ['Glycerin (1), Parfum (2) (1) aus kbA (2) aus natürlichen ätherischen Ölen', ['Glycerin', 'Parfum']],
  ['Glycerin+, Parfum +issu du commerce équitable', ['Glycerin', 'Parfum']],
  ['Glycerin °, °Parfum ° = de cultivo ecológico', ['Glycerin', 'Parfum']],
  ['*Glycerin, **Parfum', ['Glycerin', 'Parfum']],
  ['Parfum ◊van biologische teelt', ['Parfum']],
])('%s: legends are cut from the name before them, without a mend', (printed, names) => {
  const found = readLabel(`Aqua, Cetearyl Alcohol, Panthenol, ${printed}`, lookup).mentions.slice(3);
  expect(found.map(({ found: { how, ...rest } }) => [how, 'name' in rest ? rest.name : '?'])).toEqual(
    names.map((name) => ['exact', name]),
  );
});

it.each(['Tocopherol (+)-Limonene', 'Vitamin C + E', 'Glycerin *Organic Aloe Barbadensis Leaf Juice'])(
  '%s: a mark before a name cuts nothing away',
  (printed) => {
    const { mentions } = readLabel(`${list}, ${printed}`, lookup);
    expect(mentions.length).toBeGreaterThan(7);
  },
);

it('what is made of plants to stand for a protein is not read as that protein', () => {
  expect(unread(`${list}, Plant keratin`)).toEqual(['Plant keratin']);
});

it('a plant by its bare name is read among names and nowhere else', () => {
  expect(unread(`${list}, Rosemary, Tea Tree`)).toEqual([]);
  expect(unread('Rosemary')).toEqual(['Rosemary']);
});

it.each([
  ['Hydrolyzed _Wheat_ Protein', 'hydrolyzed'],
  ['C.I. 42090', undefined],
  ['CI. 15985', undefined],
  ['Citric Acid Monohydrate', undefined],
  ['Vit. C', undefined],
  ['Macrogol 400', undefined],
  ['Polyoxyl 40 Stearate', undefined],
  ['Dibasic Sodium Phosphate', undefined],
])('%s is read as printed', (name, kind) => {
  const mention = readLabel(`Aqua, ${name}, Parfum`, lookup).mentions[1]!;
  expect(mention.found.how).toMatch(/exact|alias|pattern/);
  expect(mention.protein?.kind).toBe(kind);
});

it.each([
  [
    '全成分：水、グリセリン、BG、セテアリルアルコール、ベヘントリモニウムクロリド、加水分解ケラチン、香料、クエン酸',
    8,
    'hydrolyzed',
  ],
  [
    '전성분: 정제수, 글리세린, 다이메티콘, 세테아릴알코올, 하이드롤라이즈드밀단백질, 판테놀, 향료',
    7,
    'hydrolyzed',
  ],
  ['成分：水、甘油、鲸蜡硬脂醇、聚二甲基硅氧烷、水解小麦蛋白、香精、苯氧乙醇', 7, 'hydrolyzed'],
])('%s', (label, count, kind) => {
  const { mentions } = readLabel(label, lookup);
  expect(mentions.map(({ found }) => found.how)).toEqual(Array.from({ length: count }, () => 'alias'));
  expect(mentions.some(({ protein }) => protein?.kind === kind)).toBe(true);
});

// INCI names a copolymer by its monomers with slashes between them (Personal Care Products Council, naming conventions; from memory).
it.each([
  'Glycerin/Oxybutylene Copolymer Stearyl Ether',
  'Glycerin / Oxybutylene Copolymer Stearyl Ether',
  'Linalool/Zyraxyl Copolymer',
  'Styrene/Zyraxyl Copolymer/Zyraxyl Copolymère',
  'Glycerin/Zyraxyl Crosspolymer',
])('no polymer is read as the first of its monomers: %s', (name) => {
  const [, mention] = readLabel(`Aqua, ${name}, Parfum`, lookup).mentions;
  expect(mention).toMatchObject({ raw: name });
  expect(mention!.moisture ?? []).toEqual([]);
  expect(mention!.found.how).not.toMatch(/exact|alias/);
});

it.each([
  ['Styrene/Acrylates Copolymer/Styrène/Acrylates Copolymère', 'Styrene/Acrylates Copolymer'],
  ['Copolymère Styrène/Zyraxyl/Styrene/Acrylates Copolymer', undefined],
  ['VP / VA Copolymer / Copolymère VP / VA', 'VP/VA Copolymer'],
  ['VP/VA Copolymer/Copolymère', 'VP/VA Copolymer'],
])('a polymer in two languages is read whole: %s', (printed, name) => {
  const [, mention] = readLabel(`Aqua, ${printed}, Parfum`, lookup).mentions;
  if (name) expect(mention!.found).toMatchObject({ how: 'exact', name });
  else expect(mention!.found).not.toMatchObject({ how: 'exact', name: 'Styrene' });
});

it('one name in two languages is still read by either', () => {
  const [first, second] = readLabel('Aqua/Eau/Zyraxyl, Glycerin / Acrylates Copolymer', lookup).mentions;
  expect([first!.found.how, second!.found.how]).not.toContain('none');
});
