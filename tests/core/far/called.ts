// What names are called away from INCI. Pharmacopoeia and drug-sheet titles, and all translations, are from memory.
import { called, type Kind } from './label.ts';

type Words = [printed: string, name: string][];
/** "printed = NAME; printed = NAME" */
const words = (text: string): Words =>
  text
    .trim()
    .split(/\s*[;\n]\s*/)
    .filter(Boolean)
    .map((pair) => pair.split(/\s*=\s*/) as Words[number]);

const pharmacopoeia = words(`
Aqua purificata = WATER; Glycerolum 85 per centum = GLYCERIN; Cera alba = CERA ALBA; Adeps lanae = LANOLIN
Alcohol cetylicus = CETYL ALCOHOL; Alcohol cetylicus et stearylicus = CETEARYL ALCOHOL; Acidum citricum = CITRIC ACID
Acidum lacticum = LACTIC ACID; Natrii chloridum = SODIUM CHLORIDE; Natrii benzoas = SODIUM BENZOATE
Kalii sorbas = POTASSIUM SORBATE; Zinci oxidum = ZINC OXIDE; Alcohol benzylicus = BENZYL ALCOHOL
Propylenglycolum = PROPYLENE GLYCOL; Acidum salicylicum = SALICYLIC ACID; Alcohol stearylicus = STEARYL ALCOHOL
Acidum stearicum = STEARIC ACID; Titanii dioxidum = TITANIUM DIOXIDE; Natrii hydroxidum = SODIUM HYDROXIDE
Isopropylis myristas = ISOPROPYL MYRISTATE; Acidum boricum = BORIC ACID; Vaselinum album = PETROLATUM
Talcum = TALC; Levomentholum = MENTHOL; Dinatrii edetas = DISODIUM EDTA; Allantoinum = ALLANTOIN`);

const drugSheets = words(`
Edetate disodium = DISODIUM EDTA; Cetostearyl alcohol = CETEARYL ALCOHOL; White petrolatum = PETROLATUM
Light mineral oil = PARAFFINUM LIQUIDUM; Anhydrous citric acid = CITRIC ACID; Trolamine = TRIETHANOLAMINE
Citric acid monohydrate = CITRIC ACID; Glyceryl monostearate = GLYCERYL STEARATE; Levomenthol = MENTHOL
Medium-chain triglycerides = CAPRYLIC/CAPRIC TRIGLYCERIDE; Alpha-tocopherol acetate = TOCOPHERYL ACETATE
Dexpanthenol = PANTHENOL; Pyrithione zinc = ZINC PYRITHIONE; Butylated hydroxytoluene = BHT; White wax = CERA ALBA
Purified water = WATER; Glycerol = GLYCERIN; Macrogol 400 = PEG-8; Edetate trisodium = TRISODIUM EDTA
Hypromellose = HYDROXYPROPYL METHYLCELLULOSE; Carbomer homopolymer = CARBOMER; Povidone = PVP
Octinoxate = ETHYLHEXYL METHOXYCINNAMATE; Avobenzone = BUTYL METHOXYDIBENZOYLMETHANE; Monoethanolamine = ETHANOLAMINE
Denatured alcohol = ALCOHOL DENAT.; Sodium lauryl sulphate = SODIUM LAURYL SULFATE; Hyetellose = HYDROXYETHYLCELLULOSE`);

const kitchen = words(`
Raw shea butter = BUTYROSPERMUM PARKII BUTTER; Coconut oil = COCOS NUCIFERA OIL
Extra virgin olive oil = OLEA EUROPAEA FRUIT OIL; Castor oil = RICINUS COMMUNIS SEED OIL
Sweet almond oil = PRUNUS AMYGDALUS DULCIS OIL; Beeswax = CERA ALBA; Mango butter = MANGIFERA INDICA SEED BUTTER
Grapeseed oil = VITIS VINIFERA SEED OIL; Argan oil = ARGANIA SPINOSA KERNEL OIL; Honey = MEL
Vegetable glycerine = GLYCERIN; Aloe vera juice = ALOE BARBADENSIS LEAF JUICE; Sea salt = SEA SALT
Tea tree oil = MELALEUCA ALTERNIFOLIA LEAF OIL; Baking soda = SODIUM BICARBONATE; Epsom salt = MAGNESIUM SULFATE
Jojoba oil = SIMMONDSIA CHINENSIS SEED OIL; Cocoa butter = THEOBROMA CACAO SEED BUTTER
Avocado oil = PERSEA GRATISSIMA OIL; Distilled water = WATER; Rosemary oil = ROSMARINUS OFFICINALIS LEAF OIL
Vitamin E oil = TOCOPHEROL; Peppermint oil = MENTHA PIPERITA OIL; Silk powder = SERICA POWDER
Rose water = ROSA DAMASCENA FLOWER WATER; Colloidal oatmeal = AVENA SATIVA KERNEL FLOUR
Hemp seed oil = CANNABIS SATIVA SEED OIL; Arrowroot powder = MARANTA ARUNDINACEA ROOT POWDER
Sunflower oil = HELIANTHUS ANNUUS SEED OIL; Neem oil = MELIA AZADIRACHTA SEED OIL
Witch hazel water = HAMAMELIS VIRGINIANA WATER; Kaolin clay = KAOLIN; Activated charcoal = CHARCOAL POWDER
Aloe gel = ALOE BARBADENSIS LEAF JUICE; Lavender essential oil = LAVANDULA ANGUSTIFOLIA OIL
Apple cider vinegar = ACETUM; Candelilla wax = EUPHORBIA CERIFERA CERA`);

