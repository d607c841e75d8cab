import { useState } from 'preact/hooks';
import type { Answer } from '../../core/judge/finding.ts';
import { checkForHead, type ToJudge } from '../../use/judge/judge-product.ts';
import { titleOf } from '../describe/verdict.ts';
import { AnswerHead } from '../parts/answer-head.tsx';
import { Choice } from '../parts/controls/choice.tsx';
import { TextField } from '../parts/controls/field.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { byName, called } from '../people/by-name.ts';
import type { World } from '../world.ts';

const answers: Answer[] = ['suits', 'with-care', 'does-not-suit', 'cannot-tell'];
// Fewer than this are seen at a glance.
const manyFrom = 8;

/** Whom of several people a product fits, by name; judged for each only when asked for. */
export function FitsWhom({ world, judged }: { world: World; judged: ToJudge }) {
  const { t, remembered } = world;
  const [open, setOpen] = useState(false);
  if (remembered.heads.length < 2) return null;
  return (
    <Disclosure
      summary={t('panel.verdict.whom', { n: remembered.heads.length })}
      open={open}
      onToggle={setOpen}
    >
      {open && <Each world={world} judged={judged} />}
    </Disclosure>
  );
}

/** A row for each person; of many, how many have each answer, those of one answer, and those whose name is typed. */
function Each({ world, judged }: { world: World; judged: ToJudge }) {
  const { t } = world;
  const { heads } = world.remembered;
  const [only, setOnly] = useState<Answer | 'all'>('all');
  const [sought, setSought] = useState('');
  const checks = byName(t, heads).map((head) => ({ head, check: checkForHead(world, head, judged) }));
  const having = (answer: Answer) => checks.filter(({ check }) => check.answer === answer).length;
  const named = new Set(called(heads, sought));
  const shown = checks.filter(
    ({ head, check }) => (only === 'all' || check.answer === only) && named.has(head),
  );
  return (
    <>
      {heads.length >= manyFrom && (
        <>
          <Choice
            legend={<span class="sr">{t('panel.verdict.whom.show')}</span>}
            value={only}
            onChange={setOnly}
            options={[
              { value: 'all' as const, label: t('panel.verdict.whom.all', { n: heads.length }) },
              ...answers
                .filter((answer) => having(answer) > 0)
                .map((value) => ({
                  value,
                  label: t('panel.verdict.whom.some', { answer: value, n: having(value) }),
                })),
            ]}
          />
          <TextField type="search" label={t('plan.people.search')} value={sought} onInput={setSought} />
          <p class="sr" role="status">
            {t('plan.people.found', { n: shown.length })}
          </p>
        </>
      )}
      <ul class="plain-list">
        {shown.map(({ head, check }) => (
          <li key={head.id}>
            <AnswerHead answer={check.answer} title={titleOf(check, t)} look="small" />
          </li>
        ))}
      </ul>
    </>
  );
}
