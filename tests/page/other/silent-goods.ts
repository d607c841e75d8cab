// Goods that are no care for hair or skin, with what their pages print: from memory, shops invented.
export type Goods = { title: string; head: string; names: string[]; more?: string };
const goods = (rows: string[]): Goods[] =>
  rows.map((row) => {
    const [title, head, names, more] = row.split('|');
    return { title: title!, head: head!, names: names!.split(';'), ...(more ? { more } : {}) };
  });

/** Eaten, drunk or swallowed, by people or animals. */
export const eaten = goods([
  'Sea Salt Crackers 180 g|Ingredients|wheat flour;sunflower oil;sea salt;raising agent (sodium carbonates);barley malt extract;glycerol;rosemary extract|Allergens: wheat, barley.',
  'Oat Drink 1 l|Ingredients|water;oats 10%;rapeseed oil;calcium carbonate;sea salt;vitamin B12;xanthan gum',
  'Citrus Pastilles|Ingredients|sugar;glucose syrup;citric acid;gelatine;natural flavouring;beeswax;carnauba wax;coconut oil|Energy 1,420 kJ per 100 g',
  'Haferkekse|Zutaten|Hafervollkornflocken;Rohrzucker;Palmöl;Kokosöl;Honig;Meersalz;Backtriebmittel: Natriumhydrogencarbonat;Zitronensäure|Kann Spuren von Nüssen enthalten.',
  'Gummibonbons Bucht|Zutaten|Glukosesirup;Zucker;Gelatine;Säuerungsmittel: Citronensäure;Aroma;Überzugsmittel: Bienenwachs;Kokosöl',
  'Biscuits au miel|Ingrédients|farine de blé;miel 12 %;beurre;sucre de canne;huile de tournesol;lécithine de soja;acide citrique|Traces possibles de fruits à coque.',
  'Sirop de fleurs|Ingrédients|eau;sucre;extrait de sureau;acide citrique;vitamine C',
  'Galletas de almendra|Ingredientes|harina de trigo;almendra;azúcar;aceite de girasol;miel;ácido cítrico;lecitina de soja|Valores nutricionales por 100 g',
  'Biscotti al limone|Ingredienti|farina di grano tenero;zucchero;olio di girasole;miele;acido citrico;scorza di limone;aromi',
  'Bolachas de coco|Ingredientes|farinha de trigo;açúcar;óleo de coco;mel;ácido cítrico;sal marinho',
  'Ciastka owsiane|Składniki|płatki owsiane;cukier;olej rzepakowy;miód;sól morska;kwas cytrynowy;lecytyna sojowa|Wartość odżywcza w 100 g',
  'Yulaflı bisküvi|İçindekiler|buğday unu;şeker;ayçiçek yağı;bal;sitrik asit;lesitin;deniz tuzu',
  'Knäckebröd|Ingredienser|rågmjöl;vatten;havssalt;solrosolja;honung;citronsyra|Näringsvärde per 100 g',
  'Havermoutkoekjes|Ingrediënten|havervlokken;suiker;zonnebloemolie;honing;zeezout;citroenzuur;xanthaangom',
  'Havrekiks|Ingredienser|havregryn;sukker;solsikkeolie;honning;havsalt;citronsyre',
  'Ovesné sušenky|Složení|ovesné vločky;cukr;slunečnicový olej;med;mořská sůl;kyselina citronová',
  'Kaurakeksi|Ainesosat|kaurahiutale;sokeri;auringonkukkaöljy;hunaja;merisuola;sitruunahappo;glyseroli',
  'Zabkeksz|Összetevők|zabpehely;cukor;napraforgóolaj;méz;tengeri só;citromsav;szójalecitin',
  'Biscuiți cu ovăz|Ingrediente|fulgi de ovăz;zahăr;ulei de floarea-soarelui;miere;sare de mare;acid citric',
  'Magnesium 400 tablets|Ingredients|magnesium oxide;microcrystalline cellulose;stearic acid;magnesium stearate;silica;hydroxypropyl methylcellulose;glycerin|Take one tablet daily with food. A food supplement is no substitute for a varied diet.',
  'Omega capsules|Ingredients|fish oil;gelatin;glycerin;purified water;tocopherols;sunflower oil|Serving size 2 softgels. Suggested use: two a day.',
  'Biotin Kapseln|Zutaten|Füllstoff: Mikrokristalline Cellulose;Hydroxypropylmethylcellulose;Biotin;Magnesiumsalze der Speisefettsäuren;Siliciumdioxid|Verzehrempfehlung: 1 Kapsel täglich.',
  'Collagène marin poudre|Ingrédients|collagène marin hydrolysé;acide hyaluronique;vitamine C;acide citrique;arôme|Complément alimentaire. Ne pas dépasser la dose journalière.',
  'Dry food for cats|Composition|poultry meal;maize;rice;animal fat;hydrolysed protein;beet pulp;fish oil;sodium chloride;taurine|Analytical constituents: crude protein 32%, crude ash 7%',
  'Trockenfutter Hund|Zusammensetzung|Geflügelprotein;Reis;Lachsöl;Leinsamen;Natriumchlorid;Rübenschnitzel;Glucosamin;Kieselgur|Analytische Bestandteile: Rohprotein 26 %',
  'Pâtée pour chien|Composition|viandes;riz;huile de saumon;glycérine végétale;carbonate de calcium;cellulose;extrait de romarin|Constituants analytiques : protéine brute 10 %',
  'Fruit tea|Ingredients|hibiscus;rosehip;apple;chamomile flowers;orange peel;liquorice root;natural flavouring|Pour boiling water and leave for 8 minutes.',
  'Energy Gel|Ingredients|maltodextrin;water;fructose;sodium citrate;citric acid;potassium sorbate;caffeine;natural flavouring',
  'Toddler rice cakes|Ingredients|wholegrain rice;apple juice concentrate;thiamin (vitamin B1);sunflower oil|Suitable from 7 months.',
  'Protein bar|Ingredients|milk protein;hydrolysed collagen;glycerol;cocoa butter;soy lecithin;sucralose;sunflower oil;sea salt|Nutrition per bar: 210 kcal',
]);

