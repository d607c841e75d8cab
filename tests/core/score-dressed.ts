// How whole labels are read against the names they hold. Used by the test and `npm run coverage`.
import type { Lookup } from '../../src/core/names/lookup.ts';
import { keyOf, normalName } from '../../src/core/names/normal-form.ts';
import { readLabel } from '../../src/core/reading/reading.ts';
import type { Dressed } from './dressed-labels.ts';

/** wrong: mended to what is not on the label; silent: found without mending, and not on it; unknown: asked about. */
export type ScoredLabel = Pick<Dressed, 'text' | 'names'> & {
  right: number;
  missed: string[];
  wrong: string[];
  silent: string[];
  unknown: string[];
};

const plain = (name: string) => keyOf(normalName(name.replace(/\([^()]*\)/g, ' ')));

export function scoredLabel(label: Pick<Dressed, 'text' | 'names'>, lookup: Lookup): ScoredLabel {
  const named = (name: string) => {
    const found = lookup.find(name);
    return plain(found.how === 'none' ? name : found.name);
  };
  const left = label.names.map((name) => ({ name, key: named(name) }));
  const score: ScoredLabel = { ...label, right: 0, missed: [], wrong: [], silent: [], unknown: [] };
  for (const { raw, found } of readLabel(label.text, lookup).mentions) {
    if (found.how === 'none') score.unknown.push(raw);
    else {
      const at = left.findIndex(({ key }) => key === plain(found.name));
      if (at >= 0) {
        left.splice(at, 1);
        score.right++;
      } else score[found.how === 'mended' ? 'wrong' : 'silent'].push(`${raw} → ${found.name}`);
    }
  }
  return { ...score, missed: left.map(({ name }) => name) };
}

export const readWhole = ({ missed, wrong, silent, unknown }: ScoredLabel) =>
  missed.length + wrong.length + silent.length + unknown.length === 0;