const shorthand = words(`
SLES 70% = SODIUM LAURETH SULFATE; SLS = SODIUM LAURYL SULFATE; CAPB = COCAMIDOPROPYL BETAINE
ALS = AMMONIUM LAURYL SULFATE; Na benzoate = SODIUM BENZOATE; K sorbate = POTASSIUM SORBATE
HEC = HYDROXYETHYLCELLULOSE; Na EDTA = DISODIUM EDTA; Na PCA = SODIUM PCA; SCI = SODIUM COCOYL ISETHIONATE
GMS = GLYCERYL STEARATE; IPM = ISOPROPYL MYRISTATE; CCT = CAPRYLIC/CAPRIC TRIGLYCERIDE; Vit E = TOCOPHEROL
BTAC = BEHENTRIMONIUM CHLORIDE; CTAC = CETRIMONIUM CHLORIDE; SAPDMA = STEARAMIDOPROPYL DIMETHYLAMINE
D5 = CYCLOPENTASILOXANE; Xanthan = XANTHAN GUM; Citric = CITRIC ACID; Na lactate = SODIUM LACTATE
Coco glucoside = COCO-GLUCOSIDE; Mg sulphate = MAGNESIUM SULFATE; Polyquat 10 = POLYQUATERNIUM-10`);

const older = words(`
Sodium lauryl ether sulfate = SODIUM LAURETH SULFATE; Cetyl trimethyl ammonium chloride = CETRIMONIUM CHLORIDE
Behenyl trimethyl ammonium chloride = BEHENTRIMONIUM CHLORIDE; Coconut diethanolamide = COCAMIDE DEA
Tetrasodium ethylenediaminetetraacetate = TETRASODIUM EDTA; Methyl p-hydroxybenzoate = METHYLPARABEN
Propyl p-hydroxybenzoate = PROPYLPARABEN; Propane-1,2-diol = PROPYLENE GLYCOL; Propane-1,3-diol = PROPANEDIOL
Polyoxyethylene (20) sorbitan monolaurate = POLYSORBATE 20; Sorbitan monostearate = SORBITAN STEARATE
Cetostearyl alcohol = CETEARYL ALCOHOL; Polyethylene glycol 400 = PEG-8; Cocoamidopropyl betaine = COCAMIDOPROPYL BETAINE
2-Phenoxyethanol = PHENOXYETHANOL; Ethylene glycol distearate = GLYCOL DISTEARATE; Octyl methoxycinnamate = ETHYLHEXYL METHOXYCINNAMATE
Decamethylcyclopentasiloxane = CYCLOPENTASILOXANE; Ethanol = ALCOHOL; Vitamin A palmitate = RETINYL PALMITATE
Isopropanol = ISOPROPYL ALCOHOL; Hexadecanol = CETYL ALCOHOL; Octadecanol = STEARYL ALCOHOL; Lauryl alcohol ethoxylate (4) = LAURETH-4
Caustic soda = SODIUM HYDROXIDE; Lauryl polyglucoside = LAURYL GLUCOSIDE; Glycerol = GLYCERIN
Nicotinamide = NIACINAMIDE; Pyridoxine hydrochloride = PYRIDOXINE HCL; Vitamin H = BIOTIN; D-Biotin = BIOTIN`);

const turkish = words(`
Su = WATER; Gliserin = GLYCERIN; Setearil alkol = CETEARYL ALCOHOL; Sitrik asit = CITRIC ACID; Parfüm = PARFUM
Sodyum klorür = SODIUM CHLORIDE; Sodyum benzoat = SODIUM BENZOATE; Potasyum sorbat = POTASSIUM SORBATE
Hindistan cevizi yağı = COCOS NUCIFERA OIL; Fenoksietanol = PHENOXYETHANOL; Zeytinyağı = OLEA EUROPAEA FRUIT OIL
Sodyum hidroksit = SODIUM HYDROXIDE; Pantenol = PANTHENOL; Setil alkol = CETYL ALCOHOL; Dimetikon = DIMETHICONE`);

