import type { ProteinKind } from '../../src/core/names/entry.ts';

/**
 * An independent reading of INCI names for the confusion table: what a name is by its words, in the order a
 * person would ask. Written after going through every name of the inventory that holds a word of protein,
 * peptide, amino acid, milk, egg, silk, grain or ferment; it shares no expression with the dictionary's patterns.
 *
 * Source of the names: CosIng inventory, European Commission, export of December 2020. The judgement is ours
 * (`common practice`): CosIng's functions do not say what is a protein.
 */
export type Truth = ProteinKind | 'none';

const words = (list: string) => new Set(list.trim().split(/\s+/));

const fatty = words(
  `ABIETOYL BEHENOYL CAPROOYL CAPROYL CAPRYLOYL COCOYL HYDROXYSTEAROYL ISODECYL ISOSTEAROYL LAUROYL LINOLEOYL
MYRISTOYL OLEOYL OLIVOYL PALMITOYL PALMOYL RICINOLEOYL SAFFLOWEROYL STEAROYL SUNFLOWEROYL UNDECENOYL UNDECYLENOYL
TALLOWOYL ROSIN DIPALMITOYL`,
);
const proteins = words(
  `PROTEIN PROTEINS PROTEINUM KERATIN COLLAGEN ATELOCOLLAGEN PROCOLLAGEN ELASTIN SILK SERICA SERICIN FIBROIN CASEIN
GELATIN GLUTEN ZEIN WOOL CONCHIOLIN ALBUMIN LACTALBUMIN CONALBUMIN LACTOGLOBULIN HEMOGLOBIN ACTIN FIBRONECTIN EXTENSIN
RETICULIN SPONGIN GLYCOPROTEIN GLYCOPROTEINS OVOTRANSFERRIN LACTOFERRIN APO-LACTOFERRIN ELASTINATE COLLAGENATE
CASEINATE TRICASEINAMIDE TRILACTIN`,
);
const enzymes = words(
  `PAPAIN BROMELAIN SUBTILISIN PANCREATIN PEPSIN TRYPSIN LYSOZYME PROTEASE LIPASE AMYLASE AMYLOGLUCOSIDASE CATALASE
CELLULASE KERATINASE COLLAGENASE PEROXIDASE LACTOPEROXIDASE UREASE TYROSINASE LACCASE OXIDASE DISMUTASE
TRANSGLUTAMINASE HYALURONIDASE AMINOPEPTIDASE PHOSPHATASE LIGNINASE DEHYDROGENASE CARBOXYLESTERASE DESATURASE
DEOXYRIBONUCLEASE HESPERIDINASE OXIDOREDUCTASE ENDONUCLEASE ESTERASE ENZYMES ANTIBODY THAUMATINS`,
);
const acids = words(
  `ALANINE ARGININE ASPARAGINE ASPARTIC CYSTEINE CYSTINE GLUTAMIC GLUTAMINE GLYCINE HISTIDINE ISOLEUCINE LEUCINE LYSINE
METHIONINE PHENYLALANINE PROLINE HYDROXYPROLINE SERINE THREONINE TRYPTOPHAN TYROSINE VALINE ORNITHINE CITRULLINE
NORVALINE CARBOCYSTEINE BETA-ALANINE SARCOSINE THEANINE CREATINE`,
);
const acidSalts = words(
  `ALANINATE ARGINATE ARGININATE ASPARTATE CYSTEINATE CYSTINATE GLUTAMATE GLUTAMINATE GLYCINATE LEUCINATE LYSINATE
METHIONATE PROLINATE HYDROXYPROLINATE SERINATE THREONINATE TYROSINATE VALINATE ISOLEUCINATE SARCOSINATE
BETA-ALANINATE`,
);
const feed = words(
  `MILK SOYMILK LAC WHEY YOGURT COLOSTRUM SOY SOYBEAN WHEAT RICE OAT BARLEY QUINOA PEA EGG SILK SILKWORM COLLAGEN
ATELOCOLLAGEN GELATIN CASEIN PROTEIN PEPTIDE YEAST PLACENTA PLACENTAL JELLY TRITICUM ORYZA AVENA HORDEUM PISUM
LUPINUS CHENOPODIUM`,
);
const quat = /(?:TRIMONIUM|DIMONIUM|THONIUM|QUATERNIUM-\d+)/;

