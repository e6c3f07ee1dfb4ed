/** A cell of a table under an answer. */
export function cell(name: "th" | "td", text: string, scope?: string): HTMLTableCellElement {
  const made = document.createElement(name);
  made.textContent = text;
  if (scope !== undefined) made.scope = scope;
  return made;
}

/** Fills the table under an answer; it stays away where it has no rows. */
export function fillTable(
  table: HTMLTableElement,
  head: readonly HTMLTableCellElement[],
  rows: readonly (readonly HTMLTableCellElement[])[],
): void {
  table.replaceChildren(
    ...[head, ...rows].map((cells) => {
      const line = document.createElement("tr");
      line.append(...cells);
      return line;
    }),
  );
  const box = table.parentElement;
  if (box) box.hidden = rows.length === 0;
}
