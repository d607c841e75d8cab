import { bringsFor } from '../../core/amounts/brings.ts';
import { type Answer, answersByWeight } from '../../core/judge/finding.ts';
import { pricePer100 } from '../../core/product/product.ts';
import type { Reading } from '../../core/reading/reading.ts';
import type { Compared } from '../../use/acts/matters/pins.ts';
import { headInUse } from '../../use/in-use.ts';
import type { Check } from '../../use/judge/judge-product.ts';
import { isUnnamed } from '../describe/verdict.ts';
import { AnswerHead } from '../parts/answer-head.tsx';
import type { Translate } from '../words/index.ts';
import type { World } from '../world.ts';

type Column = { product: Compared; reading: Reading | undefined };

const rank = (answer: Answer) => answersByWeight.indexOf(answer);

/** Which fits best, in one line, and in what the products differ. Nothing is said before all are read. */
export function Decision(props: {
  world: World;
  names: readonly string[];
  columns: readonly Column[];
  checks: readonly (readonly Check[])[];
}) {
  const { world, names, columns, checks } = props;
  const { t, remembered } = world;
  const head = headInUse(remembered);
  const answers = checks.flatMap(([forHead]) => (forHead ? [forHead.answer] : []));
  if (columns.length < 2 || columns.some(({ reading }) => !reading)) return null;
  const lines = differences(world, names, columns);
  const best = Math.max(...answers.map(rank));
  const first = names.filter((_, at) => answers[at] !== undefined && rank(answers[at]) === best);
  const answer = answersByWeight[best];
  return (
    <div class="verdict decision">
      {head && answer && answers.length === columns.length && (
        <AnswerHead answer={answer} title={decisionTitle(t, answer, head.name, first, names.length)} />
      )}
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </div>
  );
}

function decisionTitle(
  t: Translate,
  answer: Answer,
  who: string,
  first: readonly string[],
  all: number,
): string {
  const mine = isUnnamed(who, t);
  if (first.length === all)
    return mine
      ? t('compare.decides.same.mine', { answer, n: all })
      : t('compare.decides.same', { answer, who, n: all });
  return mine
    ? t('compare.decides.better.mine', { answer, names: first })
    : t('compare.decides.better', { answer, who, names: first });
}

/** What one brings more of than another, how each washes, which is cheaper: a line each, equal things left out. */
function differences({ t, practice }: World, names: readonly string[], columns: readonly Column[]): string[] {
  const brings = columns.map(({ reading, product }) =>
    reading ? bringsFor(reading, product, practice.washDay) : undefined,
  );
  const line = (what: 'protein' | 'moisture') => {
    const steps = brings.map((each) => (each?.unsure ? undefined : each?.[what].step));
    if (steps.includes(undefined) || new Set(steps).size === 1) return [];
    const each = names.map((name, at) => t('compare.differs.of', { name, step: steps[at]! }));
    return [t(`compare.differs.${what}`, { each })];
  };
  const prices = columns.map(({ product }) => pricePer100(product));
  const currencies = new Set(columns.map(({ product }) => product.currency));
  const least = Math.min(...prices.map((price) => price ?? Number.POSITIVE_INFINITY));
  const cheaper = names.filter((_, at) => prices[at] === least);
  const priced = currencies.size === 1 && !prices.includes(undefined) && cheaper.length === 1;
  return [
    ...line('protein'),
    ...line('moisture'),
    ...(priced ? [t('compare.differs.cheaper', { name: cheaper[0]! })] : []),
  ];
}
