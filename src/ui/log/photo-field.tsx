import { useEffect, useState } from 'preact/hooks';
import { Button } from '../parts/controls/button.tsx';
import { Field } from '../parts/controls/field.tsx';
import type { World } from '../world.ts';
import { smallPhoto } from './photo.ts';

/** A kept photo, fetched when it is shown. */
export function KeptPhoto({ world, photo, alt }: { world: World; photo: string; alt: string }) {
  const [data, setData] = useState<string | undefined>();
  useEffect(() => {
    let here = true;
    void world.store?.().then(async (store) => {
      const found = await store.photo(photo);
      if (here) setData(found);
    });
    return () => {
      here = false;
    };
  }, [photo]);
  return data ? <img class="log-photo" src={data} alt={alt} /> : null;
}

/** A photo of one's own, made small and kept on this machine. `null` takes the kept one away. */
export function PhotoField(props: {
  world: World;
  kept: string | undefined;
  photo: string | null | undefined;
  onChange: (photo: string | null | undefined) => void;
}) {
  const { world, kept, photo, onChange } = props;
  const { t } = world;
  const [wrong, setWrong] = useState(false);
  const read = async (file: File | undefined) => {
    if (!file) return;
    try {
      onChange(await smallPhoto(file));
      setWrong(false);
    } catch {
      setWrong(true);
    }
  };
  const there = photo || (kept && photo !== null);
  return (
    <div class="stack">
      <Field
        label={t('log.photo')}
        hint={t('log.photo.hint')}
        error={wrong ? t('log.photo.wrong') : undefined}
      >
        {(ids) => (
          <>
            {photo && <img class="log-photo" src={photo} alt={t('log.photo.alt')} />}
            {!photo && there && <KeptPhoto world={world} photo={kept!} alt={t('log.photo.alt')} />}
            <input
              {...ids}
              type="file"
              accept="image/*"
              onChange={(event) => void read(event.currentTarget.files?.[0])}
            />
          </>
        )}
      </Field>
      {there && (
        <div class="actions">
          <Button look="quiet" onClick={() => onChange(kept ? null : undefined)}>
            {t('log.photo.remove')}
          </Button>
        </div>
      )}
    </div>
  );
}
