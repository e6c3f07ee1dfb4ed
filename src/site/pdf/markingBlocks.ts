import { beside, type Block } from "../../output/pdf/block.ts";
import type { Pdf } from "../../output/pdf/document.ts";
import { type Cell, tableBlock } from "../../output/pdf/tableBlock.ts";
import { paragraph } from "../../output/pdf/words.ts";
import type { Report } from "../../report/report.ts";
import { columns as split } from "../bits/columns.ts";
import { markingOf, markingSentences } from "../words/marking.ts";
import { bold } from "./blocks.ts";

/** The marking table on paper, its pieces one below the other; where one goes on on the next sheet, that says which it is. */
export function marking(pdf: Pdf, report: Report): Block[] {
  const { columns, pieces, rows, tables } = markingOf(report);
  const groups = [...new Set(columns.map(({ group }) => group))];
  const head = [
    [
      { text: "Line" },
      ...groups.flatMap((group) =>
        group === null
          ? columns.filter((one) => one.group === null).map(({ name }) => ({ text: name }))
          : [{ text: group, span: columns.filter((one) => one.group === group).length }],
      ),
    ],
    [{ text: "" }, ...columns.map(({ group, name }) => ({ text: group === null ? "" : name }))],
  ];
  const shares = [
    { align: "right" as const, share: 0.85 },
    ...columns.map(() => ({ align: "right" as const, share: 1 })),
  ];
  const named = new Map(
    pieces.map((piece) => [
      piece,
      [{ text: [bold(`Piece ${piece}`)], span: columns.length + 1, align: "left" as const }],
    ]),
  );
  const again = new Map<readonly Cell[], readonly Cell[]>();
  for (const [piece, row] of named) {
    const on = row.map((cell) => ({ ...cell, text: [bold(`Piece ${piece}, continued`)] }));
    again.set(row, on).set(on, on);
  }
  const own = split(rows, tables).map((some) =>
    tableBlock(pdf, {
      columns: shares,
      head,
      again: (row) => again.get(row),
      rows: pieces.flatMap((piece) => {
        const those = some.filter((row) => row.piece === piece);
        const name = named.get(piece);
        return [
          ...(name && pieces.length > 1 && those.length > 0 ? [name] : []),
          ...those.map((row) => [
            { text: [bold(String(row.number))] },
            ...columns.map(({ cell }) => ({ text: cell(row) })),
          ]),
        ];
      }),
    }),
  );
  const words = { ...paragraph(pdf, markingSentences(report, { brief: false }).join(" ")), withNext: true };
  const [first] = own;
  return [
    words,
    ...(own.length === 1 && first
      ? [first]
      : [
          beside(
            own,
            own.map(() => 1),
          ),
        ]),
  ];
}
