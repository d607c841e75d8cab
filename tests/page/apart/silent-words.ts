// What stands on pages that hold no list of a cosmetic: goods and sentences from memory, all invented.
const bank = (text: string) => text.trim().split('\n');

/** Foods with what they are made of, in the order and the wording of labels. */
export const foods = bank(`
Wheat flour, water, sunflower oil, salt, yeast, glycerin, soy lecithin, citric acid, ascorbic acid, xanthan gum
Ingrédients : sucre, sirop de glucose, eau, gélatine de bœuf, acide citrique, concentré de carthame, huile de coco, cire de carnauba
Zutaten: Zucker, Kakaobutter, Vollmilchpulver, Kakaomasse, Emulgator Sojalecithin, natürliches Vanillearoma, Meersalz
Ingredientes: agua, aceite de oliva, vinagre, yema de huevo, sal, azúcar, goma xantana, ácido cítrico, sorbato de potasio
Składniki: woda, cukier, sok jabłkowy z soku zagęszczonego, kwas cytrynowy, aromat, benzoesan sodu, sorbinian potasu
Ingredienti: farina di grano tenero, olio di girasole, zucchero, sale, lecitina di soia, carbonato acido di sodio, aromi
Ingrediënten: suiker, glucosestroop, palmolie, magere melkpoeder, zout, emulgator (sojalecithine), citroenzuur
Ingredienser: vatten, havre, rapsolja, kalciumkarbonat, kalciumfosfat, salt, vitamin D2, riboflavin, vitamin B12
Состав: вода, сахар, концентрированный сок, лимонная кислота, бензоат натрия, ароматизатор, аскорбиновая кислота
İçindekiler: su, şeker, glikoz şurubu, sitrik asit, potasyum sorbat, doğal aroma, renklendirici (beta karoten)
原材料名：砂糖、小麦粉、植物油脂、食塩、乳化剤、香料、クエン酸、増粘剤（キサンタンガム）、グリセリン
Water, coconut cream, guar gum, xanthan gum, sodium alginate, citric acid, tocopherol, potassium sorbate`);

export const pets = bank(`
Composition: dried poultry protein 32%, maize, beef fat, beet pulp, hydrolysed liver, linseed, fish oil, yeast, sodium chloride
Zusammensetzung: Fleisch und tierische Nebenerzeugnisse (4 % Rind), Getreide, Öle und Fette, Mineralstoffe, Zucker
Composition : volaille déshydratée, maïs, graisses animales, pulpe de betterave, levures, huile de poisson, chlorure de sodium
Skład: suszone białko drobiowe, ryż, tłuszcz zwierzęcy, wysłodki buraczane, drożdże, olej rybi, glukozamina
Additives per kg: vitamin A 20,000 IU, vitamin D3 1,500 IU, taurine 1,000 mg, zinc sulphate monohydrate 200 mg, tocopherol extracts
Ingredients: deboned chicken, oats, chickpeas, chicken fat, flaxseed, glycerin, potassium chloride, taurine, zinc sulfate, biotin, riboflavin`);

export const leaflets = bank(`
Each tablet contains 500 mg of paracetamol. The other ingredients are: maize starch, povidone, talc, stearic acid, magnesium stearate
1 g Creme enthält 10 mg Clotrimazol. Sonstige Bestandteile: Benzylalkohol, Cetylpalmitat, Cetylstearylalkohol, Octyldodecanol, Polysorbat 60, Sorbitanstearat, gereinigtes Wasser
Ce que contient le sirop : la substance active est la carbocistéine. Les autres composants sont : saccharose, glycérol, parahydroxybenzoate de méthyle, arôme caramel, eau purifiée
Qué contiene: ibuprofeno 400 mg. Los demás componentes son: celulosa microcristalina, croscarmelosa sódica, estearato de magnesio, hipromelosa, dióxido de titanio (E171)
1 tabletka zawiera 75 mg kwasu acetylosalicylowego. Pozostałe składniki: skrobia kukurydziana, celuloza, talk, kopolimer kwasu metakrylowego
Jedna tableta obsahuje 10 mg cetirizinu. Pomocné látky: monohydrát laktózy, kukuřičný škrob, povidon, magnesium-stearát
Bir tablet 20 mg omeprazol içerir. Yardımcı maddeler: mannitol, hipromelloz, sodyum lauril sülfat, talk, titanyum dioksit
Одна таблетка содержит 400 мг ибупрофена. Вспомогательные вещества: крахмал, повидон, магния стеарат, тальк, титана диоксид`);

export const pills = bank(`
Capsule shell (hydroxypropyl methylcellulose), rice flour, ascorbic acid, zinc citrate, biotin, silica, magnesium stearate
Kollagenhydrolysat, Säuerungsmittel Citronensäure, Aroma, L-Ascorbinsäure, Hyaluronsäure, Süßungsmittel Steviolglycoside
Agent de charge : cellulose, biotine, acide pantothénique, riboflavine, sulfate de zinc, anti-agglomérant : stéarate de magnésium
Sunflower oil, gelatin, glycerin, fish oil, mixed tocopherols, vitamin D3. Serving size: 1 softgel. Supplement facts`);

