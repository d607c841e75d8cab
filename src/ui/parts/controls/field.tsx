import type { ComponentChildren } from 'preact';
import { useId, useState } from 'preact/hooks';

/** A labelled control: hint and error are tied to it by id. `children` receives the ids to use. */
export function Field(props: {
  label: ComponentChildren;
  hint?: ComponentChildren;
  error?: string | undefined;
  help?: ComponentChildren;
  /** Label and control on one line. */
  inline?: boolean | undefined;
  children: (ids: {
    id: string;
    'aria-describedby': string | undefined;
    'aria-invalid': boolean;
  }) => ComponentChildren;
}) {
  const id = useId();
  const told = [props.hint && `${id}-hint`, props.error && `${id}-error`].filter(Boolean).join(' ');
  return (
    <div class={props.inline ? 'field inline-field' : 'field'}>
      <span class="field-head">
        <label for={id}>{props.label}</label>
        {props.help}
      </span>
      {props.children({ id, 'aria-describedby': told || undefined, 'aria-invalid': Boolean(props.error) })}
      {props.hint && (
        <span class="hint" id={`${id}-hint`}>
          {props.hint}
        </span>
      )}
      {props.error && (
        <span class="error" id={`${id}-error`} role="alert">
          {props.error}
        </span>
      )}
    </div>
  );
}

type Text = {
  label: ComponentChildren;
  value: string;
  onInput: (value: string) => void;
  hint?: ComponentChildren;
  error?: string | undefined;
  help?: ComponentChildren;
  placeholder?: string;
  /** Rows of a text area; absent for one line. */
  rows?: number;
  type?: 'text' | 'search' | 'date' | 'url';
  lang?: string;
};

export function TextField(props: Text) {
  return (
    <Field label={props.label} hint={props.hint} error={props.error} help={props.help}>
      {(ids) =>
        props.rows ? (
          <textarea
            {...ids}
            rows={props.rows}
            value={props.value}
            placeholder={props.placeholder}
            spellcheck={false}
            onInput={(event) => props.onInput(event.currentTarget.value)}
          />
        ) : (
          <input
            {...ids}
            {...({ type: props.type ?? 'text' } as { type: 'text' })}
            value={props.value}
            placeholder={props.placeholder}
            autocomplete="off"
            onInput={(event) => props.onInput(event.currentTarget.value)}
          />
        )
      }
    </Field>
  );
}

/** "3,5" and "3.5" are both three and a half; undefined when it is no number. */
export function parseNumber(text: string): number | undefined {
  const plain = text.trim().replace(/\s/g, '').replace(',', '.');
  return /^[-−]?\d*\.?\d+$|^[-−]?\d+\.$/.test(plain) ? Number(plain.replace('−', '-')) : undefined;
}

/** Digits as the language writes them, without marks between thousands: what can be typed and read back. */
const numberWords = (value: number, lang: string) =>
  new Intl.NumberFormat(lang, {
    useGrouping: false,
    maximumFractionDigits: 6,
    numberingSystem: 'latn',
  }).format(value);

/**
 * A number written in either decimal style. Calls `onNumber` with the number, or with undefined when the
 * field is empty; anything else shows `wrong` and changes nothing.
 */
export function NumberField(props: {
  lang: string;
  label: ComponentChildren;
  value: number | undefined;
  onNumber: (value: number | undefined) => void;
  /** Sentence shown when the text is no number or out of bounds. */
  wrong: string;
  unit?: string;
  min?: number;
  max?: number;
  hint?: ComponentChildren;
  help?: ComponentChildren;
}) {
  const [draft, setDraft] = useState<string | undefined>();
  const written = draft ?? (props.value === undefined ? '' : numberWords(props.value, props.lang));
  const parsed = parseNumber(written);
  const fits =
    parsed !== undefined && parsed >= (props.min ?? -Infinity) && parsed <= (props.max ?? Infinity);
  const bad = written.trim() !== '' && !fits;
  return (
    <Field label={props.label} hint={props.hint} error={bad ? props.wrong : undefined} help={props.help}>
      {(ids) => (
        <span class="with-unit">
          <input
            {...ids}
            inputmode="decimal"
            autocomplete="off"
            value={written}
            onInput={(event) => {
              const text = event.currentTarget.value;
              setDraft(text);
              const value = parseNumber(text);
              if (text.trim() === '') props.onNumber(undefined);
              else if (
                value !== undefined &&
                value >= (props.min ?? -Infinity) &&
                value <= (props.max ?? Infinity)
              )
                props.onNumber(value);
            }}
            onBlur={() => !bad && setDraft(undefined)}
          />
          {props.unit && <span class="unit">{props.unit}</span>}
        </span>
      )}
    </Field>
  );
}
