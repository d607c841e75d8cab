import { useEffect, useRef, useState } from 'preact/hooks';
import type { KnownName } from '../../../contract/messages.ts';
import { typedNameAt, withName } from '../../../core/label/typed-name.ts';
import { normalName } from '../../../core/names/normal-form.ts';
import { Button } from '../../parts/controls/button.tsx';
import { Field } from '../../parts/controls/field.tsx';
import type { World } from '../../world.ts';

const offered = 6;

/** A list as it is typed: names of the dictionary to complete it with, and near ones where it is spelled otherwise. */
export function TypedList(props: {
  world: World;
  value: string;
  onInput: (text: string) => void;
  error?: string | undefined;
}) {
  const { world, value, onInput } = props;
  const { t } = world;
  const field = useRef<HTMLTextAreaElement>(null);
  const [at, setAt] = useState<number | undefined>();
  const [hits, setHits] = useState<KnownName[]>([]);
  const name = at === undefined ? undefined : typedNameAt(value, at);
  const typed = name?.typed ?? '';
  useEffect(() => {
    let here = true;
    if (typed.length < 2) setHits([]);
    else void world.lookUp(typed).then((found) => here && setHits(found));
    return () => {
      here = false;
    };
  }, [typed]);
  const sought = normalName(typed);
  const written = hits.some(({ printed }) => normalName(printed) === sought);
  const begun = hits.filter(({ printed }) => normalName(printed).includes(sought)).slice(0, offered);
  const near = written || begun.length > 0 ? [] : hits.slice(0, offered);
  const take = (printed: string) => {
    const next = withName(value, name!, printed);
    onInput(next.text);
    setAt(next.at);
    requestAnimationFrame(() => {
      field.current?.focus();
      field.current?.setSelectionRange(next.at, next.at);
    });
  };
  const see = () => setAt(field.current?.selectionStart ?? undefined);
  return (
    <>
      <Field label={t('products.label')} hint={t('products.label.hint')} error={props.error}>
        {(ids) => (
          <textarea
            {...ids}
            ref={field}
            rows={5}
            value={value}
            spellcheck={false}
            onInput={(event) => {
              onInput(event.currentTarget.value);
              setAt(event.currentTarget.selectionStart);
            }}
            onClick={see}
            onKeyUp={see}
          />
        )}
      </Field>
      <div class="stack" aria-live="polite">
        {typed.length > 1 && begun.length > 0 && !written && (
          <Names t={t} words={t('products.typed.names')} hits={begun} onTake={take} />
        )}
        {near.length > 0 && (
          <Names t={t} words={t('products.typed.near', { typed })} hits={near} onTake={take} />
        )}
      </div>
    </>
  );
}

function Names(props: {
  t: World['t'];
  words: string;
  hits: readonly KnownName[];
  onTake: (printed: string) => void;
}) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields
    <div class="actions" role="group" aria-label={props.words}>
      <span class="hint">{props.words}</span>
      {props.hits.map(({ name, printed }) => (
        <Button
          key={name}
          label={props.t('products.typed.take', { name: printed })}
          onClick={() => props.onTake(printed)}
        >
          {printed}
        </Button>
      ))}
    </div>
  );
}
