// A label in the making, and what every way of changing it needs.
import { type Draw, pick } from '../draws.ts';
import type { Half, Halves } from './wordings.ts';

/** A label in the making: printed pieces, how they are joined, what stands before and after, and the names in it. */
export type Making = { printed: string[]; sign: string; head: string; tail: string; names: string[] };
export type Tools = { draw: Draw; half: Half; more: () => string };
export type Way = (making: Making, tools: Tools) => void;

export const plain = (name: string) => /^[A-Za-z\d][A-Za-z\d -]+$/.test(name);

/** Changes up to `times` pieces that fit, one piece once. */
export function change(
  making: Making,
  draw: Draw,
  times: number,
  how: (one: string) => string,
  fits = plain,
) {
  const places = making.printed.flatMap((one, i) => (fits(one) ? [i] : []));
  for (let n = 0; n < times && places.length > 0; n++) {
    const [at] = places.splice(Math.floor(draw() * places.length), 1);
    making.printed[at!] = how(making.printed[at!]!);
  }
}

/** Which of the forms a half has. */
export const ofHalf = <T>({ draw, half }: Tools, seen: readonly T[], aside: readonly T[]): T =>
  pick(draw, half === 'looked at' ? seen : aside);
export const said = ({ draw, half }: Tools, list: Halves) => pick(draw, list[half]);
