/**
 * The finder's own few words: enough to tell a cosmetic list from a recipe, never enough to read it.
 * The dictionary stays in the background, which has the final word.
 * Counted on public label counts by `npm run coverage`; the endings follow the INCI naming grammar.
 */

/** Names and name parts that cosmetics print and food, pills and pet food do not. */
const cosmetic = [
  // whole words that are frequent on labels
  'phenoxyethanol|parfum|fragrance|(?<!\\p{L})aqua(?!\\p{L})|linalool|limonene|citronell(?:ol|al)|geraniol|coumarin|eugenol|farnesol|ionone|cinnamal',
  'panthenol|allantoin|bisabolol|squal[ae]ne|carbomer|petrolatum|paraffinum|mineral oil|lanolin|cera (?:alba|microcrist\\p{L}*)|ozokerite|hydroxyacetophenone|chlorphenesin|climbazole|piroctone|pyrithione|tromethamine|adenosine|madecassoside|retinol|bakuchiol|ectoin|arbutin|ubiquinone',
  'ceramide|hyaluron|peptide-\\d|hydroly[sz]ed|hydroxypropyl(?!methyl)|betaine|glucoside|hydroxyethyl|cyclodextrin|saccharide gum|phospholipids|phytosterols|sphingosine',
  'avobenzone|octocrylene|octinoxate|octisalate|homosalate|benzophenone|butyl methoxydibenzoylmethane|triazine|fluorphlogopite|hectorite|borosilicate',
  // surfactants, quats, silicones, polymers, esters: by their endings
  '(?<!\\bam)[mk]onium|methosulfate|quaternium|laur(?:eth|oyl|amid)|coc(?:amid|oyl|oate|o-)|isethionate|taurate|sarcosin|sulfosuccinate|sulfoacetate|olefin sulfonate|(?:lauryl|coco|cetearyl|myreth|pareth) sulf|amphoacetate|amphodiacetate|amine oxide|amido\\p{L}+amine',
  'methicon|siloxane|silsesquioxane|crosspolymer|copolymer|polyisobutene|polybutene|polyquat|poloxamer|polyglyceryl|silanetriol|silylate|trimethylsiloxy',
  '(?:eth|ppg|peg|polyglycerin|bis-peg)-\\d|\\bc\\d\\d-\\d\\d|(?:cetyl|cetearyl|stearyl|behenyl|myristyl|lauryl|oleyl|benzyl|isopropyl|phen(?:yl)?ethyl|cinnamyl|cetostearyl|amyl) alcohol|alcohol denat|(?:octyl|hexyl|lanolin)\\p{L}*decanol|dodecan|decane\\b|hexadecane',
  '(?:butylene|pentylene|caprylyl|hexylene|dipropylene|ethoxydi|hexyl)\\s?glycol|propanediol|hexanediol|ethylhexyl|glycerides|(?:gly?ceryl|sorbitan|peg|sucrose) \\p{L}*(?:ate)\\b|triglyceride|(?:isopropyl|cetyl|decyl|octyl|hexyl|butyl|methyl|ethyl|propyl|benzyl|alkyl|tocopheryl|ascorbyl|retinyl|stearyl|dodecyl|neopentyl)\\p{L}* (?:\\p{L}*ate|esters)\\b|paraben|isothiazolinone|dehydroacet|caprylhydrox|disodium|trisodium|tetrasodium|\\bedta|\\bmea\\b|\\bdea\\b|triethanolamine|aminomethyl|acrylate|acrylamide|\\bpvp\\b|\\bvp/|ethylhexanoate|isostear|olivate|behen(?:ate|amido)|cetyl esters|glycol (?:di)?stearate|stearamid|cinnamate|anisate|levulinate|ferment\\b|lysate|sodium (?:coco|lauroyl|stearoyl gl|pca|palm|tallow|olivate|cocoate|phytate|hydroxymethyl)|\\bpca\\b',
  'c\\.?i\\.? ?\\d{5}|\\b(?:red|yellow|blue|orange|violet|green) \\d+ ?(?:lake)? ?\\(|ext\\. violet|\\bbht\\b.{0,3}$|denatonium',
  // plants under names that only cosmetics print
  'butyrospermum|simmondsia|argania|prunus amygdalus dulcis|persea gratissima|helianthus annuus|ricinus communis|cocos nucifera|aloe barbadensis|olea europaea|limnanthes|sclerocarya|carthamus tinctorius|orbignya|astrocaryum|euphorbia cerifera|copernicia|cera carnauba|melaleuca|pelargonium|lavandula|hamamelis|chamomilla|calendula officinalis|centella|macadamia (?:ternifolia|integrifolia)|mangifera indica seed|theobroma cacao|triticum vulgare|glycine soja|crambe|adansonia|moringa oleifera seed|plukenetia|cananga odorata|rosa (?:damascena|canina|centifolia|moschata)|vitis vinifera|mel extract|maris (?:sal|aqua)|sodium (?:shea|mango|castor)',
  // the same in plain English, on the labels of small makers
  'shea butter|(?:jojoba|argan|castor|rose ?hip|marula|tea tree|neem|sweet almond|baobab|meadowfoam)(?: seed| kernel)? oil|essential oils?|hydrosol|witch hazel|emulsifying wax|saponified|\\bbtms|vegetable glycerine?|castile',
].join('|');

