/** What stands among the names and is none: sentences, legends of asterisks, codes, claims. */

const functionWords = new Set(
  `a an and are as at be been but by can each every for from has have helps help if in into is it its leaves
like made may more most not of on only or our over so than that the their them these this those to up use used
which while who will with without you your we de la le les des du et pour avec dans une sur der die das und mit
für von den dem ein eine ist im zum para con por que los las del una il di per dei delle nel`.split(/\s+/),
);

const formOf =
  /^(?:huile|beurre|extrait|eau|jus|poudre|lait|protéines?|aceite|manteca|extracto|agua|jugo|polvo|leche|proteínas?|óleo|manteiga|extrato|água|suco|leite|olio|burro|estratto|acqua|latte|proteine) (?:d[eio]s? |d['’]|del|dell['’])/iu;

/** A sentence or a phrase of prose, told by its small words. Names have few of them. */
export function isProse(text: string): boolean {
  if (/[!?]/.test(text)) return true;
  const words = text
    .slice(0, 600)
    .toLowerCase()
    .split(/[^\p{L}'’]+/u)
    .filter(Boolean);
  const small = words.filter((word) => functionWords.has(word)).length;
  // "Huile de germe de blé" is a name with as many small words as prose has.
  if (words.length <= 6 && formOf.test(text.trim())) return false;
  if (words.length >= 4 && small / words.length >= 0.4) return true;
  return words.length >= 6 && small >= 2 && small / words.length >= 0.2;
}

// A legend says only where things come from; each of its words is one of these.
const origin =
  'certified|organic|organically|natural|naturally|biologique|biologiques|biologica|biologico|biologici|biologisch|biologische|biologischem|biologischer|bio|origin|origine|ursprungs|farming|agriculture|agricoltura|agricultura|anbau|cultivation|cultivated|kontrolliert|kontrolliertem|grown|wild|wildcrafted|fair|fairtrade|trade|usda|ecocert|cosmos|nop|derived|from|issus?|issues?|aus|ecol[oó]gica|ecol[oó]gico|teelt|landbouw|upraw|uprawy|ekologicznych|ekologicznej|ekologiczny|kb[at]|transform[eé]e?s?|certifi[eé]|vegan|sustainable|sourced|plant|vegetable|100|%';
const filler =
  'ingredients?|ingr[eé]dients?|składniki?|pochodz[aą]c[aey]|provenient[ei]|obtenus?|obtenues?|partir|à|ingredientes|ingredienti|in|of|the|to|and|or|are|is|by|as|used|essential|oils?|[oö]le|[oö]len|ätherischen|ätherische|huiles?|essentielles?|olii|aceites|components?|constituents?|constituants?|bestandteile?|occurring|present|contained|content|fragrance|parfum|perfume|aroma|allergens?|standards?|controlled|agri|de|des|du|la|le|l|d|di|da|van|z|procedentes?|della|dell|denotes|indicates|product|total|our';
const legend = new RegExp(`^(?:(?:${origin}|${filler})(?![\\p{L}])[\\s,./()’'*–-]*)+$`, 'iu');
const someOrigin = new RegExp(`(?:^|[\\s(/-])(?:${origin})(?![\\p{L}])`, 'iu');
const substance = /(?:^|\s)(?:fragrance|parfum|perfume|aroma|oils?)(?:$|\s)/i;

/** "*Organic", "** from natural essential oils": what an asterisk refers to. */
export function isLegend(text: string): boolean {
  const [, stars, words] = /^([\s*†‡°+¹²³=:()-]*)([\s\S]*)$/.exec(text.slice(0, 200))!;
  if (!words) return true;
  if (!legend.test(words) || !someOrigin.test(words)) return false;
  return /[*†‡°+¹²³]/.test(stars!) || !substance.test(words);
}

/** Batch codes, sizes, web addresses, prices, claims such as "paraben free". */
export function isNoise(printed: string): boolean {
  // A code in brackets after a name is no reason to lose the name.
  const bare = printed.replace(/\([^()]*\)|\[[^[\]]*\]/g, ' ');
  const text = /\p{L}{2}/u.test(bare) ? bare : printed;
  if (!/\p{L}.?\p{L}|[\p{Script=Han}\p{Script=Hangul}]/u.test(text)) return true;
  return (
    /(?:^|[\s([])(?:f\.?\s?i\.?\s?l|lot|batch|sku|barcode|ean|item no)\b\.?.*\d/i.test(text) ||
    /^(?:code|ref|formula|item|nr|n°|no)\b[\s.:#]*[a-z]{0,4}\d+/i.test(text) ||
    /^[\s#([]*[a-z]{1,3}\d{4,}[a-z\d]*(?:[/-][\da-z]+)*[\s)\]]*$/i.test(text.replace(/^ci\d/i, '')) ||
    /https?:|www\.|@\w|\.com\b|^©/i.test(text) ||
    /^(?:pzn|pao|us patent|patent no|net wt|exp|tel)\b[\s.:]*[\d#]/i.test(text) ||
    /^[\d.,\s]+(?:ml|g|kg|oz|fl\.? ?oz|l|lb)\b\.?(?:\s|$)/i.test(text) ||
    /[€$£¥]\s?\d/.test(text) ||
    /^(?:purposes?|drug facts)\b/i.test(text) ||
    /^ingredients? (?:lists? )?(?:may|are|is|can|listed|subject|that|which)\b/i.test(text) ||
    /\p{L}[\s-](?:free|frei|friendly)$/iu.test(text.trim())
  );
}
