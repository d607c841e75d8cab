import { attribute, native } from './dom.ts';

type Json = { [key: string]: unknown };

const mostLetters = 500_000;

/** Every object of the document's JSON-LD blocks, outer before inner. Broken blocks are passed over. */
export function embeddedObjects(document: Document): Json[] {
  const found: Json[] = [];
  const walk = (value: unknown, depth: number) => {
    if (depth > 12 || typeof value !== 'object' || value === null || found.length > 2000) return;
    if (!Array.isArray(value)) found.push(value as Json);
    for (const inner of Object.values(value)) walk(inner, depth + 1);
  };
  for (const script of native(document, 'querySelectorAll')('script[type="application/ld+json"]')) {
    try {
      walk(JSON.parse((script.textContent ?? '').slice(0, mostLetters)), 0);
    } catch {}
  }
  return found;
}

/** What the document says only in its data, one statement a line: "Ingredients: …". Recipes are left out. */
export function embeddedLines(document: Document): string {
  const lines: string[] = [];
  for (const object of embeddedObjects(document)) {
    if (/Recipe|Drug|Supplement/.test(String(object['@type']))) continue;
    for (const [key, value] of Object.entries(object))
      if (typeof value === 'string' && value.length > 20)
        lines.push(`${key === 'value' ? object.name : key === 'description' ? '' : key}: ${value}`);
  }
  for (const meta of native(document, 'querySelectorAll')('[itemprop*="ngredient"][content]'))
    lines.push(`Ingredients: ${attribute(meta, 'content')}`);
  for (const fact of native(document, 'querySelectorAll')('[itemtype$="/PropertyValue"]')) {
    const said = (name: string) => {
      const meta = native(fact, 'querySelector')(`[itemprop="${name}"][content]`);
      return meta ? attribute(meta, 'content') : '';
    };
    if (said('value').length > 20) lines.push(`${said('name')}: ${said('value')}`);
  }
  return lines
    .map((line) =>
      line
        .replace(/^: /, '')
        .replace(/<\/?(?:p|div|li|br|h\d)\b[^>]*>/gi, '\n')
        .replace(/<[^>]*>/g, ''),
    )
    .join('\n\n');
}