export const cleaners = bank(`
Laundry liquid: 5–15 % anionic surfactants, <5 % nonionic surfactants, soap, enzymes, perfume, benzisothiazolinone, methylisothiazolinone
Geschirrspülmittel: 5–15 % anionische Tenside, <5 % amphotere Tenside, Duftstoffe, Limonene, Phenoxyethanol
Nettoyant sol : moins de 5 % agents de surface non ioniques, parfums, linalool, limonene, benzisothiazolinone
Płyn do płukania: 5–15 % kationowe środki powierzchniowo czynne, kompozycja zapachowa, linalool, benzyl alcohol`);

export const perfumes = bank(`
Top notes: bergamot, pink pepper, neroli. Heart: jasmine, rose, orris. Base: sandalwood, vanilla, patchouli, musk
Kopfnote: Zitrone, Mandarine, Minze. Herznote: Lavendel, Geranium. Basisnote: Zeder, Vetiver, Moschus
Notes de tête : citron, menthe. Cœur : fleur d’oranger, ylang-ylang. Fond : vétiver, benjoin, cèdre
Salida: limón, bergamota. Corazón: azahar, lavanda, romero. Fondo: cedro, pachulí, vainilla`);

export const threads = bank(`
Has anyone tried glycerin in winter? I read that honey, panthenol and propylene glycol all pull water out when the air is dry.
I stopped using sodium lauryl sulfate and moved to cocamidopropyl betaine, decyl glucoside and coco glucoside. Three weeks in, less frizz.
Bei mir gehen Cetearyl Alcohol und Behentrimonium Chloride super, aber Dimethicone, Amodimethicone und Mineralöl beschweren.
Chez moi, glycérine, panthénol et aloe vera passent très bien ; le beurre de karité, l’huile de ricin et le lanoline sont trop lourds.
So to sum up: proteins (hydrolyzed wheat protein, keratin, silk amino acids) for strength, oils (argan, jojoba, squalane) for slip.`);

export const papers = bank(`
Sodium lauryl sulfate, cocamidopropyl betaine and sodium chloride were purchased from a commercial supplier and used without further purification. Cetyl alcohol was recrystallised from ethanol.
Abstract. The ternary phase behaviour of water, glycerol and behentrimonium chloride was studied by small-angle X-ray scattering in the presence of cetearyl alcohol, stearyl alcohol and dimethicone.
The preservative efficacy of phenoxyethanol, benzyl alcohol, sodium benzoate, potassium sorbate and ethylhexylglycerin was assessed against five strains.
Claim 1. A hair composition comprising (a) behentrimonium methosulfate, (b) cetyl alcohol, (c) hydroxyethylcellulose, wherein the weight ratio of (a) to (b) is from 1:1 to 1:4.`);

export const recipes = bank(`
200 g flour|2 eggs|1 pinch of salt|100 ml coconut oil|1 tsp citric acid|2 tbsp honey
250 g Mehl|2 Eier|100 g Butter|1 Prise Salz|2 EL Honig|1 TL Natron
3 œufs|200 g de sucre|1 sachet de levure|2 c. à s. d’huile d’olive|1 pincée de sel
1 taza de arroz|2 cucharadas de aceite de oliva|1 cebolla|sal|agua|azafrán
2 szklanki mąki|1 jajko|pół szklanki oleju|szczypta soli|łyżka miodu`);

export const kitchens = bank(`
30 g shea butter|20 g coconut oil|10 g beeswax|5 drops lavender oil|1 g vitamin E
60 % distilled water|5 % glycerin|6 % BTMS|3 % cetyl alcohol|1 % preservative|0.5 % fragrance
40 g Sheabutter|20 g Kokosöl|10 g Bienenwachs|5 Tropfen Lavendelöl|1 g Vitamin E
30 g de beurre de karité|20 g d’huile de coco|10 g de cire d’abeille|5 gouttes de lavande`);

export const fabrics = bank(`
Shell: 68% cotton, 28% polyester, 4% elastane. Lining: 100% viscose. Wash at 30°
Obermaterial: 80 % Baumwolle, 20 % Polyamid. Futter: 100 % Polyester. Nicht bleichen
Composition : 95 % coton, 5 % élasthanne. Lavage à 30°
Materials: acrylic resin, titanium dioxide, calcium carbonate, iron oxide, water, propylene glycol. Coverage 12 m² per litre`);

/** What makers say they leave out, by the names that labels would print (from memory). */
export const leftOut = [
  'Methylparaben',
  'Propylparaben',
  'Butylparaben',
  'Ethylparaben',
  'Sodium Lauryl Sulfate',
  'Sodium Laureth Sulfate',
  'Ammonium Lauryl Sulfate',
  'Dimethicone',
  'Amodimethicone',
  'Cyclopentasiloxane',
  'Paraffinum Liquidum',
  'Petrolatum',
  'Diethyl Phthalate',
  'Triclosan',
  'DMDM Hydantoin',
  'Quaternium-15',
  'Methylisothiazolinone',
  'Methylchloroisothiazolinone',
  'Formaldehyde',
  'Toluene',
  'Disodium EDTA',
  'BHT',
  'Alcohol Denat.',
  'Phenoxyethanol',
  'Lanolin',
  'Talc',
];
