import type { Answer, Said } from '../../core/judge/finding.ts';
import type { Translate } from '../words/index.ts';

/** What a change adds, settles or displaces, under its heading; nothing where there is none. */
export function Lines(props: { t: Translate; word: string; said: readonly Said[]; answer?: Answer }) {
  const { t } = props;
  if (props.said.length === 0) return null;
  const words = new Set(props.said.map(({ key, values }) => t(key, values)));
  return (
    <div class={`note ${props.answer ?? 'plain'}`}>
      <p class="note-head">
        <strong>{t(props.word)}</strong>
      </p>
      {[...words].map((each) => (
        <p key={each}>{each}</p>
      ))}
    </div>
  );
}
