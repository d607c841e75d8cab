import type { Answer } from '../../core/judge/finding.ts';
import { Glyph } from '../glyphs/glyph.tsx';
import { glyphOfAnswer } from '../glyphs/shapes.ts';

const sizes = { large: 1.6, row: 1.25, small: 1 };

/** An answer with its rings: the largest thing of a page, of a row, or one among several. */
export function AnswerHead(props: { answer: Answer; title: string; look?: keyof typeof sizes }) {
  const { answer, title, look = 'large' } = props;
  return (
    <p class={`answer-head ${look} ${answer}`}>
      <Glyph name={glyphOfAnswer(answer)} size={sizes[look]} ground="var(--raised)" />
      {/* Within a box of its own it is a run of letters, underlined line by line. */}
      <span>
        <strong class="answer">{title}</strong>
      </span>
    </p>
  );
}