const centralEurope = words(`
Woda = WATER; Gliceryna = GLYCERIN; Kwas cytrynowy = CITRIC ACID; Kwas mlekowy = LACTIC ACID; Masło shea = BUTYROSPERMUM PARKII BUTTER
Olej kokosowy = COCOS NUCIFERA OIL; Olej rycynowy = RICINUS COMMUNIS SEED OIL; Alkohol cetylowy = CETYL ALCOHOL
Alkohol cetearylowy = CETEARYL ALCOHOL; Benzoesan sodu = SODIUM BENZOATE; Sorbinian potasu = POTASSIUM SORBATE
Voda = WATER; Kyselina citronová = CITRIC ACID; Kokosový olej = COCOS NUCIFERA OIL; Bambucké máslo = BUTYROSPERMUM PARKII BUTTER
Benzoan sodný = SODIUM BENZOATE; Sorban draselný = POTASSIUM SORBATE; Víz = WATER; Citromsav = CITRIC ACID
Kókuszolaj = COCOS NUCIFERA OIL; Limunska kiselina = CITRIC ACID; Natrijev benzoat = SODIUM BENZOATE; Apă = WATER; Ulei de cocos = COCOS NUCIFERA OIL`);

const cyrillic = words(`
Вода = WATER; Глицерин = GLYCERIN; Пантенол = PANTHENOL; Лимонная кислота = CITRIC ACID; Молочная кислота = LACTIC ACID
Масло ши = BUTYROSPERMUM PARKII BUTTER; Кокосовое масло = COCOS NUCIFERA OIL; Касторовое масло = RICINUS COMMUNIS SEED OIL
Цетеариловый спирт = CETEARYL ALCOHOL; Цетиловый спирт = CETYL ALCOHOL; Феноксиэтанол = PHENOXYETHANOL
Бензоат натрия = SODIUM BENZOATE; Сорбат калия = POTASSIUM SORBATE; Хлорид натрия = SODIUM CHLORIDE; Диметикон = DIMETHICONE
Ксантановая камедь = XANTHAN GUM; Кокамидопропилбетаин = COCAMIDOPROPYL BETAINE; Лауретсульфат натрия = SODIUM LAURETH SULFATE
Бензиловый спирт = BENZYL ALCOHOL; Парфюм = PARFUM; Кокоглюкозид = COCO-GLUCOSIDE; Масло жожоба = SIMMONDSIA CHINENSIS SEED OIL
Лимонена киселина = CITRIC ACID; Гліцерин = GLYCERIN; Лимонна кислота = CITRIC ACID; Мочевина = UREA; Аллантоин = ALLANTOIN`);

const romance = words(`
Eau = WATER; Agua = WATER; Acqua = WATER; Água = WATER; Glycérine végétale = GLYCERIN; Glicerina vegetal = GLYCERIN
Acide citrique = CITRIC ACID; Ácido cítrico = CITRIC ACID; Acido citrico = CITRIC ACID; Acide lactique = LACTIC ACID
Beurre de karité = BUTYROSPERMUM PARKII BUTTER; Manteca de karité = BUTYROSPERMUM PARKII BUTTER; Burro di karité = BUTYROSPERMUM PARKII BUTTER
Huile de coco = COCOS NUCIFERA OIL; Aceite de coco = COCOS NUCIFERA OIL; Olio di cocco = COCOS NUCIFERA OIL
Huile de ricin = RICINUS COMMUNIS SEED OIL; Aceite de ricino = RICINUS COMMUNIS SEED OIL; Óleo de rícino = RICINUS COMMUNIS SEED OIL
Huile d'argan = ARGANIA SPINOSA KERNEL OIL; Aceite de argán = ARGANIA SPINOSA KERNEL OIL; Olio di argan = ARGANIA SPINOSA KERNEL OIL
Benzoate de sodium = SODIUM BENZOATE; Benzoato de sodio = SODIUM BENZOATE; Sorbate de potassium = POTASSIUM SORBATE
Sorbato de potasio = POTASSIUM SORBATE; Gomme xanthane = XANTHAN GUM; Goma xantana = XANTHAN GUM; Gomma xantana = XANTHAN GUM
Alcool cétéarylique = CETEARYL ALCOHOL; Alcohol cetearílico = CETEARYL ALCOHOL; Alcool cetilico = CETYL ALCOHOL
Miel = MEL; Cire d'abeille = CERA ALBA; Cera de abejas = CERA ALBA; Cera d'api = CERA ALBA`);

