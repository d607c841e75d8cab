import type { MoistureRole, ProteinKind, Role } from '../names/entry.ts';
import { bareName } from '../names/normal-form.ts';
import { onceEach } from '../names/once-each.ts';
import { foundKey } from '../names/told-as.ts';
import type { Mention } from '../reading/reading.ts';

/** What lifts a film: water alone, a mild wash, or only a strong one. */
export type Lift = 'water' | 'mild' | 'strong';

/** Ingredients that do the same to hair, and what a percent of them does. The first class that takes a name is its class. */
export type Matter = {
  id: string;
  /** Regular expression source over the normal form of a name, flags `u`. */
  match?: string;
  not?: string;
  /** Has one of these roles, does one of these for moisture, is one of these kinds of protein. */
  roles?: Role[];
  moisture?: MoistureRole[];
  protein?: ProteinKind[];
  /** Weight and softness of one percent, against one percent of a plain oil. */
  weight?: number;
  soft?: number;
  /** Stiffness (hold without softness) and dryness of one percent. */
  stiff?: number;
  dry?: number;
  film?: Lift;
  /** Lies on the cuticle: heavier on low porosity, lighter on high. */
  sits?: true;
  wash?: 'soap' | 'strong' | 'mild' | 'clay';
  /** Takes the edge off stronger cleansers beside it. */
  amphoteric?: true;
  /** Made against flakes. */
  scalp?: true;
  bond?: true;
  /** Protein by name, put in for something else: shown, never counted as a dose. */
  noDose?: true;
};

/** dictionary/matter.json: common practice. */
export type MatterPractice = { classes: Matter[]; sources: string[] };

type Asked = Pick<Mention, 'found' | 'roles' | 'moisture' | 'protein'>;

/** What a found name does to hair; undefined where it does nothing that a rule asks about, or was not read. */
export function matterOf(mention: Asked, practice: MatterPractice): Matter | undefined {
  const { found } = mention;
  if (found.how === 'none') return undefined;
  let met = known.get(practice);
  if (!met) {
    met = { classes: practice.classes.map(test), answer: onceEach(mostRemembered) };
    known.set(practice, met);
  }
  const { classes } = met;
  return met.answer(foundKey(found), () => {
    const normal = bareName(found.name);
    return classes.find(({ takes }) => takes(normal, mention))?.matter;
  });
}

type Tested = { matter: Matter; takes: (normal: string, mention: Asked) => boolean };

const known = new WeakMap<
  MatterPractice,
  { classes: Tested[]; answer: ReturnType<typeof onceEach<Matter | undefined>> }
>();

const mostRemembered = 5000;

function test(matter: Matter): Tested {
  const match = matter.match === undefined ? undefined : new RegExp(matter.match, 'u');
  const not = matter.not === undefined ? undefined : new RegExp(matter.not, 'u');
  const one = <T>(wanted: T[] | undefined, has: readonly T[]) =>
    !wanted || wanted.some((each) => has.includes(each));
  return {
    matter,
    takes: (normal, { roles, moisture, protein }) =>
      one(matter.roles, roles) &&
      one(matter.moisture, moisture) &&
      one(matter.protein, protein ? [protein.kind] : []) &&
      (!match || match.test(normal)) &&
      !not?.test(normal),
  };
}
