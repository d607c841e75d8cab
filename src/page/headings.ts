/** Words that stand before a list, or that say a list is none. Headings in some thirty languages. */

const headings =
  "(?:inactive |other |non.?active |full |complete |list of (?:all )?|product |all |our )*ingredients?(?: (?:list|deck|label|statement))?|inci(?:[- ](?:list\\p{L}*|names?|declaration|deklaration|bezeichnung|code|nomenclature))?|(?:full |product |chemical )?composition|what[’']?s (?:in it|inside)" + // English
  "|(?:liste (?:complète )?(?:des |d[’'])?)?ingr[ée]dients?|ingr[eé]dients inci" + // French
  '|inhaltsstoffe?|bestandteile|zusammensetzung|zutaten(?:liste)?|ingredienzien' + // German
  '|(?:lista (?:completa )?(?:degli |de |dos )?)?ingredient[ie]s?|composizione|composici[óo]n|composi[çc][ãa]o' + // Italian, Spanish, Portuguese
  '|ingredi[ëe]nten(?:lijst)?|samenstelling|bestanddelen|ingredienser|innehåll(?:sförteckning)?|indhold(?:sstoffer)?|innhold|ingrediensliste|ainesosat|ainesosaluettelo|koostumus|innihaldsefni' + // Dutch, Nordic
  '|sk[łl]adniki|sk[łl]ad|slo[žz]en[ií]|složení|přísady|zloženie|zložky|összetev[őo]k|összetétel|ingrediente|compozi[țţt]ie|sastojci|sastav|sestavine|sestava|koostisosad|koostis|sud[ėe]tis|sudedamosios dalys|sast[āa]vs?|sast[āa]vda[ļl]as|p[ëe]rb[ëe]r[ëe]sit' + // Central Europe, Baltic
  '|состав|ингредиенты|ингредиенти|състав|съставки|склад|інгредієнти|состојки|састав|састојци|συστατικά|σύνθεση|içindekiler|bileşenler|içerik' + // Cyrillic, Greek, Turkish
  '|全成分(?:表示)?|成分(?:表示|一覧)?|成份(?:表)?|全成份|配合成分|成分表|配方|전\\s?성분|성분(?:표)?|المكونات|مكونات|التركيب|רכיבים|מרכיבים|ترکیبات|ส่วนประกอบ(?:ทั้งหมด)?|ส่วนผสม|thành phần|komposisi|kandungan|bahan(?:-bahan)?';

const edgeBefore = '(?<![\\p{L}\\p{N}])';
/** What may follow a heading before the list: more headings in other languages, brackets, marks. */
const more = `(?:[\\s|/,&()\\[\\]–—-]{1,4}(?:and |et |und |e |y )?(?:${headings})(?!\\p{L}))*`;
const heading = `${edgeBefore}(?:${headings})(?!\\p{L})${more}[)\\]]?`;

/** Everywhere a heading word stands; what follows decides. */
export const headingAnywhere = new RegExp(heading, 'giu');
/** A line that is a heading and nothing else. */
export const headingAlone = new RegExp(
  `^[^\\p{L}]{0,8}(?:[\\p{L}\\p{N}'’&-]+ ){0,4}?(?:${heading})(?: (?:of|in|for|de|du|des|von|der) [^:.,]{1,60}| \\([^)]{1,40}\\))?[\\s:：.+▾▼*–—-]*$`,
  'iu',
);

/** Before or around a heading: what follows is a choice of names, not the list. */
export const teaser =
  /(?<!\p{L})(?:key|hero|star|active|main|featured|powerful|signature|highlight(?:ed)?|notable|top|principal|natural|clean|love|trusted|quality|wirkstoffe?|hauptinhaltsstoffe|aktive|clés?|actifs?|principaux|stars?|principali|attivi|clave|activos|principales|actieve|belangrijkste|główne|aktywne|ключевые|активные|активни|主要|핵심|주요|有効|有效)(?!\p{L})(?<!in-?active)|etkin/iu;

