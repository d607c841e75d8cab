import { useState } from 'preact/hooks';
import type { Said } from '../../core/judge/finding.ts';
import { previewAdd } from '../../core/plan/preview.ts';
import { type ProductFacts, type ProductKind, productKinds, usualUse } from '../../core/product/product.ts';
import { findSame, keepMet } from '../../core/product/same-product.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import { Button } from '../parts/button.tsx';
import { Card } from '../parts/card.tsx';
import { Choice } from '../parts/choice.tsx';
import { Note } from '../parts/note.tsx';
import { Select } from '../parts/select.tsx';
import type { World } from '../world.ts';
import { dayInput } from './day-input.ts';

export type Met = { text: string; facts: ProductFacts };

/** What `world.go('routine', 'add:…')` carries; undefined for anything else, however broken. */
export function metOf(detail: string | undefined): Met | undefined {
  if (!detail?.startsWith('add:')) return undefined;
  try {
    const { text, facts } = JSON.parse(detail.slice(4)) as Partial<Met>;
    return typeof text === 'string' && typeof facts?.name === 'string' ? { text, facts } : undefined;
  } catch {
    return undefined;
  }
}

/** A product met on a page, before it joins the routine: what stacks, what it settles, what it displaces. */
export function AddPreview(props: { world: World; routine: Routine; met: Met; onDone: () => void }) {
  const { world, routine, met } = props;
  const { t, remembered } = world;
  const kept = findSame(remembered.products, met);
  const [kind, setKind] = useState<ProductKind | undefined>(met.facts.kind ?? kept?.kind);
  const [how, setHow] = useState<'fill' | 'beside'>('fill');
  const use = (kind === met.facts.kind ? met.facts.use : undefined) ?? (kind && usualUse[kind]);
  const reading = world.reading(met.text, use);
  const id = kept?.id ?? 'met';
  const preview =
    kind && use && reading
      ? previewAdd({
          ...dayInput(world, routine),
          adding: {
            step: { id: 'adding', kind, use, product: id, optional: false, cadence: { every: 'wash' } },
            reading,
            how,
          },
        })
      : undefined;
  const sameKind = routine.steps.filter((step) => step.kind === kind && step.product !== undefined);

  const add = async () => {
    if (!preview || !kind || !use) return;
    const facts = { ...met.facts, kind, use };
    const now = world.now?.() ?? world.today;
    const { product } = keepMet(remembered.products, { facts, text: met.text, now }, world.newId());
    const step = world.newId();
    const steps = preview.routine.steps.map((one) => ({
      ...one,
      id: one.id === 'adding' ? step : one.id,
      ...(one.product === id && { product: product.id }),
    }));
    const { ok } = await world.change(
      { do: 'put', thing: 'products', value: { ...product, kind, use } },
      { do: 'put', thing: 'routines', value: { ...routine, steps } },
      { do: 'set', settings: { routineInUse: routine.id } },
    );
    if (!ok) return;
    world.say(t('routine.add.done', { name: met.facts.name, routine: routine.name }), true);
    props.onDone();
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
      <div aria-live="polite" class="stack">
        {!kind && <p class="hint">{t('routine.add.kind-needed')}</p>}
        {kind && !reading && <p class="hint">{t('routine.reading')}</p>}
        {preview && (
          <>
            <Lines
              world={world}
              answer="does-not-suit"
              key="stacks"
              word="routine.add.stacks"
              said={preview.stacks}
            />
            <Lines
              world={world}
              answer="suits"
              key="settles"
              word="routine.add.settles"
              said={preview.settles}
            />
            <Lines world={world} key="displaces" word="routine.add.displaces" said={preview.displaces} />
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

function Lines(props: {
  world: World;
  word: string;
  said: readonly Said[];
  answer?: 'does-not-suit' | 'suits';
}) {
  const { t } = props.world;
  if (props.said.length === 0) return null;
  return (
    <div class={`note ${props.answer ?? 'plain'}`}>
      <p class="note-head">
        <strong>{t(props.word)}</strong>
      </p>
      {props.said.map(({ key, values }) => (
        <p key={key}>{t(key, values)}</p>
      ))}
    </div>
  );
}
