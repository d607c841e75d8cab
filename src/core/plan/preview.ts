import type { Finding, Said } from '../judge/finding.ts';
import type { ProductKind } from '../product/product.ts';
import type { Reading } from '../reading/reading.ts';
import { dayOf, type WashDay, type WashDayInput, washDay } from '../wash-day/add-up.ts';
import type { Routine, Step } from '../wash-day/routine.ts';
import type { DayStep } from '../wash-day/rules/day.ts';
import { changeOfAll, changesOf, comeAndGo, type DayChange } from './compare-days.ts';
import { type Gain, gainsOf } from './gains.ts';
import { insertUsually } from './moves.ts';

export type AddingPreview = {
  /** The step as it would stand; its `product` is the one met on the page. */
  step: Step;
  reading: Reading | undefined;
  /** `fill` takes the place of the step of that kind (the default where there is one), `beside` adds another. */
  how?: 'fill' | 'beside' | undefined;
};

export type Preview = {
  /** The day with it against the day without. */
  answer: DayChange;
  /** It is in the routine already. */
  known: boolean;
  gains: Gain[];
  before: WashDay;
  after: WashDay;
  /** The routine as it would stand, and the readings that go with it. */
  routine: Routine;
  readings: Map<string, Reading | undefined>;
  /** Step that the product fills; absent when a step is added. */
  fills?: string;
  /** How many products with protein there would be. */
  counts: Said[];
  /** What speaks against it newly or louder, or can be told no more. */
  stacks: Said[];
  /** What it settles, and what it does besides. */
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
  { step, how = 'fill' }: Pick<AddingPreview, 'step' | 'how'>,
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

/** The outcome of adding a product to the wash day, before anything is changed: the day before against the day after. Pure. */
export function previewAdd(input: WashDayInput & { adding: AddingPreview }): Preview {
  const { adding, ...now } = input;
  const { routine, at, displaced } = withProduct(now.routine, adding, now.practice.washDay.kinds.order);
  const step = routine.steps[at]!;
  const readings = new Map(now.readings).set(step.id, adding.reading);
  const then = { ...now, routine, readings };
  const [before, after] = [washDay(now), washDay(then)];
  const known =
    step.product !== undefined && now.routine.steps.some(({ product }) => product === step.product);
  const changes = changesOf(before.findings, after.findings);
  const day = dayOf(then);
  const gains = known ? [] : gainsOf(day.steps[at]!, dayOf(now), day);
  const { comes, goes } = comeAndGo(changes, before.findings, after.findings);
  return {
    answer: changeOfAll(changes, gains.length),
    known,
    gains,
    before,
    after,
    routine,
    readings,
    ...(displaced && { fills: displaced.id }),
    counts: nthCarrier(day.steps[at]!, after),
    stacks: comes.map(({ reason }) => reason),
    settles: [...goes.map(({ reason }) => reason), ...gains.map((gain) => ({ key: `rules.gain.${gain}` }))],
    displaces:
      displaced?.product !== undefined && displaced.product !== step.product
        ? [{ key: 'rules.preview.displaces', values: { kind: step.kind } }]
        : [],
    comes,
    goes,
  };
}

/** "Your gel would be the third product with protein": a count, not a complaint. */
function nthCarrier({ kind, traits }: DayStep, { protein: { products } }: WashDay): Said[] {
  if (traits.protein !== 'yes') return [];
  return [{ key: 'rules.preview.nth-product', values: { kind, n: products.sure } }];
}
