import sources from '../../dictionary/sources.json' with { type: 'json' };
import type { FoundText } from '../../src/contract/messages.ts';
import type { PaintOrder } from '../../src/contract/paint-order.ts';
import type { Lookup } from '../../src/core/names/lookup.ts';
import { isProtein, type Reading, readLabel } from '../../src/core/reading/reading.ts';
import type { Remembered, Site } from '../../src/store/remembered.ts';
import { sayOnce } from '../../src/ui/describe/draw.ts';
import { drawStrip } from '../../src/ui/describe/draw-strip.ts';
import { marksOf } from '../../src/ui/describe/mark.ts';
import { type Check, stripOf } from '../../src/ui/describe/strip.ts';
import type { Translate } from '../../src/ui/words/index.ts';

/** The reader pointed at this text: it is read as a list whatever its names. */
const pointedAt = ['selection', 'chosen'];

/** What tells a text from others when a site remembers that it is no list. */
export const markOfText = (text: string) => text.replace(/\s+/g, ' ').trim().slice(0, 120);

const glyphSizes = { small: 0.62, medium: 0.74, large: 0.92 };

/** Reads one list of a page and says how to paint it; undefined where it is no cosmetic list. */
export function orderOf(
  list: FoundText,
  lookup: Lookup,
  {
    remembered,
    site,
    t,
    checks,
  }: {
    remembered: Remembered;
    site: Site | undefined;
    t: Translate;
    checks: (reading: Reading) => Check[];
  },
): PaintOrder | undefined {
  const use = list.product?.use;
  const reading = readLabel(list.text, lookup, { readAs: remembered.readAs, ...(use ? { use } : {}) });
  const { underline, glyphSize } = remembered.settings;
  const isList =
    !site?.notLists.includes(markOfText(list.text)) &&
    (pointedAt.includes(list.via) || (!reading.refused && reading.read >= lookup.thresholds.listAtLeast));
  if (!isList) return undefined;
  const words = stripOf(
    reading,
    {
      product: list.product?.name,
      checks: checks(reading),
      kept: remembered.products.some(({ labels }) => labels[0]?.text === list.text),
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
    proteinMentions: reading.mentions.filter(isProtein).length,
    names: t('page.painter.names'),
    glyphSize: glyphSizes[glyphSize],
    ...said,
    shared,
  };
}
