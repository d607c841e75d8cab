import type { Translate } from '../words/index.ts';

/** Stands where an answer is on its way. */
export function Pending({ t }: { t: Translate }) {
  return <span class="hint pending">{t('shell.pending')}</span>;
}