const north = words(`
Vatten = WATER; Vand = WATER; Vann = WATER; Vesi = WATER; Glycerol = GLYCERIN; Glyseroli = GLYCERIN; Sitruunahappo = CITRIC ACID
Citronsyra = CITRIC ACID; Citronsyre = CITRIC ACID; Kokosolja = COCOS NUCIFERA OIL; Kokosolie = COCOS NUCIFERA OIL
Kookosöljy = COCOS NUCIFERA OIL; Sheasmör = BUTYROSPERMUM PARKII BUTTER; Natriumbensoat = SODIUM BENZOATE; Kaliumsorbat = POTASSIUM SORBATE
Natriumbentsoaatti = SODIUM BENZOATE; Bivax = CERA ALBA; Mjölksyra = LACTIC ACID; Ricinolja = RICINUS COMMUNIS SEED OIL
Citroenzuur = CITRIC ACID; Kokosolie = COCOS NUCIFERA OIL; Zitronensäure = CITRIC ACID; Rizinusöl = RICINUS COMMUNIS SEED OIL
Bienenwachs = CERA ALBA; Kochsalz = SODIUM CHLORIDE; Milchsäure = LACTIC ACID; Cetylalkohol = CETYL ALCOHOL; Jojobaöl = SIMMONDSIA CHINENSIS SEED OIL`);

const chinese = words(`
水 = WATER; 甘油 = GLYCERIN; 泛醇 = PANTHENOL; 丁二醇 = BUTYLENE GLYCOL; 丙二醇 = PROPYLENE GLYCOL; 苯氧乙醇 = PHENOXYETHANOL
柠檬酸 = CITRIC ACID; 鲸蜡硬脂醇 = CETEARYL ALCOHOL; 氯化钠 = SODIUM CHLORIDE; 聚二甲基硅氧烷 = DIMETHICONE; 香精 = PARFUM
苯甲酸钠 = SODIUM BENZOATE; 黄原胶 = XANTHAN GUM; 山梨酸钾 = POTASSIUM SORBATE; 椰油酰胺丙基甜菜碱 = COCAMIDOPROPYL BETAINE
月桂醇聚醚硫酸酯钠 = SODIUM LAURETH SULFATE; 鲸蜡醇 = CETYL ALCOHOL; 卡波姆 = CARBOMER; 尿囊素 = ALLANTOIN; 透明质酸钠 = SODIUM HYALURONATE`);

const japaneseKorean = words(`
水 = WATER; グリセリン = GLYCERIN; パンテノール = PANTHENOL; セテアリルアルコール = CETEARYL ALCOHOL; クエン酸 = CITRIC ACID
ジメチコン = DIMETHICONE; フェノキシエタノール = PHENOXYETHANOL; 香料 = PARFUM; 加水分解ケラチン = HYDROLYZED KERATIN
ベヘントリモニウムクロリド = BEHENTRIMONIUM CHLORIDE; 安息香酸Na = SODIUM BENZOATE; 정제수 = WATER; 글리세린 = GLYCERIN; 판테놀 = PANTHENOL
부틸렌글라이콜 = BUTYLENE GLYCOL; 세테아릴알코올 = CETEARYL ALCOHOL; 다이메티콘 = DIMETHICONE; 페녹시에탄올 = PHENOXYETHANOL
시트릭애씨드 = CITRIC ACID; 향료 = PARFUM; 하이드롤라이즈드케라틴 = HYDROLYZED KERATIN; 소듐클로라이드 = SODIUM CHLORIDE; 알란토인 = ALLANTOIN`);

const atLength = words(`
Purified water (aqua) = WATER; Aqua (purified water) = WATER; Water\\Aqua\\Eau = WATER; De-ionised water = WATER
Aqua [Water/Eau] = WATER; Spring water = WATER; Demineralised water = WATER; Water (aqua) (eau) = WATER; Aqua dest. = WATER
Filtered water = WATER; Water - Aqua = WATER; RO water = WATER; Fragrance (parfum) = PARFUM; Parfum [Fragrance] = PARFUM
Perfume oil = PARFUM; Natural fragrance = PARFUM; Fragrance (IFRA certified) = PARFUM; Perfume (Fragrance/Parfum) = PARFUM
Phthalate-free fragrance = PARFUM; Fragrance oil = PARFUM; Parfum (allergen free) = PARFUM; Fragrance/Parfum/Duftstoff = PARFUM`);

