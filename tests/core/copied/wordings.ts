// What stands around names on labels and in what shops copy of them, in two halves: the first looked at while reading
// was mended, the second only counted. Written from memory of labels before any of the reading was looked at; invented.

export type Half = 'looked at' | 'kept aside';
export type Halves = Record<Half, readonly string[]>;

const each = (text: string) => text.split('|').map((one) => one.trim());
const halves = (seen: string, aside: string): Halves => ({
  'looked at': each(seen),
  'kept aside': each(aside),
});

export const headings = halves(
  `Ingredients: | Ingredients/Ingrédients: | INGREDIENTS - | List of ingredients: | Inhaltsstoffe: | Bestandteile:
  | Composition INCI : | Liste des ingrédients : | Ingredientes (INCI): | Skład: | Složení: | Ainesosat: | Ingrediënten:
  | Ingredienser: | Összetevők: | Ingredients* : | Key ingredients & full list: | Product ingredients: | 全成分：`,
  `Ingredients. | INGREDIENTS/INGREDIENTES: | Full ingredients: | Ingredient declaration: | INCI-Liste: | Zusammensetzung:
  | Ingrédients (INCI) : | La liste complète des ingrédients: | Ingredientes: | Composición: | Składniki (INCI): | Zloženie:
  | INCI/Ainesosat: | Samenstelling: | Indholdsstoffer: | Sammansättning: | Compoziție: | Ingredienti: | Состав: | 成分：`,
);
export const legends = halves(
  `Certified organic ingredient | from organic farming | organically grown | Fair Trade ingredient
  | ingredients from controlled organic cultivation | natural component of essential oils | naturally occurring in essential oils
  | from natural essential oils | kontrolliert biologischer Anbau | aus kontrolliert biologischem Anbau
  | natürlicher Bestandteil ätherischer Öle | enthalten in natürlichen ätherischen Ölen | issu de l'agriculture biologique
  | Ingrédient issu de l'Agriculture Biologique | composants naturels des huiles essentielles
  | de cultivo ecológico | procedente de aceites esenciales | da agricoltura biologica | da oli essenziali naturali
  | de origem biológica certificada | van biologische oorsprong | från kontrollerad ekologisk odling | økologisk
  | luonnonmukaisesti viljelty | ze składników olejków eterycznych | z ekologického zemědělství | ökológiai gazdálkodásból
  | din agricultură ecologică | βιολογικής καλλιέργειας | 100% organic | ecocert`,
  `Organic ingredients | Organically produced | of certified organic quality | Fairly traded | wild harvested
  | made using organic ingredients | occurs naturally in essential oils | constituent of natural essential oils
  | aus biologischer Landwirtschaft (kbA) | Rohstoffe aus biologischem Anbau | aus Wildsammlung
  | aus natürlichen ätherischen Ölen | ingrédients biologiques | provenant de l'agriculture biologique contrôlée
  | naturellement présents dans les huiles essentielles | ingredientes de agricultura ecológica
  | componentes naturales de los aceites esenciales | ingredienti biologici | da agricoltura biologica controllata
  | proveniente de agricultura biológica | ingrediënten uit de biologische landbouw | ekologisk ingrediens
  | fra økologisk landbrug | luomulaatuinen | z upraw ekologicznych | z kontrolovaného ekologického zemědělství
  | ellenőrzött biogazdálkodásból | ingrediente ecologice | από βιολογική καλλιέργεια | bio | organic`,
);
export const doings = halves(
  `emulsifier | humectant | thickener | solvent | skin conditioner | hair conditioning agent | natural preservative | mild surfactant
  | Emulgator | Feuchtigkeitsspender | conservateur | solvant | émulsifiant | conservante | emulgente | regolatore di pH
  | emulgator | antistatikum | vitamin | scent | binding agent | viscosity controlling`,
  `emollient | conditioner | cleansing agent | plant-based emulsifier | preservative | for shine | antioxidant | pearlizer
  | Verdicker | Rückfetter | agent de texture | antioxydant | parfum naturel | humectante | espesante | tensioattivo
  | conserveermiddel | konserwant | foam booster | opacifier | perfuming | gelling agent`,
);
export const froms = halves(
  `plant derived | coconut based | from sugar beet | naturally derived | from vegetable oils | vegan | derived from rice
  | pflanzlich | aus Raps | d'origine végétale | issu du coco | de origen vegetal | from sunflower | palm-free | mineral origin`,
  `from plants | vegetable | of vegetable origin | from coconut oil | sustainably sourced | RSPO certified | from oats
  | auf Pflanzenbasis | aus Kokosöl | origine naturelle | issue de la betterave | origen natural | di origine vegetale | non-GMO | synthetic`,
);
export const befores = halves(
  'Organic | Unrefined | Cold Pressed | Virgin | Wildcrafted | Fair Trade | Bio | *Organic | Refined | Natural',
  'Certified Organic | Extra Virgin | Raw | Cold-pressed Organic | 100% Pure | Fairtrade | BIO- | Org. | Filtered | Pure',
);
export const tails = halves(
  `Made in the EU. | Vegan. Cruelty-free. | 0% silicones, 0% parabens | Without mineral oils and silicones. | pH 4.5 - 5.5
  | 250 ml e 8.4 fl. oz. | Net Wt. 8 oz / 227 g | Patch test before use. | If irritation occurs, discontinue use.
  | Show more | Read less | See full ingredients | Mehr anzeigen | Lire la suite | Ver más | Copy to clipboard
  | Ingredient lists are updated from time to time. | Please refer to the packaging for the most accurate list.
  | Dermatologisch getestet. Ohne Tierversuche. | Nur zur äußerlichen Anwendung. | Éviter le contact avec les yeux.
  | Uso externo. No ingerir. | Non testato su animali | Bez parabenów i silikonów. | Fri från silikoner och parabener
  | Free of: sulfates, parabens, phthalates, gluten | The formula contains 97% ingredients of natural origin.
  | Color may vary slightly from batch to batch. | Click here for more information | Warnings: for external use only.`,
  `Proudly made in small batches. | Not tested on animals. Vegan friendly. | NO sulfates, NO parabens, NO drying alcohols
  | Silikonfrei und vegan. | pH: 5.0 | 300 ml / 10.1 fl oz | Inhalt: 200 ml (12,45 € / 100 ml) | Test on a small area first.
  | Discontinue use if rash appears. | View more | Less | Show all ingredients | Weniger anzeigen | Voir moins | Leer más | Toggle
  | Our formulas change; what is printed on the bottle counts. | Ingredients listed are correct at the time of publishing.
  | Vegan, tierversuchsfrei und hautverträglich. | Darf nicht in die Hände von Kindern gelangen. | Rincer abondamment.
  | Mantener fuera del alcance de los niños. | Tenere fuori dalla portata dei bambini | Produkt wegański.
  | Utan sulfater. Vegansk. | Formulated without: dyes, sulfates, silicones | 99,2 % Inhaltsstoffe natürlichen Ursprungs
  | Natural variations in colour and scent are normal. | Learn more about our ingredients | Caution: keep out of eyes.`,
);
export const codes = halves(
  `(F.I.L. C207714/1) | Code F.I.L.: D33102/3 | [ILN 40921] | PR-118203 | Formula: 40-2281 | Batch code: see bottom | Lot 22B17A
  | EAN 4000001234567 | Ref. 20881 | V2.1 | Rev. 04/23 | Art.-Nr. 551002 | 08/2026 | 12M`,
  `FIL : B91120/5 | (Code: T55032) | <ILN38714> | N° 004712 | Formula No. 7712-003 | BATCH 7K02 EXP 06/28 | L 21B044
  | GTIN 05012345000008 | SKU: HX-2210 | (v3) | Version 01/2025 | PZN 01234567 | MHD 03.2027 | PAO 6M`,
);
export const mayContain = halves(
  `May contain/Peut contenir (+/-): | [+/- (may contain): | (+/-) | ± | Kann Spuren enthalten von: | May also contain: | Puede contener (+/-):`,
  `+/- (May Contain): | [May contain/Peut contenir: | +/-: | [± | Può contenere/May contain: | Kan bevatten: | Może zawierać:`,
);
export const lessThan = halves(
  `Contains less than 2% of: | Less than 1%: | Contains 1% or less of the following: | < 1%: | Contient moins de 1 % de :`,
  `Contains 2% or less of: | Below 1 %: | Less than 2% of each of the following: | weniger als 1 %: | Inferior al 1%:`,
);
export const allergens = halves(
  `Parfum (*) | Parfum (contains | Fragrance allergens: | Allergens: | Parfum [ | Perfume (with`,
  `Parfum* | Fragrance (including | Contains allergens: | Allergene: | Fragrance: | Parfum (enthält`,
);
export const blends = halves('(and) | & | + | and', '(&) | und | et | and/or | y');
export const kits = halves(
  'Step 1: Cleanser | Step 2: Mask | Hair oil 50 ml | Shampoo bar | Curl jelly: | SHAMPOO | CONDITIONER',
  'Wash | Care | Travel size leave-in | Co-wash | Spülung | APRÈS-SHAMPOOING | Acondicionador',
);
