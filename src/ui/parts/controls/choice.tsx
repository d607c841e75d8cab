import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

export type Option<T extends string> = {
  value: T;
  label: ComponentChildren;
  hint?: ComponentChildren;
  /** A small drawing of ours that says the same. */
  drawing?: ComponentChildren;
};

type Group = { legend: ComponentChildren; help?: ComponentChildren; hint?: ComponentChildren };

function Options<T extends string>(
  props: Group & {
    type: 'radio' | 'checkbox';
    options: readonly Option<T>[];
    layout?: 'row' | 'list' | undefined;
    chosen: (value: T) => boolean;
    onPick: (value: T, on: boolean) => void;
  },
) {
  const name = useId();
  return (
    <fieldset class={`choice ${props.layout ?? 'row'}`}>
      <legend>
        {props.legend} {props.help}
      </legend>
      {props.hint && <p class="hint">{props.hint}</p>}
      <div class="options">
        {props.options.map((option) => (
          <label key={option.value} class="option">
            <input
              type={props.type}
              name={name}
              value={option.value}
              checked={props.chosen(option.value)}
              onChange={(event) => props.onPick(option.value, event.currentTarget.checked)}
            />
            {option.drawing}
            <span class="option-words">
              <span>{option.label}</span>
              {option.hint && <span class="hint">{option.hint}</span>}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/** One of several: a radio group, side by side (`row`) or as a list with room for hints and drawings. */
export function Choice<T extends string>(
  props: Group & {
    options: readonly Option<T>[];
    value: T | undefined;
    onChange: (value: T) => void;
    layout?: 'row' | 'list';
  },
) {
  const { value, onChange, ...rest } = props;
  return (
    <Options {...rest} type="radio" chosen={(each) => each === value} onPick={(each) => onChange(each)} />
  );
}

/** Any of several: check boxes; `onChange` receives all that are on, in the order of the options. */
export function CheckBoxes<T extends string>(
  props: Group & {
    options: readonly Option<T>[];
    value: readonly T[];
    onChange: (value: T[]) => void;
    layout?: 'row' | 'list';
  },
) {
  const { value, onChange, options, ...rest } = props;
  return (
    <Options
      {...rest}
      options={options}
      type="checkbox"
      chosen={(each) => value.includes(each)}
      onPick={(picked, on) =>
        onChange(
          options.map((each) => each.value).filter((each) => (each === picked ? on : value.includes(each))),
        )
      }
    />
  );
}

/** One yes or no. */
export function CheckBox(props: {
  label: ComponentChildren;
  checked: boolean;
  onChange: (on: boolean) => void;
  hint?: ComponentChildren;
}) {
  const id = useId();
  return (
    <div class="check">
      <input
        type="checkbox"
        id={id}
        checked={props.checked}
        aria-describedby={props.hint ? `${id}-hint` : undefined}
        onChange={(event) => props.onChange(event.currentTarget.checked)}
      />
      <label for={id}>{props.label}</label>
      {props.hint && (
        <span class="hint" id={`${id}-hint`}>
          {props.hint}
        </span>
      )}
    </div>
  );
}