const vitamins = words(`
Panthenol (Pro-Vitamin B5) = PANTHENOL; Vitamin B3 (Niacinamide) = NIACINAMIDE; Vitamin E (Tocopheryl Acetate) = TOCOPHERYL ACETATE
Biotin (Vitamin B7) = BIOTIN; Tocopherol [Vitamin E] = TOCOPHEROL; Vitamin C (Ascorbic Acid) = ASCORBIC ACID
Provitamin B5/Panthenol = PANTHENOL; Sodium Chloride (table salt) = SODIUM CHLORIDE; Salt (Sodium Chloride) = SODIUM CHLORIDE
Retinyl Palmitate – Vit. A = RETINYL PALMITATE; Xanthan Gum (natural thickener) = XANTHAN GUM; Niacinamide, or vitamin B3 = NIACINAMIDE
Sugar (Sucrose) = SUCROSE; Tocopherol: vitamin E = TOCOPHEROL; Ethanol (grain alcohol) = ALCOHOL; Sodium Hydroxide (lye) = SODIUM HYDROXIDE`);

const numbered = words(`
Xanthan Gum (E415) = XANTHAN GUM; E330 Citric Acid = CITRIC ACID; Potassium Sorbate E202 = POTASSIUM SORBATE; Sodium Benzoate [E 211] = SODIUM BENZOATE
Glycerin (E422) = GLYCERIN; Citric Acid / E-330 = CITRIC ACID; Lactic Acid (E 270) = LACTIC ACID; Titanium Dioxide (E171) = TITANIUM DIOXIDE
Beeswax (E901) = CERA ALBA; Carrageenan (INS 407) = CARRAGEENAN; Propylene Glycol E1520 = PROPYLENE GLYCOL; Benzoic Acid (E210) = BENZOIC ACID`);

const forms = words(`
α-Tocopherol = TOCOPHEROL; d-Limonene = LIMONENE; D,L-Panthenol = PANTHENOL; D-Panthenol 75% = PANTHENOL; L-Arginine = ARGININE
alpha-Bisabolol = BISABOLOL; α-Isomethyl Ionone = ALPHA-ISOMETHYL IONONE; L-Menthol = MENTHOL; β-Glucan = BETA-GLUCAN; l-Cysteine HCl = CYSTEINE HCL
dl-Alpha Tocopheryl Acetate = TOCOPHERYL ACETATE; L(+)-Lactic Acid = LACTIC ACID; γ-Linolenic... = GAMMA-LINOLENIC ACID; N-Acetyl-L-Cysteine = ACETYL CYSTEINE`).filter(
  ([printed]) => !printed.includes('...'),
);

const colours: Words = [
  '77491',
  '77492',
  '77499',
  '77891',
  '19140',
  '42090',
  '17200',
  '47005',
  '16035',
  '60730',
].flatMap((number, i) =>
  [
    `C.I. ${number}`,
    `CI-${number}`,
    `CI${number}`,
    `C.I. No. ${number}`,
    `Cl ${number}`,
    `Colour Index ${number}`,
    `C I ${number}`,
    `CI # ${number}`,
  ]
    .slice(i % 2)
    .map((printed) => [printed, `CI ${number}`] satisfies Words[number]),
);

export const calledKinds: Kind[] = [
  called('titles of the pharmacopoeia', 'looked at', pharmacopoeia),
  called('names of drug sheets', 'kept aside', drugSheets),
  called('kitchen names of small makers', 'both', kitchen, { most: 7 }),
  called('shorthand of people who formulate', 'kept aside', shorthand),
  called('names of older chemistry', 'both', older),
  called('spelt the Turkish way', 'looked at', turkish),
  called('names of central Europe', 'kept aside', centralEurope),
  called('names in Cyrillic', 'looked at', cyrillic, { most: 8 }),
  called('names of Romance languages', 'both', romance),
  called('names of the north', 'kept aside', north),
  called('Chinese with INCI beside', 'looked at', chinese, {
    most: 8,
    beside: (own, name, draw) => (draw() < 0.5 ? `${own}（${name}）` : `${own} ${name}`),
  }),
  called('INCI with Japanese or Korean beside', 'kept aside', japaneseKorean, {
    most: 8,
    beside: (own, name, draw) => (draw() < 0.5 ? `${name} (${own})` : `${name}/${own}`),
  }),
  called('water and perfume said at length', 'both', atLength, { most: 3 }),
  called('vitamins and by-names beside', 'both', vitamins),
  called('numbers of food additives beside', 'kept aside', numbered),
  called('Greek letters and optical forms', 'looked at', forms),
  called('numbers of colours', 'both', colours, { most: 4 }),
];
