import { useState } from 'preact/hooks';
import { worstOf } from '../../core/judge/finding.ts';
import type { Move } from '../../core/plan/moves.ts';
import type { MovesPreview } from '../../core/plan/preview-moves.ts';
import { Button } from '../parts/controls/button.tsx';
import type { Translate } from '../words/index.ts';
import { Lines } from './said-lines.tsx';

const unseen = { answer: 'same' as const, comes: [], goes: [] };

/** One change of a suggestion by itself: what it would change is shown before it is done. */
export function OneMove(props: {
  t: Translate;
  move: Move;
  words: string;
  preview: () => MovesPreview;
  onTake: () => void;
}) {
  const { t, move } = props;
  const [open, setOpen] = useState(false);
  const name = t(`plan.move.${move.do}`);
  const { answer, comes, goes } = (open && props.preview()) || unseen;
  const said = (findings: MovesPreview['comes']) => findings.map(({ reason }) => reason);
  return (
    <>
      <div class="actions">
        <Button
          look="quiet"
          expanded={open}
          label={t('plan.move.what', { move: name, what: props.words })}
          onClick={() => setOpen(!open)}
        >
          {name}
        </Button>
      </div>
      {open && (
        <div class="stack" aria-live="polite">
          <p>{t(`plan.move.alone.${answer}`)}</p>
          <Lines t={t} answer="suits" word="routine.add.settles" said={said(goes)} />
          <Lines t={t} answer={worstOf(comes)} word="routine.add.stacks" said={said(comes)} />
          <div class="actions">
            <Button look="strong" onClick={props.onTake}>
              {t('plan.move.do')}
            </Button>
            <Button onClick={() => setOpen(false)}>{t('routine.add.leave')}</Button>
          </div>
        </div>
      )}
    </>
  );
}
