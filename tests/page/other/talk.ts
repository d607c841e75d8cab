// What shops say around their lists, in sixteen languages: invented. Of each field every second wording is kept aside.
export type Talk = {
  head: string[];
  key: string[];
  tabs: string[];
  title: string[];
  say: string[];
  use: string[];
  tail: string[];
  buy: string[];
  free: string[];
  plain: string[];
};
const cut = (rows: Record<keyof Talk, string>): Talk =>
  Object.fromEntries(Object.entries(rows).map(([key, text]) => [key, text.split('|')])) as Talk;

export const talks: Record<string, Talk> = {
  en: cut({
    head: 'Ingredients|Full ingredients list|INGREDIENTS|What’s in it|Ingredient list|Composition|All ingredients|INCI|Ingredients (INCI)|What goes into it',
    key: 'Key ingredients|Hero ingredients|Star ingredients|Active highlights',
    tabs: 'Description|Details|How to use|Directions|Shipping & returns|Delivery|Reviews (12)|Ratings',
    title:
      'Kelpmoor Curl Milk 250 ml|Drift & Fathom Conditioner|Saltwren Wash No 4|Harrowbay Scalp Serum|Quaywind Gel|Morrowtide Butter',
    say: 'A light cream for waves that fall flat by noon.|Rinses clean and leaves lengths supple.|Made in small batches on the coast.|We tried forty versions before this one.|Smells of rain and green fig.|Kind to scalps that complain.|Holds a curl through a windy ferry ride.|Bottle made of recycled glass.',
    use: 'Work through wet hair, scrunch and let dry.|Massage into scalp, leave for two minutes, rinse.|Apply a coin-sized amount from ears to ends.|Use twice a week.',
    tail: 'Please check the pack, as formulas may change.|For external use only. Keep away from eyes.|*from organic farming|Store in a cool dry place.|This list may be updated from time to time.|** natural part of essential oils',
    buy: 'Add to basket|Add to cart|Buy now|Add to bag',
    free: 'Free from sulphates, parabens and silicones.|No mineral oil, no microplastics, no phthalates.|Sulfate-Free|Made without gluten, soy or nuts',
    plain:
      'Water|Glycerine|Shea Butter|Coconut Oil|Fragrance|Citric Acid|Panthenol|Aloe Vera Juice|Jojoba Oil|Keratin|Beeswax|Lactic Acid|Xanthan Gum|Sea Salt|Argan Oil|Vitamin E|Honey|Castor Oil|Rosemary Extract|Rice Protein',
  }),
  de: cut({
    head: 'Inhaltsstoffe|Inhaltsstoffe (INCI)|INCI|Zusammensetzung|Inhaltsstoffe laut INCI|Bestandteile|Volle Deklaration|Was ist drin?',
    key: 'Wichtigste Wirkstoffe|Unsere Lieblinge darin',
    tabs: 'Beschreibung|Produktdetails|Anwendung|So geht’s|Versand|Lieferung|Bewertungen (8)|Kundenmeinungen',
    title: 'Wattläufer Lockencreme 200 ml|Buhnenkind Shampoo|Strandhafer Spülung|Priel Haaröl',
    say: 'Eine leichte Creme für Wellen, die gern zusammenfallen.|Pflegt, ohne zu beschweren.|In kleiner Auflage gerührt.|Duftet nach Regen und Feige.|Auch für empfindliche Kopfhaut geeignet.|Die Flasche besteht aus Altglas.',
    use: 'Ins nasse Haar kneten und trocknen lassen.|Einmassieren, zwei Minuten einwirken lassen, ausspülen.',
    tail: 'Bitte beachten Sie die Angaben auf der Verpackung.|* aus kontrolliert biologischem Anbau|Nur zur äußerlichen Anwendung.|Außerhalb der Reichweite von Kindern aufbewahren.',
    buy: 'In den Warenkorb|Jetzt kaufen',
    free: 'Ohne Silikone, Parabene und Mineralöl.|Frei von Sulfaten und Mikroplastik.',
    plain:
      'Wasser|Glycerin|Sheabutter|Kokosöl|Parfüm|Zitronensäure|Panthenol|Aloe-Vera-Saft|Jojobaöl|Keratin|Bienenwachs|Milchsäure|Xanthan|Meersalz|Arganöl|Vitamin E|Honig|Rizinusöl|Rosmarinextrakt|Reisprotein',
  }),
  fr: cut({
    head: 'Ingrédients|Liste des ingrédients|Composition|Composition INCI|INGRÉDIENTS|Liste INCI complète|Ingrédients :|De quoi est-il fait ?',
    key: 'Ingrédients clés|Nos actifs phares',
    tabs: 'Description|Détails du produit|Conseils d’utilisation|Mode d’emploi|Livraison|Expédition et retours|Avis (5)|Vos avis',
    title: 'Crème boucles Goémon 200 ml|Après-shampoing Estran|Sérum Laisse de Mer|Gel Embrun',
    say: 'Une crème légère pour les ondulations fatiguées.|Laisse les longueurs souples.|Fabriqué en petites séries.|Parfum de pluie et de figue verte.|Convient aux cuirs chevelus sensibles.|Flacon en verre recyclé.',
    use: 'Appliquer sur cheveux mouillés, froisser, laisser sécher.|Masser, laisser poser deux minutes puis rincer.',
    tail: 'Cette liste peut évoluer, se référer à l’emballage.|* issus de l’agriculture biologique|Usage externe uniquement.|Conserver à l’abri de la chaleur.',
    buy: 'Ajouter au panier|Acheter',
    free: 'Sans sulfates, sans parabènes, sans silicones.|Formulé sans huile minérale ni phtalates.',
    plain:
      'Eau|Glycérine|Beurre de karité|Huile de coco|Parfum|Acide citrique|Panthénol|Jus d’aloe vera|Huile de jojoba|Kératine|Cire d’abeille|Acide lactique|Gomme xanthane|Sel marin|Huile d’argan|Vitamine E|Miel|Huile de ricin|Extrait de romarin|Protéine de riz',
  }),
  es: cut({
    head: 'Ingredientes|Composición|Lista de ingredientes|INCI|INGREDIENTES|Componentes|Ingredientes (INCI)|Qué contiene',
    key: 'Ingredientes clave|Activos principales',
    tabs: 'Descripción|Detalles|Modo de empleo|Cómo se usa|Envíos|Devoluciones|Opiniones (3)|Reseñas',
    title: 'Crema de rizos Marisma 250 ml|Champú Bajamar|Mascarilla Rompeola|Gel Alga',
    say: 'Una crema ligera para ondas sin fuerza.|Deja las puntas flexibles.|Hecha en pequeñas tandas.|Huele a lluvia y a higo.|Apta para cueros cabelludos sensibles.|Envase de vidrio reciclado.',
    use: 'Aplicar sobre el cabello mojado y dejar secar.|Masajear, dejar actuar dos minutos y aclarar.',
    tail: 'Consulte el envase: la fórmula puede cambiar.|* de cultivo ecológico|Solo para uso externo.|Mantener fuera del alcance de los niños.',
    buy: 'Añadir al carrito|Comprar',
    free: 'Sin sulfatos, sin parabenos, sin siliconas.|Libre de aceites minerales y ftalatos.',
    plain:
      'Agua|Glicerina|Manteca de karité|Aceite de coco|Perfume|Ácido cítrico|Pantenol|Jugo de aloe vera|Aceite de jojoba|Queratina|Cera de abejas|Ácido láctico|Goma xantana|Sal marina|Aceite de argán|Vitamina E|Miel|Aceite de ricino|Extracto de romero|Proteína de arroz',
  }),
  pt: cut({
    head: 'Ingredientes|Composição|Lista de ingredientes|INCI|Composição (INCI)|Componentes|O que leva|Ingredientes:',
    key: 'Ativos principais|Ingredientes em destaque',
    tabs: 'Descrição|Detalhes|Modo de usar|Como usar|Envio|Entregas|Avaliações (4)|Opiniões',
    title: 'Creme de pentear Maresia 250 g|Shampoo Restinga|Máscara Sargaço|Gel Vazante',
    say: 'Um creme leve para ondas sem volume.|Deixa as pontas macias.|Feito em pequenos lotes.|Cheira a chuva e a figo.|Indicado para couro cabeludo sensível.|Frasco de vidro reciclado.',
    use: 'Aplicar no cabelo molhado e deixar secar.|Massajar, deixar agir dois minutos e enxaguar.',
    tail: 'Consulte a embalagem: a fórmula pode mudar.|* de agricultura biológica|Uso externo.|Manter fora do alcance das crianças.',
    buy: 'Adicionar ao carrinho|Comprar',
    free: 'Sem sulfatos, sem parabenos, sem silicones.|Livre de óleo mineral e petrolatos.',
    plain:
      'Água|Glicerina|Manteiga de karité|Óleo de coco|Perfume|Ácido cítrico|Pantenol|Suco de aloe vera|Óleo de jojoba|Queratina|Cera de abelha|Ácido lático|Goma xantana|Sal marinho|Óleo de argan|Vitamina E|Mel|Óleo de rícino|Extrato de alecrim|Proteína de arroz',
  }),
  it: cut({
    head: 'Ingredienti|INCI|Lista degli ingredienti|Composizione|Ingredienti (INCI)|Componenti|INGREDIENTI|Cosa c’è dentro',
    key: 'Ingredienti chiave|Attivi principali',
    tabs: 'Descrizione|Dettagli|Modo d’uso|Come si usa|Spedizione|Resi|Recensioni (6)|Pareri',
    title: 'Crema ricci Risacca 200 ml|Shampoo Scogliera|Maschera Posidonia|Gel Battigia',
    say: 'Una crema leggera per onde stanche.|Lascia le punte morbide.|Prodotta in piccoli lotti.|Profuma di pioggia e fico.|Adatta alla cute sensibile.|Flacone in vetro riciclato.',
    use: 'Applicare sui capelli bagnati e lasciare asciugare.|Massaggiare, lasciare in posa due minuti e sciacquare.',
    tail: 'Consultare la confezione: la formula può cambiare.|* da agricoltura biologica|Solo per uso esterno.|Tenere lontano dalla portata dei bambini.',
    buy: 'Aggiungi al carrello|Acquista',
    free: 'Senza solfati, parabeni e siliconi.|Privo di oli minerali e ftalati.',
    plain:
      'Acqua|Glicerina|Burro di karité|Olio di cocco|Profumo|Acido citrico|Pantenolo|Succo di aloe vera|Olio di jojoba|Cheratina|Cera d’api|Acido lattico|Gomma xantana|Sale marino|Olio di argan|Vitamina E|Miele|Olio di ricino|Estratto di rosmarino|Proteine del riso',
  }),
  nl: cut({
    head: 'Ingrediënten|Samenstelling|Ingrediëntenlijst|INCI|Ingredienten|Wat zit erin?|Ingrediënten (INCI)|Bestanddelen',
    key: 'Belangrijkste ingrediënten|Werkzame stoffen uitgelicht',
    tabs: 'Omschrijving|Productdetails|Gebruik|Zo gebruik je het|Verzending|Retour|Beoordelingen (2)|Reviews',
    title: 'Wadwind Krulcrème 200 ml|Zeekraal Shampoo|Duinpan Masker|Vloedlijn Gel',
    say: 'Een lichte crème voor vermoeide golven.|Maakt lengtes soepel.|In kleine partijen gemaakt.|Ruikt naar regen en vijg.|Ook voor een gevoelige hoofdhuid.|Fles van gerecycled glas.',
    use: 'Knijp in nat haar en laat drogen.|Masseer in, laat twee minuten zitten en spoel uit.',
    tail: 'Lees altijd de verpakking, de samenstelling kan wijzigen.|* uit biologische teelt|Alleen voor uitwendig gebruik.|Buiten bereik van kinderen houden.',
    buy: 'In winkelwagen|Bestel nu',
    free: 'Zonder sulfaten, parabenen en siliconen.|Vrij van minerale olie en microplastics.',
    plain:
      'Water|Glycerine|Sheaboter|Kokosolie|Parfum|Citroenzuur|Panthenol|Aloë-verasap|Jojobaolie|Keratine|Bijenwas|Melkzuur|Xanthaangom|Zeezout|Arganolie|Vitamine E|Honing|Ricinusolie|Rozemarijnextract|Rijsteiwit',
  }),
  pl: cut({
    head: 'Składniki|Skład|INCI|Skład INCI|Lista składników|Pełny skład|SKŁAD|Skład produktu',
    key: 'Kluczowe składniki|Składniki aktywne',
    tabs: 'Opis|Szczegóły|Sposób użycia|Jak stosować|Dostawa|Zwroty|Opinie (7)|Recenzje',
    title: 'Krem do loków Wydma 200 ml|Szampon Mierzeja|Maska Klif|Żel Odpływ',
    say: 'Lekki krem do zmęczonych fal.|Zmiękcza końcówki.|Wytwarzany w małych partiach.|Pachnie deszczem i figą.|Dla wrażliwej skóry głowy.|Butelka ze szkła z odzysku.',
    use: 'Wgnieść w mokre włosy i pozostawić do wyschnięcia.|Wmasować, odczekać dwie minuty, spłukać.',
    tail: 'Skład może ulec zmianie, sprawdź opakowanie.|* z upraw ekologicznych|Tylko do użytku zewnętrznego.|Chronić przed dziećmi.',
    buy: 'Do koszyka|Kup teraz',
    free: 'Bez siarczanów, parabenów i silikonów.|Nie zawiera olejów mineralnych ani ftalanów.',
    plain:
      'Woda|Gliceryna|Masło shea|Olej kokosowy|Kompozycja zapachowa|Kwas cytrynowy|Pantenol|Sok z aloesu|Olej jojoba|Keratyna|Wosk pszczeli|Kwas mlekowy|Guma ksantanowa|Sól morska|Olej arganowy|Witamina E|Miód|Olej rycynowy|Ekstrakt z rozmarynu|Proteiny ryżu',
  }),
};
