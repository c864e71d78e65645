import type { ComponentChildren } from "preact";
import { words } from "../words";

export interface Column<Row> {
  head: string;
  cell: (row: Row) => ComponentChildren;
  number?: boolean;
}

/** A plain table; scrolls sideways on its own where the screen is narrow. */
export function Table<Row>(props: { caption: string; columns: Column<Row>[]; rows: Row[] }) {
  return (
    <div class={`table${props.columns.length > 5 ? " wide" : ""}`} tabIndex={0} role="region" aria-label={props.caption}>
      <table>
        <caption>{props.caption}</caption>
        <thead>
          <tr>
            {props.columns.map((column) => (
              <th key={column.head} scope="col" class={column.number ? "number" : undefined}>
                {column.head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {props.rows.map((row, index) => (
            <tr key={index}>
              {props.columns.map((column, place) =>
                place === 0 ? (
                  <th key={place} scope="row" class={column.number ? "number" : undefined}>
                    {column.cell(row)}
                  </th>
                ) : (
                  <td key={place} class={column.number ? "number" : undefined}>
                    {column.cell(row)}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** The numbers under a picture: there on demand, by mouse or keyboard. */
export function Numbers(props: { title?: string; children: ComponentChildren }) {
  return (
    <details class="numbers">
      <summary>{props.title ?? words.table.numbers}</summary>
      {props.children}
    </details>
  );
}
