import type { ComponentChildren } from 'preact';
import { Field } from './field.tsx';

/** One of many in a menu. `empty` is the words of "nothing chosen"; without it something always is. */
export function Select<T extends string>(props: {
  label: ComponentChildren;
  options: readonly { value: T; label: string }[];
  value: T | undefined;
  onChange: (value: T | undefined) => void;
  empty?: string;
  hint?: ComponentChildren;
  help?: ComponentChildren;
  inline?: boolean;
}) {
  return (
    <Field label={props.label} hint={props.hint} help={props.help} inline={props.inline}>
      {(ids) => (
        <select
          {...ids}
          value={props.value ?? ''}
          onChange={(event) =>
            props.onChange(props.options.find((each) => each.value === event.currentTarget.value)?.value)
          }
        >
          {props.empty !== undefined && <option value="">{props.empty}</option>}
          {props.options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