/** Medicines: their leaflets name what they hold. */
export const medicines = goods([
  'Tablets 200 mg|What the tablets contain|lactose monohydrate;maize starch;povidone;magnesium stearate;titanium dioxide;macrogol;talc|Do not take if you are allergic to any of the other ingredients. Ask your pharmacist.',
  'Cream 1%|The other ingredients are|cetostearyl alcohol;white soft paraffin;liquid paraffin;propylene glycol;methyl parahydroxybenzoate;purified water|The active substance is hydrocortisone. Read this leaflet carefully.',
  'Filmtabletten 500 mg|Die sonstigen Bestandteile sind|Mikrokristalline Cellulose;Croscarmellose-Natrium;Povidon;Magnesiumstearat;Hypromellose;Macrogol 400;Titandioxid|Zu Risiken und Nebenwirkungen lesen Sie die Packungsbeilage.',
  'Sirop contre la toux|Les autres composants sont|saccharose;glycérol;acide citrique monohydraté;benzoate de sodium;arôme miel;eau purifiée|Substance active : dextrométhorphane. Excipients à effet notoire.',
  'Comprimidos|Los demás componentes son|lactosa;almidón de maíz;estearato de magnesio;povidona;dióxido de titanio|El principio activo es paracetamol. Lea todo el prospecto.',
  'Gocce orali|Eccipienti|glicerolo;acqua depurata;sodio benzoato;acido citrico;saccarina sodica|Principio attivo: 20 mg/ml. Leggere il foglio illustrativo.',
  'Tabletki|Substancje pomocnicze|laktoza jednowodna;skrobia kukurydziana;stearynian magnezu;talk;glicerol|Substancja czynna: ibuprofen. Przeczytaj ulotkę.',
  'Eye drops|List of excipients|sodium chloride;boric acid;disodium edetate;benzalkonium chloride;purified water;sodium hydroxide|Each ml contains 2 mg. Shelf life after opening 28 days.',
]);

/** For rooms, dishes, cloth, walls, cars, gardens. */
export const things = goods([
  'Soy candle 200 g|Details|Soy wax;cotton wick;fragrance oil;coconut wax|Burning time 40 h. Never leave a burning candle unattended.',
  'Interior paint 5 l|Composition|Water;titanium dioxide;calcium carbonate;talc;acrylic copolymer;cellulose;preservative (methylisothiazolinone)|Coverage 12 m² per litre. VOC 1 g/l.',
  'Wood oil|Ingredients|linseed oil;tung oil;beeswax;carnauba wax;orange oil;zinc oxide;cobalt-free driers|Rags may ignite by themselves.',
  'Wandfarbe Kreide|Volldeklaration|Wasser;Kreide;Titandioxid;Kaolin;Cellulose;Leinöl;Ammoniak|Ergiebigkeit 8 m² pro Liter.',
  'Linen shirt|Composition|55% linen;45% cotton;buttons: mother of pearl|Wash at 30 °C.',
  'Sofa cover|Zusammensetzung|Polyester;Baumwolle;Elasthan|Nicht bleichen.',
  'Tomato feed|Contains|nitrogen;phosphorus pentoxide;potassium oxide;magnesium oxide;iron chelate (EDTA);zinc|Dilute 10 ml in 5 l of water.',
  'Incense sticks|Made of|sandalwood powder;benzoin resin;frankincense;lavender oil;charcoal;bamboo|Burns 45 minutes.',
  'Scented drawer bags|Filled with|lavender flowers;rose petals;cedarwood chips;orange peel|Lasts a season.',
  'Lead-free solder paste|Contents|tin;silver;copper;rosin;glycerol|Store at 5 °C.',
  'Leather balm|Ingredients|beeswax;lanolin;neatsfoot oil;turpentine;carnauba wax|For boots and saddles.',
  'E-liquid 10 ml|Ingredients|propylene glycol;vegetable glycerin;natural flavouring;nicotine;ethanol|18+. Nicotine is addictive.',
]);
