import type { World } from '../../world.ts';
import { Button } from '../controls/button.tsx';
import { Note } from '../note.tsx';

/** Stands where an answer is on its way, `words` or "Reading…"; where it could not be had, says so. */
export function Pending({ world, words }: { world: Pick<World, 't' | 'unread'>; words?: string }) {
  const { t, unread } = world;
  if (unread) return <span class="hint">{t('shell.unread.here')}</span>;
  return <span class="hint pending">{words ?? t('shell.pending')}</span>;
}

/** Above all that waits for a label which could not be read: what happened, and the way to ask once more. */
export function Unread({ world }: { world: Pick<World, 't' | 'unread'> }) {
  const { t, unread } = world;
  if (!unread) return null;
  return (
    <Note t={t} care>
      <p>{t('shell.unread')}</p>
      <div class="actions">
        <Button onClick={unread.again}>{t('shell.unread.again')}</Button>
      </div>
    </Note>
  );
}
