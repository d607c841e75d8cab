import type { Found, Known } from '../names/lookup.ts';
import { normalName } from '../names/normal-form.ts';
import type { UseClass } from './use-levels.ts';

/** The class of use a found name belongs to, if any. Answers are remembered by name. */
export function createClassOf(classes: readonly UseClass[]) {
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
  const met = new Map<string, UseClass | undefined>();
  return (found: Found, known: Known): UseClass | undefined => {
    if (found.how === 'none') return undefined;
    if (met.has(found.name)) return met.get(found.name);
    const name = normalName(found.name).replace(/\s*\([^)]*\)/g, '');
    const answer = classes.find((each) => takes(each, name, known));
    if (met.size > mostRemembered) met.clear();
    met.set(found.name, answer);
    return answer;
  };
}

const mostRemembered = 5000;
