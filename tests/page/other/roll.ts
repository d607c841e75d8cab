import { seeded } from '../../core/random-day.ts';

/** Chance with a memory: the same seed gives the same pages. */
export function rolled(seed: number) {
  const next = seeded(seed);
  const below = (n: number) => Math.floor(next() * n);
  const pick = <T>(of: readonly T[]): T => of[below(of.length)]!;
  /** `count` different ones in the order they were drawn. */
  const some = <T>(of: readonly T[], count: number): T[] => {
    const left = [...of];
    return Array.from({ length: Math.min(count, left.length) }, () => left.splice(below(left.length), 1)[0]!);
  };
  return { next, below, pick, some };
}
export type Roll = ReturnType<typeof rolled>;
