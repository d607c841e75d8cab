// What invented shops say around their lists, from memory of how such pages are worded.
export type Tongue = {
  heads: string[];
  full: string;
  key: string;
  active: string;
  others: string;
  may: string;
  about: string;
  use: string;
  how: string[];
  says: string[];
  free: string;
  notes: string[];
  why: string[];
  goods: string[];
  buy: string;
  ship: string;
  shipped: string;
  step: string;
  made: string;
  asks: string;
  answer: string;
  legend: string;
  formulas: [string, string];
  tasks: string[];
  review: string[];
  more: string;
};

export const west: Record<string, Tongue> = {
  en: {
    heads: ['Ingredients', 'Full ingredients', 'What’s in it', 'INCI'],
    full: 'Full ingredients list',
    key: 'Key ingredients',
    active: 'Active ingredient',
    others: 'Inactive ingredients',
    may: 'May contain',
    about: 'Description',
    use: 'How to use',
    how: [
      'Work through wet lengths, wait three minutes, rinse well.',
      'Use as often as you like. Avoid the eyes.',
    ],
    says: [
      'Loose waves, no crunch.',
      'Made in small batches by the sea.',
      'Gives dry lengths their slip back.',
      'Vegan and never tested on animals.',
    ],
    free: 'Free from parabens, silicones and sulphates',
    notes: [
      'Ingredients may change from time to time; please check the pack before use.',
      'For external use only. Keep out of reach of children.',
      'Last updated 04/2025.',
    ],
    why: [
      'softens and adds slip',
      'calms a tight scalp',
      'holds on to moisture',
      'gives shine without weight',
    ],
    goods: ['Shampoo', 'Conditioner', 'Curl Cream', 'Hair Mask', 'Styling Gel', 'Leave-in Mist'],
    buy: 'Add to basket',
    ship: 'Delivery',
    shipped: 'Leaves our store within two working days. Returns within 30 days.',
    step: 'Step',
    made: 'Made with',
    asks: 'What is in this product?',
    answer: 'This is the complete formula:',
    legend: '* from organic farming',
    formulas: ['New formula', 'Previous formula'],
    tasks: ['Emollient', 'Surfactant', 'Preservative', 'Humectant', 'Solvent'],
    review: [
      'My waves never looked better, though the scent is strong.',
      'Too heavy for me, my sister loves it.',
    ],
    more: 'Show more',
  },
  de: {
    heads: ['Inhaltsstoffe', 'Inhaltsstoffe (INCI)', 'INCI', 'Zusammensetzung'],
    full: 'Vollständige Inhaltsstoffliste',
    key: 'Wichtigste Wirkstoffe',
    active: 'Wirkstoff',
    others: 'Sonstige Bestandteile',
    may: 'Kann enthalten',
    about: 'Produktbeschreibung',
    use: 'Anwendung',
    how: [
      'Ins feuchte Haar einarbeiten, drei Minuten warten und gründlich ausspülen.',
      'Kontakt mit den Augen vermeiden.',
    ],
    says: [
      'Definierte Wellen ohne Beschweren.',
      'In kleinen Mengen an der Küste gerührt.',
      'Für trockene Längen und empfindliche Kopfhaut.',
      'Vegan und ohne Tierversuche.',
    ],
    free: 'Frei von Parabenen, Silikonen und Sulfaten',
    notes: [
      'Maßgeblich ist die Angabe auf der Verpackung.',
      'Nur zur äußerlichen Anwendung. Für Kinder unzugänglich aufbewahren.',
      'Stand: 04/2025',
    ],
    why: ['macht weich', 'beruhigt die Kopfhaut', 'bindet Feuchtigkeit', 'schenkt Glanz'],
    goods: ['Shampoo', 'Spülung', 'Lockencreme', 'Haarmaske', 'Stylinggel', 'Haarspray'],
    buy: 'In den Warenkorb',
    ship: 'Versand',
    shipped: 'Versandfertig in zwei Werktagen, Rückgabe binnen 30 Tagen.',
    step: 'Schritt',
    made: 'Hergestellt mit',
    asks: 'Was ist in diesem Produkt enthalten?',
    answer: 'Die vollständige Rezeptur lautet:',
    legend: '* aus kontrolliert biologischem Anbau',
    formulas: ['Neue Rezeptur', 'Alte Rezeptur'],
    tasks: ['Pflegestoff', 'Tensid', 'Konservierung', 'Feuchthaltemittel', 'Lösungsmittel'],
    review: ['Meine Wellen sahen nie besser aus, der Duft ist aber stark.', 'Mir zu schwer.'],
    more: 'Mehr anzeigen',
  },
  fr: {
    heads: ['Ingrédients', 'Composition', 'Liste INCI', 'Liste des ingrédients'],
    full: 'Liste complète des ingrédients',
    key: 'Actifs principaux',
    active: 'Ingrédient actif',
    others: 'Autres ingrédients',
    may: 'Peut contenir',
    about: 'Description',
    use: 'Conseils d’utilisation',
    how: [
      'Appliquer sur cheveux mouillés, laisser poser trois minutes puis rincer.',
      'Éviter le contact avec les yeux.',
    ],
    says: [
      'Des ondulations souples, sans effet carton.',
      'Fabriqué en petites séries au bord de la mer.',
      'Redonne du glissant aux longueurs sèches.',
      'Végan et jamais testé sur les animaux.',
    ],
    free: 'Sans parabènes, sans silicones, sans sulfates',
    notes: [
      'La liste des ingrédients peut évoluer : reportez-vous à l’emballage.',
      'Usage externe uniquement. Tenir hors de portée des enfants.',
      'Mise à jour : avril 2025',
    ],
    why: ['adoucit les longueurs', 'apaise le cuir chevelu', 'retient l’eau', 'apporte de la brillance'],
    goods: ['Shampooing', 'Après-shampooing', 'Crème boucles', 'Masque', 'Gel coiffant', 'Brume'],
    buy: 'Ajouter au panier',
    ship: 'Livraison',
    shipped: 'Expédié sous deux jours ouvrés, retours sous 30 jours.',
    step: 'Étape',
    made: 'Formulé avec',
    asks: 'Que contient ce produit ?',
    answer: 'Voici la formule complète :',
    legend: '* issu de l’agriculture biologique',
    formulas: ['Nouvelle formule', 'Ancienne formule'],
    tasks: ['Émollient', 'Tensioactif', 'Conservateur', 'Humectant', 'Solvant'],
    review: ['Mes boucles adorent, mais le parfum est fort.', 'Trop lourd pour moi.'],
    more: 'Voir plus',
  },
  es: {
    heads: ['Ingredientes', 'Composición', 'Lista INCI', 'Ingredientes (INCI)'],
    full: 'Lista completa de ingredientes',
    key: 'Ingredientes destacados',
    active: 'Ingrediente activo',
    others: 'Otros ingredientes',
    may: 'Puede contener',
    about: 'Descripción',
    use: 'Modo de empleo',
    how: [
      'Aplicar sobre el cabello mojado, dejar tres minutos y aclarar.',
      'Evitar el contacto con los ojos.',
    ],
    says: [
      'Ondas sueltas y sin rigidez.',
      'Hecho en lotes pequeños junto al mar.',
      'Devuelve la suavidad a los largos secos.',
      'Vegano y no testado en animales.',
    ],
    free: 'Sin parabenos, siliconas ni sulfatos',
    notes: [
      'La lista puede variar; consulte siempre el envase.',
      'Solo uso externo. Mantener fuera del alcance de los niños.',
      'Actualizado: 04/2025',
    ],
    why: ['suaviza y desenreda', 'calma el cuero cabelludo', 'retiene la humedad', 'aporta brillo'],
    goods: ['Champú', 'Acondicionador', 'Crema de rizos', 'Mascarilla', 'Gel fijador', 'Bruma'],
    buy: 'Añadir a la cesta',
    ship: 'Envío',
    shipped: 'Sale en dos días laborables; devoluciones en 30 días.',
    step: 'Paso',
    made: 'Hecho con',
    asks: '¿Qué lleva este producto?',
    answer: 'Esta es la fórmula completa:',
    legend: '* de agricultura ecológica',
    formulas: ['Nueva fórmula', 'Fórmula anterior'],
    tasks: ['Emoliente', 'Tensioactivo', 'Conservante', 'Humectante', 'Disolvente'],
    review: ['Mis rizos lo adoran, aunque huele fuerte.', 'Demasiado pesado para mí.'],
    more: 'Ver más',
  },
  it: {
    heads: ['Ingredienti', 'INCI', 'Composizione', 'Ingredienti (INCI)'],
    full: 'Elenco completo degli ingredienti',
    key: 'Ingredienti principali',
    active: 'Principio attivo',
    others: 'Altri ingredienti',
    may: 'Può contenere',
    about: 'Descrizione',
    use: 'Modo d’uso',
    how: ['Applicare sui capelli bagnati, attendere tre minuti e risciacquare.', 'Evitare gli occhi.'],
    says: [
      'Onde morbide e leggere.',
      'Prodotto in piccoli lotti in riva al mare.',
      'Ridona morbidezza alle lunghezze secche.',
      'Vegano e mai testato su animali.',
    ],
    free: 'Senza parabeni, siliconi e solfati',
    notes: [
      'Gli ingredienti possono variare: fa fede la confezione.',
      'Solo per uso esterno. Tenere fuori dalla portata dei bambini.',
      'Aggiornato a 04/2025',
    ],
    why: ['ammorbidisce', 'lenisce la cute', 'trattiene l’acqua', 'dona lucentezza'],
    goods: ['Shampoo', 'Balsamo', 'Crema ricci', 'Maschera', 'Gel', 'Spray'],
    buy: 'Aggiungi al carrello',
    ship: 'Spedizione',
    shipped: 'Spedito entro due giorni lavorativi, reso entro 30 giorni.',
    step: 'Fase',
    made: 'Fatto con',
    asks: 'Che cosa contiene?',
    answer: 'Ecco la formula completa:',
    legend: '* da agricoltura biologica',
    formulas: ['Nuova formula', 'Formula precedente'],
    tasks: ['Emolliente', 'Tensioattivo', 'Conservante', 'Umettante', 'Solvente'],
    review: ['I miei ricci lo adorano, ma profuma molto.', 'Troppo pesante per me.'],
    more: 'Mostra altro',
  },
};
