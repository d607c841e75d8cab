import { useState } from 'preact/hooks';
import { checkForHead, type ToJudge } from '../../use/judge/judge-product.ts';
import { titleOf } from '../describe/verdict.ts';
import { AnswerHead } from '../parts/answer-head.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { byName } from '../people/by-name.ts';
import type { World } from '../world.ts';

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
      {open && (
        <ul class="plain-list">
          {byName(t, remembered.heads).map((head) => {
            const check = checkForHead(world, head, judged);
            return (
              <li key={head.id}>
                <AnswerHead answer={check.answer} title={titleOf(check, t)} look="small" />
              </li>
            );
          })}
        </ul>
      )}
    </Disclosure>
  );
}
