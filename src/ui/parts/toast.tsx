import { useEffect, useRef } from 'preact/hooks';
import type { World } from '../world.ts';
import { Button } from './controls/button.tsx';

/**
 * `undo` is the key of what takes back the act it tells of; `also`, what is to be known besides; `fresh` within the
 * press, which may lead to another place.
 */
export type Announcement = { words: string; undo?: string; also?: string; nth: number; fresh?: boolean };

/**
 * What `world.say` said: read aloud by screen readers, shown at the foot. One that can be taken back stays
 * until it is dismissed or replaced; others go after eight seconds.
 */
export function Toast(props: {
  world: Pick<World, 't' | 'undo'>;
  said: Announcement | undefined;
  onDismiss: () => void;
}) {
  const { said, world } = props;
  const { t } = world;
  const nth = said?.nth;
  const undo = said?.undo;
  useEffect(() => {
    if (nth === undefined || undo) return;
    const timer = setTimeout(props.onDismiss, 8000);
    return () => clearTimeout(timer);
  }, [nth, undo]);
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // What was being used stays in view above it.
    const [used, bar] = [document.activeElement, place.current];
    if (nth === undefined || !bar || !used || used === document.body || bar.contains(used)) return;
    const below = used.getBoundingClientRect().bottom - bar.getBoundingClientRect().top;
    const { top } = used.getBoundingClientRect();
    if (below > 0 && top < innerHeight) scrollBy(0, below + 8);
  }, [nth]);
  const takeBack = (key: string) => {
    props.onDismiss();
    void world.undo(key);
  };
  return (
    <div class="toast-place" ref={place}>
      <div role="status" aria-live="polite" class={said ? 'toast' : 'toast-none'}>
        {said && <p>{said.words}</p>}
        {said?.also && <p>{said.also}</p>}
      </div>
      {said && (
        <div class="toast-actions">
          {undo && <Button onClick={() => takeBack(undo)}>{t('shell.undo')}</Button>}
          <Button look="quiet" onClick={props.onDismiss}>
            {t('shell.dismiss')}
          </Button>
        </div>
      )}
    </div>
  );
}
