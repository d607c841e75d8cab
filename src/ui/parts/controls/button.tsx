import type { ComponentChildren } from 'preact';

/** A button. `strong` is the one main thing to do, `quiet` reads as a link. Never an icon without `label`. */
export function Button(props: {
  children: ComponentChildren;
  onClick?: (event: MouseEvent) => void;
  look?: 'plain' | 'strong' | 'quiet';
  /** Name for screen readers where the visible words are not enough ("Remove" → "Remove Harbour Gel"). */
  label?: string;
  pressed?: boolean;
  expanded?: boolean;
  disabled?: boolean;
  submit?: boolean;
  id?: string;
}) {
  return (
    <button
      type={props.submit ? 'submit' : 'button'}
      class={`button ${props.look ?? 'plain'}`}
      id={props.id}
      disabled={props.disabled}
      aria-label={props.label}
      aria-pressed={props.pressed}
      aria-expanded={props.expanded}
      onClick={props.onClick}
    >
      {props.children}
    </button>
  );
}
