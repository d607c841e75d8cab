// Whole labels from far away: back labels, drug sheets, exports, small makers, translated marketplaces, typed notes.
// Written from memory of how labels are printed, before any of the reading was looked at.
import { byWeight, pick } from './draws.ts';
import { aroundKinds, letterKinds } from './far/around.ts';
import { calledKinds } from './far/called.ts';
import { type Half, type Kind, type Label, sentenced, titled } from './far/label.ts';
import { listKinds } from './far/lists.ts';
import { nameKinds } from './far/names.ts';
import { seeded } from './random-day.ts';

export type FarLabel = { kinds: string[]; text: string; names: string[] };

const kinds: readonly Kind[] = [...calledKinds, ...nameKinds, ...listKinds, ...aroundKinds, ...letterKinds];
const stages = ['names', 'list', 'around', 'letters'] as const;

/** The kinds that this half draws from: its own, and those whose wordings are halved. */
export const farKinds = (half: Half): string[] =>
  kinds.filter((kind) => kind.half === half || kind.half === 'both').map(({ kind }) => kind);

/** `name` as it is printed (capitals), the INCI name that it stands for, and how often it is drawn. */
export type FarName = { name: string; inci: string; weight: number };

/** `count` labels of 8 to 20 of these names, each with one to three kinds of dress and damage. */
export function farLabels(names: readonly FarName[], count: number, seed: number, half: Half): FarLabel[] {
  const draw = seeded(seed);
  const next = byWeight(names, draw);
  const inci = new Map(names.map(({ name, inci }) => [name, inci]));
  const own = kinds.filter((kind) => kind.half === half || kind.half === 'both');
  return Array.from({ length: count }, () => {
    const drawn = new Map<string, string>();
    const size = 8 + Math.floor(draw() * 13);
    while (drawn.size < size) {
      const name = next();
      drawn.set(inci.get(name)!, name);
    }
    const style = pick(draw, [titled, titled, sentenced, (name: string) => name]);
    const label: Label = {
      items: [...drawn].map(([name, printed]) => ({ text: style(printed), names: [name] })),
      join: ', ',
      head: pick(draw, ['', 'Ingredients: ', 'INCI: ']),
      tail: pick(draw, ['', '.', '']),
      text: '',
    };
    const chosen: Kind[] = [];
    for (let left = 1 + Math.floor(draw() * 3); left > 0; left--) {
      const kind = pick(draw, own);
      const clash = chosen.some(
        (other) =>
          other === kind ||
          (kind.stage !== 'names' && other.stage === kind.stage) ||
          (kind.clear && other.clear),
      );
      const unclear = chosen.some(
        (other) => (kind.clear && other.stage === 'letters') || (other.clear && kind.stage === 'letters'),
      );
      if (!clash && !unclear) chosen.push(kind);
    }
    if (chosen.length === 0) chosen.push(own[0]!);
    for (const stage of stages) {
      if (stage === 'around' && label.text === '')
        label.text = label.items.map(({ text }) => text).join(label.join);
      if (stage === 'letters') label.text = label.head + label.text + label.tail;
      for (const kind of chosen) if (kind.stage === stage) kind.does(label, draw, half);
    }
    return {
      kinds: chosen.map(({ kind }) => kind),
      text: label.text,
      names: label.items.flatMap((item) => item.names),
    };
  });
}
