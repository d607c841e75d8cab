import { useState } from 'preact/hooks';
import type { Head } from '../../core/hair/head.ts';
import { type ProductKind, productKinds } from '../../core/product/product.ts';
import { NumberField } from '../parts/controls/field.tsx';
import { amountHint } from '../routine/steps/amount-hint.ts';
import type { World } from '../world.ts';

/** How much of each kind a person uses: of the kinds in their routines, or of the two of every wash. */
export function OwnAmountsCard(props: { world: World; head: Head; onChange: (head: Head) => void }) {
  const { world, head } = props;
  const { t, remembered } = world;
  const met = new Set<ProductKind>([
    ...remembered.routines
      .filter((routine) => routine.head === head.id)
      .flatMap(({ steps }) => steps.map(({ kind }) => kind)),
    ...productKinds.filter((kind) => head.uses?.[kind] !== undefined),
  ]);
  const asked = productKinds.filter((kind) =>
    met.size > 0 ? met.has(kind) : kind === 'cleanser' || kind === 'conditioner',
  );
  const keep = (kind: ProductKind, grams: number | undefined) => {
    const { uses: { [kind]: _, ...others } = {}, ...rest } = head;
    const uses = grams === undefined ? others : { ...others, [kind]: grams };
    props.onChange(Object.keys(uses).length > 0 ? { ...rest, uses } : rest);
  };
  return (
    <fieldset class="choice stack">
      <legend>{t('hair.uses')}</legend>
      <p class="hint">{t('hair.uses.hint')}</p>
      {asked.map((kind) => (
        <OwnAmount key={kind} world={world} kind={kind} grams={head.uses?.[kind]} onKeep={keep} />
      ))}
    </fieldset>
  );
}

/** Kept when the field is left, not at every digit: one change, one undo. */
function OwnAmount(props: {
  world: World;
  kind: ProductKind;
  grams: number | undefined;
  onKeep: (kind: ProductKind, grams: number | undefined) => void;
}) {
  const { t, practice } = props.world;
  const [told, setTold] = useState<{ grams: number | undefined }>();
  const { own: _, ...usual } = practice.washDay.exposure[props.kind];
  const exposure = { ...practice.washDay.exposure, [props.kind]: usual };
  const grams = told ? told.grams : props.grams;
  const leave = () => {
    if (told && told.grams !== props.grams) props.onKeep(props.kind, told.grams);
    setTold(undefined);
  };
  return (
    <div onFocusOut={leave}>
      <NumberField
        lang={t.lang}
        label={t(`routine.kind.${props.kind}`)}
        value={grams}
        unit="g"
        min={0}
        max={500}
        wrong={t('routine.step.grams.wrong')}
        hint={amountHint(t, props.kind, grams, { ...practice.washDay, exposure })}
        onNumber={(grams) => setTold({ grams })}
      />
    </div>
  );
}
