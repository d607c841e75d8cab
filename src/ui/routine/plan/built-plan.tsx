import type { BuiltPlan } from '../../../core/plan/build/build.ts';
import { priceOf } from '../../../core/plan/build/pins.ts';
import type { Wish } from '../../../core/plan/wish.ts';
import type { Routine } from '../../../core/wash-day/routine.ts';
import { productById } from '../../../use/acts/matters/products.ts';
import { keepRoutine } from '../../../use/acts/matters/routines.ts';
import { wishFor } from '../../../use/acts/matters/wishes.ts';
import type { WashPrices } from '../../../use/judge/price-of-wash.ts';
import { carryOut } from '../../carry-out.ts';
import { money } from '../../describe/money.ts';
import { AnswerHead } from '../../parts/answer-head.tsx';
import { Button } from '../../parts/controls/button.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import type { World } from '../../world.ts';
import { wishWords } from '../suggestions.tsx';
import { carrierWords } from './carrier-words.ts';
import { PlanSteps } from './plan-steps.tsx';

/** One plan: what it is, what it costs and lacks, taken with one press. */
export function BuiltPlanOffer(props: {
  world: World;
  routine: Routine;
  plan: BuiltPlan;
  prices: WashPrices;
  first: boolean;
}) {
  const { world, routine, plan, first } = props;
  const { t, remembered } = world;
  const nameOf = (product: string | undefined) => productById(remembered, product)?.name ?? '';
  const take = () => {
    const steps = plan.steps.map((step) => ({ ...step, id: world.newId() }));
    void carryOut(world, keepRoutine(remembered, { ...routine, steps }, { key: 'plan.taken' }));
  };
  const open = plan.findings.filter(({ answer }) => answer !== 'suits');
  const proof = !plan.best ? 'plan.not-proven' : first ? 'plan.best' : 'plan.best.there';
  return (
    <section class="offer">
      <AnswerHead answer={plan.answer} title={carrierWords(t, plan)} look="row" />
      <PlanSteps world={world} steps={plan.steps} nameOf={nameOf} />
      <p class="hint">
        {t('plan.minutes', { n: plan.minutes })} {t(proof)}
      </p>
      <PriceOfWash {...props} />
      {open.map(({ rule, reason, steps }) => (
        <p key={rule + reason.key + steps.join()} class="hint">
          {t(reason.key, reason.values)}
        </p>
      ))}
      <Missing world={world} missing={plan.missing} />
      {plan.leftOut.length > 0 && (
        <Disclosure summary={t('plan.left-out', { n: plan.leftOut.length })}>
          <ul class="plain-list stack">
            {plan.leftOut.map(({ product, because: [why] }) => (
              <li key={product}>
                {nameOf(product)}
                <p class="hint">{why ? t(why.reason.key, why.reason.values) : t('plan.another')}</p>
              </li>
            ))}
          </ul>
        </Disclosure>
      )}
      <div class="actions">
        <Button look={first ? 'strong' : 'plain'} onClick={take}>
          {t('plan.take')}
        </Button>
      </div>
    </section>
  );
}

/** What a wash costs by this plan, and of how many products that is not known. */
function PriceOfWash(props: { world: World; routine: Routine; plan: BuiltPlan; prices: WashPrices }) {
  const { t } = props.world;
  const { of, currency } = props.prices;
  const { steps } = props.plan;
  const unknown = steps.filter(({ product = '' }) => !of.has(product)).length;
  if (unknown === steps.length) return null;
  const price = money(priceOf(steps, of, props.routine.washEvery), currency, t.lang);
  return <p class="hint">{t('plan.price.wash', { price, n: unknown })}</p>;
}

/** What a plan lacks, each to be looked for while shopping. */
function Missing({ world, missing }: { world: World; missing: Wish[] }) {
  const { t, remembered } = world;
  const kept = new Set(remembered.settings.wishes?.map((wish) => JSON.stringify(wish)));
  if (missing.length === 0) return null;
  return (
    <div class="stack">
      <p>{t('plan.missing')}</p>
      <ul class="plain-list stack">
        {missing.map((wish) => (
          <li key={JSON.stringify(wish)} class="actions">
            <span>{wishWords(world, wish)}</span>
            {kept.has(JSON.stringify(wish)) ? (
              <span class="hint">{t('plan.looked-for')}</span>
            ) : (
              <Button onClick={() => void carryOut(world, wishFor(remembered, wish))}>
                {t('plan.look-for')}
              </Button>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}
