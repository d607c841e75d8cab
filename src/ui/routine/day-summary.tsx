import { type Finding, speaksAgainst, worstOf } from '../../core/judge/finding.ts';
import type { WashDay } from '../../core/wash-day/add-up.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import { headInUse } from '../../use/in-use.ts';
import { isUnnamed } from '../describe/verdict.ts';
import { AnswerHead } from '../parts/answer-head.tsx';
import { Button } from '../parts/controls/button.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { focusOn } from '../parts/focus/focus-on.ts';
import type { World } from '../world.ts';
import { FindingLine, Findings, ofProduct, productsWords } from './findings.tsx';

/** Goes to what would settle it, below the steps and the picture of the day. */
const showSuggestions = () => focusOn(document.querySelector('#suggestions h3'));

/** What the whole wash day adds up to. Findings that one step decides alone stand by that step instead. */
export function DaySummary({ world, routine, day }: { world: World; routine: Routine; day: WashDay }) {
  const { t } = world;
  const open = day.findings.filter(({ answer }) => answer !== 'suits');
  const whole = open.filter(({ rule }) => !ofProduct.has(rule));
  const suits = day.findings.filter(({ answer }) => answer === 'suits');
  const { products, leaveOns } = day.protein;
  const answer = worstOf(open);
  const who = headInUse(world.remembered)?.name ?? t('hair.my-hair');
  return (
    <section class="stack" aria-labelledby="routine-sum">
      <h3 id="routine-sum" class="sr">
        {t('routine.sum')}
      </h3>
      <AnswerHead
        answer={answer}
        title={
          isUnnamed(who, t) ? t('routine.verdict.mine', { answer }) : t('routine.verdict', { answer, who })
        }
      />
      {open.length === 0 && <p>{t('routine.sum.settled')}</p>}
      <DayFindings world={world} routine={routine} findings={whole} />
      {open.length > whole.length && (
        <p class="hint">{t('routine.sum.by-step', { n: open.length - whole.length })}</p>
      )}
      <p class="hint">
        {productsWords(t, products.sure)}{' '}
        {leaveOns.sure > 0 && `${t('routine.sum.leave-ons', { n: leaveOns.sure })} `}
        {products.allowed === undefined
          ? t('routine.sum.hair-unknown')
          : t('routine.sum.allowed', { n: products.allowed })}
      </p>
      {open.some(speaksAgainst) && (
        <div class="actions">
          <Button look="quiet" onClick={showSuggestions}>
            {t('routine.sum.fix')}
          </Button>
        </div>
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
    <ul class="plain-list findings">
      {findings.map((finding) => {
        const { rule, answer, reason, steps } = finding;
        const of = routine.steps.filter(({ id }) => steps.includes(id));
        return (
          <FindingLine
            key={`${rule} ${answer} ${reason.key} ${steps.join()}`}
            t={t}
            finding={finding}
            about={new Intl.ListFormat(t.lang).format(
              [...new Set(of.map(({ kind }) => kind))].map((kind) => t(`routine.kind.${kind}`)),
            )}
          />
        );
      })}
    </ul>
  );
}
