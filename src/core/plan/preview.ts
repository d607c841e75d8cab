import type { Finding, Said } from '../judge/finding.ts';
import type { ProductKind } from '../product/product.ts';
import type { Reading } from '../reading/reading.ts';
import { type WashDay, type WashDayInput, washDay } from '../wash-day/add-up.ts';
import type { Routine, Step } from '../wash-day/routine.ts';
import { whatOf } from '../wash-day/rules/avoid-list.ts';
import { traitsOf } from '../wash-day/rules/traits.ts';
import { insertUsually } from './moves.ts';

export type Adding = {
  /** The step as it would stand; its `product` is the one met on the page. */
  step: Step;
  reading: Reading | undefined;
  /** `fill` takes the place of the step of that kind (the default where there is one), `beside` adds another. */
  how?: 'fill' | 'beside' | undefined;
};

export type Preview = {
  before: WashDay;
  after: WashDay;
  /** The routine as it would stand, and the readings that go with it. */
  routine: Routine;
  readings: Map<string, Reading | undefined>;
  /** Step that the product fills; absent when a step is added. */
  fills?: string;
  /** What stacks: findings that come, and the protein count said in words. */
  stacks: Said[];
  /** Findings that go. */
  settles: Said[];
  /** The product that would be put aside. */
  displaces: Said[];
  /** Findings that come and go, as they stand. */
  comes: Finding[];
  goes: Finding[];
};

/** Puts a product into a routine as a step of its kind: into the step of that kind, or at its usual place. */
export function withProduct(
  routine: Routine,
  { step, how = 'fill' }: Pick<Adding, 'step' | 'how'>,
  order: readonly ProductKind[],
): { routine: Routine; at: number; displaced: Step | undefined } {
  const same = routine.steps.findIndex(({ kind, product }) => kind === step.kind && product === step.product);
  const kin =
    same >= 0
      ? same
      : (routine.steps.findIndex(({ kind, product }) => kind === step.kind && product === undefined) + 1 ||
          routine.steps.findIndex(({ kind }) => kind === step.kind) + 1) - 1;
  if (how === 'fill' && kin >= 0) {
    const displaced = routine.steps[kin]!;
    const steps = routine.steps.with(kin, {
      ...displaced,
      use: step.use,
      ...(step.product !== undefined && { product: step.product }),
    });
    return { routine: { ...routine, steps }, at: kin, displaced };
  }
  const steps = insertUsually(routine.steps, step, order);
  return { routine: { ...routine, steps }, at: steps.indexOf(step), displaced: undefined };
}

/** The outcome of adding a product to the wash day, before anything is changed. Pure. */
export function previewAdd(input: WashDayInput & { adding: Adding }): Preview {
  const { adding, ...now } = input;
  const { routine, at, displaced } = withProduct(now.routine, adding, now.practice.washDay.kinds.order);
  const step = routine.steps[at]!;
  const readings = new Map(now.readings).set(step.id, adding.reading);
  const before = washDay(now);
  const after = washDay({ ...now, routine, readings });
  const open = ({ answer }: Finding) => answer !== 'suits';
  const key = ({ rule, answer, reason }: Finding) => `${rule} ${answer} ${reason.key} ${whatOf(reason)}`;
  const had = new Set(before.findings.filter(open).map(key));
  const has = new Set(after.findings.filter(open).map(key));
  const comes = after.findings.filter((finding) => open(finding) && !had.has(key(finding)));
  const goes = before.findings.filter((finding) => open(finding) && !has.has(key(finding)));
  const answered = new Set(comes.map(({ rule }) => rule));
  return {
    before,
    after,
    routine,
    readings,
    ...(displaced && { fills: displaced.id }),
    stacks: [...nthCarrier(adding, after), ...comes.map(({ reason }) => reason)],
    // A finding that only changed its words is not settled.
    settles: goes.filter(({ rule }) => !answered.has(rule)).map(({ reason }) => reason),
    displaces:
      displaced?.product !== undefined && displaced.product !== step.product
        ? [{ key: 'rules.preview.displaces', values: { kind: step.kind } }]
        : [],
    comes,
    goes,
  };

  /** "Your gel would be the third product with protein; your hair's allowance is one." */
  function nthCarrier({ step: { kind, use }, reading }: Adding, day: WashDay): Said[] {
    if (traitsOf(reading, now.practice.washDay).protein !== 'yes') return [];
    const say = (which: 'products' | 'leaveOns') => {
      const { sure, allowed } = day.protein[which];
      if (allowed === undefined) return { key: 'rules.preview.nth-unknown', values: { kind, n: sure } };
      return {
        key: `rules.preview.nth-${which === 'leaveOns' ? 'leave-on' : 'product'}`,
        values: { kind, n: sure, allowed },
      };
    };
    const { leaveOns, products } = day.protein;
    const leaveOnsOver = leaveOns.allowed !== undefined && leaveOns.sure > leaveOns.allowed;
    const productsOver = products.allowed !== undefined && products.sure > products.allowed;
    return [say(use === 'leave-on' && leaveOnsOver && !productsOver ? 'leaveOns' : 'products')];
  }
}
