import { type Block, stack } from "../../../output/pdf/block.ts";
import { paragraph } from "../../../output/pdf/words.ts";
import { LEADS } from "../../words/leads.ts";
import { READ, SOURCE_KINDS } from "../../words/sources.ts";
import { bold, heading, soft } from "../blocks.ts";
import { sourcePlace } from "../basisRun.ts";
import { prose } from "../prose.ts";
import { type BinderSheet, type Making, PLACES, sheetCells } from "./model.ts";
import { placed, titled } from "./titled.ts";

/** The sources that a text rests on, each leading to its entry; at the wall a warning that one was not seen says what it means. */
export function sourceList({ pdf, content }: Making, ids: readonly string[]): Block[] {
  return [
    heading(pdf, "Sources"),
    ...ids.map((id) => {
      const source = content.sources[id];
      if (!source) throw new RangeError(`no source with the id ${id}`);
      return paragraph(
        pdf,
        [
          { text: `${source.title}.`, to: sourcePlace(id) },
          soft(
            `${source.where === undefined ? "" : ` ${source.where}.`}${source.read === "read" ? "" : ` ${READ[source.read].means}`}`,
          ),
        ],
        { mark: "–" },
      );
    }),
  ];
}

export function safetySheets(making: Making): BinderSheet[] {
  const { pdf, content } = making;
  return content.safety.map(({ title, summary, body, sources }, i) => ({
    title,
    place: i === 0 ? PLACES.safety : `safety ${i + 1}`,
    cells: sheetCells(making, title, "Safety"),
    blocks: () => [...titled(pdf, title, summary), ...prose(pdf, body), ...sourceList(making, sources)],
  }));
}

export function glossarySheet(making: Making): BinderSheet {
  const { pdf, content } = making;
  const terms = Object.entries(content.glossary).toSorted(([a], [b]) => a.localeCompare(b, "en"));
  return {
    title: "Glossary",
    place: "glossary",
    cells: sheetCells(making, "Glossary", "Reference"),
    blocks: () => [
      ...titled(pdf, "Glossary", LEADS.glossary),
      ...terms.map(([word, { text, also }]) =>
        paragraph(pdf, [
          bold(`${word}  `),
          { text: `${text} ` },
          ...(also.length > 0 ? [soft(`Also: ${also.join(", ")}.`)] : []),
        ]),
      ),
    ],
  };
}

/** How the list is read; three bases have no entry in it. */
const HOW = [
  "Beside a figure stands what it rests on; three bases need no entry here. Common practice, no source: what shops do and no document that we know of lays down. Derived here: our own derivation, checked by the tests of this project. As drawn: a size that the part file gives.",
  "A standard or a code in force takes precedence over everything here.",
];

export function sourcesSheet(making: Making): BinderSheet {
  const { pdf, content } = making;
  const all = Object.entries(content.sources).toSorted(([, a], [, b]) =>
    a.title.localeCompare(b.title, "en"),
  );
  return {
    title: "Sources",
    place: "sources",
    cells: sheetCells(making, "Sources", "Reference"),
    blocks: () => [
      ...titled(pdf, "Sources", LEADS.sources),
      ...HOW.map((words) => paragraph(pdf, words)),
      stack(
        Object.values(READ).map(({ mark, means }) => paragraph(pdf, [bold(`${mark}. `), { text: means }])),
        0.5,
      ),
      ...SOURCE_KINDS.flatMap(([kind, name]): Block[] => {
        const own = all.filter(([, source]) => source.kind === kind);
        if (own.length === 0) return [];
        return [
          heading(pdf, name),
          ...own.map(([id, { title, where, note, read }]) =>
            placed(
              pdf,
              sourcePlace(id),
              paragraph(pdf, [
                bold(`${title}. `),
                { text: `${where === undefined ? "" : `${where}. `}${note === undefined ? "" : `${note} `}` },
                soft(`${READ[read].mark}. Id: ${id}`),
              ]),
            ),
          ),
        ];
      }),
    ],
  };
}
