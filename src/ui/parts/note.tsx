import type { ComponentChildren } from 'preact';
import type { Answer } from '../../core/judge/finding.ts';
import type { Translate } from '../words/index.ts';

/**
 * An answer with its reasons. The answer is told by its word and by the line at its side (suits: one line,
 * with care: a long dash, does not suit: two, cannot tell: dots), never by a traffic-light colour. Without `answer` it is a plain remark;
 * `care` marks a caution.
 */
export function Note(props: {
  t: Translate;
  answer?: Answer | undefined;
  care?: boolean;
  /** Leads in before the answer: "For Wren". */
  about?: ComponentChildren;
  children?: ComponentChildren;
}) {
  return (
    <div class={`note ${props.answer ?? (props.care ? 'care' : 'plain')}`}>
      {(props.about || props.answer) && (
        <p class="note-head">
          {props.about && <span>{props.about} </span>}
          {props.answer && <strong class="answer">{props.t(`shell.answer.${props.answer}`)}</strong>}
        </p>
      )}
      {props.children}
    </div>
  );
}
