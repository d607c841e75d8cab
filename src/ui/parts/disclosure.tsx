import type { ComponentChildren } from 'preact';

/** More, when asked for. The browser's own details element: works by keyboard and is found by search in page. */
export function Disclosure(props: {
  summary: ComponentChildren;
  children: ComponentChildren;
  open?: boolean;
  onToggle?: (open: boolean) => void;
}) {
  return (
    <details
      class="disclosure"
      open={props.open}
      onToggle={(event) => props.onToggle?.(event.currentTarget.open)}
    >
      <summary>{props.summary}</summary>
      <div class="disclosed">{props.children}</div>
    </details>
  );
}
