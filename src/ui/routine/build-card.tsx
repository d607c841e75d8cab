import { useState } from 'preact/hooks';
import { type BuildPins, type Built, type BuiltPlan, priceOf } from '../../core/plan/build/build.ts';
import type { Wish } from '../../core/plan/wish.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import { productById } from '../../use/acts/products.ts';
import { keepRoutine } from '../../use/acts/routines.ts';
import { dropWish, wishFor } from '../../use/acts/wishes.ts';
import { type WashPrices, washPrices } from '../../use/judge/price-of-wash.ts';
import { candidatesOf, washDayInput } from '../../use/judge/wash-day-input.ts';
import { carryOut } from '../carry-out.ts';
import { AnswerHead } from '../parts/answer-head.tsx';
import { Button } from '../parts/button.tsx';
import { Card } from '../parts/card.tsx';
import { Check } from '../parts/choice.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { NumberField } from '../parts/field.tsx';
import { Select } from '../parts/select.tsx';
import { money } from '../products/price.ts';
import type { World } from '../world.ts';
import { askBuild, stopAsking } from './ask-plan.ts';
import { PlanSteps } from './plan-steps.tsx';
import { cadenceWords } from './step-editor.tsx';
import { wishWords } from './suggestions.tsx';

const limits = ['none', '4', '5', '6', '8'];
const minutes = ['none', '15', '20', '30', '45'];

/** A wash day made of the products on hand: two or three that differ, each taken with one press. */
export function BuildCard({ world, routine }: { world: World; routine: Routine }) {
  const { t } = world;
  const [considered, setConsidered] = useState(true);
  const [keep, setKeep] = useState(false);
  const [steps, setSteps] = useState('none');
  const [time, setTime] = useState('none');
  const [price, setPrice] = useState<number | undefined>();
  const [built, setBuilt] = useState<Built | 'looking' | undefined>();
  const candidates = candidatesOf(world, considered);
  const prices = washPrices(
    world,
    candidates.map(({ product }) => product),
  );
  const filled = routine.steps.flatMap(({ product }) => product ?? []);
  const build = () => {
    const pins: BuildPins = {
      ...(keep && { stays: filled }),
      ...(steps !== 'none' && { stepsAtMost: Number(steps) }),
      ...(time !== 'none' && { minutesAtMost: Number(time) }),
      ...(price !== undefined && { price: { of: prices.of, atMost: price } }),
    };
    setBuilt('looking');
    const { readings: _, ...input } = washDayInput(world, routine);
    void askBuild({ ...input, candidates, pins }).then(setBuilt);
  };
  const stop = () => {
    stopAsking('build');
    setBuilt(undefined);
  };
  return (
    <Card title={t('plan.title')} over={t('plan.over')} id="build">
      <div class="stack">
        <Check label={t('plan.considered')} checked={considered} onChange={setConsidered} />
        {filled.length > 0 && <Check label={t('plan.keep')} checked={keep} onChange={setKeep} />}
        <Select
          label={t('plan.steps')}
          options={limits.map((value) => ({
            value,
            label: value === 'none' ? t('plan.any') : t('plan.at-most-steps', { n: Number(value) }),
          }))}
          value={steps}
          onChange={(value) => setSteps(value ?? 'none')}
        />
        <Select
          label={t('plan.time')}
          options={minutes.map((value) => ({
            value,
            label: value === 'none' ? t('plan.any') : t('plan.at-most-minutes', { n: Number(value) }),
          }))}
          value={time}
          onChange={(value) => setTime(value ?? 'none')}
        />
        {prices.of.size > 0 && (
          <NumberField
            label={t('plan.price')}
            value={price}
            {...(prices.currency && { unit: prices.currency })}
            min={0}
            wrong={t('plan.price.wrong')}
            hint={t('plan.price.hint')}
            onNumber={setPrice}
          />
        )}
      </div>
      <div class="actions">
        <Button look="strong" onClick={build}>
          {t('plan.build', { n: candidates.length })}
        </Button>
        {built === 'looking' && <Button onClick={stop}>{t('plan.stop')}</Button>}
      </div>
      <div aria-live="polite" class="stack">
        {built === 'looking' && <p class="hint">{t('routine.suggest.looking')}</p>}
        {built && built !== 'looking' && built.plans.length === 0 && <p>{t('plan.none')}</p>}
        {built &&
          built !== 'looking' &&
          built.plans.map((plan, at) => (
            <Plan
              key={plan.carrier}
              world={world}
              routine={routine}
              plan={plan}
              prices={prices}
              first={at === 0}
            />
          ))}
      </div>
    </Card>
  );
}

/** Which step carries the protein, and how often it comes. */
function carrierWords({ t }: World, { carrier, steps }: BuiltPlan): string {
  if (carrier === 'none') return t('plan.carrier.none');
  const step = steps.find(({ kind }) => kind === carrier);
  const kind = t(`routine.kind.${carrier}`);
  return step && step.cadence.every !== 'wash'
    ? t('plan.carrier.seldom', { kind, cadence: cadenceWords(t, step.cadence) })
    : t('plan.carrier.in', { kind });
}

function Plan(props: {
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
  return (
    <section class="offer">
      <AnswerHead answer={plan.answer} title={carrierWords(world, plan)} look="row" />
      <PlanSteps world={world} steps={plan.steps} nameOf={nameOf} />
      <p class="hint">
        {t('plan.minutes', { n: plan.minutes })} {t(plan.best ? 'plan.best' : 'plan.not-proven')}
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
  const price = money(t.lang, priceOf(steps, of, props.routine.washEvery), currency);
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

/** What is looked for while shopping, until it is found or wanted no more. */
export function WishesCard({ world }: { world: World }) {
  const { t, remembered } = world;
  const { wishes = [] } = remembered.settings;
  if (wishes.length === 0) return null;
  return (
    <Card title={t('plan.wishes')} over={t('plan.wishes.over')} id="wishes">
      <ul class="plain-list stack">
        {wishes.map((wish) => (
          <li key={JSON.stringify(wish)} class="actions">
            <span>{wishWords(world, wish)}</span>
            <Button onClick={() => world.go('products', { wish })}>{t('plan.among-mine')}</Button>
            <Button onClick={() => void carryOut(world, dropWish(remembered, wish))}>
              {t('plan.found')}
            </Button>
          </li>
        ))}
      </ul>
    </Card>
  );
}
