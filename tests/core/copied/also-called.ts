// What else labels print for a name: plants by their Latin and plain names, older and newer names, the water of many
// lands. From memory of labels; the two halves of a row's wordings are used by the two halves of the labels.

/** Latin name of the plant → its plain name, as labels put it into brackets. */
export const plants: Record<string, string> = {
  'COCOS NUCIFERA': 'Coconut', 'OLEA EUROPAEA': 'Olive', 'ARGANIA SPINOSA': 'Argan', 'BUTYROSPERMUM PARKII': 'Shea',
  'SIMMONDSIA CHINENSIS': 'Jojoba', 'PERSEA GRATISSIMA': 'Avocado', 'RICINUS COMMUNIS': 'Castor', 'HELIANTHUS ANNUUS': 'Sunflower',
  'PRUNUS AMYGDALUS DULCIS': 'Sweet Almond', 'ALOE BARBADENSIS': 'Aloe Vera', 'ROSMARINUS OFFICINALIS': 'Rosemary',
  'LAVANDULA ANGUSTIFOLIA': 'Lavender', 'MENTHA PIPERITA': 'Peppermint', 'MELALEUCA ALTERNIFOLIA': 'Tea Tree',
  'CAMELLIA SINENSIS': 'Green Tea', 'CHAMOMILLA RECUTITA': 'Chamomile', 'CALENDULA OFFICINALIS': 'Marigold',
  'THEOBROMA CACAO': 'Cocoa', 'MANGIFERA INDICA': 'Mango', 'CITRUS LIMON': 'Lemon', 'CITRUS AURANTIUM DULCIS': 'Orange',
  'VITIS VINIFERA': 'Grape', 'LINUM USITATISSIMUM': 'Linseed', 'GLYCINE SOJA': 'Soybean', 'ORYZA SATIVA': 'Rice',
  'AVENA SATIVA': 'Oat', 'TRITICUM VULGARE': 'Wheat', 'ZEA MAYS': 'Corn', 'SESAMUM INDICUM': 'Sesame', 'URTICA DIOICA': 'Nettle',
  'EQUISETUM ARVENSE': 'Horsetail', 'SALVIA OFFICINALIS': 'Sage', 'PUNICA GRANATUM': 'Pomegranate', 'HIBISCUS SABDARIFFA': 'Hibiscus',
  'CUCUMIS SATIVUS': 'Cucumber', 'PANAX GINSENG': 'Ginseng', 'ZINGIBER OFFICINALE': 'Ginger', 'CANNABIS SATIVA': 'Hemp',
  'MORINGA OLEIFERA': 'Moringa', 'ADANSONIA DIGITATA': 'Baobab', 'ARCTIUM LAPPA': 'Burdock', 'ALTHAEA OFFICINALIS': 'Marshmallow',
  'CARICA PAPAYA': 'Papaya', 'MUSA SAPIENTUM': 'Banana', 'PYRUS MALUS': 'Apple', 'EUTERPE OLERACEA': 'Acai', 'LAWSONIA INERMIS': 'Henna',
  'BRASSICA CAMPESTRIS': 'Rapeseed', 'DAUCUS CAROTA SATIVA': 'Carrot', 'ROSA CANINA': 'Rosehip', 'CITRUS GRANDIS': 'Grapefruit',
}; // biome-ignore format: pairs read best side by side

