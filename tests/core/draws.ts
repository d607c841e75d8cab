// What generators of labels and damaged names draw with: seeded, by weight, and names as labels write them.
import type { seeded } from './random-day.ts';

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

/** A name in capitals as a label writes it: "PEG-7 GLYCERYL COCOATE" as "PEG-7 Glyceryl Cocoate". */
export const small = (name: string): string =>
  name
    .toLowerCase()
    .replace(/(?<![\p{L}\d'])\p{L}/gu, (letter) => letter.toUpperCase())
    .replace(/\b(Peg|Ppg|Edta|Hcl|Tea|Dmdm|Ci)\b/g, (word) => word.toUpperCase());
