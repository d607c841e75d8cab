/**
 * The finder's own few letters: enough to tell a cosmetic list from a recipe, never enough to read it. The
 * dictionary stays in the background, which has the final word. Word parts follow the INCI naming grammar and
 * are tried on lower-case text; `npm run coverage` prints how many printed names they know.
 */

/** Parts of names that cosmetics print and food, pills and pet food hardly do. */
const chemical =
  'phenoxye|parfum|fragrance|aqua|linalo|limonen|citr(?:al|onell)|geraniol|coumarin|eugenol|farnes|ionone|cinnam|hexyl|hexan|benzyl|butyl|ethyl|propyl|deca?[ny]|dodec|oleyl|stear|palmit|laur(?:[yo]l|eth)|coc(?:o[-y ]|o?am|oate)|cet(?:yl|ear|ri)|behen|myrist|capr[yi]|lanol|meth?icon|silicone-|silox|silsesq|silano|quater|[mk]onium|hydroly[sz]|hydroxy|acryl|polymer|paraben|edta|glycol(?!at)|glyceryl|glucosid|sorbitan|hyaluron|ceramide|peptide|panthen|allanto|bisabol|squala|carbomer|petrolat|paraffin|mineral oil|cera |peg-|ppg-|eth-\\d|c\\d\\d-\\d|ci ?\\d{5}|thiazol|betain|taurate|isethi|sarcos|sulfo[snac]|amphoa|amido|ferment|lysate|sphing|pyrithi|avobenz|octocryl|octisal|homosal| pca|denat|polygly|poloxam|levulin|olivate|phytate|benzoph|adenosine|phlogop|hectori|borosil';

/** Plants under the names only cosmetics print. */
const botanical =
  'butyrosp|simmonds|argania|amygdal|persea|helianth|ricinus|cocos n|barbadens|olea eur|limnanth|sclerocar|cartham|pelargon|lavandul|hamamel|chamom|centella|theobroma|triticum|glycine soja|camellia|rosmarin|oryza|avena|vitis|citrus a|mangifera|melaleuca|rosa [cdm]|adansonia|macadamia [it]|calendula';

/** The same in plain English, on the labels of small makers. */
const plain = 'shea|jojoba|argan|castor oil|essential oil|witch hazel|emulsifying wax|saponif|rosehip';

/** The most frequent names in other scripts labels are printed in. */
const otherScripts =
  '정제수|글리세|글라이콜|메티콘|추출물|페녹시|애씨드|향료|알코올|판테놀|하이드롤|グリセリン|エキス|チコン|フェノキシ|香料|セテアリ|加水分解|トコフェ|クロリド|甘油|二醇|苯氧|香精|提取物|硅氧|黄原胶|生育酚|鲸蜡|泛醇|水解|глицерин|экстракт|екстракт|пантенол|феноксиэт|отдушка|جليسرين|مستخلص|γλυκερ|גליצרין|กลีเซอ';

/** One pass over a page's lower-case letters with this marks the lines worth a look. */
export const nameHints = new RegExp(`${chemical}|${botanical}|${plain}|${otherScripts}`, 'g');
const cosmetic = new RegExp(nameHints.source);
/** Names of pressed oils and butters: a list may be one of them alone. */
export const botanicalName = new RegExp(botanical);
export const plainName = new RegExp(plain);

/** Names that cosmetics share with food, pills and pet food, though some look like theirs alone. */
const shared =
  /^(?:(?:vegetable )?glycerine?|(?:purified |distilled )?water|eau|alcohol|\S+ acid|.*tocopher\S+|(?:sodium|potassium|calcium|magnesium|zinc|ammonium|aluminum) (?:benz|sorb|citr|chlo|hydrox|phos|sul|glucon|lact|bi|meta|carb|ox|steara|stearoyl l|alg|nit|ery|prop|tri|acid|lauryl)\S*.*|.* gum|.*cellulose.*|silic.*|.*lecithin|(?:prop|poly)\S+ glycol.*|polysorbate.*|titanium dioxide|iron oxides?|mica|talc|kaolin|.*dextrin|trehalose|.*itol|urea|caffeine|menthol|camphor|niacinamide|biotin|l?-?(?:arg|gly|ser|lys|prol|alan|thre|val|leuc)\S*ine|beeswax|honey|sucrose|glucose|bh[at]|(?:coconut|sunflower|olive|almond|fish|palm|peppermint|eucalyptus|\w+seed) oil|\S+ (?:wax|oxide|sulfate|palmitate)|.*glycerides|.*(?:inosinate|guanylate|gallate|maltol)|hydroly[sz]ed (?:corn|soy|veg|collagen).*|.*collagen.*|(?:methyl|propyl)paraben|benzyl alcohol|\S*hyaluronic acid|.*disodium edta|水|вода)$/;

