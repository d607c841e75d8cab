/** Words that stand before a list, or that say a list is none, on lower-case text. */

/** Headings in some thirty languages, by their stems. */
const heading =
  "ingr[eé]di[eë]n[a-zà-ž]*|i̇?nci(?: names?)?|[ck]om?po[sz][iy][a-zçãțţ]*|koost[iu][a-z]*|what[’']s (?:in it|inside)" + // Latin roots
  '|inhaltssto[a-z]+|bestand[dt]e[a-z]+|zusammens[a-z]+|zutaten|samenst[a-z]+|inn[ei]h[a-zåä]+|indhold[a-z]*|innhold' + // Germanic
  '|sk[łl]ad[a-z]*|slo[žz]en[ií]e?|zlož[a-zé]+|přísady|össze?t[a-zéőe]+|sast(?:[aā]v|oj)[a-zļ]*|sestav[a-z]*|sud[eė][td][a-zė]+|ainesos[a-z]+' + // Slavic, Baltic, Hungarian, Finnic
  '|с[оа]ст[аои][а-яј]*|ингр[а-я]+|съст[а-я]+|склад[а-я]*|інгр[а-яі]+|συστατικ[άα]|σύνθεση|içindekiler|bileşen[a-z]+|içerik' + // Cyrillic, Greek, Turkish
  '|全?成[分份](?:表示?|一覧)?|配方|전 ?성분|성분|(?:ال)?مكونات|רכיבים|מרכיבים|ترکیبات|ส่วน(?:ประกอบ|ผสม)|thành phần|kandungan|bahan';

/** Everywhere a heading word stands; what is around it decides. */
export const headingAnywhere = new RegExp(`(?:${heading})(?: list[ae]?)?[)\\]]?`, 'g');

/** Around a heading: what follows is a choice of names, not the list. */
export const teaser =
  /(?:^|[^a-zà-ž])(?:key|hero|star|main|featured|powerful|signature|top|active|notable|highlight|wirkstoff|haupt|clés?|actifs?|phares?|princip|chiave|attivi|clave|activos|główne|ключев|активн|主要|핵심|주요|有効)/;

/** What follows is not in the product. */
export const denial =
  /(?:^|[^a-zà-ž])(?:without|free (?:from|of)|-?free\b(?! ingr)|no\b|never|not?\b|don[’']?t|avoid|exclu|ban|bad\b|worst|nasties|toxic|harmful|zero|0 ?%|sans|ohne|frei|keine|senza|sin|libre|sem|livre|zonder|vrij|utan|fri|ud?en|bez|mentes|без|не|χωρίς)(?![a-zà-žа-я])|無添加|不使用|フリー|不含|무첨가/;

/** A line that says it and nothing more, so that the next lines are meant. */
export const denialAlone =
  /(?:without|free (?:from|of)|never|ohne|frei von|sans|senza|sin|sem|zonder|bez|без)[^a-zа-я]*$/;

/** A list goes on after these. */
export const goesOn =
  /^[\s[(]*(?:may (?:also )?contain|peu\S+ contenir|kann enthalten|può contenere|puede contener|pode conter|kan (?:bev|inn)\S+|może zawierać|může obs\S+|poate conține|\+ ?[/|]? ?[-–−]|±)/;

/** A list ends before these. */
export const endsHere =
  /^[\s"'“([*]*(?:contains?\b|allerg|formulated|free\b|(?:vegan|cruelty.free)(?:\W*$| and|,)|batch|lot\b|code\b|f\.?i\.?l\b|all ingr|ingr\S+ (?:may|are|is|list|from|subject)|made (?:in|with|by)|(?:read|show|see|view|learn) |\d+([.,]\d+)? ?(?:ml|fl|oz|g|pcs)\b|https?:|www\.|©|℮|\d+ ?% (?:of|natural|organic|des|der))/;

/** Words of running text that no name holds. */
export const prose =
  /(?:^|[\s(])(?:the|you|your|our|we|is|are|has|have|that|this|these|which|it|its|they|helps?|will|can|may|when|while|not|please|for|due|such|like|includ\w+|always|bitte|diese|mit|für|ist|sind|wird|nicht|eine?|les|cette|une|est|sont|pour|avec|votre|nous|questa|gli|che|per|sono|con|una|los|las|para|que|och|för|voor|het|een|jest|oraz|dla|się|это|для|или|как|при)(?=[\s,.:;!?)]|$)/;
