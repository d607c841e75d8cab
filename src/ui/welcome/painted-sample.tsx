import { bringsFor } from '../../core/amounts/brings.ts';
import { judgeProduct } from '../../use/judge/judge-product.ts';
import { glyphsOf } from '../describe/mark.ts';
import { sumsOf } from '../describe/sums.ts';
import { type VerdictWords, verdictOf } from '../describe/verdict.ts';
import { Glyph } from '../glyphs/glyph.tsx';
import { AnswerHead } from '../parts/answer-head.tsx';
import { Pending } from '../parts/waiting/pending.tsx';
import type { Translate } from '../words/index.ts';
import type { World } from '../world.ts';

/** What the sample is, as its names say. */
const sample = { kind: 'conditioner' } as const;

/** A label as it looks in a shop once it is read: names underlined in their own lines, glyphs by them, and the answer for the hair. */
export function PaintedSample({ world, t, text }: { world: World; t: Translate; text: string }) {
  const reading = world.reading(text, sample);
  const [check] = reading ? judgeProduct(world, { reading, ...sample }) : [];
  const verdict: Pick<VerdictWords, 'answer' | 'title' | 'why'> = check
    ? verdictOf(check, t)
    : { answer: 'cannot-tell', title: t('page.verdict.untold'), why: [t('welcome.answer-first')] };
  const pieces = [];
  let at = 0;
  for (const mention of reading?.mentions ?? []) {
    const glyphs = glyphsOf(mention);
    if (glyphs.length === 0) continue;
    const comma = text[mention.to] === ',' ? ',' : '';
    pieces.push(text.slice(at, mention.from));
    pieces.push(
      <span key={mention.from} class={`painted ${glyphs[0]}`}>
        {text.slice(mention.from, mention.to)}
      </span>,
      <span key={`${mention.from}-glyph`} class="beside">
        {'\u00a0'}
        <Glyph name={glyphs[0]!} ground="var(--raised)" />
        {comma}
      </span>,
    );
    at = mention.to + comma.length;
  }
  return (
    <figure class="sample">
      <p lang="en">
        {pieces}
        {text.slice(at)}
      </p>
      <figcaption aria-live="polite">
        {reading ? (
          <>
            <AnswerHead answer={verdict.answer} title={verdict.title} />
            {verdict.why.map((words) => (
              <p key={words}>{words}</p>
            ))}
            <p class="sums">{sumsOf(reading, t, bringsFor(reading, sample, world.practice.washDay))}</p>
          </>
        ) : (
          <Pending world={world} />
        )}
      </figcaption>
    </figure>
  );
}
