import { allowanceOf } from '../../core/hair/tolerance.ts';
import { previewAdd } from '../../core/plan/preview.ts';
import { pricePer100, usualUse } from '../../core/product/product.ts';
import type { Reading } from '../../core/reading/reading.ts';
import { headInUse, routineInUse } from '../heads.ts';
import { weigh } from '../page/weigh.ts';
import { Note } from '../parts/note.tsx';
import { Pending } from '../parts/pending.tsx';
import type { World } from '../world.ts';
import type { Compared } from './pinned.ts';
import { Row } from './table.tsx';

type Column = { product: Compared; reading: Reading | undefined };

/** How each sits with the head in use, and what adding it would do to the routine in use. */
export function VerdictRows({ world, columns }: { world: World; columns: readonly Column[] }) {
  const { t, remembered, practice, today } = world;
  const head = headInUse(remembered);
  if (!head) return null;
  const routine = routineInUse(remembered, head);
  const textOf = (id: string | undefined) =>
    remembered.products.find((product) => product.id === id)?.labels[0]?.text;
  const allowance = allowanceOf(head, practice.allowance, { today, log: remembered.log });
  const readings = new Map(
    (routine?.steps ?? []).map((step) => {
      const text = textOf(step.product);
      return [step.id, text ? world.reading(text, step.use) : undefined];
    }),
  );
  const inRoutine = ({ product, reading }: Column) => {
    if (!reading || !routine) return <Pending t={t} />;
    if (!product.kind) return <span class="none">{t('compare.kind-needed')}</span>;
    const { stacks, settles, displaces } = previewAdd({
      routine,
      readings,
      head,
      allowance,
      practice,
      today,
      log: remembered.log,
      adding: {
        step: {
          id: 'compared',
          kind: product.kind,
          use: product.use ?? usualUse[product.kind],
          product: product.pin,
          optional: false,
          cadence: { every: 'wash' },
        },
        reading,
      },
    });
    const lines = (key: string, said: typeof stacks) =>
      said.length > 0 && (
        <>
          <strong class="hint">{t(key)}</strong>
          {said.map((each) => (
            <p key={each.key}>{t(each.key, each.values)}</p>
          ))}
        </>
      );
    if (stacks.length + settles.length + displaces.length === 0) return t('compare.no-change');
    return (
      <div class="stack">
        {lines('compare.stacks', stacks)}
        {lines('compare.settles', settles)}
        {lines('compare.displaces', displaces)}
      </div>
    );
  };
  return (
    <>
      <Row
        head={t('compare.for-head', { name: head.name })}
        cells={columns.map(({ product, reading }) => {
          if (!reading) return <Pending t={t} />;
          const { answer, findings } = weigh(world, head, reading, product.kind, product.use);
          return (
            <Note t={t} answer={answer}>
              {[...new Set(findings.map(({ reason }) => t(reason.key, reason.values)))].map((words) => (
                <p key={words}>{words}</p>
              ))}
            </Note>
          );
        })}
      />
      {routine && (
        <Row head={t('compare.in-routine', { name: routine.name })} cells={columns.map(inRoutine)} />
      )}
    </>
  );
}

/** Price for 100 ml (or g), said only where price and size are known. */
export function PriceRow({ world, columns }: { world: World; columns: readonly Column[] }) {
  const { t } = world;
  if (!columns.some(({ product }) => product.price !== undefined)) return null;
  return (
    <Row
      head={t('compare.price')}
      cells={columns.map(({ product }) => {
        const price = pricePer100(product);
        if (price === undefined) return <span class="none">{t('compare.price-unknown')}</span>;
        const figure = product.currency
          ? new Intl.NumberFormat(t.lang, { style: 'currency', currency: product.currency }).format(price)
          : new Intl.NumberFormat(t.lang, { maximumFractionDigits: 2 }).format(price);
        return t('compare.price-per', { price: figure, unit: product.sizeUnit ?? 'ml' });
      })}
    />
  );
}
