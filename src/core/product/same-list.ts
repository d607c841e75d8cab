import { normalName } from '../names/normal-form.ts';
import type { Reading } from '../reading/reading.ts';

/** Fewer names than this may be the same in two products (common practice: oils, waters). */
const tellingFrom = 5;

const nameOf = ({ raw, found }: Reading['mentions'][number]) =>
  'name' in found ? normalName(found.name) : normalName(raw);

/** Whether two labels hold the same names in the same order, however each is spelled and set apart. */
export function sameList(a: Reading | undefined, b: Reading | undefined): boolean {
  if (!a || !b || a.mentions.length !== b.mentions.length || a.mentions.length < tellingFrom) return false;
  return a.mentions.every((mention, at) => nameOf(mention) === nameOf(b.mentions[at]!));
}
