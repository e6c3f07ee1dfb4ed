import { patternDrawing } from "../../drawing/pattern.ts";
import type { Drawing } from "../../drawing/model.ts";
import { viewsDrawing } from "../../drawing/views.ts";
import type { Check } from "../../forming/check.ts";
import { beside, type Block, stack } from "../../output/pdf/block.ts";
import type { Pdf } from "../../output/pdf/document.ts";
import { tableBlock } from "../../output/pdf/tableBlock.ts";
import { paragraph } from "../../output/pdf/words.ts";
import type { Shop } from "../../forming/machine.ts";
import type { Report } from "../../report/report.ts";
import { chosenPlan } from "../forming/plan.ts";
import { pairPaper } from "../parts/pairPaper.ts";
import { ACROSS, COLUMN } from "../parts/papers.ts";
import { closureNote } from "../words/closureNote.ts";
import { cutParagraphs, girthSentence, trustParagraphs } from "../words/blankWords.ts";
import { checkFigures, noMachine, refusal, routeSentence } from "../words/forming.ts";
import { numbersIn, percent, thickness } from "../words/numbers.ts";
import { sizeFacts } from "../words/partSize.ts";
import { SHAPE_NAMES } from "../words/shapes.ts";
import { CHECK_ALL, CHECK_ROLL, neverOn } from "../words/work.ts";
import { basisRun } from "./basisRun.ts";
import { keyRow } from "./keyRow.ts";
import { marking } from "./markingBlocks.ts";
import { bold, caution, facts, heading, pairs, picture, ticks, verdictWords } from "./blocks.ts";

export interface CardAround {
  readonly material: string;
  readonly gauge: string | null;
  readonly known: ReadonlyMap<string, string>;
  /** Whose machines were asked. */
  readonly shop?: Shop | undefined;
}

/** How large the views are on the card. */
export interface ViewsSize {
  /** [mm] */
  readonly heightMm: number;
  /** The view from the left too, beside the others. */
  readonly three: boolean;
}
/** Capitals of a check, and of the rule and the basis behind it. [mm] */
export interface Letters {
  readonly checkMm: number;
  readonly reasonMm: number;
}
/** A card hangs on a wall: its reasons are no lighter than what they explain. */
const REASON_INK = 0.1;
/** Width of two views, and of three; of a pattern, and what lies between two of them and below each. [mm] */
const [TWO_MM, THREE_MM] = [88, 118];
const PAIR_MM = { widthMm: ACROSS.widthMm, gapMm: 4, footMm: 12 };

/** Its two sides: what it is and whether it goes, then how it is made; each with drawings as tall as asked for. */
export interface PartCard {
  readonly front: (views: ViewsSize, letters: Letters) => Block[];
  readonly back: (patternMm: number) => Block[];
}

/** A part on paper, in the order of the work: sizes, whether it goes, the blank with its marking table, what is checked. */
export function partCard(pdf: Pdf, report: Report, { material, gauge, known, shop }: CardAround): PartCard {
  const { part, forming } = report;
  const rolled = forming.route === "roll";
  const what = [
    SHAPE_NAMES[part.shape],
    material,
    thickness(part.thickness, part.units, gauge).value,
    `${part.quantity ?? 1} off`,
  ].join(" · ");
  const on = forming.machine === null ? "" : ` on ${forming.machine}`;
  const note = (part.notes ?? "").trim();
  const head = [
    { ...paragraph(pdf, [bold(part.title)], { capMm: 4.2 }), bookmark: part.title },
    paragraph(pdf, [{ text: `${what} · ` }, bold(`${verdictWords(forming.verdict)}${on}`)], { capMm: 2.2 }),
    keyRow(pdf, report),
    heading(pdf, "Size"),
  ];
  const sizes = stack([
    facts(pdf, sizeFacts(report, gauge)),
    caution(pdf, neverOn({ route: forming.route, steps: chosenPlan(report)?.steps })),
    ...(note === "" ? [] : note.split("\n").map((one) => paragraph(pdf, [bold("Note. "), { text: one }]))),
  ]);
  const checks = (letters: Letters) => [
    heading(pdf, "Will it go?"),
    paragraph(
      pdf,
      [bold(`${verdictWords(forming.verdict)}. `), { text: routeSentence(forming, noMachine(shop)) }],
      {
        capMm: 2.2,
      },
    ),
    ...pairs(forming.checks.map((one) => checkBlock(pdf, one, { report, known, letters }))),
    ...machines(pdf, report, letters),
  ];
  const below = [
    ...[...cutParagraphs(report), ...trustParagraphs(report)].map((sentences) =>
      paragraph(pdf, sentences.join(" ")),
    ),
    paragraph(pdf, girthSentence(report, { brief: false })),
    heading(pdf, "Marking table"),
    ...marking(pdf, report),
    ...closure(pdf, report),
    heading(pdf, "Check"),
    ticks(pdf, [...CHECK_ALL, ...(rolled ? CHECK_ROLL : [])]),
  ];
  // The same views are tried with letters of several sizes.
  const pictures = new Map<ViewsSize, Block>();
  const drawn = (views: ViewsSize): Block => {
    const picked = pictures.get(views) ?? picture(pdf, viewsOf(report, gauge, views));
    pictures.set(views, picked);
    return picked;
  };
  return {
    front: (views, letters) => [
      ...head,
      beside([drawn(views), sizes], views.three ? [2.1, 1] : [1, 1]),
      ...checks(letters),
    ],
    back: (patternMm) => [heading(pdf, "Blank"), ...patterns(pdf, report, patternMm), ...below],
  };
}

