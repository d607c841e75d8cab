import { glyphsOf } from '../describe/mark.ts';
import { sumsOf } from '../describe/sums.ts';
import { Glyph } from '../glyphs/glyph.tsx';
import { Pending } from '../parts/pending.tsx';
import type { Translate } from '../words/index.ts';
import type { World } from '../world.ts';

/** A label as it looks in a shop once it is read: names underlined in their own lines, glyphs by them. */
export function PaintedSample({ world, t, text }: { world: World; t: Translate; text: string }) {
  const reading = world.reading(text);
  const pieces = [];
  let at = 0;
  for (const mention of reading?.mentions ?? []) {
    const glyphs = glyphsOf(mention);
    if (glyphs.length === 0) continue;
    pieces.push(text.slice(at, mention.from));
    pieces.push(
      <span key={mention.from} class={`painted ${glyphs[0]}`}>
        {text.slice(mention.from, mention.to)}
      </span>,
      ' ',
      <Glyph key={`${mention.from}-glyph`} name={glyphs[0]!} ground="var(--raised)" />,
    );
    at = mention.to;
  }
  return (
    <figure class="sample">
      <p lang="en">
        {pieces}
        {text.slice(at)}
      </p>
      <figcaption>{reading ? sumsOf(reading, t) : <Pending t={t} />}</figcaption>
    </figure>
  );
}
