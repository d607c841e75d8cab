import type { ComponentChildren } from 'preact';

/** Names for where two columns stand below each other: each cell then says whose it is. */
const named = ([first, second]: readonly string[]) => ({
  ...(first && { '--first': JSON.stringify(first) }),
  ...(second && { '--second': JSON.stringify(second) }),
});

/** Rows of a comparison: each heading stands over its cells, so that two products fit in 320 px. */
export function Rows({ columns, children }: { columns: readonly string[]; children: ComponentChildren }) {
  return (
    <table class="side-by-side" style={{ '--columns': columns.length, ...named(columns) }}>
      <thead>
        <tr>
          {columns.map((name) => (
            <th key={name} scope="col">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      {children}
    </table>
  );
}

export function ComparedRow(props: { head: ComponentChildren; cells: ComponentChildren[] }) {
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" colSpan={props.cells.length}>
          {props.head}
        </th>
      </tr>
      <tr>
        {props.cells.map((cell, column) => (
          <td key={column}>{cell}</td>
        ))}
      </tr>
    </tbody>
  );
}
