import type { ComponentChildren } from 'preact';

/** A printed label: one matter with its heading. `level` keeps the outline whole (places are h2, cards h3). */
export function Card(props: {
  title?: ComponentChildren;
  /** Small line over the title: maker, kind, date. */
  over?: ComponentChildren;
  level?: 3 | 4;
  actions?: ComponentChildren;
  children?: ComponentChildren;
  id?: string;
}) {
  const Heading = props.level === 4 ? 'h4' : 'h3';
  return (
    <section class="card" id={props.id}>
      {(props.title || props.over) && (
        <header class="card-head">
          {props.over && <p class="over">{props.over}</p>}
          {props.title && <Heading>{props.title}</Heading>}
        </header>
      )}
      {props.children}
      {props.actions && <footer class="actions">{props.actions}</footer>}
    </section>
  );
}
