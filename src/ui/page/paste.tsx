import { useEffect, useState } from 'preact/hooks';
import type { Use } from '../../core/names/entry.ts';
import { type BroughtPicture, type Pasted, photoOf } from '../../use/pasted.ts';
import { Button } from '../parts/controls/button.tsx';
import { Choice } from '../parts/controls/choice.tsx';
import { TextField } from '../parts/controls/field.tsx';
import { Help } from '../parts/help.tsx';
import type { World } from '../world.ts';

/** A list typed or pasted by the user: from a paper label, a message, a photo read by their phone or here. */
export function Paste(props: {
  world: World;
  onRead: (pasted: Pasted) => void;
  word?: string;
  /** Text that comes from elsewhere: it goes after what stands there. */
  brought?: BroughtPicture | undefined;
}) {
  const { t } = props.world;
  const [name, setName] = useState('');
  const [text, setText] = useState('');
  const [use, setUse] = useState<Use | 'unknown'>('unknown');
  const [tried, setTried] = useState(false);
  const { brought } = props;
  const [allBrought, setAllBrought] = useState<BroughtPicture[]>([]);
  useEffect(() => {
    if (!brought) return;
    setText((there) => (there.trim() ? `${there.trim()},\n${brought.text}` : brought.text));
    setAllBrought((all) => [...all, brought]);
  }, [brought]);
  const photo = photoOf(allBrought, text);
  return (
    <form
      class="stack"
      onSubmit={(event) => {
        event.preventDefault();
        setTried(true);
        if (text.trim())
          props.onRead({
            name: name.trim() || t('panel.paste.unnamed'),
            text: text.trim(),
            ...(use !== 'unknown' && { use }),
            ...(photo && { photo }),
          });
      }}
    >
      <TextField
        label={t('panel.paste.list')}
        hint={t('panel.paste.hint')}
        rows={5}
        value={text}
        onInput={setText}
        error={tried && !text.trim() ? t('panel.paste.empty') : undefined}
      />
      <TextField label={t('panel.paste.name')} value={name} onInput={setName} />
      <Choice
        legend={t('panel.paste.use')}
        help={<Help t={t} term="leave-on" />}
        options={(['unknown', 'leave-on', 'rinse-off'] as const).map((value) => ({
          value,
          label: t(`panel.use.${value}`),
        }))}
        value={use}
        onChange={setUse}
      />
      <div class="actions">
        <Button submit look="strong">
          {props.word ?? t('panel.paste.read')}
        </Button>
      </div>
    </form>
  );
}
