// What small makers and shops print in ten languages: headings, names, talk. Written from memory of such labels and
// shops before the finder was asked; products and sentences are invented.

export type Tongue = {
  headings: string[];
  /** Names in plain words, water first. */
  names: string[];
  titles: string[];
  claims: string[];
  after: string[];
  key: string[];
  freeFrom: string[];
  /** Talk with a place for each name. */
  talk: (names: string[]) => string;
};

const list = (text: string) => text.split('|');
const some = (names: string[], and: string) => `${names.slice(0, -1).join(', ')} ${and} ${names.at(-1)}`;

export const tongues: Record<string, Tongue> = {
  de: {
    headings: list(
      'Inhaltsstoffe|Zutaten|Zusammensetzung|Das ist drin|Alle Inhaltsstoffe|Inhaltsstoffe (INCI)',
    ),
    names: list(
      'Wasser|Pflanzliches Glycerin|Sheabutter|Kokosöl|Olivenöl|Mandelöl|Jojobaöl|Arganöl|Rizinusöl|Traubenkernöl|Sonnenblumenöl|Bienenwachs|Aloe-Vera-Saft|Lavendelöl|Rosmarinöl|Zitronensäure|Xanthan|Panthenol|Vitamin E|Kamillenextrakt|Brennnesselextrakt|Hafermehl|Heilerde|Kokosglucosid|Cetylalkohol|Natriumbenzoat|Kaliumsorbat|Weizenprotein|Parfum|Meersalz',
    ),
    titles: list('Heckenrose Haarwäsche|Moorbirke Spülung|Wiesenlocke Creme|Torf Lockenmilch'),
    claims: list(
      'Eine leichte Pflege für jeden Tag.|In kleiner Menge von Hand gerührt.|Riecht nach Heu und Regen.|Für feines und trockenes Haar gedacht.',
    ),
    after: list(
      'Anwendung: In das feuchte Haar einarbeiten und ausspülen.|Inhalt: 250 ml|Kühl und trocken lagern.',
    ),
    key: list('Unsere wichtigsten Wirkstoffe|Hauptwirkstoffe|Das Besondere'),
    freeFrom: list('Ohne|Frei von|Darauf verzichten wir'),
    talk: (n) =>
      `Wer feines Haar hat, liest oft von ${some(n.slice(0, 5), 'und')}. Dagegen gelten ${some(n.slice(5, 10), 'und')} als zu schwer, und viele nehmen sie nur für die Spitzen.`,
  },
  fr: {
    headings: list('Ingrédients|Composition|Liste des ingrédients|INCI|Sa composition|Composition complète'),
    names: list(
      'Eau|Glycérine végétale|Beurre de karité|Huile de coco|Huile d’olive|Huile d’amande douce|Huile de jojoba|Huile d’argan|Huile de ricin|Huile de pépins de raisin|Huile de tournesol|Cire d’abeille|Jus d’aloe vera|Huile essentielle de lavande|Huile essentielle de romarin|Acide citrique|Gomme xanthane|Panthénol|Vitamine E|Extrait de camomille|Extrait d’ortie|Argile verte|Rhassoul|Coco glucoside|Alcool cétylique|Benzoate de sodium|Sorbate de potassium|Protéines de blé hydrolysées|Parfum|Sel de mer',
    ),
    titles: list('Lait des boucles Genêt|Shampoing Tourbe|Masque Aubépine|Crème Bruyère'),
    claims: list(
      'Une crème légère qui laisse les boucles souples.|Fabriqué à la main en petites quantités.|Sent le foin coupé et la pluie.|Pensé pour les cheveux fins et secs.',
    ),
    after: list(
      'Conseils d’utilisation : appliquer sur cheveux humides.|Contenance : 250 ml|À conserver au sec.',
    ),
    key: list('Les actifs clés|Nos actifs|Ses points forts'),
    freeFrom: list('Sans|Garanti sans|Ce que nous évitons'),
    talk: (n) =>
      `Pour les cheveux fins, on conseille souvent ${some(n.slice(0, 5), 'et')}. À l’inverse, ${some(n.slice(5, 10), 'ou')} sont jugés trop lourds et se gardent pour les pointes.`,
  },
  es: {
    headings: list('Ingredientes|Composición|Lista de ingredientes|Componentes|INCI|Qué lleva'),
    names: list(
      'Agua|Glicerina vegetal|Manteca de karité|Aceite de coco|Aceite de oliva|Aceite de almendras dulces|Aceite de jojoba|Aceite de argán|Aceite de ricino|Aceite de pepita de uva|Aceite de girasol|Cera de abejas|Jugo de aloe vera|Aceite esencial de lavanda|Aceite esencial de romero|Ácido cítrico|Goma xantana|Pantenol|Vitamina E|Extracto de manzanilla|Extracto de ortiga|Arcilla verde|Coco glucósido|Alcohol cetílico|Benzoato de sodio|Sorbato de potasio|Proteína de trigo hidrolizada|Fragancia|Sal marina|Ácido láctico',
    ),
    titles: list('Leche de rizos Retama|Champú Turba|Mascarilla Espino|Crema Brezo'),
    claims: list(
      'Una crema ligera que deja los rizos suaves.|Hecho a mano en lotes pequeños.|Huele a heno y a lluvia.|Pensado para el cabello fino y seco.',
    ),
    after: list('Modo de empleo: aplicar sobre el cabello húmedo.|Contenido: 250 ml|Guardar en lugar seco.'),
    key: list('Activos principales|Ingredientes estrella|Lo que lo hace especial'),
    freeFrom: list('Sin|Libre de|Lo que no lleva'),
    talk: (n) =>
      `Para el pelo fino se recomiendan ${some(n.slice(0, 5), 'y')}. En cambio, ${some(n.slice(5, 10), 'o')} pesan demasiado y conviene dejarlos para las puntas.`,
  },
  pt: {
    headings: list('Ingredientes|Composição|Lista de ingredientes|Composição completa|INCI|O que tem dentro'),
    names: list(
      'Água|Glicerina vegetal|Manteiga de karité|Óleo de coco|Azeite de oliva|Óleo de amêndoas doces|Óleo de jojoba|Óleo de argan|Óleo de rícino|Óleo de semente de uva|Óleo de girassol|Cera de abelha|Suco de aloe vera|Óleo essencial de lavanda|Óleo essencial de alecrim|Ácido cítrico|Goma xantana|Pantenol|Vitamina E|Extrato de camomila|Extrato de urtiga|Argila verde|Coco glucosídeo|Álcool cetílico|Benzoato de sódio|Sorbato de potássio|Proteína de trigo hidrolisada|Fragrância|Sal marinho|Ácido lático',
    ),
    titles: list('Leite de cachos Giesta|Champô Turfa|Máscara Espinheiro|Creme Urze'),
    claims: list(
      'Um creme leve que deixa os cachos macios.|Feito à mão em pequenos lotes.|Cheira a feno e a chuva.|Pensado para cabelo fino e seco.',
    ),
    after: list('Modo de usar: aplicar no cabelo úmido.|Conteúdo: 250 ml|Guardar em local seco.'),
    key: list('Ativos principais|Principais ingredientes|O que o torna especial'),
    freeFrom: list('Sem|Livre de|O que não tem'),
    talk: (n) =>
      `Para cabelo fino recomendam-se ${some(n.slice(0, 5), 'e')}. Já ${some(n.slice(5, 10), 'ou')} pesam demais e ficam melhor só nas pontas.`,
  },
  it: {
    headings: list('Ingredienti|Composizione|Lista ingredienti|INCI|Elenco degli ingredienti|Cosa contiene'),
    names: list(
      'Acqua|Glicerina vegetale|Burro di karité|Olio di cocco|Olio di oliva|Olio di mandorle dolci|Olio di jojoba|Olio di argan|Olio di ricino|Olio di vinaccioli|Olio di girasole|Cera d’api|Succo di aloe vera|Olio essenziale di lavanda|Olio essenziale di rosmarino|Acido citrico|Gomma xantana|Pantenolo|Vitamina E|Estratto di camomilla|Estratto di ortica|Argilla verde|Coco glucoside|Alcool cetilico|Sodio benzoato|Potassio sorbato|Proteine idrolizzate del grano|Profumo|Sale marino|Acido lattico',
    ),
    titles: list('Latte ricci Ginestra|Shampoo Torba|Maschera Biancospino|Crema Erica'),
    claims: list(
      'Una crema leggera che lascia i ricci morbidi.|Fatto a mano in piccoli lotti.|Sa di fieno e di pioggia.|Pensato per capelli fini e secchi.',
    ),
    after: list('Modo d’uso: applicare sui capelli umidi.|Contenuto: 250 ml|Conservare in luogo asciutto.'),
    key: list('Principi attivi|Gli ingredienti chiave|Perché è speciale'),
    freeFrom: list('Senza|Privo di|Che cosa non contiene'),
    talk: (n) =>
      `Per i capelli fini si consigliano ${some(n.slice(0, 5), 'e')}. Invece ${some(n.slice(5, 10), 'o')} sono troppo pesanti e vanno tenuti per le punte.`,
  },
  nl: {
    headings: list('Ingrediënten|Samenstelling|Ingrediëntenlijst|INCI|Wat zit erin|Alle ingrediënten'),
    names: list(
      'Water|Plantaardige glycerine|Sheaboter|Kokosolie|Olijfolie|Zoete amandelolie|Jojoba-olie|Arganolie|Ricinusolie|Druivenpitolie|Zonnebloemolie|Bijenwas|Aloë vera-sap|Lavendelolie|Rozemarijnolie|Citroenzuur|Xanthaangom|Panthenol|Vitamine E|Kamille-extract|Brandnetelextract|Groene klei|Kokosglucoside|Cetylalcohol|Natriumbenzoaat|Kaliumsorbaat|Gehydrolyseerde tarweproteïne|Parfum|Zeezout|Melkzuur',
    ),
    titles: list('Bremveld Krullenmelk|Turf Shampoo|Meidoorn Masker|Heide Crème'),
    claims: list(
      'Een lichte crème die krullen zacht laat.|Met de hand gemaakt in kleine hoeveelheden.|Ruikt naar hooi en regen.|Bedoeld voor fijn en droog haar.',
    ),
    after: list('Gebruik: verdeel over vochtig haar.|Inhoud: 250 ml|Droog bewaren.'),
    key: list('Belangrijkste werkstoffen|Sterke ingrediënten|Wat het bijzonder maakt'),
    freeFrom: list('Zonder|Vrij van|Wat er niet in zit'),
    talk: (n) =>
      `Voor fijn haar raadt men ${some(n.slice(0, 5), 'en')} aan. Daarentegen zijn ${some(n.slice(5, 10), 'of')} te zwaar, en die bewaar je voor de punten.`,
  },
  pl: {
    headings: list('Składniki|Skład|Lista składników|Skład INCI|Pełny skład|Co jest w środku'),
    names: list(
      'Woda|Gliceryna roślinna|Masło shea|Olej kokosowy|Oliwa z oliwek|Olej migdałowy|Olej jojoba|Olej arganowy|Olej rycynowy|Olej z pestek winogron|Olej słonecznikowy|Wosk pszczeli|Sok z aloesu|Olejek lawendowy|Olejek rozmarynowy|Kwas cytrynowy|Guma ksantanowa|Pantenol|Witamina E|Ekstrakt z rumianku|Ekstrakt z pokrzywy|Glinka zielona|Glukozyd kokosowy|Alkohol cetylowy|Benzoesan sodu|Sorbinian potasu|Hydrolizowane proteiny pszenicy|Kompozycja zapachowa|Sól morska|Kwas mlekowy',
    ),
    titles: list('Mleczko do loków Żarnowiec|Szampon Torf|Maska Głóg|Krem Wrzos'),
    claims: list(
      'Lekki krem, po którym loki są miękkie.|Wyrabiany ręcznie w małych partiach.|Pachnie sianem i deszczem.|Z myślą o włosach cienkich i suchych.',
    ),
    after: list('Sposób użycia: nałożyć na wilgotne włosy.|Pojemność: 250 ml|Przechowywać w suchym miejscu.'),
    key: list('Składniki aktywne|Kluczowe składniki|Co go wyróżnia'),
    freeFrom: list('Bez|Wolny od|Czego nie ma'),
    talk: (n) =>
      `Do włosów cienkich poleca się ${some(n.slice(0, 5), 'i')}. Z kolei ${some(n.slice(5, 10), 'lub')} są za ciężkie i lepiej zostawić je na końcówki.`,
  },
  sv: {
    headings: list('Ingredienser|Innehåll|Ingredienslista|INCI|Innehållsförteckning|Vad som finns i'),
    names: list(
      'Vatten|Vegetabiliskt glycerin|Sheasmör|Kokosolja|Olivolja|Mandelolja|Jojobaolja|Arganolja|Ricinolja|Druvkärnolja|Solrosolja|Bivax|Aloe vera-juice|Lavendelolja|Rosmarinolja|Citronsyra|Xantangummi|Pantenol|E-vitamin|Kamomillextrakt|Nässelextrakt|Grön lera|Kokosglukosid|Cetylalkohol|Natriumbensoat|Kaliumsorbat|Hydrolyserat veteprotein|Parfym|Havssalt|Mjölksyra',
    ),
    titles: list('Ljunglock Krämmjölk|Torv Schampo|Hagtorn Inpackning|Ginst Kräm'),
    claims: list(
      'En lätt kräm som gör lockarna mjuka.|Gjord för hand i små satser.|Doftar hö och regn.|Tänkt för fint och torrt hår.',
    ),
    after: list('Användning: arbeta in i fuktigt hår.|Mängd: 250 ml|Förvaras torrt.'),
    key: list('Viktigaste ingredienserna|Aktiva ämnen|Det som gör den speciell'),
    freeFrom: list('Utan|Fri från|Det här finns inte i'),
    talk: (n) =>
      `För fint hår rekommenderas ${some(n.slice(0, 5), 'och')}. Däremot är ${some(n.slice(5, 10), 'eller')} för tunga, och de sparas till topparna.`,
  },
  tr: {
    headings: list('İçindekiler|İçerik|İçindekiler listesi|Bileşenler|INCI|Tüm içerik'),
    names: list(
      'Su|Bitkisel gliserin|Shea yağı|Hindistan cevizi yağı|Zeytinyağı|Tatlı badem yağı|Jojoba yağı|Argan yağı|Hint yağı|Üzüm çekirdeği yağı|Ayçiçek yağı|Balmumu|Aloe vera suyu|Lavanta yağı|Biberiye yağı|Sitrik asit|Ksantan gam|Pantenol|E vitamini|Papatya özü|Isırgan özü|Yeşil kil|Koko glukozit|Setil alkol|Sodyum benzoat|Potasyum sorbat|Hidrolize buğday proteini|Parfüm|Deniz tuzu|Laktik asit',
    ),
    titles: list('Katırtırnağı Bukle Sütü|Turba Şampuan|Alıç Maskesi|Funda Krem'),
    claims: list(
      'Bukleleri yumuşak bırakan hafif bir krem.|Küçük miktarlarda elde yapılır.|Saman ve yağmur kokar.|İnce ve kuru saçlar için düşünüldü.',
    ),
    after: list('Kullanım: nemli saça uygulayın.|Miktar: 250 ml|Kuru yerde saklayın.'),
    key: list('Öne çıkan içerikler|Etken maddeler|Onu özel kılan'),
    freeFrom: list('İçermez|Şunlar yok|Kullanmadıklarımız'),
    talk: (n) =>
      `İnce saçlar için ${some(n.slice(0, 5), 've')} önerilir. Buna karşılık ${some(n.slice(5, 10), 'ya da')} ağır gelir ve uçlara saklanır.`,
  },
  da: {
    headings: list('Ingredienser|Indhold|Ingrediensliste|INCI|Indholdsstoffer|Det er der i'),
    names: list(
      'Vand|Vegetabilsk glycerin|Sheasmør|Kokosolie|Olivenolie|Mandelolie|Jojobaolie|Arganolie|Ricinusolie|Vindruekerneolie|Solsikkeolie|Bivoks|Aloe vera-saft|Lavendelolie|Rosmarinolie|Citronsyre|Xanthangummi|Panthenol|E-vitamin|Kamilleekstrakt|Brændenældeekstrakt|Grønt ler|Kokosglukosid|Cetylalkohol|Natriumbenzoat|Kaliumsorbat|Hydrolyseret hvedeprotein|Parfume|Havsalt|Mælkesyre',
    ),
    titles: list('Gyvel Krøllemælk|Tørv Shampoo|Tjørn Hårkur|Lyng Creme'),
    claims: list(
      'En let creme, der gør krøllerne bløde.|Lavet i hånden i små partier.|Dufter af hø og regn.|Tænkt til fint og tørt hår.',
    ),
    after: list('Brug: fordel i fugtigt hår.|Mængde: 250 ml|Opbevares tørt.'),
    key: list('Vigtigste ingredienser|Aktive stoffer|Det særlige'),
    freeFrom: list('Uden|Fri for|Det er der ikke i'),
    talk: (n) =>
      `Til fint hår anbefales ${some(n.slice(0, 5), 'og')}. Derimod er ${some(n.slice(5, 10), 'eller')} for tunge, og dem gemmer man til spidserne.`,
  },
  cs: {
    headings: list('Složení|Ingredience|Seznam složek|INCI|Úplné složení|Co je uvnitř'),
    names: list(
      'Voda|Rostlinný glycerin|Bambucké máslo|Kokosový olej|Olivový olej|Mandlový olej|Jojobový olej|Arganový olej|Ricinový olej|Olej z hroznových jader|Slunečnicový olej|Včelí vosk|Šťáva z aloe vera|Levandulový olej|Rozmarýnový olej|Kyselina citronová|Xanthanová guma|Panthenol|Vitamin E|Heřmánkový extrakt|Kopřivový extrakt|Zelený jíl|Kokosový glukosid|Cetylalkohol|Benzoan sodný|Sorban draselný|Hydrolyzovaný pšeničný protein|Parfém|Mořská sůl|Kyselina mléčná',
    ),
    titles: list('Mléko na vlny Janovec|Šampon Rašelina|Maska Hloh|Krém Vřes'),
    claims: list(
      'Lehký krém, po kterém jsou vlny měkké.|Ručně vyráběno v malých dávkách.|Voní senem a deštěm.|Určeno pro jemné a suché vlasy.',
    ),
    after: list('Použití: naneste na vlhké vlasy.|Objem: 250 ml|Skladujte v suchu.'),
    key: list('Hlavní účinné látky|Klíčové složky|Čím je zvláštní'),
    freeFrom: list('Bez|Neobsahuje|Co v něm není'),
    talk: (n) =>
      `Na jemné vlasy se doporučuje ${some(n.slice(0, 5), 'a')}. Naopak ${some(n.slice(5, 10), 'nebo')} jsou příliš těžké a nechávají se na konečky.`,
  },
};
