import type { ComponentChildren } from 'preact';
import { headInUse } from '../../use/in-use.ts';
import type { Check, ToJudge } from '../../use/judge/judge-product.ts';
import { verdictOf } from '../describe/verdict.ts';
import { AnswerHead } from '../parts/answer-head.tsx';
import { Button } from '../parts/controls/button.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import type { World } from '../world.ts';
import { FitsWhom } from './fits-whom.tsx';
import { HeadSwitch } from './head-switch.tsx';

/** Shows a name of the list below: opens its row and goes there. */
function showName(index: number) {
  const row = document.getElementById(`name-${index}`);
  if (!(row instanceof HTMLDetailsElement)) return;
  row.open = true;
  row.querySelector('summary')?.focus();
}

/**
 * How this product sits with the head in use: the answer with whom it is for, one reason, then `children` (what it
 * sums up to), what it does in the routine, and the rest when asked for.
 */
export function Verdict(props: {
  world: World;
  checks: readonly Check[];
  judged: ToJudge;
  /** It is for another place than hair: said instead of an answer. */
  notForHair?: boolean;
  children?: ComponentChildren;
}) {
  const { world, judged, checks } = props;
  const { reading } = judged;
  const { t, remembered } = world;
  const forHead = checks.find(({ about }) => about === 'head');
  const inRoutine = checks.find(({ about }) => about === 'routine');
  if (props.notForHair)
    return (
      <>
        <div class="verdict">
          <AnswerHead answer="cannot-tell" title={t('page.verdict.not-hair')} />
          <p>{t('page.verdict.not-hair.why')}</p>
        </div>
        {props.children}
      </>
    );
  if (!headInUse(remembered) || !forHead)
    return (
      <>
        <div class="verdict">
          <AnswerHead answer="cannot-tell" title={t('page.verdict.untold')} />
          <p>{t('panel.verdict.no-head')}</p>
          <div class="actions">
            <Button look="strong" onClick={() => world.go('hair')}>
              {t('panel.verdict.describe')}
            </Button>
          </div>
        </div>
        {props.children}
      </>
    );
  const { answer, title, why, more } = verdictOf(forHead, t);
  const routine = inRoutine && verdictOf(inRoutine, t);
  const rest = [...more, ...(routine?.more ?? [])];
  return (
    <>
      <div class="verdict">
        <AnswerHead answer={answer} title={title} />
        {why.map((words) => (
          <p key={words} class="why">
            {words}
          </p>
        ))}
      </div>
      {props.children}
      {routine && (
        <div class="verdict">
          <AnswerHead answer={routine.answer} title={routine.title} look="small" />
          {routine.why.map((words) => (
            <p key={words}>{words}</p>
          ))}
        </div>
      )}
      {forHead.decides.length > 0 && (
        <p class="decided">
          <span class="hint">{t('panel.verdict.why')}</span>
          {forHead.decides.map((index) => (
            <Button key={index} look="quiet" onClick={() => showName(index)}>
              {reading.mentions[index]?.raw}
            </Button>
          ))}
        </p>
      )}
      {rest.length > 0 && (
        <Disclosure summary={t('panel.verdict.more', { n: rest.length })}>
          {rest.map((words) => (
            <p key={words}>{words}</p>
          ))}
        </Disclosure>
      )}
      <HeadSwitch world={world} />
      <FitsWhom world={world} judged={judged} />
    </>
  );
}
