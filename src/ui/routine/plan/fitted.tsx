import { useEffect, useMemo, useState } from 'preact/hooks';
import { speaksAgainst } from '../../../core/judge/finding.ts';
import { applyMoves } from '../../../core/plan/moves.ts';
import type { Suggestions } from '../../../core/plan/suggest.ts';
import type { Product } from '../../../core/product/product.ts';
import { washDay } from '../../../core/wash-day/add-up.ts';
import type { Routine } from '../../../core/wash-day/routine.ts';
import { candidatesOf, stillReading, washDayInput } from '../../../use/judge/wash-day-input.ts';
import { AnswerHead } from '../../parts/answer-head.tsx';
import { Button } from '../../parts/controls/button.tsx';
import { Looking } from '../../parts/waiting/looking.tsx';
import { Pending } from '../../parts/waiting/pending.tsx';
import type { World } from '../../world.ts';
import { Findings } from '../findings.tsx';
import { moveWords } from '../suggestions.tsx';
import { askSuggest, stopAsking } from './ask-plan.ts';

/**
 * Somebody's plan held against the head it would be for, before anything is kept: what speaks against it there,
 * and what to change. `brings` are its products that are not kept here.
 */
export function Fitted(props: {
  world: World;
  routine: Routine;
  brings?: readonly Product[];
  onTake: (routine: Routine) => void;
  onLeave: () => void;
}) {
  const { world: outer, routine, brings = [] } = props;
  const { t } = outer;
  const world: World = {
    ...outer,
    remembered: { ...outer.remembered, products: [...outer.remembered.products, ...brings] },
  };
  const head = world.remembered.heads.find(({ id }) => id === routine.head);
  const input = washDayInput(world, routine);
  const reading = stillReading(world, input);
  const day = washDay(input);
  const open = day.findings.filter(({ answer }) => answer !== 'suits');
  const against = !reading && open.some(speaksAgainst);
  const asked = JSON.stringify([routine, reading, against, world.remembered.products.length]);
  const candidates = useMemo(() => (against ? candidatesOf(world, true) : []), [asked]);
  const [answered, setAnswered] = useState<{ to: string; answer: Suggestions } | undefined>();
  const [share, setShare] = useState<number | undefined>();
  useEffect(() => {
    if (!against) return;
    setShare(undefined);
    void askSuggest({ ...input, candidates }, 'fitted', (told) => setShare(told.share)).then((answer) =>
      setAnswered({ to: asked, answer }),
    );
    return () => stopAsking('fitted');
  }, [asked]);
  const answer = answered?.to === asked ? answered.answer : undefined;
  const best =
    answer?.answer === 'found'
      ? answer.suggestions[0]
      : answer?.answer === 'none'
        ? answer.wanted[0]
        : undefined;
  const { order } = world.practice.washDay.kinds;
  return (
    <div class="stack" aria-live="polite">
      {reading ? (
        <Pending world={world} words={t('routine.reading')} />
      ) : (
        <>
          <AnswerHead
            answer={day.answer}
            title={t('plan.fitted.for', { name: head?.name ?? '', answer: t(`shell.answer.${day.answer}`) })}
            look="row"
          />
          <Findings t={t} findings={open} />
        </>
      )}
      {against && !answer && <Looking words={t('routine.suggest.looking')} share={share} />}
      {answer && !best && <p>{t('routine.suggest.nothing-would')}</p>}
      {best && (
        <>
          <p>{t('plan.fitted.change', { name: head?.name ?? '' })}</p>
          <ul>
            {best.moves.map((move) => (
              <li key={JSON.stringify(move)}>{moveWords(world, input, move)}</li>
            ))}
          </ul>
        </>
      )}
      <div class="actions">
        {best && (
          <Button
            look="strong"
            onClick={() => props.onTake(applyMoves(routine, best.moves, order, outer.newId))}
          >
            {t('plan.fitted.take-changed')}
          </Button>
        )}
        <Button look={best ? 'plain' : 'strong'} disabled={reading} onClick={() => props.onTake(routine)}>
          {t('plan.fitted.take')}
        </Button>
        <Button onClick={props.onLeave}>{t('routine.add.leave')}</Button>
      </div>
    </div>
  );
}
