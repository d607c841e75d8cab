// Lists of goods that are no cosmetics, in several languages. From memory of such labels; foods of the open table come
// from the Indian Food Composition Tables 2017 where STRANDLINE_FOODS names its file.
const list = (text: string) => text.split('|');

export type Goods = { heading: string; names: string[] };

export const foods: Goods[] = [
  {
    heading: 'Zutaten',
    names: list(
      'Weizenmehl|Zucker|Palmöl|Sonnenblumenöl|Glukosesirup|Magermilchpulver|Kakaomasse|Kakaobutter|Emulgator: Lecithine (Soja)|Backtriebmittel: Natriumhydrogencarbonat|Salz|Säuerungsmittel: Citronensäure|Aroma|Haselnüsse|Vollmilchpulver|Molkenerzeugnis|Gerstenmalzextrakt|Rapsöl|Wasser|Kokosöl|Verdickungsmittel: Xanthan|Konservierungsstoff: Kaliumsorbat',
    ),
  },
  {
    heading: 'Ingrédients',
    names: list(
      'Farine de blé|sucre|huile de palme|huile de tournesol|sirop de glucose|lait écrémé en poudre|beurre de cacao|pâte de cacao|émulsifiant : lécithine de soja|poudre à lever|sel|acidifiant : acide citrique|arôme naturel de vanille|noisettes|amidon de maïs|eau|huile de coco|épaississant : gomme xanthane|conservateur : sorbate de potassium|jus de citron concentré|huile de colza',
    ),
  },
  {
    heading: 'Ingredientes',
    names: list(
      'harina de trigo|azúcar|aceite de palma|aceite de girasol|jarabe de glucosa|leche desnatada en polvo|manteca de cacao|pasta de cacao|emulgente: lecitina de soja|gasificante|sal|acidulante: ácido cítrico|aroma natural|avellanas|almidón de maíz|agua|aceite de coco|espesante: goma xantana|conservador: sorbato potásico|zumo de limón|aceite de oliva',
    ),
  },
  {
    heading: 'Ingredientes',
    names: list(
      'farinha de trigo|açúcar|óleo de palma|óleo de girassol|xarope de glucose|leite em pó magro|manteiga de cacau|pasta de cacau|emulsionante: lecitina de soja|levedante|sal|acidificante: ácido cítrico|aroma natural|avelãs|amido de milho|água|óleo de coco|espessante: goma xantana|conservante: sorbato de potássio|sumo de limão|azeite',
    ),
  },
  {
    heading: 'Ingredienti',
    names: list(
      'farina di frumento|zucchero|olio di palma|olio di girasole|sciroppo di glucosio|latte scremato in polvere|burro di cacao|pasta di cacao|emulsionante: lecitina di soia|agenti lievitanti|sale|acidificante: acido citrico|aroma naturale|nocciole|amido di mais|acqua|olio di cocco|addensante: gomma di xantano|conservante: sorbato di potassio|succo di limone|olio extra vergine di oliva',
    ),
  },
  {
    heading: 'Ingrediënten',
    names: list(
      'tarwebloem|suiker|palmolie|zonnebloemolie|glucosestroop|magere melkpoeder|cacaoboter|cacaomassa|emulgator: sojalecithine|rijsmiddel|zout|voedingszuur: citroenzuur|natuurlijk aroma|hazelnoten|maïszetmeel|water|kokosolie|verdikkingsmiddel: xanthaangom|conserveermiddel: kaliumsorbaat|citroensap|olijfolie',
    ),
  },
  {
    heading: 'Składniki',
    names: list(
      'mąka pszenna|cukier|olej palmowy|olej słonecznikowy|syrop glukozowy|mleko w proszku odtłuszczone|tłuszcz kakaowy|miazga kakaowa|emulgator: lecytyna sojowa|substancja spulchniająca|sól|regulator kwasowości: kwas cytrynowy|aromat|orzechy laskowe|skrobia kukurydziana|woda|olej kokosowy|zagęstnik: guma ksantanowa|substancja konserwująca: sorbinian potasu|sok z cytryny|oliwa z oliwek',
    ),
  },
  {
    heading: 'Ingredienser',
    names: list(
      'vetemjöl|socker|palmolja|solrosolja|glukossirap|skummjölkspulver|kakaosmör|kakaomassa|emulgeringsmedel: sojalecitin|bakpulver|salt|surhetsreglerande medel: citronsyra|arom|hasselnötter|majsstärkelse|vatten|kokosolja|förtjockningsmedel: xantangummi|konserveringsmedel: kaliumsorbat|citronjuice|olivolja',
    ),
  },
  {
    heading: 'İçindekiler',
    names: list(
      'buğday unu|şeker|palm yağı|ayçiçek yağı|glikoz şurubu|yağsız süt tozu|kakao yağı|kakao kitlesi|emülgatör: soya lesitini|kabartıcı|tuz|asitlik düzenleyici: sitrik asit|aroma verici|fındık|mısır nişastası|su|hindistan cevizi yağı|kıvam artırıcı: ksantan gam|koruyucu: potasyum sorbat|limon suyu|zeytinyağı',
    ),
  },
  {
    heading: 'Složení',
    names: list(
      'pšeničná mouka|cukr|palmový olej|slunečnicový olej|glukózový sirup|sušené odstředěné mléko|kakaové máslo|kakaová hmota|emulgátor: sójový lecitin|kypřicí látka|sůl|regulátor kyselosti: kyselina citronová|aroma|lískové ořechy|kukuřičný škrob|voda|kokosový olej|zahušťovadlo: xanthan|konzervant: sorban draselný|citronová šťáva|olivový olej',
    ),
  },
];

