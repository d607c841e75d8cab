import type { Found, Known } from '../names/lookup.ts';
import { bareName } from '../names/normal-form.ts';
import { onceEach } from '../names/once-each.ts';
import { foundKey } from '../names/told-as.ts';
import type { UseClass, UseLevels } from './use-levels.ts';

/** What is known of the use of a name: its class, and figures of its own. */
export type UseOf = { of?: UseClass; own?: UseLevels['names'][string] };

/** How a found name is used. Answers are remembered by name. */
export function createUseOf({ classes, names }: Pick<UseLevels, 'classes' | 'names'>) {
  const built = new Map<string, RegExp>();
  const expression = (source: string) => {
    const known = built.get(source);
    if (known) return known;
    const made = new RegExp(source, 'u');
    built.set(source, made);
    return made;
  };
  const takes = (each: UseClass, name: string, { protein, roles }: Known): boolean => {
    if (each.minute && !protein?.minute) return false;
    if (each.protein && !(protein && each.protein.includes(protein.kind))) return false;
    if (each.roles && !each.roles.some((role) => roles.includes(role))) return false;
    return (
      (each.match === undefined || expression(each.match).test(name)) &&
      (each.not === undefined || !expression(each.not).test(name))
    );
  };
  const owned = new Map(Object.entries(names).map(([name, own]) => [name.toLowerCase(), own]));
  const met = onceEach<UseOf>(mostRemembered);
  return (found: Found, known: Known): UseOf => {
    if (!('name' in found)) return {};
    return met(foundKey(found), () => {
      const name = bareName(found.name);
      const of = classes.find((each) => takes(each, name, known));
      const own = owned.get(found.name.toLowerCase());
      return { ...(of && { of }), ...(own && { own }) };
    });
  };
}

const mostRemembered = 5000;
