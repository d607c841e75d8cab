import { isNameKind, type NameKind } from '../names/kinds.ts';
import type { Item } from '../names/step.ts';
import type { Evidence } from './judged.ts';
import { mostForNames, namePoints } from './thresholds.ts';

export const share = (names: Item[]) => names.filter(({ kind }) => isNameKind(kind)).length / names.length;

export const count = (names: Item[], kind: NameKind) => names.filter((item) => item.kind === kind).length;

export function namesSay(names: Item[]): Evidence[] {
  const kinds = Object.keys(namePoints) as (keyof typeof namePoints)[];
  const told = kinds.map((kind) => {
    const number = count(names, kind);
    return { what: `${kind} names`, count: number, points: number * namePoints[kind] };
  });
  const sum = told.reduce((all, one) => all + one.points, 0);
  const over =
    sum > mostForNames ? [{ what: 'more names than prove', count: 1, points: mostForNames - sum }] : [];
  return [...told.filter((one) => one.count > 0), ...over];
}