/** Names that cosmetics share with food, pills or pet food: they make a list likelier, not a cosmetic one. */
const shared =
  'glycerin[e]?|glycerol|water|eau|alcohol|ethanol|(?:citric|lactic|stearic|palmitic|ascorbic|sorbic|benzoic|malic|tartaric|salicylic|oleic|myristic|lauric|phytic|glycolic|linoleic|hyaluronic|mandelic|folic|azelaic|tannic|succinic|alginic)? ?acid|tocopher(?:ol|yl acetate)s?|(?:sodium|potassium) (?:benzoate|sorbate|hydroxide|chloride|citrate|phosphate|gluconate|lactate|bicarbonate|metabisulfite|sulfate|alginate|bisulfite|carbonate)|xanthan gum|guar gum|cellulose(?: gum)?|microcrystalline cellulose|gum|silica|lecithin|propylene glycol|polysorbate \\d+|titanium dioxide|zinc (?:oxide|sulfate|gluconate)|iron oxides?|mica|talc|kaolin|maltodextrin|trehalose|sorbitol|xylitol|mannitol|erythritol|inositol|urea|caffeine|menthol|niacinamide|biotin|arginine|glycine|serine|lysine|proline|alanine|histidine|threonine|valine|leucine|isoleucine|taurine|creatine|magnesium (?:sulfate|stearate|chloride)|zea mays|corn starch|beeswax|honey|mel|sucrose|glucose|fructose|dextrin|sodium|bht|coconut oil|sunflower oil|olive oil|almond oil|argan|keratin|collagen|silk|camphor|eucalyptus oil|peppermint oil|charcoal|(?:green|white) tea|aloe vera|\\p{L}+ (?:gum|wax)|\\p{L}+ (?:chloride|oxide|sulfate|carbonate|phosphate|stearate|gluconate|hydroxide)';

/** Plant parts: cosmetics print them under their Latin names, supplements too. */
const plant =
  '(?:seed|kernel|leaf|fruit|root|flower|peel|bark|nut|germ|bran|stem|bud|herb|sprout|rhizome|wood|plant|needle|resin|berry|algae|gum|cell|culture|tuber|bulb|grass|pulp|shell|lea[fv]e?s?)s? ?(?:\\([^)]*\\) ?)?(?:oil|extract|water|butter|juice|powder|wax|cera|starch|protein|distillate|filtrate|meal|flour|unsaponifiables)|\\p{L}{4,} \\p{L}{4,} ?(?:\\([^)]*\\))? ?(?:\\p{L}+ ){0,2}(?:oil|extract|butter|juice)|extract\\b|\\p{L}{3,}(?:ate|ine|yl|ol|one|ide|ose|ite)\\b';

/** What only food, drinks, pills, supplements, pet food and recipes print. */
const edible =
  '(?:brown |cane |icing |caster |granulated )?sugar|(?:sea |rock |kosher |table )?salt|.*\\bflours?|(?:skimmed |whole |dried |powdered )?milk.*|.*\\b(?:cheese|chicken|beef|pork|turkey|lamb|salmon|tuna|bacon|ham|sausage|poultry|prawns?|fish|venison|duck|liver)\\b.*|(?:whole |free.range |dried )*eggs?(?: .*)?|(?:unsalted |salted )?butter|.*\\b(?:tomato(?:es)?|onions?|garlic|potato(?:es)?|carrots?|peas|spinach|celery|noodles?|pasta|bread|chocolate|raisins?|cashews?|pecans?|lentils?|chickpeas?|barley|oats|wheat|cornmeal|molasses|yeast|vinegar|mustard|cream|yogh?urt|whey|casein|syrup|cocoa (?:mass|solids|powder)|palm oil|rapeseed oil|canola oil|vegetable oils?)\\b.*|(?:black |white |cayenne |chil[il]i )?pepper|spices?.*|.*\\b(?:natural|artificial|nature.identical) (?:and artificial )?flavou?r.*|flavou?r(?:ing|ings|s)?.*|.*\\b(?:emulsifiers?|preservatives?|raising agents?|sweeteners?|stabilisers?|stabilizers?|thickeners?|antioxidants?|acidity regulators?|colou?rs?|anti.?caking agents?|glazing agents?|gelling agents?|bulking agents?)\\b.*|e ?\\d{3}\\p{L}?|(?:modified |corn|potato |tapioca )?starch|dextrose|vitamin .*|.*\\b(?:thiamine?|riboflavin|pyridoxine|niacin|cyanocobalamin|cholecalciferol|folate|pantothenate|ergocalciferol|choline chloride|menadione|cobalt|selenite|selenium|iodate|iodide|proteinate)\\b.*|.*\\b(?:by-?products?|bone ?meal|meal|broth|protein (?:isolate|concentrate)|capsules?|gelatin|hypromellose|(?:cros)?povidone|croscarmellose.*|lactose.*|starch glycolate|colloidal silicon dioxide|shellac|tablets?|softgels?|probiotic|cfu|acesulfame|sucralose|aspartame|stevia|carrageenan|pectin|taurine)\\b.*|magnesium stearate|.*\\b\\d+ ?(?:cups?|tbsp|tsp|teaspoons?|tablespoons?|ounces?|cloves?|sticks?|pinch|slices?)\\b.*|cups?|.*\\b(?:acetaminophen|paracetamol|ibuprofen|aspirin|diphenhydramine|dextromethorphan|guaifenesin|loratadine|cetirizine|hydrochloride tablets?)\\b.*' +
  '|sucre|sel|farine.*|lait.*|beurre|œufs?.*|levure|arômes?.*|zucker|salz|.*mehl|.*milch.*|.*eier|hefe|aromen?|zucchero|sale|farina.*|latte.*|uova|lievito|aromi|azúcar|sal|harina.*|leche.*|huevos?|levadura|aromas?|açúcar|farinha.*|leite.*|ovos|suiker|zout|.*meel|melk.*|socker|sukker|salt|mjöl|cukier|sól|mąka.*|mleko.*|jaja|сахар|соль|мука.*|молоко.*|яйц.*|захар|сол|брашно.*|мляко.*|砂糖|食塩|小麦.*|白糖|食用盐|설탕|소금|밀.*';