/** Endings of chemical and plant names. */
const likely =
  /(?:oil|extract|butter|juice|powder|protein|starch|distillate|keratin|silk|acids?|[a-z]{3}(?:ate|ine|yl|ol|one|ide|ose|ite|ane|ene|in|um|il)|酸|油|油脂|オイル|エキス|소듐|오일)$/;

/** What only food, drinks, pills, supplements, pet food and recipes print. */
const edible =
  /\b(?:sugar|salt|flours?|milk|eggs?|butter|cheese|chicken|beef|pork|lamb|fish|meat|liver|tomato|onion|garlic|potato|chocolate|raisins|peanuts|oats|barley|wheat|corn|soybean|molasses|yeast|vinegar|cream|whey|casein|syrup|cocoa|palm|canola|spices?|flavou?r\w*|emulsifiers?|preservatives?|raising|sweeteners?|colou?rs?|e\d{3}|starch|dextrose|vitamins?|thiamine?|riboflavin|pyridoxine|niacin|choline|selenite|meal|broth|isolate|concentrate|capsules?|gelatin|hypromellose|\w*povidone|croscarmellose|lactose|glycolate|tablets?|fd&c|sucralose|aspartame|stevia|pectin|taurine|magnesium stearate|cups?|tbsp|tsp|farine|lait|sel|zucker|salz|mehl|zucchero|farina|latte|harina|leche|sal)\b|сахар|соль|砂糖|食塩|설탕|소금/;

const lookAlikes = new Map([...'аеорсухіјвкмнтѕ'].map((letter, i) => [letter, 'aeopcyxijbkmhts'[i]!]));

/** Lower case; Cyrillic look-alikes inside Latin names become Latin. Each letter keeps its place. */
export function fold(text: string): string {
  let low = text.toLowerCase();
  if (low.length !== text.length) low = text.replace(/[A-ZÀ-ÞА-Я]/g, (letter) => letter.toLowerCase());
  return /[Ѐ-ӿ]/.test(low)
    ? low.replace(/[^\s,;:]+/g, (word) =>
        /[a-z]/.test(word) ? word.replace(/[Ѐ-ӿ]/g, (letter) => lookAlikes.get(letter) ?? letter) : word,
      )
    : low;
}

export type NameClass = 'cosmetic' | 'shared' | 'likely' | 'edible' | 'other';

/** What kind of list a lower-case name speaks for. `other` is any name these few letters do not know. */
export function classOf(name: string): NameClass {
  const text = name.replace(/[\u00ad\u200b-\u200f\u2060\ufeff\v]/g, '');
  const core = text
    .replace(/\([^)]*\)?|\[[^\]]*\]?|[\d.,]+ ?%|[*†‡°.]+/g, '')
    .replace(/\s+/g, ' ')
    .trim();
  if (shared.test(core)) return edible.test(core) ? 'edible' : 'shared';
  if (cosmetic.test(text)) return 'cosmetic';
  if (edible.test(core)) return 'edible';
  if (core.split(/ ?[/\\] ?/).some((part) => shared.test(part))) return 'shared';
  return likely.test(core) ? 'likely' : 'other';
}

/** Water under its label names: a second one starts a second list. */
export const waterName =
  /^\W*(?:(?:purified|distilled|deionized) )?(?:aqua|water|eau|вода|정제수|水)(?![a-z])/;