/** Name → what is printed instead: of one half | of the other. */
export const instead: Record<string, string> = {
  WATER: 'Aqua (Eau); Agua; Aqua/Water/Eau; Vatten|Wasser; Acqua; Aqua (Water, Eau); Woda; Água',
  AQUA: 'Aqua (Eau); Agua; Aqua/Water/Eau; Vatten|Wasser; Acqua; Aqua (Water, Eau); Woda; Água',
  PARFUM: 'Perfume; Fragrance/Parfum; Parfum (Natural)|Profumo; Fragrance (Natural); Parfum**; Perfum',
  GLYCERIN: 'Vegetable Glycerin; Glycerol; Glycerine|Glycérine; Glicerina; Plant Glycerin; Glyzerin',
  'ALCOHOL DENAT': 'Denatured Alcohol; Alcohol Denat.|SD Alcohol 40-B; Alcool Denat.; Alcohol (Denat.)',
  'ALCOHOL DENAT.': 'Denatured Alcohol; Alcohol Denat|SD Alcohol 40-B; Alcool Denat.; Alcohol (Denat.)',
  'PARAFFINUM LIQUIDUM': 'Mineral Oil; Paraffinum Liquidum/Mineral Oil|Paraffinum Liquidum (Mineral Oil); Huile Minérale',
  'CERA ALBA': 'Beeswax; Cera Alba/Beeswax|Cera Alba (Beeswax); Cire d’abeille; Beeswax (Cera Alba)',
  'TOCOPHERYL ACETATE': 'Vitamin E Acetate; Tocopheryl Acetate (Vitamin E)|Vit. E Acetate; Tocopherol Acetate',
  TOCOPHEROL: 'Vitamin E; Tocopherol (Vitamin E)|Vitamin E (Tocopherol); Mixed Tocopherols; Natural Vitamin E',
  PANTHENOL: 'D-Panthenol; Provitamin B5; Panthenol (Pro-Vitamin B5)|Pro-Vitamin B5; Panthenol (Vitamin B5); dl-Panthenol',
  NIACINAMIDE: 'Vitamin B3; Niacinamide (Vitamin B3)|Nicotinamide; Vitamin B3 (Niacinamide)',
  'ASCORBIC ACID': 'Vitamin C; Ascorbic Acid (Vitamin C)|L-Ascorbic Acid; Vitamin C (Ascorbic Acid)',
  BIOTIN: 'Biotin (Vitamin H); Vitamin B7|Vitamin H; Biotin (B7)',
  'SODIUM CHLORIDE': 'Salt; Sodium Chloride (Salt)|Table Salt; Natriumchlorid',
  'CITRIC ACID': 'Acide citrique; Citric Acid (E330)|Zitronensäure; Ácido cítrico; Citronsyra',
  'SODIUM BICARBONATE': 'Baking Soda; Bicarbonate of Soda|Sodium Hydrogen Carbonate; Sodium Bicarbonate (Baking Soda)',
  'SODIUM LAURYL SULFATE': 'Sodium Lauryl Sulphate; Sodium Lauryl Sulfate (SLS)|SLS; Sodium Laurylsulfate; Sodium Lauril Sulfate',
  'SODIUM LAURETH SULFATE': 'Sodium Laureth Sulphate; Sodium Lauryl Ether Sulfate|SLES; Sodium Laurethsulfate; Sodium Laureth Sulfate (SLES)',
  'CETEARYL ALCOHOL': 'Cetostearyl Alcohol; Cetearyl Alcohol (Plant)|Cetyl-Stearyl Alcohol; Cetylstearyl Alcohol',
  PETROLATUM: 'Petrolatum (Petroleum Jelly); Vaseline Petrolatum|Petroleum Jelly; White Petrolatum',
  LIMONENE: 'd-Limonene; D-Limonene*; Limonene**|Limonen; (R)-Limonene; Limonene (natural)',
  LINALOOL: 'Linalool*; Linalol|Linalool (natural); Linalool¹',
  'BUTYLPHENYL METHYLPROPIONAL': 'Lilial; Butylphenyl Methylpropional (Lilial)|2-(4-tert-Butylbenzyl) Propionaldehyde',
  'ALPHA-ISOMETHYL IONONE': 'Alpha Isomethyl Ionone; Alpha-Isomethylionone|α-Isomethyl Ionone; a-Isomethyl Ionone',
  'CAPRYLYL GLYCOL': '1,2-Octanediol|1, 2-Octanediol; Octane-1,2-diol',
  'PENTYLENE GLYCOL': '1,2-Pentanediol|1, 2-Pentanediol',
  PROPANEDIOL: '1,3-Propanediol|1, 3-Propanediol; Propane-1,3-diol',
  'HYDROLYZED WHEAT PROTEIN': 'Hydrolysed Wheat Protein; Wheat Protein (Hydrolyzed)|Wheat Protein, Hydrolysed; Hydrolyzed Wheat Proteins',
  'HYDROLYZED KERATIN': 'Hydrolysed Keratin; Keratin (Hydrolyzed)|Hydrolized Keratin; Keratin Hydrolysate',
  'HYDROLYZED SILK': 'Hydrolysed Silk; Silk (Hydrolyzed)|Hydrolized Silk',
  'DISODIUM EDTA': 'EDTA Disodium; Disodium-EDTA|Disodium E.D.T.A.; Di-sodium EDTA',
  'TETRASODIUM EDTA': 'Tetrasodium-EDTA|Tetra Sodium EDTA; EDTA Tetrasodium',
  'XANTHAN GUM': 'Xanthan; Xanthan Gum (Thickener)|Xanthum Gum; Gomme Xanthane; Xanthan-Gum',
  'COCAMIDOPROPYL BETAINE': 'Cocoamidopropyl Betaine; Cocamidopropylbetaine|Coco Amido Propyl Betaine; Cocamidopropyl-Betaine',
  'MAGNESIUM SULFATE': 'Magnesium Sulphate; Epsom Salt|Magnesium Sulfate (Epsom Salt); Magnesiumsulfat',
  MEL: 'Honey; Mel (Honey)|Honey (Mel); Miel; Mel/Honey', HONEY: 'Mel; Honey (Mel)|Miel; Honey Extract',
  'MAGNESIUM CHLORIDE': 'Magnesium Chlorid|Chlorure de magnésium', 'POTASSIUM SORBATE': 'Potassium Sorbat; Potassium Sorbate (E202)|Kaliumsorbat; Sorbate de potassium',
  'SODIUM BENZOATE': 'Sodium Benzoat; Sodium Benzoate (E211)|Natriumbenzoat; Benzoate de sodium',
  'TITANIUM DIOXIDE': 'Titanium Dioxide (CI 77891); Titanium Dioxide [nano]|CI 77891 (Titanium Dioxide); Titanium Dioxide (Nano)',
}; // biome-ignore format: rows read best side by side

/** Colours by their index → what the United States call them. */
export const colours: Record<string, string> = {
  '19140': 'Yellow 5', '15985': 'Yellow 6', '16035': 'Red 40', '42090': 'Blue 1', '17200': 'Red 33', '14700': 'Red 4',
  '60730': 'Ext. Violet 2', '61570': 'Green 5', '47005': 'Yellow 10', '77891': 'Titanium Dioxide', '77491': 'Iron Oxides', '77019': 'Mica',
}; // biome-ignore format: pairs read best side by side