/** The most frequent names and endings in the other scripts labels are printed in. */
const otherScripts =
  '정제수|글리세린|글라이콜|다이올|메티콘|추출물|페녹시에탄올|애씨드|토코페|향료|알코올|하이알루|판테놀|잔탄검|소듐|카보머|베타인|유지$|오일$|グリセリン|エキス|ジメチコン|フェノキシエタノール|香料|セテアリル|ステアリ|加水分解|トコフェロール|ベタイン|クロリド|オイル$|油$|メチルパラベン|^BG$|^DPG$|甘油|丁二醇|丙二醇|苯氧乙醇|香精|提取物|硅氧烷|黄原胶|生育酚|透明质酸|鲸蜡|卡波姆|氯化钠|柠檬酸|глицерин|экстракт|екстракт|пантенол|феноксиэтанол|лаурет|кокамид|бетаин|гидролиз|цетеар|цетил|диметикон|отдушка|парфюм|токоферол|ксантан|جليسرين|زيت|مستخلص|فينوكسي|ديميثيكون|γλυκερίνη|פנוקסי|גליצרין|กลีเซอรีน|สารสกัด';

const cosmeticName = new RegExp(`${cosmetic}|${otherScripts}`, 'iu');
const sharedName = new RegExp(`^(?:${shared})$`, 'iu');
const plantName = new RegExp(plant, 'iu');
const edibleName = new RegExp(`^(?:${edible})$`, 'iu');

/** One pass over a page's letters with this marks the lines worth a look. */
export const nameHints = new RegExp(`${cosmetic}|${otherScripts}`, 'giu');

const lookAlikes: Record<string, string> = Object.fromEntries(
  [...'аеорсухіјАВЕЗКМНОРСТУХІЅ'].map((letter, i) => [letter, [...'aeopcyxijABE3KMHOPCTYXIS'][i]!]),
);

/** Cyrillic look-alikes inside Latin names become Latin; zero-width letters go. For testing only. */
export function fold(text: string): string {
  const plain = text.replace(/[\u00ad\u200b-\u200f\u2060\ufeff]/g, '').normalize('NFKC');
  return /[a-z]/i.test(plain) && /[Ѐ-ӿ]/.test(plain)
    ? plain.replace(/[а-яА-ЯіІјЅ]/g, (letter) => lookAlikes[letter] ?? letter)
    : plain;
}

export type NameClass = 'cosmetic' | 'shared' | 'plant' | 'edible' | 'other';

/** What kind of list a name speaks for. `other` is any name these few words do not know. */
export function classOf(raw: string): NameClass {
  const text = fold(raw);
  const core = text
    .replace(/\([^)]*\)?|\[[^\]]*\]?|[\d.,]+ ?%/g, '')
    .replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '')
    .replace(/\s+/g, ' ');
  if (edibleName.test(core)) return cosmeticName.test(core) ? 'shared' : 'edible';
  if (cosmeticName.test(text)) return 'cosmetic';
  if (sharedName.test(core) || core.split(/ ?\/ ?/).some((part) => sharedName.test(part))) return 'shared';
  return plantName.test(core) ? 'plant' : 'other';
}

/** Water under its label names: a second one starts a second list. */
export const waterName =
  /^\W*(?:(?:purified|distilled|deioni[sz]ed|demineralised|spring) )?(?:aqua|water|eau|agua|acqua|wasser|вода|정제수|水|精製水)(?!\p{L})/iu;
