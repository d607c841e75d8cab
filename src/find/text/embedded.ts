import type { ProductClues } from '../../contract/messages.ts';

/** JSON-LD, not the state that a page's own scripts draw it from. */
export const isStandard = (block: string): boolean => /"@(?:context|graph|id|type)"/.test(block);

const mostLetters = 300_000;

/**
 * What a document says only in its data, one string a line: JSON-LD (as text: its keys and values in order) and
 * the `content` of microdata, a name before its value. Recipes, drugs and supplements are left out.
 */
export function embeddedLines({ data, properties }: Pick<ProductClues, 'data' | 'properties'>): string {
  return [
    ...data
      .filter((block) => !/"(?:Recipe|Drug|DietarySupplement)"/.test(block))
      .map((block) =>
        block
          .slice(0, mostLetters)
          .replace(/"[:,{}[\]\s]+"?/g, '\n')
          .replace(/\\u([\da-f]{4})/gi, (_, code) => String.fromCharCode(Number.parseInt(code, 16)))
          .replace(/\\[nrt]|<\/?(?:p|div|li|ul|br|h\d)\b[^<>]{0,400}>/gi, '\n')
          .replace(/\\(.)|<[^<>]{0,400}>/g, '$1'),
      ),
    ...properties.map(([name, content]) => (/ngredient/.test(name) ? 'Ingredients: ' : '') + content),
  ].join('\n\n');
}
