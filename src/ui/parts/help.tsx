import { useId, useState } from 'preact/hooks';
import type { Translate } from '../words/index.ts';

/**
 * One sentence on a trade term, where it stands: a small button that opens it below. Words are
 * `shell.term.<term>` and `shell.term.<term>.means`. With `word` the term itself is printed before the button.
 */
export function Help({ t, term, word }: { t: Translate; term: string; word?: boolean }) {
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