/** What follows is not in the product. */
export const denial =
  /(?<!\p{L})(?:without|free (?:from|of)|free\b(?!.{0,20}ingredients)|-free|no (?:added|nasties|harmful)|never|contains? no|does not contain|do(?:es)?n[’']?t (?:contain|use|include)|not (?:contain|include|tested|use)|avoid\p{L}*|exclud\p{L}*|ban(?:ned|s)?|blacklist\p{L}*|no-no|nasties|toxic|harmful|we don[’']?t|leave out|left out|say no|zero|0 ?%|sans|sans? ajout|exempte? d|ne contient (?:pas|ni)|ohne|frei von|enthält keine|verzicht\p{L}*|senza|non contiene|privo di|sin\b|libre de|no contiene|sem\b|livre de|não contém|zonder|vrij van|bevat geen|utan|fri från|uden|fri for|uten|ilman|ei sisällä|bez|neobsahuje|nie zawiera|wolny od|mentes|nem tartalmaz|fără|без|не содержит|не съдържа|χωρίς|içermez|無添加|不使用|フリー|不含|不添加|무첨가|없는|خالٍ? من|ללא|ปราศจาก|không chứa|tanpa)(?![\p{L}])/iu;

/** A list goes on after these. */
export const goesOn =
  /^[\s[(+/±-]*(?:may (?:also )?contain|peut contenir|kann enthalten|può contenere|puede contener|pode conter|kan bevatten|kan innehålla|może zawierać|může obsahovat|tartalmazhat|poate conține|может содержать|\+ ?\/ ?[-–−]|±)/iu;

/** A list ends before these: law, care, use, footnotes, shop furniture. */
export const endsHere =
  /^[\s"'“(]*(?:(?:please|this|these|our|we|for|due|note|n\.?b\.?|store|keep|avoid|apply|use|used?|how|warning|caution|precaution|directions?|disclaimer|allergens?|contains?|free|formulated|without|no\b|non[- ]|vegan|cruelty|made|manufactured|distributed|produced|imported|net|weight|size|volume|batch|lot\b|code\b|cod\.|f\.?i\.?l\.?|fil\b|formula\b|ref\b|sku\b|ean\b|barcode|always|consult|check|refer|the (?:list|ingredient|product|above|actual)|ingredients? (?:may|are|is|list|from|subject|can|might|change|in)|all ingredients|if\b|do not|show|read|view|see|less|more\b|learn|close|copy|back|share|buy|add to|reviews?|questions?|shipping|delivery|returns?|customers?|related|you may|frequently|description|details|benefits?|features?|specifications?|country|origin|expiry|shelf|pao\b|last updated|updated|source|certified|organic (?:ingredient|farming)|from organic|of (?:natural|organic|total)|natural (?:origin|ingredients)|\d+ ?% (?:of|natural|organic|des|der)|bitte|diese|hinweis|anwendung|warnhinweis|achtung|hergestellt|aus (?:kontrolliert|biolog)|enthält|allergene|les |la liste|cette|veuillez|attention|conseils?|utilisation|mode d|précautions?|issus? de|ingrédients? issus?|avertissement|liste susceptible|gli ingredienti|la lista|avvertenze|modo d|attenzione|da agricoltura|los ingredientes|esta lista|modo de|advertencias?|precauciones|de agricultura|sposób|uwaga|начин на|способ|применение|внимание|使用|注意|ご使用|사용|주의)(?!\p{L})|\d+([.,]\d+)? ?(?:ml|fl\.? ?oz|oz|g|l|pcs?)\b|https?:|www\.|©|℮|\*+ ?(?:\p{L}+ ){2,})/iu;

/** A legal or shop sentence that follows the last name with no mark between. */
export const tail =
  /[\s.]+(?:please (?:note|be|refer|check|read)|ingredients? (?:may|are|lists?|subject) |this (?:list|product|ingredient)|the (?:ingredient|list|product)s? |due to |for external|directions|how to|warnings?:|cautions?:|made in |free from|formulated without|(?:read|show|view|see) (?:more|less|all)|learn more|last updated|la liste |les ingrédients |bitte beachten|die inhaltsstoffe|gli ingredienti |\*+ ?(?:certified|organic|from|ingredient|natural|issu|aus |da |de |z |produced|kontrolliert|bio)|[({[]?(?:f\.?i\.?l\.?|code f|formula no|batch|lot)\b)[\s\S]*$/iu;

/** Words of running text, in a few languages. */
export const prose =
  /(?<![\p{L}])(?:the|you|your|our|we|is|are|was|has|have|that|this|which|it|its|their|they|helps?|will|can|when|while|into|leaves?|makes?|keeps?|but|not|als|die|der|das|ist|sind|mit|für|und|wird|nicht|ein|eine|ihre?|les|des|une|est|sont|pour|avec|votre|vos|qui|dans|il|del|della|che|per|sono|con|una|los|las|para|que|su|tu|och|för|til|voor|het|een|zijn|jest|oraz|dla|się|это|для|или|как|при|която|който)(?!\p{L})/giu;
