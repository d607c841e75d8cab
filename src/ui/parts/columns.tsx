import type { ComponentChildren } from 'preact';

/** Two columns where there is room, read one after the other; else as if they were not there. */
export function Columns({ start, end }: { start: ComponentChildren; end: ComponentChildren }) {
  return (
    <div class="columns">
      <div>{start}</div>
      <div>{end}</div>
    </div>
  );
}
