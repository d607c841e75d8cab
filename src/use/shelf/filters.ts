import type { BringStep as Amount } from '../../core/amounts/brings.ts';
import type { ProductKind } from '../../core/product/product.ts';
import type { Remembered } from '../../store/remembered.ts';
import { headInUse, routineInUse } from '../in-use.ts';
import type { Check } from '../judge/judge-product.ts';

/** What filters look at in one product that was read. */
export type Filtered = {
  protein: Amount | 'unknown';
  moisture: Amount | 'unknown';
  /** Sizes of the proteins that count as a dose. */
  sizes: ReadonlySet<string>;
  staysOn: boolean;
  checks: Check[];
  kind: ProductKind | undefined;
  /** It is one of the things looked for. */
  granted: boolean;
  /** 100 ml or g of it cost less than the user's limit, in its currency. */
  cheap: boolean;
};

const enough: ReadonlySet<Amount | 'unknown'> = new Set(['some', 'a-lot']);
const worstAbout = ({ checks }: Filtered, about: Check['about']) =>
  checks.find((check) => check.about === about)?.answer;

/** What a shelf can be looked through by, in the order it is offered. */
export const shelfFilters: Record<string, (product: Filtered) => boolean> = {
  'protein-free': ({ protein }) => protein === 'none',
  'small-protein': ({ protein, sizes }) =>
    protein !== 'none' && sizes.size > 0 && !sizes.has('large') && !sizes.has('unknown'),
  'no-large-stays': ({ sizes, staysOn }) => !(staysOn && sizes.has('large')),
  'some-moisture': ({ moisture }) => enough.has(moisture),
  wish: ({ granted }) => granted,
  price: ({ cheap }) => cheap,
  suits: (product) => worstAbout(product, 'head') === 'suits',
  'fits-day': (product) => worstAbout(product, 'routine') === 'suits',
  'nothing-avoided': ({ checks }) =>
    checks.some(
      ({ about, findings }) =>
        about === 'head' && findings.every(({ rule, answer }) => rule !== 'avoid-list' || answer === 'suits'),
    ),
};

/** Name of the filter for what fits the wash day as one kind of step. */
const fitsAs = (kind: ProductKind) => `${asStep}${kind}`;
const asStep = 'as:';
/** The kind of step a filter is for, where it is one of those. */
export const stepOfFilter = (filter: string): string | undefined =>
  filter.startsWith(asStep) ? filter.slice(asStep.length) : undefined;

export const passesOf = (product: Filtered): string[] => {
  const passed = Object.entries(shelfFilters).flatMap(([name, passes]) => (passes(product) ? [name] : []));
  return product.kind && passed.includes('fits-day') ? [...passed, fitsAs(product.kind)] : passed;
};

const asksHead = new Set(['suits', 'nothing-avoided']);

/** Filters that are offered, in order: none that asks of hair or of a wash day that is not described. */
export function filtersFor(remembered: Pick<Remembered, 'heads' | 'routines' | 'settings'>): string[] {
  const { wishes = [], shelfPrice } = remembered.settings;
  const head = headInUse(remembered);
  const routine = routineInUse(remembered, head);
  const asked = { wish: wishes.length > 0, price: shelfPrice !== undefined, 'fits-day': Boolean(routine) };
  return Object.keys(shelfFilters)
    .filter((name) => (asksHead.has(name) ? Boolean(head) : (asked[name as keyof typeof asked] ?? true)))
    .flatMap((name) =>
      name === 'fits-day' ? [name, ...new Set(routine?.steps.map(({ kind }) => fitsAs(kind)))] : [name],
    );
}
