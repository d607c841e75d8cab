import type { Difference } from '../../core/learn/differed.ts';
import type { World } from '../world.ts';
import { differenceWords } from './lesson-words.ts';

/** What of a wash day was not as the time before; nothing where all was. */
export function Differed({ world, differences }: { world: World; differences: readonly Difference[] }) {
  if (differences.length === 0) return null;
  return (
    <div>
      <p>{world.t('log.differed')}</p>
      <ul>
        {differences.map((each) => (
          <li key={JSON.stringify(each)}>{differenceWords(world, each)}</li>
        ))}
      </ul>
    </div>
  );
}
