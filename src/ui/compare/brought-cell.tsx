import type { Brings, Brought } from '../../core/amounts/brings.ts';
import { StepBar } from '../charts/step-bar.tsx';
import { broughtWords, milligramWords } from '../describe/brings.ts';
import type { World } from '../world.ts';

/** What one product brings of one thing: the step in words and as boxes; opened, the milligrams behind it. */
export function BroughtCell(props: { world: World; brings: Brings; brought: Brought; hue: 'plum' | 'teal' }) {
  const { brings, brought, hue } = props;
  const { t } = props.world;
  if (brought.mg.most === 0) return <span class="none">{t('compare.none')}</span>;
  return (
    <details class="brought">
      <summary>
        <StepBar brought={brought} hue={hue} /> {broughtWords(brought, t)}
      </summary>
      <span class="hint">{milligramWords(brings, brought, t)}</span>
    </details>
  );
}
