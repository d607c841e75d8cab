import type { GlyphName, Mark } from '../../contract/paint-order.ts';
import type { Allergen, Range } from '../../core/names/entry.ts';
import { isProtein, type Mention, type Reading } from '../../core/reading/reading.ts';
import type { Translate } from '../words/index.ts';
import { dotted } from './dotted.ts';
import { drawGlyph } from './drawn/draw.ts';
import { drawCard } from './drawn/draw-card.ts';
import { shareWords } from './share.ts';

/** dictionary/sources.json as views need it. */
export type SourceTitles = Record<string, { title: string; short?: string }>;

/** The card of a name, in words. */
export type CardWords = {
  title: string;
  /** How the name was found or what family it is of, in a few words: "Hydrolyzed protein, large". */
  kind: string;
  glyphs: GlyphName[];
  /** Plain sentences, in order: what it is, size and source, why, caution. */
  lines: string[];
  share: Range;
  likely?: Range;
  shareWords: string;
  /** "Source: …", or empty. */
  source: string;
};

const drops = { humectant: 'draws', emollient: 'softens', occlusive: 'seals' } as const;

/** Glyphs of one mention, protein first. Shapes of nothing known: none. */
export function glyphsOf({ protein, moisture }: Pick<Mention, 'protein' | 'moisture'>): GlyphName[] {
  const beads: GlyphName[] = [];
  if (protein && isProtein({ protein })) beads.push(protein.size === 'unknown' ? 'bearing' : protein.size);
  else if (protein?.kind === 'protein-bearing') beads.push('bearing');
  return [...beads, ...moisture.map((role) => drops[role])];
}

const glyphOrder: GlyphName[] = ['large', 'small', 'free', 'bearing', 'draws', 'softens', 'seals'];

/** Glyphs of many mentions, each once, in the one order: protein by size, then what moisture does. */
export function glyphsInOrder(mentions: readonly Mention[]): GlyphName[] {
  const there = new Set(mentions.flatMap(glyphsOf));
  return glyphOrder.filter((name) => there.has(name));
}

function lineOf(glyphs: GlyphName[]): Mark['line'] {
  const [first] = glyphs;
  return first === 'free' || first === 'small' || first === 'large' || first === 'bearing'
    ? first
    : 'moisture';
}

/** What the hover card says of a mention; words ready to show, plain, what-it-is first and caution last. */
export function cardOf(
  index: number,
  reading: Reading,
  t: Translate,
  sources: SourceTitles,
): CardWords | undefined {
  const mention = reading.mentions[index];
  if (!mention || mention.found.how === 'none') return undefined;
  const { found } = mention;
  const lines: string[] = [];
  if (found.how === 'pattern') lines.push(t('page.card.by-pattern', { name: found.name }));
  else if (found.how === 'mended')
    lines.push(t('page.card.mended', { printed: found.printed, name: found.name }));
  else if (found.name.toLowerCase() !== mention.raw.toLowerCase())
    lines.push(t('page.card.also', { name: found.name }));
  lines.push(...(found.how === 'told' ? [t(`page.card.told.${found.as}`)] : knownLines(mention, t)));
  return {
    title: mention.raw,
    kind: kindWords(mention, t),
    glyphs: glyphsOf(mention),
    lines,
    share: mention.share,
    ...(mention.likely && { likely: mention.likely }),
    shareWords: shareWords(index, reading, t),
    source: sourceWords(sourcesOf(mention), t, sources),
  };
}

const sourcesOf = ({ protein, likelyWhy }: Mention) => [
  ...new Set([...(protein?.sources ?? []), ...(likelyWhy?.source ? [likelyWhy.source] : [])]),
];

/** What a name is and does, in plain sentences; the caution last. */
export function knownLines(
  known: Pick<Mention, 'protein' | 'moisture' | 'allergens'> & Partial<Pick<Mention, 'mayBe' | 'law'>>,
  t: Translate,
): string[] {
  const { protein } = known;
  const lines: string[] = [];
  if (protein) {
    lines.push(t(`page.card.protein.${protein.kind}`));
    if (isProtein(known)) lines.push(t(`page.card.size.${protein.size}`));
    if (protein.daltons) lines.push(t('page.card.daltons', protein.daltons));
    if (protein.disagreement) lines.push(t(protein.disagreement));
    if (protein.minute) lines.push(t('page.card.minute'));
  }
  for (const role of known.moisture) lines.push(t(`page.card.moisture.${role}`));
  const { law, mayBe = [] } = known;
  if (law) lines.push(t(`page.card.law.${law.change}`, { date: dateWords(law.from, t) }));
  for (const family of known.allergens)
    if (family === 'sensitizer') lines.push(t('page.card.sensitizer'));
    else if (family !== 'fragrance') lines.push(t('page.card.allergen', { family: familyWord(family, t) }));
  for (const family of mayBe)
    lines.push(
      t(family === 'sensitizer' ? 'page.card.sensitizer-traces' : 'page.card.may-be', {
        family: familyWord(family, t),
      }),
    );
  return lines;
}

const familyWord = (family: Allergen, t: Translate) => t(`page.family.${family}`).toLocaleLowerCase(t.lang);

const dateWords = (iso: string, t: Translate) =>
  new Intl.DateTimeFormat(t.lang, { dateStyle: 'long', timeZone: 'UTC' }).format(new Date(iso));

/** "Source: …", or empty. */
export function sourceWords(keys: string[], t: Translate, sources: SourceTitles): string {
  if (keys.length === 0) return '';
  return t('page.card.source', { source: keys.map((key) => sources[key]?.title ?? key).join('; ') });
}

/** "Hydrolyzed protein, large" · "Draws water · softens": what a mention is, in a few words. */
export function kindWords(mention: Pick<Mention, 'protein' | 'moisture'>, t: Translate): string {
  const { protein, moisture } = mention;
  const said: string[] = [];
  if (protein) {
    const kind = t(`page.kind.${protein.kind}`);
    said.push(
      isProtein({ protein }) && protein.kind !== 'amino-acid'
        ? t('page.kind.sized', { kind, size: t(`page.size.${protein.size}`) })
        : kind,
    );
  }
  said.push(...moisture.map((role) => t(`page.moisture.${role}`)));
  return dotted(said);
}

/** One mark for each protein and moisture name of a reading, in label order. Sources in a few words: the panel cites them. */
export function marksOf(reading: Reading, t: Translate, sources: SourceTitles): Mark[] {
  const inShort = Object.fromEntries(
    Object.entries(sources).map(([key, { title, short = title }]) => [key, { title: short }]),
  );
  return reading.mentions.flatMap((mention, index) => {
    const glyphs = glyphsOf(mention);
    const card = cardOf(index, reading, t, inShort);
    if (!card || !glyphs[0]) return [];
    return [
      {
        from: mention.from,
        to: mention.to,
        line: lineOf(glyphs),
        label: `${card.title}: ${card.kind}`,
        glyph: drawGlyph(glyphs[0]),
        card: drawCard(card, t('page.painter.share'), t.lang),
      },
    ];
  });
}
