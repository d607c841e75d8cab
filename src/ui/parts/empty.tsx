import type { ComponentChildren } from 'preact';

/** Three strands, wavy, curly and coily: what stands where nothing else does yet. */
const Strands = () => (
  <svg class="strands" viewBox="0 0 118 38" width="118" height="38" aria-hidden="true">
    <path class="teal" d={`M2 7${'q9.500-8 19 0t19 0'.repeat(3)}`} />
    <path class="plum" d={`M2 20${'q4.750-9 9.500 0t9.500 0'.repeat(6)}`} />
    <path d={`M2 35${'c8 0 9-9 4.750-9s-3.250 9 4.750 9'.repeat(12)}`} />
  </svg>
);

/** Nothing here yet: says so, and what to do next. */
export function Empty(props: { title: string; children?: ComponentChildren; actions?: ComponentChildren }) {
  return (
    <div class="empty">
      <Strands />
      <h3>{props.title}</h3>
      {props.children}
      {props.actions && <div class="actions">{props.actions}</div>}
    </div>
  );
}
