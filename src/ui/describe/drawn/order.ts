import type { PaintOrder } from '../../../contract/paint-order.ts';
import type { Settings } from '../../../store/remembered.ts';
import type { ReadList } from '../../../use/judge/read-page.ts';
import type { Translate } from '../../words/index.ts';
import { marksOf } from '../mark.ts';
import { stripOf } from '../strip.ts';
import { sayOnce } from './draw.ts';
import { drawNotice } from './draw-notice.ts';
import { drawStrip } from './draw-strip.ts';

const glyphSizes = { small: 0.62, medium: 0.74, large: 0.92 };

/** How to paint one list that was read and judged. */
export function orderOf(
  { list, reading, known, checks, notForHair, proteins, brings, granted }: ReadList,
  { underline, glyphSize }: Settings,
  people: boolean,
  sources: Record<string, { title: string }>,
  t: Translate,
): PaintOrder {
  const words = stripOf(
    reading,
    {
      product: list.product?.name,
      checks,
      notForHair,
      kept: Boolean(known.kept),
      people,
      brings,
      granted: granted.length > 0,
    },
    t,
  );
  const strip = drawStrip(words, t);
  const { said, shared } = sayOnce((each) => ({
    marks: marksOf(reading, t, sources)
      .filter(({ line }) => (line === 'moisture' ? underline.moisture : underline.protein))
      .map((mark) => ({ ...mark, glyph: each(mark.glyph), card: mark.card.map(each) })),
    strip: { ...strip, open: strip.open.map(each), folded: strip.folded.map(each) },
  }));
  return {
    list: list.id,
    lang: t.lang,
    dir: t.dir,
    proteinMentions: proteins,
    names: t('page.painter.names'),
    orphaned: drawNotice(t('page.orphaned'), t),
    glyphSize: glyphSizes[glyphSize],
    ...said,
    shared,
  };
}