export const supplements: Goods[] = [
  {
    heading: 'Zutaten',
    names: list(
      'L-Ascorbinsäure|Füllstoff: mikrokristalline Cellulose|Überzugsmittel: Hydroxypropylmethylcellulose|Zinkgluconat|Nicotinamid|D-alpha-Tocopherol|Trennmittel: Magnesiumsalze der Speisefettsäuren|Biotin|Folsäure|Calcium-D-pantothenat|Riboflavin',
    ),
  },
  {
    heading: 'Ingrédients',
    names: list(
      'huile de poisson|enveloppe : gélatine|humectant : glycérol|huile de bourrache|levure de bière|vitamine E naturelle|gluconate de zinc|biotine|antiagglomérant : stéarate de magnésium|oxyde de titane|eau purifiée',
    ),
  },
  {
    heading: 'Other ingredients',
    names: list(
      'Gelatin|Glycerin|Purified Water|Sunflower Oil|Beeswax|Soy Lecithin|Silica|Hydrolyzed Collagen|Hyaluronic Acid|Biotin|Ascorbic Acid|Citric Acid|Natural Flavor|Stevia|Magnesium Stearate',
    ),
  },
  {
    heading: 'Składniki',
    names: list(
      'hydrolizat kolagenu|kwas L-askorbinowy|substancja wypełniająca: celuloza|ekstrakt ze skrzypu polnego|ekstrakt z pokrzywy|biotyna|cytrynian cynku|substancja przeciwzbrylająca: stearynian magnezu|kapsułka: żelatyna',
    ),
  },
  {
    heading: 'Ingredientes',
    names: list(
      'colágeno hidrolizado|extracto de cola de caballo|extracto de ortiga|vitamina C|agente de carga: celulosa|gluconato de zinc|biotina|antiaglomerante: estearato de magnesio|cápsula: gelatina|ácido hialurónico',
    ),
  },
];

export const medicines: Goods[] = [
  {
    heading: 'Die sonstigen Bestandteile sind',
    names: list(
      'Lactose-Monohydrat|Maisstärke|Povidon|Magnesiumstearat|Hypromellose|Macrogol 4000|Titandioxid|Talkum|hochdisperses Siliciumdioxid|Croscarmellose-Natrium',
    ),
  },
  {
    heading: 'Les autres composants sont',
    names: list(
      'lactose monohydraté|amidon de maïs|povidone|stéarate de magnésium|hypromellose|macrogol 4000|dioxyde de titane|talc|silice colloïdale anhydre|croscarmellose sodique',
    ),
  },
  {
    heading: 'Los demás componentes son',
    names: list(
      'lactosa monohidrato|almidón de maíz|povidona|estearato de magnesio|hipromelosa|macrogol 4000|dióxido de titanio|talco|sílice coloidal anhidra|croscarmelosa sódica',
    ),
  },
  {
    heading: 'Pozostałe składniki to',
    names: list(
      'laktoza jednowodna|skrobia kukurydziana|powidon|magnezu stearynian|hypromeloza|makrogol 4000|tytanu dwutlenek|talk|krzemionka koloidalna bezwodna|kroskarmeloza sodowa',
    ),
  },
  {
    heading: 'The other ingredients are',
    names: list(
      'sucrose|glycerol|sorbitol|sodium benzoate|citric acid monohydrate|sodium citrate|xanthan gum|saccharin sodium|strawberry flavour|purified water|propylene glycol|methyl parahydroxybenzoate',
    ),
  },
  {
    heading: 'Inactive ingredients',
    names: list(
      'carnauba wax|corn starch|hypromellose|magnesium stearate|polyethylene glycol|povidone|stearic acid|titanium dioxide|sodium starch glycolate|propylene glycol|shellac|red iron oxide',
    ),
  },
];

