import { productKinds, usualUse } from '../../../core/product/product.ts';
import type { Cadence, Step } from '../../../core/wash-day/routine.ts';
import { productById } from '../../../use/acts/matters/products.ts';
import { filled } from '../../../use/acts/matters/routines.ts';
import { dotted } from '../../describe/dotted.ts';
import { Button } from '../../parts/controls/button.tsx';
import { CheckBox, Choice } from '../../parts/controls/choice.tsx';
import { NumberField } from '../../parts/controls/field.tsx';
import { Select } from '../../parts/controls/select.tsx';
import type { World } from '../../world.ts';
import { amountHint } from './amount-hint.ts';

/** Everything that may be said of one step. */
export function StepEditor(props: {
  world: World;
  step: Step;
  onChange: (step: Step) => void;
  onDuplicate: () => void;
  onRemove: () => void;
}) {
  const { world, step, onChange } = props;
  const { t, practice } = world;
  const kinds = productKinds.map((value) => ({ value, label: t(`routine.kind.${value}`) }));
  return (
    <div class="stack step-editor">
      <ProductChoice {...props} />
      <Select
        label={t('routine.step.kind')}
        options={kinds}
        value={step.kind}
        onChange={(kind) => kind && onChange({ ...step, kind, use: usualUse[kind] })}
      />
      <Choice
        legend={t('routine.step.use')}
        value={step.use}
        onChange={(use) => onChange({ ...step, use })}
        options={[
          { value: 'rinse-off', label: t('shell.term.rinse-off') },
          { value: 'leave-on', label: t('shell.term.leave-on') },
        ]}
      />
      <CadenceChoice {...props} />
      <NumberField
        lang={t.lang}
        label={t('routine.step.grams')}
        value={step.grams}
        unit="g"
        min={0}
        max={500}
        wrong={t('routine.step.grams.wrong')}
        hint={amountHint(t, step.kind, step.grams, practice.washDay)}
        onNumber={(grams) => {
          const { grams: _, ...rest } = step;
          onChange(grams === undefined ? rest : { ...rest, grams });
        }}
      />
      <CheckBox
        label={t('routine.step.optional')}
        hint={step.kind === 'foam' ? t('routine.step.optional.foam') : undefined}
        checked={step.optional}
        onChange={(optional) => onChange({ ...step, optional })}
      />
      <div class="actions">
        <Button onClick={props.onDuplicate}>{t('routine.step.duplicate')}</Button>
        <Button onClick={props.onRemove}>{t('routine.step.remove')}</Button>
      </div>
    </div>
  );
}

/** Products of the step's kind first; those of other or unknown kinds can be chosen too. */
function ProductChoice({
  world,
  step,
  onChange,
}: {
  world: World;
  step: Step;
  onChange: (step: Step) => void;
}) {
  const { t, remembered } = world;
  const fits = ({ kind }: { kind?: string }) => kind === step.kind;
  const products = remembered.products
    .toSorted((a, b) => Number(fits(b)) - Number(fits(a)) || a.name.localeCompare(b.name, t.lang))
    .map((product) => ({
      value: product.id,
      label: dotted([
        product.name,
        ...(fits(product)
          ? []
          : [product.kind ? t(`routine.kind.${product.kind}`) : t('routine.product.no-kind')]),
        ...(product.owned ? [] : [t('routine.product.considered')]),
      ]),
    }));
  return (
    <Select
      label={t('routine.step.product')}
      empty={t('routine.step.no-product')}
      options={products}
      value={productById(world.remembered, step.product)?.id}
      onChange={(id) => onChange(filled(step, productById(world.remembered, id)))}
    />
  );
}

function CadenceChoice({
  world: { t },
  step,
  onChange,
}: {
  world: World;
  step: Step;
  onChange: (step: Step) => void;
}) {
  const { cadence } = step;
  const set = (next: Cadence) => onChange({ ...step, cadence: next });
  return (
    <>
      <Choice
        legend={t('routine.cadence')}
        value={cadence.every}
        onChange={(every) => set(every === 'wash' ? { every } : { every, n: every === 'days' ? 14 : 2 })}
        options={[
          { value: 'wash', label: t('routine.cadence.wash') },
          { value: 'nth-wash', label: t('routine.cadence.nth-wash') },
          { value: 'days', label: t('routine.cadence.days') },
        ]}
      />
      {cadence.every !== 'wash' && (
        <NumberField
          key={cadence.every}
          lang={t.lang}
          label={t(`routine.cadence.${cadence.every}.n`)}
          value={cadence.n}
          min={1}
          max={366}
          wrong={t('routine.whole-number')}
          onNumber={(n) => n !== undefined && Number.isInteger(n) && set(rhythm(cadence, n))}
        />
      )}
      {cadence.every === 'nth-wash' && cadence.n > 1 && (
        <NumberField
          lang={t.lang}
          label={t('routine.cadence.turn')}
          value={cadence.from}
          min={1}
          max={cadence.n}
          wrong={t('routine.cadence.turn.wrong', { n: cadence.n })}
          hint={t('routine.cadence.turn.hint')}
          onNumber={(from) => {
            const { from: _, ...rest } = cadence;
            if (from === undefined) set(rest);
            else if (Number.isInteger(from)) set({ ...rest, from });
          }}
        />
      )}
    </>
  );
}

/** The same cadence each n; a turn that is none of n any more is dropped. */
function rhythm(cadence: Exclude<Cadence, { every: 'wash' }>, n: number): Cadence {
  if (cadence.every === 'days' || cadence.from === undefined || cadence.from <= n) return { ...cadence, n };
  return { every: 'nth-wash', n };
}

/** "every wash day", "every 4 wash days", "in turns, wash day 2 of 4", "every 14 days" in short. */
export function cadenceWords(t: World['t'], cadence: Cadence): string {
  if (cadence.every === 'wash') return t('routine.cadence.short.wash');
  if (cadence.every === 'nth-wash' && cadence.from !== undefined)
    return t('routine.cadence.short.turn', { n: cadence.n, from: cadence.from });
  return t(`routine.cadence.short.${cadence.every}`, { n: cadence.n });
}
