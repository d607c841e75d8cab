/**
 * The finder's own few letters: enough to tell a cosmetic list from a recipe, never enough to read it. The
 * dictionary stays in the background, which has the final word. Word parts follow the INCI naming grammar and
 * are tried on lower-case text; `npm run coverage` prints how many printed names they know.
 */

/** Parts of names that cosmetics print and food, pills and pet food hardly do. */
const chemical =
  'phenox|parfum|fragr|aqua|linalo|limonen|citr(?:al|onell)|geranio|coumar|eugen|farnes|ionone|cinnam|hex[ay]|benzyl|butyl|ethyl|propyl|dec[ay]|dode|oley|stear|palmit|laur[eoy]|coc(?:o[- y]|o?am|oate)|cet(?:yl|ear|ri)|behen|myrist|capr[yi]|lanol|meth?icon|silicone-|silox|silsesq|silan|quater|[mk]onium|hydrol|hydrox[^i]|acryl[ao]|polymer|paraben|edta|glycol(?!at)|glyceryl|glucosid|sorbitan|hyalur|ceramid|peptide|panthen|allanto|bisab|squala|carbom|petrol|paraf|mineral oil|cera |p[ep]g-|eth-\\d|c\\d\\d-\\d|ci ?\\d{5}|thiazol|betain|taur[ai]t|isethi|sarcos|sulfo[snac]|ampho|amido|ferment(?!a)|lysat|sphing|pyrithi|avoben|octocr|octisal|homosa| pca|denat|polygl|poloxam|phytat|phlogop|hector|borosil';

/** Plants under the names only cosmetics print. */
const botanical =
  'butyrosp|simmonds|argania|amygdal|persea|helianth|ricinus|cocos n|barbadens|olea eur|limnanth|cartham|lavandul|hamamel|chamom|centella|triticum|glycine soja|camellia|rosmarin|oryza|avena|vitis|citrus a|mangifera|melaleuca|rosa [cdm]|calendula';

/** The same in plain English, on the labels of small makers. */
const plain = 'shea|jojoba|argan|castor oil|essential oil|witch hazel|emulsifying wax|saponif|rosehip';

/** The most frequent names in other scripts labels are printed in. */
const otherScripts =
  '정제수|글리세|글라이콜|메티콘|판테놀|애씨드|추출물|페녹시|향료|알코올|グリセリン|エキス|チコン|フェノキシ|香料|加水分解|甘油|二醇|苯氧|香精|提取物|硅氧|水解|глицер|экстракт|екстракт|пантен|отдушк|спирт|جليسر|مستخلص|γλυκερ|กลีเซ';

/** One pass over a page's lower-case letters with this marks the lines worth a look. */
export const nameHints = new RegExp(`${chemical}|${botanical}|${plain}|${otherScripts}`, 'g');
/** Names of pressed oils and butters: a list may be one of them alone. */
export const botanicalName = new RegExp(botanical);
export const plainName = new RegExp(plain);

/** Names that food, pills and pet food print too, though parts of them look otherwise. */
const alsoEdible =
  /^(?:ammonium (?:hydr|chl|sulfate|bi|carb|nit|phos)|(?:propy|polye)\S+ glycol|polysorb|.*glycerides|.*cellulose|sodium (?:lauryl sulf|stearoyl l)|stearic|palmitic|\S+ palmitate|(?:calcium|magnesium|zinc) stea|hydroly[sz]ed (?:corn|soy|veg|collag)|.*collagen|(?:meth|eth|prop|but)ylparaben|benzyl alc|.*hyaluron(?:ic|ate)|ceramides|methylsulf|simethic|isopropyl alc|benzalk|evening prim|polyvinyl alc|hydroxypropyl (?:meth|cell)|.*(?:disodium|calcium) edta|edetate|propyl gall|ethyl (?:malt|van|but)|polyglycerol|sorbitan mono|methacrylic|triethyl cit|dibutyl|diethyl ph)/;

/** Names that cosmetics share with others, and the usual endings of chemical and plant names. */
const likely =
  /^(?:eau|wat.*|mica|talc|silica|bh[at]|urea|honey|kaolin|alcohol|biotin|beeswax|.* gum|.* wax|水|вода|(?:sodium|potassium|zinc|iron|titanium) .*|pca|pvp|ptfe|aroma|caramel|alumina|quartz|pumice|aloe vera|royal jelly|[a-z]*(?:chitos|dextr|pullul|carragee|gluc|mann)an)$|(?:[a-z]{3}-\d+|oxides?|hcl|pvp|earth|clay|ash|cera|beeswax|lipids?|esters?|[a-z]{3}ase|oils?|extract|butter|juice|powder|protein|water|starch|keratin|silk|acids?|[a-z]{3}(?:ate|ine|yl|ol|one|ide|ose|ite|[ae]ne|in|um|il)s?|酸|油|脂|オイル|エキス|오일)$/;

/** What only food, drinks, pills, supplements, pet food and recipes print: beginnings of words. */
const edible =
  /(?:^|[^a-z])(?:sugar|salt\b|flour|milk|eggs?\b|(?<!(?:seed|nut|kernel|fruit) )butter$|cheese|chicken|beef|pork|lamb\b|fish|meat|tomato|onion|garlic|potato|chocolate|peanut|oats|barley|wheat|corn\b|soybean|yeast|vinegar|cream|whey|casein|syrup|cocoa|palm\b|canola|spice|flavo|emulsifi|preserv|sweeten|colou?r|e\d{3}\b|starch|dextrose|vitamin|thiamin|riboflavin|pyridox|niacin\b|choline|selenite|meal\b|broth|isolate|concentr|capsul|gelatin|hypromel|\w*povidone|croscarm|lactose|glycolate|tablet|magnesium stear|silicon diox|monohydrat|shellac|fd&c|dibasic|dicalcium|picolin|cobalamin|steviol|probiot|selenomet|chondroit|fumarate|\(as [a-z]|sucralose|stevia|pectin|taurine|cups?\b|tbsp|tsp|farin|lait\b|sel\b|zucker|salz|mehl|zucch|latte\b|harina|leche|сахар|соль|砂糖|食塩|설탕|소금)/;

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

export type NameClass = 'cosmetic' | 'likely' | 'edible' | 'other';

/** What kind of list a lower-case name speaks for. `other` is any name these few letters do not know. */
export function classOf(name: string): NameClass {
  const text = name.replace(/[\u00ad\u200b-\u200f\v]/g, '');
  const core = text
    .replace(/\([^)]*\)?|\[[^\]]*\]?|[\d.]+ ?%|[*†°.]+/g, '')
    .replace(/\s+/g, ' ')
    .trim();
  if (!alsoEdible.test(core) && text.search(nameHints) >= 0) return 'cosmetic';
  if (edible.test(core)) return 'edible';
  return alsoEdible.test(core) || core.split(/ ?[/\\] ?/).some((part) => likely.test(part))
    ? 'likely'
    : 'other';
}

/** Water under its label names: a second one starts a second list. */
export const waterName =
  /^\W*(?:(?:purified|distilled|deionized) )?(?:aqua|water|eau|вода|정제수|水)(?![a-z])/;
