import { useEffect, useId } from 'preact/hooks';
import type { BroughtPicture } from '../../../use/pasted.ts';
import { Button } from '../../parts/controls/button.tsx';
import { Note } from '../../parts/note.tsx';
import type { World } from '../../world.ts';
import { PictureCheck } from './picture-check.tsx';
import type { PicturesInHand } from './use-pictures.ts';

/** Photos of labels, chosen, dropped or pasted, and pictures of the page: read, and shown for checking. */
export function Pictures(props: {
  world: World;
  inHand: PicturesInHand;
  onTake: (taken: BroughtPicture) => void;
}) {
  const { world, inHand } = props;
  const { t } = world;
  const { items } = inHand;
  const id = useId();
  const take = (files: FileList | undefined) => {
    const pictures = [...(files ?? [])].filter(({ type }) => !type || type.startsWith('image/'));
    inHand.add(pictures.map((file) => ({ name: file.name, source: { file } })));
    return pictures.length > 0;
  };
  useEffect(() => {
    const pasted = (event: ClipboardEvent) => {
      if (take(event.clipboardData?.files)) event.preventDefault();
    };
    document.addEventListener('paste', pasted);
    return () => document.removeEventListener('paste', pasted);
  });
  const [now] = items.filter(({ read }) => read === undefined);
  const waiting = items.filter(({ read, done }) => read === undefined && done === undefined).length;
  return (
    <section
      class="stack"
      aria-label={t('panel.picture.title')}
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        take(event.dataTransfer?.files);
      }}
    >
      <div class="field">
        <label for={id} class="field-head">
          {t('panel.picture.choose')}
        </label>
        <input
          id={id}
          type="file"
          accept="image/*"
          multiple
          aria-describedby={`${id}-hint`}
          onChange={(event) => {
            take(event.currentTarget.files ?? undefined);
            event.currentTarget.value = '';
          }}
        />
        <span class="hint" id={`${id}-hint`}>
          {t('panel.picture.hint')}
        </span>
      </div>
      {world.reach?.origin && (
        <div class="actions">
          <Button
            onClick={() =>
              inHand.add([{ name: t('panel.picture.on-page'), source: { onPage: { frame: 0 } } }])
            }
          >
            {t('panel.picture.here')}
          </Button>
        </div>
      )}
      {now && (
        <div class="stack" role="status">
          <label class="stack">
            {t('panel.picture.reading', { name: now.name })}
            <progress value={now.done ?? 0} />
          </label>
          {waiting > 0 && <p class="hint">{t('panel.picture.waiting', { n: waiting })}</p>}
          <div class="actions">
            <Button onClick={inHand.cancel}>{t('panel.picture.cancel')}</Button>
          </div>
        </div>
      )}
      {items.map(({ id: nth, name, read }) =>
        read === undefined ? null : typeof read === 'string' ? (
          <Note key={nth} t={t} care about={name}>
            <p>{t(`panel.picture.problem.${read}`)}</p>
            <div class="actions">
              <Button look="quiet" onClick={() => inHand.drop(nth)}>
                {t('panel.picture.drop')}
              </Button>
            </div>
          </Note>
        ) : (
          <PictureCheck
            key={nth}
            world={world}
            name={name}
            read={read}
            onTake={(taken) => {
              inHand.drop(nth);
              props.onTake(taken);
            }}
            onDrop={() => inHand.drop(nth)}
          />
        ),
      )}
    </section>
  );
}
