// What generators of labels and damaged names draw with: seeded, by weight, and names as labels write them.
import { seeded } from './random-day.ts';

export type Draw = ReturnType<typeof seeded>;

export const pick = <T>(draw: Draw, list: readonly T[]): T => list[Math.floor(draw() * list.length)]!;

/** Draws names, each as often as its weight says. */
export function byWeight(names: readonly { name: string; weight: number }[], draw: Draw): () => string {
  const sums: number[] = [];
  for (const { weight } of names) sums.push((sums.at(-1) ?? 0) + weight);
  return () => {
    const at = draw() * sums.at(-1)!;
    return names[sums.findIndex((sum) => sum > at)]!.name;
  };
}

export type Dress = { own: string[]; kinds: Set<string>; draw: Draw; more: () => string };

/**
 * `count` labels of 8 to 22 of these names (INCI, capitals), each with one to three of the kinds of damage that `dress`
 * does to it; the weight of a name is how often it is drawn.
 */
export function drawnLabels<Label>(
  names: readonly { name: string; weight: number }[],
  count: number,
  seed: number,
  kinds: readonly string[],
  dress: (label: Dress) => Label,
): Label[] {
  const draw = seeded(seed);
  const drawn = byWeight(names, draw);
  const more = () => small(drawn());
  return Array.from({ length: count }, () => {
    const own = new Set<string>();
    const size = 8 + Math.floor(draw() * 15);
    while (own.size < size) own.add(more());
    const chosen = new Set(Array.from({ length: 1 + Math.floor(draw() * 3) }, () => pick(draw, kinds)));
    return dress({ own: [...own], kinds: chosen, draw, more });
  });
}

/** A name in capitals as a label writes it: "PEG-7 GLYCERYL COCOATE" as "PEG-7 Glyceryl Cocoate". */
export const small = (name: string): string =>
  name
    .toLowerCase()
    .replace(/(?<![\p{L}\d'])\p{L}/gu, (letter) => letter.toUpperCase())
    .replace(/\b(Peg|Ppg|Edta|Hcl|Tea|Dmdm|Ci)\b/g, (word) => word.toUpperCase());
