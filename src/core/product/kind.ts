import type { Use } from '../names/entry.ts';
import { type OtherGoods, type ProductFacts, type ProductKind, usualUse } from './product.ts';

/** What the words around a product name: one kind, goods that are no single product of a wash day, or neither. */
export type Recognised = { kind: ProductKind | OtherGoods | 'unknown'; use: Use | 'none' };

/**
 * Words by which shops name a kind of hair product, in a dozen languages, the more telling first: a "leave-in
 * conditioner" is a leave-in. Tried on lower-case text. Common practice; the reader can correct it.
 */
const words: [ProductKind, RegExp][] = [
  ['pre-wash', /pre-?\s?(?:wash|shampoo|poo)|avant-shampo|vor der wäsche|pré-shampo/],
  ['bond-treatment', /\bbond(?:ing|s)?\b|bond.?(?:build|repair)|plex\b/],
  [
    'protein-treatment',
    /(?:protein|keratin|amino|peptide)\S* (?:\S+ )?(?:treatment|mask|reconstructor|filler|kur|cure|tratamiento)|reconstruct|strengthening treatment|proteinkur|keratinkur/,
  ],
  ['refresh-spray', /refresh|second.day|reviv(?:er|ing)|(?:curl|hair) mist|auffrisch|rafra[iî]chi|rinfresc/],
  [
    'leave-in',
    /leave.?in|leave.?on|detangl|sans rin[cç]age|ohne ausspülen|senza risciacquo|sin (?:aclarado|enjuague)|sem enxágue|bez spłukiwania|несмываем|démêlant/,
  ],
  [
    'deep-conditioner',
    /deep.?condition|intensive condition|\bmas(?:k|que|ke|ka|cara)\b|maschera|mascarilla|máscara|haarmaske|haarkur|naamio|hajpakolás|маска|ヘアマスク|헤어 ?팩|헤어마스크|发膜|髮膜|hair treatment/,
  ],
  [
    'cleanser',
    /s[hc]h?[aä]mp[ou]|šampon|szampon|shampoing|champú|champô|şampuan|co-?wash|low-?poo|cleans(?:er|ing)|hair wash|шампу|шампоан|シャンプー|샴푸|洗[发髮]|שמפו|شامبو/,
  ],
  [
    'conditioner',
    /condition|spülung|après-shampo|baume démêl|balsam|acondicionador|condicionador|amaciador|odżywka|kondicionér|кондиционер|бальзам|балсам|コンディショナー|リンス|컨디셔너|린스|护发素|護髮|conditioning rinse|hair rinse/,
  ],
  ['foam', /\bfoam|mousse|\bmus\b|schaum|schiuma|espuma|piank|мусс|пяна|ムース|무스/],
  ['gel', /\bgels?\b|gelée|\bjelly\b|\bżel|\bjel\b|гель|гел\b|ジェル|젤/],
  ['oil', /\boils?\b|haaröl|\böl\b|\bhuile|\bolio\b|aceite|óleo|olejek|\bolej|масло|オイル|오일|精油|护发油/],
  [
    'cream',
    /\bcr[eè]am|cr[eèé]me\b|\bcrema?\b|\bmilk\b|\blait\b|butter|pudding|custard|smoothie|krem\b|krém|крем|クリーム|크림|styling lotion|curl lotion/,
  ],
];

/** Goods that are not for the hair, whatever else their name says. */
const notHair =
  /\b(?:face|facial|body|hands?|foot|feet|lips?|eyes?|nails?|skin|shav\w+|beard|shower|bath|dish|laundry|dogs?|cats?|pets?|tooth\w*|deodorant|perfume|lipstick|sunscreen)\b|gesicht|körper|hände|dusch|visage|\bcorps\b|\bmains\b|douche|\bviso\b|\bcorpo\b|\bmani\b|\brostro\b|\bcara\b|\bmanos\b|twarz|ciał|лица|тела|рук\b/;
const hair =
  /hair|curl|coil|wav(?:y|es)|\blocks?\b|scalp|haar|locken|cheveu|boucl|capell|ricci|cabel|rizo|cacho|włos|vlas|коси|волос|къдр|ヘア|髪|헤어|모발|头发|髮/;

/**
 * The kind of hair product that the words of a page name: its name first, then its title and breadcrumb.
 * Undefined where they name none, or goods that are not for the hair.
 */
export function kindOf(facts: Pick<ProductFacts, 'name' | 'category'>): ProductKind | undefined {
  const name = facts.name.toLowerCase();
  const around = (facts.category ?? '').toLowerCase();
  if (notHair.test(name) && !hair.test(name) && !/s[hc]h?[aä]mp[ou]/.test(name)) return undefined;
  const named = words.find(([, word]) => word.test(name))?.[0];
  const placed =
    notHair.test(around) && !hair.test(around) ? undefined : words.find(([, word]) => word.test(around))?.[0];
  // "Mask" says little of what it is for: a shelf of treatments says more
  if (named === 'deep-conditioner' && placed?.endsWith('-treatment')) return placed;
  if (named && !generic.has(named)) return named;
  // "Curl Cream" is plain; "Rich Cream" is a hair cream only on a shelf for hair
  if (named && (hair.test(name) || hair.test(around) || placed)) return named;
  return named ? undefined : placed;
}

const generic = new Set<ProductKind>(['cream', 'gel', 'oil', 'foam']);

/** The same with an answer for everything. `use` is none where there is nothing to rinse off or leave on. */
export function recognise(facts: Pick<ProductFacts, 'name' | 'category'>): Recognised {
  const kind = kindOf(facts);
  return kind ? { kind, use: usualUse[kind] } : { kind: 'unknown', use: 'none' };
}

/** The facts of a page with kind and use, where its words say them. What is known already stays. */
export function withKind(facts: ProductFacts): ProductFacts {
  const kind = facts.kind ?? kindOf(facts);
  if (!kind) return facts;
  return { ...facts, kind, use: facts.use ?? usualUse[kind] };
}
