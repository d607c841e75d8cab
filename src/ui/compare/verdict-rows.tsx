import { gramsAWash } from '../../use/grams-a-wash.ts';
import { headInUse, routineInUse } from '../../use/in-use.ts';
import type { Check } from '../../use/judge/judge-product.ts';
import { notForHairWords, verdictOf } from '../describe/verdict.ts';
import { AnswerHead } from '../parts/answer-head.tsx';
import { Pending } from '../parts/waiting/pending.tsx';
import { priceWords } from '../products/price.ts';
import type { World } from '../world.ts';
import type { ComparedColumn } from './column.ts';
import { ComparedRow } from './table.tsx';

/** How each sits with the head in use, and what adding it would do to the routine in use. */
export function VerdictRows(props: {
  world: World;
  columns: readonly ComparedColumn[];
  checks: readonly (readonly Check[])[];
}) {
  const { world, columns, checks } = props;
  const { t, remembered } = world;
  const head = headInUse(remembered);
  if (!head) return null;
  const routine = routineInUse(remembered, head);
  const inRoutine = ({ product, reading }: ComparedColumn, at: number) => {
    if (!reading || !routine) return <Pending world={world} />;
    if (!product.kind) return <span class="none">{t('compare.kind-needed')}</span>;
    const preview = checks[at]!.find((check) => check.about === 'routine')?.preview;
    if (!preview) return t('compare.no-change');
    const { counts, stacks, settles, displaces } = preview;
    const lines = (key: string, said: typeof stacks) =>
      said.length > 0 && (
        <>
          <strong class="hint">{t(key)}</strong>
          {said.map((each) => (
            <p key={each.key}>{t(each.key, each.values)}</p>
          ))}
        </>
      );
    if (stacks.length + settles.length + displaces.length + counts.length === 0)
      return t('compare.no-change');
    return (
      <div class="verdict">
        {lines('compare.stacks', stacks)}
        {lines('compare.settles', settles)}
        {lines('compare.displaces', displaces)}
        {counts.map((each) => (
          <p key={each.key}>{t(each.key, each.values)}</p>
        ))}
      </div>
    );
  };
  return (
    <>
      <ComparedRow
        head={t('compare.for-head', { name: head.name })}
        cells={columns.map(({ reading, notForHair }, at) => {
          const [forHead] = checks[at]!;
          if (reading?.refused) return t(`page.refused.${reading.refused}`);
          if (!forHead && !notForHair) return <Pending world={world} />;
          const { answer, title, why } = forHead ? verdictOf(forHead, t) : notForHairWords(t);
          return (
            <div class="verdict">
              <AnswerHead answer={answer} title={title} look="small" />
              {why.map((words) => (
                <p key={words}>{words}</p>
              ))}
            </div>
          );
        })}
      />
      {routine && (
        <ComparedRow head={t('compare.in-routine', { name: routine.name })} cells={columns.map(inRoutine)} />
      )}
    </>
  );
}

/** The price as the page shows it, for its amount and for a wash, as far as they are known. */
export function PriceRow({ world, columns }: { world: World; columns: readonly ComparedColumn[] }) {
  const { t } = world;
  if (!columns.some(({ product }) => product.price !== undefined)) return null;
  return (
    <ComparedRow
      head={t('compare.price')}
      cells={columns.map(({ product }) => {
        const id = 'product' in product.pin ? product.pin.product : undefined;
        const grams = gramsAWash(world, { ...product, id });
        const { price, currency } = product;
        const source = { ...(price !== undefined && { price }), ...(currency && { currency }) };
        return (
          priceWords(t, product, source, grams) ?? <span class="none">{t('compare.price-unknown')}</span>
        );
      })}
    />
  );
}
