import type { Finding } from '../../core/judge/finding.ts';
import type { WashDay } from '../../core/wash-day/add-up.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import { Disclosure } from '../parts/disclosure.tsx';
import { Note } from '../parts/note.tsx';
import type { World } from '../world.ts';
import { Findings, ofProduct, productsWords } from './findings.tsx';

/** What the whole wash day adds up to. Findings that one step decides alone stand by that step instead. */
export function DaySummary({ world, routine, day }: { world: World; routine: Routine; day: WashDay }) {
  const { t } = world;
  const open = day.findings.filter(({ answer }) => answer !== 'suits');
  const whole = open.filter(({ rule }) => !ofProduct.has(rule));
  const suits = day.findings.filter(({ answer }) => answer === 'suits');
  const { products, leaveOns } = day.protein;
  return (
    <section class="stack" aria-labelledby="routine-sum">
      <h3 id="routine-sum">{t('routine.sum')}</h3>
      <p>
        {productsWords(t, products.sure)}{' '}
        {leaveOns.sure > 0 && `${t('routine.sum.leave-ons', { n: leaveOns.sure })} `}
        {products.allowed === undefined
          ? t('routine.sum.hair-unknown')
          : t('routine.sum.allowed', { n: products.allowed })}
      </p>
      {open.length === 0 && (
        <Note t={t} answer="suits">
          <p>{t('routine.sum.settled')}</p>
        </Note>
      )}
      <DayFindings world={world} routine={routine} findings={whole} />
      {open.length > whole.length && (
        <p class="hint">{t('routine.sum.by-step', { n: open.length - whole.length })}</p>
      )}
      {suits.length > 0 && (
        <Disclosure summary={t('routine.sum.suits', { n: suits.length })}>
          <Findings t={t} findings={suits} />
        </Disclosure>
      )}
    </section>
  );
}

/** Each finding with the steps that decided it. */
function DayFindings({
  world: { t },
  routine,
  findings,
}: {
  world: World;
  routine: Routine;
  findings: Finding[];
}) {
  return (
    <div class="findings">
      {findings.map(({ rule, answer, reason, condition, unknown, steps }) => {
        const of = routine.steps
          .filter(({ id }) => steps.includes(id))
          .map(({ kind }) => t(`routine.kind.${kind}`));
        return (
          <Note
            key={`${rule} ${answer} ${reason.key} ${steps.join()}`}
            t={t}
            answer={answer}
            about={of.join(', ')}
          >
            <p>{t(reason.key, reason.values)}</p>
            {condition && <p>{t(condition.key, condition.values)}</p>}
            {unknown && <p class="hint">{t(unknown.key, unknown.values)}</p>}
          </Note>
        );
      })}
    </div>
  );
}
