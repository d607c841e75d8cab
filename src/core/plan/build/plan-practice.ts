import type { Answer } from '../../judge/finding.ts';
import type { ProductKind } from '../../product/product.ts';

/** dictionary/plan.json: what a built day is weighed by, all `common practice`. */
export type PlanPractice = {
  /** What a step of a kind is worth, filled. */
  fills: Record<ProductKind, number>;
  /** What a finding with this answer costs. */
  costs: Record<Exclude<Answer, 'suits'>, number>;
  /** What a product costs that suits this head by itself no better than so: enough to choose between two. */
  prefers: Record<Answer, number>;
  /** What part of its step a cleanser does that comes now and then, or that cleans too little. */
  fillsSeldom: number;
  fillsWeak: number;
  /** What strength costs by itself, a plain strong shampoo or a hard gel: of two alike the milder is taken. */
  strength: number;
  /** What as much protein costs as the hair takes: of two products alike, the one with less is taken. */
  thrift: number;
  /** What a day without protein costs, and the tolerance from which the hair would use some. */
  unused: number;
  usesFrom: number;
  /** Softness wanted from which rich products beside the needed ones are welcome. */
  thirstyFrom: number;
  /** What each product for hold after the first costs: most of what it is worth. */
  again: number;
  /** Kinds that keep a stiff hold off the hair. */
  beneath: ProductKind[];
  /** Rules, or reasons of a rule, that speak of what is not there yet: wished for, not counted against a day. */
  unfinished: string[];
  /** Kinds of which a wash day has one each. */
  needed: ProductKind[][];
  /** Minutes a step takes, for plans that must not take longer. */
  minutes: Record<ProductKind, number>;
  /** Days between uses of what is not for every wash. */
  weeklyDays: number;
  /** Days, begun or whole, looked at before the search gives up: about a second's worth. */
  patience: number;
  /** Plans offered at most. */
  plans: number;
  sources: string[];
};