/** Names whose words mislead, with what they are. */
const singly: Record<string, Truth> = {
  'SACCHAROMYCES FERMENT': 'protein-bearing',
  'AMP-ISOSTEAROYL GELATIN/KERATIN AMINO ACIDS/LYSINE HYDROXYPROPYLTRIMONIUM CHLORIDE': 'quaternized',
  'ZEA MAYS SILK EXTRACT': 'none',
  'HYDROLYZED LAC': 'none',
  GLIADIN: 'whole',
  'CAPRAE LAC EXTRACT': 'protein-bearing',
  'LAC EXTRACT': 'protein-bearing',
  'MILK EXOSOMES': 'protein-bearing',
  'POLLEN EXTRACT': 'protein-bearing',
  'ROE EXTRACT': 'protein-bearing',
  'UMBILICAL EXTRACT': 'protein-bearing',
  'PALMITOYL MARE MILK': 'protein-surfactant',
  'SODIUM SOY HYDROLYZED COLLAGEN': 'protein-surfactant',
  'HYDROXYPROPYLTRIMONIUM HYDROLYZED WHEY': 'quaternized',
  // Acyl peptides and a siloxane: no cleansers.
  'PALMITOYL HISTIDYL D-PHENYLALANYL ARGININE': 'none',
  'PALMITOYL LYSYL AMINOVALEROYL LYSINE': 'none',
  'BIS-(C1-8 ALKYL LAUROYL LYSINE DECYLCARBOXAMIDE) DIMETHICONE': 'none',
  'CYSTEINE/OLIGOMERIC PROANTHOCYANIDIN': 'amino-acid',
};

const longestJudged = 300; // letters: ferments of forty plants, which no hair label prints