export const petFood: Goods[] = [
  {
    heading: 'Zusammensetzung',
    names: list(
      'Fleisch und tierische Nebenerzeugnisse (Huhn 14 %)|Getreide|pflanzliche Nebenerzeugnisse|Öle und Fette|Mineralstoffe|Zucker|Lachsöl|Hefe|Rübenschnitzel|Fischmehl',
    ),
  },
  {
    heading: 'Composition',
    names: list(
      'viandes et sous-produits animaux|céréales|huiles et graisses|substances minérales|levures|pulpe de betterave|huile de saumon|lin|protéines de volaille déshydratées|extrait de yucca',
    ),
  },
  {
    heading: 'Composición',
    names: list(
      'carnes y subproductos animales|cereales|aceites y grasas|sustancias minerales|levaduras|pulpa de remolacha|aceite de salmón|extracto de yuca|romero|aloe vera',
    ),
  },
  {
    heading: 'Ingredients',
    names: list(
      'Deboned Chicken|Chicken Meal|Brown Rice|Chicken Fat (Preserved with Mixed Tocopherols)|Flaxseed|Salmon Oil|Potassium Chloride|Choline Chloride|Taurine|Zinc Proteinate|Vitamin E Supplement|Rosemary Extract|Yucca Schidigera Extract|Calcium Pantothenate|Green Tea Extract|Spearmint Extract',
    ),
  },
];

export const cleaners: Goods[] = [
  {
    heading: 'Inhaltsstoffe',
    names: list(
      '5-15 % anionische Tenside|unter 5 % nichtionische Tenside|amphotere Tenside|Duftstoffe|Limonene|Linalool|Methylisothiazolinone|Phenoxyethanol',
    ),
  },
  {
    heading: 'Composition',
    names: list(
      '5-15 % agents de surface anioniques|moins de 5 % agents de surface non ioniques|savon|parfum|limonene|citral|enzymes|azurants optiques',
    ),
  },
  {
    heading: 'Composición',
    names: list(
      '5-15 % tensioactivos aniónicos|menos de 5 % tensioactivos no iónicos|jabón|perfume|limonene|linalool|enzimas|conservantes',
    ),
  },
  {
    heading: 'Skład',
    names: list(
      '5-15 % anionowe środki powierzchniowo czynne|poniżej 5 % niejonowe środki powierzchniowo czynne|mydło|kompozycja zapachowa|limonene|linalool|enzymy',
    ),
  },
  {
    heading: 'Contains',
    names: list(
      '5-15% Anionic Surfactants|<5% Nonionic Surfactants|Perfume|Limonene|Benzisothiazolinone|Enzymes',
    ),
  },
];

export const paints: Goods[] = [
  {
    heading: 'Inhaltsstoffe',
    names: list(
      'Wasser|Kreide|Titandioxid|Talkum|Polyacrylat|Cellulose|Kaliumwasserglas|Entschäumer|Methylisothiazolinon|Benzisothiazolinon|Quarzmehl',
    ),
  },
  {
    heading: 'Composition',
    names: list(
      'eau|résine acrylique|dioxyde de titane|carbonate de calcium|talc|propylène glycol|anti-mousse|méthylisothiazolinone|huile de lin|cire d’abeille',
    ),
  },
  {
    heading: 'Composition',
    names: list(
      'Water|Titanium Dioxide|Calcium Carbonate|Talc|Acrylic Binder|Propylene Glycol|Cellulose Thickener|Benzisothiazolinone|Linseed Oil|Iron Oxide|Carnauba Wax|Beeswax',
    ),
  },
  {
    heading: 'Declaration',
    names: list(
      'Linseed oil|Tung oil|Beeswax|Carnauba wax|Orange terpenes|Rosin|Cobalt-free drier|Iron oxides|Kaolin|Silica',
    ),
  },
];
