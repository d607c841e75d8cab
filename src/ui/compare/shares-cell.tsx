import type { Mention } from '../../core/reading/reading.ts';
import { ShareBar } from '../charts/share-bar.tsx';
import { rangeWords } from '../describe/share.ts';
import type { World } from '../world.ts';
import { addedShares } from './align.ts';

/** Several names of one product as one bar: how many, and what they can come to together. */
export function SharesCell(props: { world: World; mentions: readonly Mention[]; hue: 'plum' | 'teal' }) {
  const { mentions } = props;
  const { t } = props.world;
  if (mentions.length === 0) return <span class="none">{t('compare.none')}</span>;
  const share = addedShares(mentions);
  return (
    <>
      <span>{t('compare.names', { n: mentions.length })}</span>
      <ShareBar t={t} share={share} hue={props.hue} silent />
      <span class="hint">{rangeWords(share, t)}</span>
    </>
  );
}
