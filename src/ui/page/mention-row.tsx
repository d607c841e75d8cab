import type { Mention, Reading } from '../../core/reading/reading.ts';
import { ShareBar } from '../charts/share-bar.tsx';
import { cardOf, glyphsOf, kindWords } from '../describe/mark.ts';
import { amountWords, shareWords } from '../describe/share.ts';
import { Glyph } from '../glyphs/glyph.tsx';
import { Button } from '../parts/controls/button.tsx';
import type { World } from '../world.ts';

export const hueOf = ({ protein, moisture }: Pick<Mention, 'protein' | 'moisture'>) =>
  protein ? 'plum' : moisture.length > 0 ? 'teal' : 'ink';

/** The glyphs of a mention in a row; the words beside them say the same. */
export function Glyphs({ mention }: { mention: Pick<Mention, 'protein' | 'moisture'> }) {
  return (
    <span class="glyphs">
      {glyphsOf(mention).map((name) => (
        <Glyph key={name} name={name} ground="var(--raised)" />
      ))}
    </span>
  );
}

/** How the name was found, in one sentence. */
function foundWords({ found, raw }: Mention, { t, remembered }: World): string {
  if (Object.hasOwn(remembered.readAs, raw) && found.how === 'alias')
    return t('panel.found.read-as', { name: found.name });
  if (found.how === 'none') return t('panel.found.none');
  if (found.how === 'mended')
    return t(`panel.mended.${found.damage}`, { printed: found.printed, name: found.name });
  return found.how === 'told' ? t('panel.found.told') : t(`panel.found.${found.how}`, { name: found.name });
}

/** A mended name is left as printed, from now on, on one press. */
function Refuse({ world, printed }: { world: World; printed: string }) {
  const { t } = world;
  return (
    <Button
      look="quiet"
      label={t('panel.mended.refuse.what', { printed })}
      onClick={() => void world.act({ act: 'read-as', printed, name: '' })}
    >
      {t('panel.mended.refuse')}
    </Button>
  );
}

/** One name of the label: place, glyphs, what it is, its share; opened, why and from which source. */
export function MentionRow(props: { world: World; reading: Reading; index: number; marked: boolean }) {
  const { world, reading, index } = props;
  const { t } = world;
  const mention = reading.mentions[index];
  if (!mention) return null;
  const card = cardOf(index, reading, t, world.sources ?? {});
  const kind = mention.found.how === 'none' ? t('panel.unknown') : kindWords(mention, t);
  return (
    <details class={`mention ${props.marked ? 'decides' : ''}`} id={`name-${index}`}>
      <summary>
        <span class="mention-place">{index + 1}</span>
        <span class="mention-name">
          {mention.raw} {mention.found.how === 'mended' && <Glyph name="mended" label={t('panel.mended')} />}
          <Glyphs mention={mention} />
        </span>
        {kind && <span class="mention-kind">{kind}</span>}
        {props.marked && <span class="mention-decides">{t('panel.decides')}</span>}
        <span class="mention-share">
          <ShareBar t={t} share={mention.share} likely={mention.likely} hue={hueOf(mention)} silent />
          <span>{amountWords(mention, t)}</span>
        </span>
      </summary>
      <div class="mention-more">
        <p>{foundWords(mention, world)}</p>
        {mention.found.how === 'mended' && <Refuse world={world} printed={mention.found.printed} />}
        {card?.lines
          .slice(mention.found.how === 'exact' || mention.found.how === 'told' ? 0 : 1)
          .map((line) => (
            <p key={line}>{line}</p>
          ))}
        <p>{shareWords(index, reading, t)}</p>
        {card?.source && <p class="hint">{card.source}</p>}
      </div>
    </details>
  );
}
