import { useId, useState } from 'preact/hooks';
import type { Key, Translate } from '../words/index.ts';

type Term = Key extends infer K ? (K extends `shell.term.${infer T}.means` ? T : never) : never;

/**
 * One sentence on a trade term, where it stands: a small button that opens it below. Words are
 * `shell.term.<term>` and `shell.term.<term>.means`. With `word` the term itself is printed before the button.
 */
export function Help({ t, term, word }: { t: Translate; term: Term; word?: boolean }) {
  const id = useId();
  const [open, setOpen] = useState(false);
  const name = t(`shell.term.${term}`);
  return (
    <span class="help">
      {word && name}
      <button
        type="button"
        class="help-mark"
        aria-expanded={open}
        aria-controls={id}
        aria-label={t('shell.term.ask', { term: name })}
        onClick={(event) => {
          event.preventDefault();
          setOpen(!open);
        }}
        onKeyDown={(event) => event.key === 'Escape' && setOpen(false)}
      >
        ?
      </button>
      <span id={id} role="note" class="help-words" hidden={!open}>
        {t(`shell.term.${term}.means`)}
      </span>
    </span>
  );
}
