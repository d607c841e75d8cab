import { worstOf } from '../../core/judge/finding.ts';
import { previewMoves } from '../../core/plan/preview-moves.ts';
import { answerLesson, type LessonAnswer } from '../../use/acts/matters/lesson.ts';
import type { Taught } from '../../use/judge/lesson.ts';
import { candidatesOf } from '../../use/judge/wash-day-input.ts';
import { carryOut } from '../carry-out.ts';
import { Card } from '../parts/card.tsx';
import { Button } from '../parts/controls/button.tsx';
import { Lines } from '../routine/said-lines.tsx';
import type { World } from '../world.ts';
import '../routine/routine.css';
import { Differed } from './differed.tsx';
import { proposedWords } from './lesson-words.ts';
import { useTaught } from './use-taught.ts';

/** What the newest wash day speaks for: one change, why, and what it would do, before it is done. Else nothing. */
export function LessonCard(props: {
  world: World;
  /** Shown beside this routine; absent where any routine of the head may be meant. */
  routine?: string;
  /** Steps that a change taken here touched. */
  onChanged?: (steps: string[]) => void;
}) {
  const { world, onChanged } = props;
  const { taught } = useTaught(world);
  if (!taught || (props.routine && taught.routine.id !== props.routine)) return null;
  return <Proposal world={world} taught={taught} {...(onChanged && { onChanged })} />;
}

function Proposal(props: { world: World; taught: Taught; onChanged?: (steps: string[]) => void }) {
  const { world, onChanged } = props;
  const { lesson, routine, input } = props.taught;
  const { sign, n, of, proposed } = lesson;
  const { t } = world;
  const preview =
    proposed.change === 'routine'
      ? previewMoves(input, proposed.moves, candidatesOf(world, true), () => proposed.moves[0]!.step)
      : undefined;
  const answer = async (answered: LessonAnswer) => {
    if ((await carryOut(world, answerLesson(world.remembered, lesson.entry, answered))) && preview)
      onChanged?.(answered === 'left' ? [] : preview.touched);
  };
  const take: LessonAnswer | undefined =
    proposed.change === 'profile'
      ? { head: proposed.head }
      : proposed.change === 'wish'
        ? { wish: proposed.wish }
        : preview && { routine: preview.routine };
  return (
    <Card title={t('log.learn')} id="lesson">
      <p>
        {t('log.learn.felt', { sign, n, of })} {n === 1 && <span>{t('log.learn.one-day')}</span>}
      </p>
      <Differed world={world} differences={lesson.differed} />
      {proposed.change === 'none' ? (
        <p>{t(`log.learn.${proposed.why}`)}</p>
      ) : (
        <div class="offer">
          <p>
            {t(`log.learn.cause.${'cause' in proposed ? proposed.cause : 'by-hand'}`)}{' '}
            {proposed.change === 'wish'
              ? t('log.learn.wish')
              : proposed.change === 'routine'
                ? t('log.learn.routine', { name: routine.name })
                : t('log.learn.head', { name: proposed.head.name })}
          </p>
          <ul class="plain-list">
            {proposedWords(world, input, proposed).map((words) => (
              <li key={words}>
                <strong>{words}</strong>
              </li>
            ))}
          </ul>
          {preview && (
            <>
              <Lines t={t} answer="suits" word="routine.add.settles" said={said(preview.goes)} />
              <Lines
                t={t}
                answer={worstOf(preview.comes)}
                word="routine.add.stacks"
                said={said(preview.comes)}
              />
            </>
          )}
        </div>
      )}
      <div class="actions">
        {take && (
          <Button look="strong" onClick={() => void answer(take)}>
            {t(proposed.change === 'wish' ? 'plan.look-for' : 'log.learn.do')}
          </Button>
        )}
        <Button onClick={() => void answer('left')}>{t('log.learn.leave')}</Button>
      </div>
    </Card>
  );
}

const said = (findings: readonly { reason: Parameters<typeof Lines>[0]['said'][number] }[]) =>
  findings.map(({ reason }) => reason);