const viewsOf = (report: Report, gauge: string | null, { heightMm, three }: ViewsSize): Drawing =>
  three
    ? viewsDrawing(report, { paper: { ...ACROSS, widthMm: THREE_MM, heightMm }, gauge })
    : viewsDrawing(report, { paper: { ...COLUMN, widthMm: TWO_MM, heightMm }, views: "two", gauge });

function checkBlock(
  pdf: Pdf,
  check: Check,
  {
    report: { part },
    known,
    letters: { checkMm, reasonMm },
  }: { report: Report; known: ReadonlyMap<string, string>; letters: Letters },
): Block {
  const figures = checkFigures(check, part.units);
  const reason = { capMm: reasonMm, ink: REASON_INK };
  return paragraph(
    pdf,
    [
      bold(`${verdictWords(check.verdict)} · ${check.title} `),
      { text: `${figures === null ? "" : `${figures}. `}${check.advice} ` },
      { text: `${check.rule} · `, ...reason },
      { ...basisRun(known, check.basis), ...reason },
    ],
    { capMm: checkMm },
  );
}

/** Every machine of the shop, where there are several. */
function machines(pdf: Pdf, { forming, part }: Report, { reasonMm }: Letters): Block[] {
  if (forming.machines.length < 2) return [];
  return [
    stack(
      forming.machines.map(({ machine, kind, verdict, checks }) =>
        paragraph(pdf, [
          { text: `${machine} (${kind}): ` },
          bold(verdictWords(verdict)),
          ...(machine === forming.machine
            ? []
            : [{ text: ` ${refusal(checks, part.units)}`, capMm: reasonMm, ink: REASON_INK }]),
        ]),
      ),
      0.3,
    ),
  ];
}

function patterns(pdf: Pdf, report: Report, heightMm: number): Block[] {
  const own = report.blanks.filter(({ sameAs }) => sameAs === null);
  if (own.length === 1)
    return own.map((blank) =>
      picture(pdf, patternDrawing(report, { blank, paper: { ...ACROSS, heightMm } })),
    );
  const { paper, stacked } = pairPaper(report, COLUMN, { ...PAIR_MM, heightMm });
  const all = own.map((blank) => picture(pdf, patternDrawing(report, { blank, paper })));
  return stacked ? all : pairs(all);
}

/** What template and tape show while a cone closes. */
function closure(pdf: Pdf, report: Report): Block[] {
  const { forming, part } = report;
  if (forming.route !== "roll" || forming.closure.length === 0) return [];
  const say = numbersIn(part.units);
  const small = forming.closure.some((row) => row.small !== null);
  const ends = small ? (["large", "small"] as const) : (["large"] as const);
  const right = { align: "right" as const, share: 1 };
  return [
    heading(pdf, "Closure"),
    paragraph(pdf, closureNote(report)),
    tableBlock(pdf, {
      columns: [right, right, ...ends.flatMap(() => [right, right, right]), { align: "left", share: 2 }],
      head: [
        [
          { text: "Closed" },
          { text: "Share of the bend" },
          ...ends.map((end) => ({ text: `${end} end, ${say.unit}`, span: 3 })),
          { text: "Mark" },
        ],
        [
          { text: "" },
          { text: "" },
          ...ends.flatMap(() => ["template level", "template square", "gap"].map((text) => ({ text }))),
          { text: "" },
        ],
      ],
      rows: forming.closure.map((row) => {
        const closed = { text: [bold(percent(row.closed, 1))] };
        const mark = { text: row.mark ?? "" };
        if (row.large === null && row.small === null)
          return [closed, { text: "flat is already this far closed", span: 1 + 3 * ends.length }, mark];
        const cells = ends.flatMap((end) => {
          const one = row[end];
          return (
            one
              ? [one.insideLevelRadiusMm, one.insideSquareRadiusMm, one.insideGapMm].map((mm) =>
                  say.column(mm),
                )
              : ["–", "–", "–"]
          ).map((text) => ({ text }));
        });
        return [closed, { text: row.share === null ? "–" : percent(row.share) }, ...cells, mark];
      }),
    }),
  ];
}
