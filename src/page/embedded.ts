import { attribute, native } from './dom.ts';

const mostLetters = 300_000;

/**
 * What a document says only in its data, one string a line: JSON-LD (as text: its keys and values in order) and
 * the `content` of
 * microdata, a name before its value. Recipes, drugs and supplements are left out.
 */
export function embeddedLines(document: Document): string {
  const all = native(document, 'querySelectorAll');
  const lines: string[] = [];
  for (const { textContent } of all('script[type="application/ld+json"]'))
    if (textContent && !/"(?:Recipe|Drug|DietarySupplement)"/.test(textContent))
      lines.push(
        textContent
          .slice(0, mostLetters)
          .replace(/"\s*[:,{}[\]\s]+"?/g, '\n')
          .replace(/\\u([\da-f]{4})/gi, (_, code) => String.fromCharCode(Number.parseInt(code, 16)))
          .replace(/\\[nrt]|<\/?(?:p|div|li|ul|br|h\d)\b[^>]*>/gi, '\n')
          .replace(/\\(.)|<[^>]*>/g, '$1'),
      );
  for (const element of all('[itemprop][content]'))
    lines.push(
      (/ngredient/.test(attribute(element, 'itemprop')) ? 'Ingredients: ' : '') +
        attribute(element, 'content'),
    );
  return lines.join('\n\n');
}
