import { labelDifference } from '../../../core/label/difference.ts';
import type { ReadFor } from '../../../core/product/read-as.ts';
import type { Mention } from '../../../core/reading/reading.ts';
import { glyphsOf } from '../../describe/mark.ts';
import { Glyph } from '../../glyphs/glyph.tsx';
import { Pending } from '../../parts/waiting/pending.tsx';
import type { World } from '../../world.ts';

type Props = { world: World; before: string; after: string; as: ReadFor };

/**
 * What changed between two labels of one product: what came and went in a sentence ("Now with hydrolyzed soy
 * protein"), then name by name, each told by a word and a sign, never by colour alone.
 */
export function LabelChange({ world, before, after, as }: Props) {
  const { t } = world;
  const [was, is] = [world.reading(before, as), world.reading(after, as)];
  if (!was || !is) return <Pending world={world} />;
  if (was.refused || is.refused) return <p class="hint">{t('products.change.unread')}</p>;
  const { added, removed, moved } = labelDifference(was.mentions, is.mentions);
  const names = (mentions: Mention[]) => mentions.map(({ raw }) => raw);
  // Protein and moisture first: they are why labels are read.
  const telling = (mentions: Mention[]) => {
    const told = mentions.filter((mention) => glyphsOf(mention).length > 0);
    return told.length > 0 ? told : mentions;
  };
  const rows = [
    ...added.map((mention) => ({ mention, sign: '+', word: 'added' as const })),
    ...removed.map((mention) => ({ mention, sign: '−', word: 'removed' as const })),
    ...moved.map(({ mention, up }) => ({
      mention,
      sign: up ? '↑' : '↓',
      word: up ? ('up' as const) : ('down' as const),
    })),
  ];
  return (
    <div class="stack label-change">
      {added.length > 0 && <p>{t('products.change.with', { names: names(telling(added)) })}</p>}
      {removed.length > 0 && <p>{t('products.change.without', { names: names(telling(removed)) })}</p>}
      {added.length + removed.length === 0 && (
        <p>{t(moved.length > 0 ? 'products.change.order' : 'products.change.none')}</p>
      )}
      {rows.length > 0 && (
        <ul class="plain-list changes">
          {rows.map(({ mention, sign, word }) => (
            <li key={word + mention.raw} class={word}>
              <span class="sign" aria-hidden="true">
                {sign}
              </span>
              <span>
                <span class="change-name">{mention.raw}</span>{' '}
                {glyphsOf(mention).map((name) => (
                  <Glyph key={name} name={name} ground="var(--raised)" />
                ))}
              </span>
              <span class="hint">{t(`products.change.${word}`)}</span>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
