import { useMemo, useState } from 'preact/hooks';
import type { Built } from '../../../core/plan/build/build.ts';
import type { BuildPins } from '../../../core/plan/build/pins.ts';
import type { Routine } from '../../../core/wash-day/routine.ts';
import { dropWish } from '../../../use/acts/matters/wishes.ts';
import { washPrices } from '../../../use/judge/price-of-wash.ts';
import { candidatesOf, washDayInput } from '../../../use/judge/wash-day-input.ts';
import { carryOut } from '../../carry-out.ts';
import { Card } from '../../parts/card.tsx';
import { Button } from '../../parts/controls/button.tsx';
import { CheckBox } from '../../parts/controls/choice.tsx';
import { NumberField } from '../../parts/controls/field.tsx';
import { Select } from '../../parts/controls/select.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import { Looking } from '../../parts/waiting/looking.tsx';
import type { World } from '../../world.ts';
import { wishWords } from '../suggestions.tsx';
import { askBuild, stopAsking } from './ask-plan.ts';
import { BuiltPlanOffer } from './built-plan.tsx';

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
  const [built, setBuilt] = useState<Built | undefined>();
  // How much of all days is behind, while it is still looked.
  const [share, setShare] = useState<number | undefined>();
  const candidates = candidatesOf(world, considered);
  const prices = useMemo(
    () =>
      washPrices(
        world,
        candidates.map(({ product }) => product),
      ),
    [world.remembered, candidates],
  );
  const filled = routine.steps.flatMap(({ product }) => product ?? []);
  const build = () => {
    const pins: BuildPins = {
      ...(keep && { stays: filled }),
      ...(steps !== 'none' && { stepsAtMost: Number(steps) }),
      ...(time !== 'none' && { minutesAtMost: Number(time) }),
      ...(price !== undefined && { price: { of: prices.of, atMost: price } }),
    };
    setBuilt(undefined);
    setShare(0);
    const { readings: _, ...input } = washDayInput(world, routine);
    const asked = askBuild({ ...input, candidates, pins }, (told) => {
      setShare(told.share);
      if (told.soFar) setBuilt(told.soFar);
    });
    void asked.then((found) => {
      setBuilt(found);
      setShare(undefined);
    });
  };
  const stop = () => {
    stopAsking('build');
    setShare(undefined);
  };
  return (
    <Card title={t('plan.title')} over={t('plan.over')} id="build">
      <Disclosure summary={t('plan.limits')}>
        <CheckBox label={t('plan.considered')} checked={considered} onChange={setConsidered} />
        {filled.length > 0 && <CheckBox label={t('plan.keep')} checked={keep} onChange={setKeep} />}
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
            lang={t.lang}
            label={t('plan.price')}
            value={price}
            {...(prices.currency && { unit: prices.currency })}
            min={0}
            wrong={t('plan.price.wrong')}
            hint={t('plan.price.hint')}
            onNumber={setPrice}
          />
        )}
      </Disclosure>
      <div class="actions">
        <Button look="strong" onClick={build}>
          {t('plan.build', { n: candidates.length })}
        </Button>
        {share !== undefined && <Button onClick={stop}>{t('plan.stop')}</Button>}
      </div>
      <div aria-live="polite" class="stack">
        {share !== undefined && (
          <Looking words={t(built ? 'plan.looking-on' : 'routine.suggest.looking')} share={share} />
        )}
        {share === undefined && built?.plans.length === 0 && <p>{t('plan.none')}</p>}
        {built?.plans.map((plan, at) => (
          <BuiltPlanOffer
            key={plan.steps.map(({ product }) => product).join()}
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
