import { useState } from 'preact/hooks';
import { densities, type Head, scalps, shapes, waters } from '../../core/hair/head.ts';
import { keepHead, removeHead } from '../../use/acts/matters/heads.ts';
import { carryOut } from '../carry-out.ts';
import { Button } from '../parts/controls/button.tsx';
import { Choice } from '../parts/controls/choice.tsx';
import { KeptText } from '../parts/controls/kept-text.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { Help } from '../parts/help.tsx';
import { Note } from '../parts/note.tsx';
import type { World } from '../world.ts';
import { DensityDrawing, ShapeDrawing } from './drawings.tsx';
import { OwnAmountsCard } from './own-amounts.tsx';

/** The rest of the profile: nothing here moves the allowance. */
export function MoreAbout({ world, head }: { world: World; head: Head }) {
  const { t } = world;
  const keep = (changed: Head) => void carryOut(world, keepHead(world.remembered, changed));
  return (
    <Disclosure summary={t('hair.more')}>
      <KeptText
        key={`${head.id}-name`}
        label={t('hair.name')}
        hint={t('hair.name.hint')}
        value={head.name}
        onKeep={(name) => name && keep({ ...head, name })}
      />
      <Choice
        legend={t('hair.shape')}
        hint={t('hair.shape.test')}
        layout="list"
        value={head.shape}
        onChange={(shape) => keep({ ...head, shape })}
        options={shapes.map((value) => ({
          value,
          label: t(`hair.shape.${value}`),
          hint: t(`hair.shape.${value}.hint`),
          drawing: <ShapeDrawing of={value} />,
        }))}
      />
      <Choice
        legend={t('hair.density')}
        help={<Help t={t} term="density" />}
        hint={t('hair.density.test')}
        layout="list"
        value={head.density}
        onChange={(density) => keep({ ...head, density })}
        options={densities.map((value) => ({
          value,
          label: t(`hair.density.${value}`),
          hint: t(`hair.density.${value}.hint`),
          drawing: <DensityDrawing of={value} />,
        }))}
      />
      <Choice
        legend={t('hair.scalp')}
        value={head.scalpKind}
        onChange={(scalpKind) => keep({ ...head, scalpKind })}
        options={scalps.map((value) => ({ value, label: t(`hair.scalp.${value}`) }))}
      />
      <Choice
        legend={t('hair.water')}
        hint={t('hair.water.hint')}
        value={head.water}
        onChange={(water) => keep({ ...head, water })}
        options={waters.map((value) => ({ value, label: t(`hair.water.${value}`) }))}
      />
      <OwnAmountsCard key={`${head.id}-uses`} world={world} head={head} onChange={keep} />
      <KeptText
        key={`${head.id}-scalp-note`}
        label={t('hair.scalp-note')}
        hint={t('hair.scalp-note.hint')}
        rows={2}
        value={head.scalp ?? ''}
        onKeep={(scalp) => {
          const { scalp: _, ...rest } = head;
          keep(scalp ? { ...rest, scalp } : rest);
        }}
      />
      <Note t={t} care>
        <p>{t('hair.scalp.care')}</p>
      </Note>
      <RemoveHead world={world} head={head} />
    </Disclosure>
  );
}

function RemoveHead({ world, head }: { world: World; head: Head }) {
  const { t } = world;
  const [asking, setAsking] = useState(false);
  if (!asking)
    return (
      <div class="actions">
        <Button look="quiet" onClick={() => setAsking(true)}>
          {t('hair.remove', { name: head.name })}
        </Button>
      </div>
    );
  return (
    <div class="actions">
      <span>{t('hair.remove.sure', { name: head.name })}</span>
      <Button onClick={() => void carryOut(world, removeHead(world.remembered, head))}>
        {t('hair.remove.yes')}
      </Button>
      <Button onClick={() => setAsking(false)}>{t('hair.remove.no')}</Button>
    </div>
  );
}
