import { isRecord, type Raw } from './schema/migrations.ts';

/**
 * What two people made of one value: the changes between `was` and `mine`, done to what stands there `now`. Where
 * both changed the same, mine counts. Lists of things are merged thing by thing.
 */
export function threeWay(was: unknown, mine: unknown, now: unknown): unknown {
  if (same(was, now)) return mine;
  if (same(was, mine)) return now;
  if (isList(was) && isList(mine) && isList(now)) return lists(was, mine, now);
  if (isRecord(was) && isRecord(mine) && isRecord(now)) return records(was, mine, now);
  return mine;
}

function records(was: Raw, mine: Raw, now: Raw): Raw {
  const keys = new Set([...Object.keys(now), ...Object.keys(mine)]);
  const merged = [...keys].map(
    (key) => [key, threeWay(own(was, key), own(mine, key), own(now, key))] as const,
  );
  return Object.fromEntries(merged.filter(([, value]) => value !== undefined));
}

function lists(was: unknown[], mine: unknown[], now: unknown[]): unknown[] {
  const [before, theirs] = [byName(was), byName(now)];
  const wanted = byName(mine);
  // Of mine: what the other took away goes too, unless I changed it.
  const merged = [...wanted].flatMap(([name, value]) => {
    const [old, there] = [before.get(name), theirs.get(name)];
    if (there === undefined) return old === undefined || !same(old, value) ? [[name, value] as const] : [];
    return [[name, old === undefined ? value : threeWay(old, value, there)] as const];
  });
  // Of the other's: what came goes after what it came after.
  let after = -1;
  for (const [name, value] of theirs) {
    const at = merged.findIndex(([each]) => each === name);
    if (at >= 0) after = at;
    else if (!before.has(name)) merged.splice(++after, 0, [name, value]);
  }
  return merged.map(([, value]) => value);
}

/** Items of a list by what tells them apart: their id, else the text, page or letters they stand for. */
function byName(list: unknown[]): Map<string, unknown> {
  const named = new Map<string, unknown>();
  for (const item of list) {
    const { id, text, url, variant, page, name, product } = isRecord(item) ? item : {};
    const own = id ?? text ?? url ?? page ?? product;
    const said = own === undefined ? item : [own, variant, name];
    let key = JSON.stringify(said);
    while (named.has(key)) key += ' again';
    named.set(key, item);
  }
  return named;
}

const isList = (value: unknown): value is unknown[] => Array.isArray(value);
const own = (of: Raw, key: string) => (Object.hasOwn(of, key) ? of[key] : undefined);

/** Equal as JSON, whatever the order of the keys. */
export function same(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const [one, two] = [Object.entries(a), new Map(Object.entries(b))];
  return one.length === two.size && one.every(([key, value]) => two.has(key) && same(value, two.get(key)));
}