/** What an INCI name is, or undefined where this reading does not decide (mixtures, odd derivatives). */
export function truthOf(name: string): Truth | undefined {
  const known = singly[name];
  if (known) return known;
  if (name.length > longestJudged) return undefined;
  const tokens = name.split(/[\s/(),+[\]]+/).filter(Boolean);
  const has = (set: Set<string>) =>
    tokens.some(
      (token) =>
        set.has(token) || set.has(token.replace(/^(?:TEA|MEA|AMP|AMPD|DEA|PG|SODIUM|MIPA|TIPA)-/, '')),
    );
  const aminoAcids = /\bAMINO ACIDS?\b/.test(name);
  const acylated = tokens.some((token) =>
    fatty.has(token.replace(/^(?:TEA|AMP|AMPD|DEA|MIPA|TIPA|MEA)-/, '')),
  );
  if (/\bFERMENT\b/.test(name)) return has(feed) ? 'protein-bearing' : undefined;
  if (/CONDITIONED MEDIA|EXOSOMES|PHYTOPLACENTA|CALLUS/.test(name)) return 'none';
  if (quat.test(name) && (has(proteins) || aminoAcids)) return 'quaternized';
  if (quat.test(name) && /\b(?:STARCH|HONEY|GUAR|CELLULOSE|INULIN|CASSIA)\b/.test(name)) return 'none';
  if (/PEPTIDE/.test(name)) return /^(?:HUMAN|PANTOEA)/.test(name) ? undefined : 'peptide';
  if (acylated && (has(proteins) || aminoAcids))
    return /ATELOCOLLAGEN/.test(name) ? 'whole' : 'protein-surfactant';
  if (aminoAcids) return 'amino-acid';
  if (/\bHYDROLYZED\b/.test(name)) {
    if (
      /EXTRACT|FLOUR|BRAN|MEMBRANE|GLAND|CARTILAGE|SKIN/.test(name) &&
      !/(?:PROTEIN|COLLAGEN|GLUTEN) EXTRACT/.test(name)
    )
      return undefined; // an extract of what: read one by one below in the hard names
    if (has(proteins) || /ALBUMEN|\bWHEY$/.test(name)) return 'hydrolyzed';
    if (
      /STARCH|HYALURON|GUM|CELLULOSE|PECTIN|CHIT|GLUCAN|ALGIN|CARRAGEENAN|ESTERS|WAX|JOJOBA|LECITHIN|DNA|RNA|OIL/.test(
        name,
      )
    )
      return 'none';
    return undefined;
  }
  if (acylated && (has(acids) || has(acidSalts))) return 'protein-surfactant';
  if (/^(?:GLYCINE (?:SOJA|MAX))\b/.test(name))
    return /PROTEIN/.test(name)
      ? 'whole'
      : /OIL|STEROL|LIPID|CALLUS|UNSAPON|LEAF|STEM|ROOT|PHOSPHOLIPID/.test(name)
        ? 'none'
        : undefined;
  if (has(enzymes)) return 'whole';
  if (has(proteins) && !/EXTRACT|OIL|LIPID|WORM|FRASS|COPOLYMER|DEPROTEIN/.test(name)) return 'whole';
  if (tokens.length === 1 && acids.has(tokens[0]!)) return 'amino-acid';
  if (/^(?:ASPARTIC|GLUTAMIC) ACID$/.test(name)) return 'amino-acid';
  if (
    tokens.length === 2 &&
    acids.has(tokens[0]!) &&
    /^(?:HCL|PCA|ASPARTATE|GLUTAMATE|FERULATE)$/.test(tokens[1]!)
  )
    return 'amino-acid';
  if (
    tokens.length === 2 &&
    acidSalts.has(tokens[1]!) &&
    /^(?:SODIUM|POTASSIUM|MAGNESIUM|CALCIUM|ZINC|COPPER|MANGANESE|FERROUS)$/.test(tokens[0]!)
  )
    return 'amino-acid';
  if (/^(?:.* )?(?:MILK|LAC|EGG|OVUM|YOGURT|BUTTERMILK|COLOSTRUM|WHEY)(?: POWDER)?$/.test(name))
    return 'protein-bearing';
  const lookalike =
    /PROTEIN|PEPTID|KERAT|COLLAG|SILK|CASEIN|GELATIN|ELAST|GLUTEN|ALBUM|AMINO|GLUTAM|GLYCIN|ALANIN|ARGIN|HISTID|ASPAR|CYST|LYSIN|LEUC|METHION|PROLIN|SERIN|THREON|TRYPTO|TYROS|VALIN|SARCOS|MILK|LACTIS|EGG|OVUM|YEAST|FAEX|SACCHARO|SOY|GLYCINE|WHEAT|TRITIC|OAT|AVENA|RICE|ORYZA|BARLEY|HORDEUM|QUINOA|PISUM|PEA\b|LUPIN|ROYAL|PLACENT|FERMENT|COLOSTR|WHEY|CREAM|YOGURT|ASE\b|CAVIAR|AMARANTH|CICER|PHASEOL|LENS\b|VIGNA|CORN\b|ZEA MAYS|HEMP|CANNABIS|MILLET|RYE|SECALE|FISH|OVI|SERUM|BLOOD|NEST|LARVA|ANTLER|AMNIO|COCOON|BOMBYX|ORNITH|CITRULL|CARNOS|ANSERIN|GLUTATH|CREATIN|THEANIN|SURFACTIN|MELITTIN|SPELT|PANICUM|SETARIA|ERAGROSTIS|LENTIL|CHICKPEA|THIONE|HYDROLYSATE|ZYM|FIBRO|SERIC|CONCHIOL|PROT|OVO|ASPARTAME|LECITHIN|PCA\b|POLYGAMMA|PANCREATIN|PEPSIN|TRYPSIN|SUBTILISIN|BROMELAIN|PAPAIN|SALMO|PISCUM|SNAIL|BEE\b/;
  return lookalike.test(name) ? undefined : 'none';
}
