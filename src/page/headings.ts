/** Words that stand before a list, or that say a list is none, on lower-case text. */

/** Headings in some thirty languages, by their stems. */
const heading =
  "ingr[eé]di[eë]n[a-zà-ž]*|i̇?nci(?: (?:list[ea]?|names?))?|composi[cçtzț][a-zà-ž]*|koostumus|composition|what[’']s (?:in it|inside)" + // Latin roots
  '|inhaltsstoff[a-z]*|bestand[dt]e[a-z]+|zusammensetzung|zutaten|samenstelling|innehåll[a-zå]*|indhold[a-z]*|innhold|innihald[a-z]*' + // Germanic
  '|sk[łl]ad(?:niki)?|slo[žz]en[ií]e?|zlož[a-zé]+|přísady|össze?t[a-zéőe]+|sast(?:[aā]v|oj)[a-zļ]*|sestav[a-z]*|koostis[a-z]*|sudėt[a-z]+|sudedamosios dalys|ainesosa[a-z]*|përbërësit' + // Slavic, Baltic, Hungarian, Finnic
  '|состав|ингр[еи]диент[а-я]*|съст[а-я]+|склад(?:ники)?|інгредієнти|саст[а-я]+|συστατικ[άα]|σύνθεση|içindekiler|bileşenler|içerik' + // Cyrillic, Greek, Turkish
  '|全?成[分份](?:表示?|一覧)?|配方|전 ?성분|성분|(?:ال)?مكونات|התרכיב|רכיבים|מרכיבים|ترکیبات|ส่วนประกอบ|ส่วนผสม|thành phần|komposisi|kandungan|bahan';

const more = `(?:[\\s|/,&()\\[\\]–—-]{1,4}(?:and |et |und |e )?(?:${heading})(?: list[ae]?)?)*`;
/** Everywhere a heading word stands; what is around it decides. */
export const headingAnywhere = new RegExp(`(?:${heading})(?: list[ae]?)?${more}[)\\]]?`, 'g');

/** Before or around a heading: what follows is a choice of names, not the list. */
export const teaser =
  /(?:^|[^a-zà-ž])(?:key|hero|star|main|featured|powerful|signature|top|active|notable|highlight|wirkstoff|haupt|clés?|actifs?|phares?|principa|chiave|attivi|clave|activos|główne|ключев|активн|主要|핵심|주요|有効)/;

/** What follows is not in the product. */
export const denial =
  /(?:^|[^a-zà-ž])(?:without|free (?:from|of)|-?free\b(?! ingr)|no\b|never|not?\b|don[’']?t|doesn[’']?t|avoid|exclu|bann?|bad\b|worst|nasties|toxic|harmful|zero|0 ?%|sans|exempt|ohne|frei|keine|senza|privo|sin|libre|sem|livre|zonder|vrij|geen|utan|fri|uden|uten|bez|mentes|fără|без|не|χωρίς)(?![a-zà-žа-я])|無添加|不使用|フリー|不含|무첨가|ปราศจาก/;

/** A list goes on after these. */
export const goesOn =
  /^[\s[(]*(?:may (?:also )?contain|peut contenir|kann enthalten|può contenere|puede contener|pode conter|kan bevatten|kan innehålla|może zawierać|může obsahovat|poate conține|\+ ?[/|]? ?[-–−]|±)/;

/** A list ends before these. */
export const endsHere =
  /^[\s"'“([*]*(?:contains?\b|allerg|formulated|free\b|vegan|cruelty|batch|lot\b|code\b|f\.?i\.?l\b|all ingr|ingr\S+ (?:may|are|is|list|from|subject)|made|(?:read|show|see|view|learn) |\d+([.,]\d+)? ?(?:ml|fl|oz|g|l|pcs)\b|https?:|www\.|©|℮|\d+ ?% (?:of|natural|organic|des|der))/;

/** Words of running text that no name holds. */
export const prose =
  /(?:^|[\s\v(])(?:the|you|your|our|we|is|are|has|have|that|this|these|which|it|its|they|helps?|will|can|may|when|while|not|please|for|due|such|like|includ\w+|always|bitte|diese|mit|für|ist|sind|wird|nicht|eine?|les|cette|des|une|est|sont|pour|avec|votre|nous|questa|gli|che|per|sono|con|una|los|las|para|que|och|för|voor|het|een|jest|oraz|dla|się|это|для|или|как|при)(?=[\s\v,.:;!?)]|$)/;
