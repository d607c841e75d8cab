import { readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { english } from '../../src/ui/words/index.ts';
import { message, type Takes } from '../../src/ui/words/message.ts';

const file = resolve(import.meta.dirname, '../../src/ui/words/arguments.ts');

const types: Record<Takes, string> = { text: 'Value', number: 'number', date: 'string', choice: 'string' };

/** The arguments of each English message as TypeScript, so that the compiler sees them. */
export function wordArguments(): string {
  const rows = Object.keys(english)
    .sort()
    .flatMap((key) => {
      const takes = [...message(english[key]!, 'en').takes].sort(([a], [b]) => (a < b ? -1 : 1));
      const named = takes.map(([name, take]) => `${name}: ${types[take]}`);
      return named.length > 0 ? [`  '${key}': { ${named.join('; ')} };`] : [];
    });
  return [
    '// Written by `npm run fix` from src/ui/words/en.',
    "import type { Value } from './message.ts';",
    '',
    'export type Arguments = {',
    ...rows,
    '};',
    '',
  ].join('\n');
}

export const writtenArguments = (): string => readFileSync(file, 'utf8');

/** True where the file had to be written anew. */
export function rewriteArguments(): boolean {
  if (writtenArguments() === wordArguments()) return false;
  writeFileSync(file, wordArguments());
  return true;
}
