import { useState } from 'preact/hooks';
import { type NameToCheck, namesToCheck, problemOf, putRight } from '../../../core/picture/check-names.ts';
import type { BroughtPicture } from '../../../use/pasted.ts';
import { smallPhoto } from '../../log/photo.ts';
import { Card } from '../../parts/card.tsx';
import { Button } from '../../parts/controls/button.tsx';
import { CheckBox } from '../../parts/controls/choice.tsx';
import { Note } from '../../parts/note.tsx';
import { Pending } from '../../parts/waiting/pending.tsx';
import type { PictureShown, World } from '../../world.ts';
import { PictureView } from './picture-view.tsx';

const wellRead = 0.66;

/** What was read of a picture, beside it: the user looks, puts right and takes it; before that it is nothing. */
export function PictureCheck(props: {
  world: World;
  name: string;
  read: PictureShown;
  onTake: (taken: BroughtPicture) => void;
  onDrop: () => void;
}) {
  const { world, read } = props;
  const { t } = world;
  const [lit, setLit] = useState<number | undefined>();
  const [keep, setKeep] = useState(false);
  const [right, setRight] = useState<ReadonlyMap<number, string>>(new Map());
  const reading = world.reading(read.text);
  if (!reading) return <Pending world={world} />;
  const problem = problemOf(reading, read);
  const away = (
    <Button look="quiet" onClick={props.onDrop}>
      {t('panel.picture.drop')}
    </Button>
  );
  if (problem)
    return (
      <Note t={t} care about={props.name}>
        <p>{t(`panel.picture.problem.${problem}`)}</p>
        <div class="actions">{away}</div>
      </Note>
    );
  const take = async (text: string) => {
    const photo = keep ? await smallPhoto(read.file).catch(() => undefined) : undefined;
    if (keep && !photo) world.say(t('log.photo.wrong'));
    props.onTake({ text, ...(photo && { photo }) });
  };
  const names = namesToCheck(reading, read);
  const doubtful = names.filter(({ doubt }) => doubt).length;
  return (
    <Card over={props.name} title={t('panel.picture.check')}>
      <p>{t('panel.picture.doubtful', { n: doubtful })}</p>
      {reading.read < wellRead && (
        <Note t={t} care>
          <p>{t('panel.picture.half')}</p>
        </Note>
      )}
      <div class="picture-check">
        <PictureView t={t} read={read} names={names} lit={lit ?? names[0]?.index} onLit={setLit} />
        <ol class="plain-list picture-names">
          {names.map((name) => (
            <li
              key={name.index}
              class={name.index === lit ? 'lit' : ''}
              onPointerEnter={() => setLit(name.index)}
            >
              <label>
                <span class="hint">
                  {t('panel.picture.name', { n: name.index + 1 })}{' '}
                  {name.doubt && <DoubtWords world={world} name={name} />}
                </span>
                <input
                  value={right.get(name.index) ?? name.mention.raw}
                  autocomplete="off"
                  spellcheck={false}
                  onFocus={() => setLit(name.index)}
                  onInput={(event) => setRight(new Map([...right, [name.index, event.currentTarget.value]]))}
                />
              </label>
            </li>
          ))}
        </ol>
      </div>
      {world.remembered.settings.pictures !== false && (
        <CheckBox
          label={t('panel.picture.keep')}
          hint={t('panel.picture.keep.hint')}
          checked={keep}
          onChange={setKeep}
        />
      )}
      <div class="actions">
        <Button look="strong" onClick={() => void take(putRight(read.text, reading, right))}>
          {t('panel.picture.take')}
        </Button>
        {away}
      </div>
    </Card>
  );
}

function DoubtWords({ world, name: { doubt, mention } }: { world: World; name: NameToCheck }) {
  const { t } = world;
  if (doubt === 'mended' && mention.found.how === 'mended')
    return <strong>{t('panel.picture.doubt.mended', { name: mention.found.name })}</strong>;
  return (
    <strong>{t(doubt === 'unknown' ? 'panel.picture.doubt.unknown' : 'panel.picture.doubt.faint')}</strong>
  );
}
