import type { ComponentChildren } from "preact";

/** A table of the plan; its first column says what each row is about. */
export function SheetTable({
  caption,
  head,
  rows,
  offPaper = [],
}: {
  caption: string;
  head: readonly string[];
  rows: readonly (readonly ComponentChildren[])[];
  /** Columns that are not printed: what is on paper must fit there. */
  offPaper?: readonly string[] | undefined;
}) {
  const on = (column: number) => (offPaper.includes(head[column] ?? "") ? "not-on-paper" : undefined);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls where it is too wide, and must do so from the keyboard
    <section class="table-frame" aria-label={caption} tabIndex={0}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            {head.map((title, column) => (
              <th key={title} scope="col" class={on(column)}>
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((cells, row) => (
            <tr key={String(row)}>
              {cells.map((cell, column) =>
                column === 0 ? (
                  <th key={head[column]} scope="row">
                    {cell}
                  </th>
                ) : (
                  <td key={head[column]} class={on(column)}>
                    {cell}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** A box to tick with a pencil. */
export const box = (
  <span class="tick" aria-hidden="true">
    ☐
  </span>
);

/** A line to write on. */
export const WriteHere = () => <span class="write-here" />;
