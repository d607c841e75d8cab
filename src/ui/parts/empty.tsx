import type { ComponentChildren } from 'preact';

/** Nothing here yet: says so, and what to do next. */
export function Empty(props: { title: string; children?: ComponentChildren; actions?: ComponentChildren }) {
  return (
    <div class="empty">
      <h3>{props.title}</h3>
      {props.children}
      {props.actions && <div class="actions">{props.actions}</div>}
    </div>
  );
}
