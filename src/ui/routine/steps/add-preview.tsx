import { useMemo, useState } from 'preact/hooks';
import { worstOf } from '../../../core/judge/finding.ts';
import { type ProductKind, productKinds, usualUse } from '../../../core/product/product.ts';
import type { Routine } from '../../../core/wash-day/routine.ts';
import { stepsAround } from '../../../use/acts/matters/routines.ts';
import { previewIn } from '../../../use/judge/judge-product.ts';
import { knownProduct } from '../../../use/judge/met-product.ts';
import type { Met } from '../../../use/knowing.ts';
import { Card } from '../../parts/card.tsx';
import { Button } from '../../parts/controls/button.tsx';
import { CheckBox, Choice } from '../../parts/controls/choice.tsx';
import { Select } from '../../parts/controls/select.tsx';
import { Note } from '../../parts/note.tsx';
import { Pending } from '../../parts/waiting/pending.tsx';
import type { World } from '../../world.ts';
import { Lines } from '../said-lines.tsx';

/** A product met on a page, before it joins the routine: what stacks, what it settles, what it displaces. */
export function AddPreview(props: {
  world: World;
  routine: Routine;
  met: Met;
  /** Kinds of step to offer around the first product of a routine. */
  usual?: readonly ProductKind[];
  onDone: () => void;
}) {
  const { world, met, usual } = props;
  const { t, remembered } = world;
  const known = knownProduct(remembered, met);
  const [kind, setKind] = useState<ProductKind | undefined>(known.kind);
  const [how, setHow] = useState<'fill' | 'beside'>('fill');
  const [around, setAround] = useState(true);
  const steps = useMemo(
    () => (usual && around ? stepsAround(world, usual, kind) : undefined),
    [usual, around, kind],
  );
  const routine = steps ? { ...props.routine, steps } : props.routine;
  const use = kind === known.kind ? known.use : kind && usualUse[kind];
  const reading = world.reading(met.text, { kind, use, facts: met.facts });
  const preview =
    kind && reading
      ? previewIn(world, routine, { reading, kind, use, product: known.kept?.id, how })
      : undefined;
  const sameKind = routine.steps.filter((step) => step.kind === kind && step.product !== undefined);

  const add = async () => {
    if (!kind) return;
    const ids = { product: known.kept?.id ?? world.newId(), step: world.newId() };
    const { ok } = await world.act({
      act: 'add',
      met: { ...met, facts: known.facts },
      kind,
      how,
      routine,
      ids,
    });
    if (ok) props.onDone();
  };

  return (
    <Card title={met.facts.name} over={t('routine.add', { routine: routine.name })} id="adding">
      <Select
        label={t('routine.add.as')}
        empty={t('routine.add.choose')}
        options={productKinds.map((value) => ({ value, label: t(`routine.kind.${value}`) }))}
        value={kind}
        onChange={setKind}
      />
      {sameKind.length > 0 && (
        <Choice
          legend={t('routine.add.how', { kind: t(`routine.kind.${kind}`) })}
          value={how}
          onChange={setHow}
          options={[
            { value: 'fill', label: t('routine.add.fill') },
            { value: 'beside', label: t('routine.add.beside') },
          ]}
        />
      )}
      {usual && <CheckBox label={t('plan.around')} checked={around} onChange={setAround} />}
      <div aria-live="polite" class="stack">
        {!kind && <p class="hint">{t('routine.add.kind-needed')}</p>}
        {kind && !reading && <Pending world={world} words={t('routine.reading')} />}
        {preview && (
          <>
            {preview.counts.map(({ key, values }) => (
              <p key={key}>{t(key, values)}</p>
            ))}
            <Lines
              t={t}
              answer={worstOf(preview.comes)}
              key="stacks"
              word="routine.add.stacks"
              said={preview.stacks}
            />
            <Lines t={t} answer="suits" key="settles" word="routine.add.settles" said={preview.settles} />
            <Lines t={t} key="displaces" word="routine.add.displaces" said={preview.displaces} />
            {preview.stacks.length + preview.settles.length + preview.displaces.length === 0 && (
              <Note t={t} answer="suits">
                <p>{t('routine.add.nothing')}</p>
              </Note>
            )}
          </>
        )}
      </div>
      <div class="actions">
        <Button look="strong" disabled={!preview} onClick={() => void add()}>
          {t('routine.add.do')}
        </Button>
        <Button onClick={props.onDone}>{t('routine.add.leave')}</Button>
      </div>
    </Card>
  );
}
