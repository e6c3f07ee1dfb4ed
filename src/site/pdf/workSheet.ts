import type { Units } from "../../geometry/units.ts";
import { brakePicture, linesOf } from "../../drawing/forming/brakePicture.ts";
import { rollSections, sectionNote } from "../../drawing/forming/rollSection.ts";
import { forceColumn } from "../../drawing/format.ts";
import { edgePaths, endsOf } from "../../drawing/pattern/edges.ts";
import type { Shop } from "../../forming/machine.ts";
import type { FormingPlan } from "../../forming/plan.ts";
import type { BrakePlan } from "../../forming/brakePlan.ts";
import { beside, type Block, framed, stack } from "../../output/pdf/block.ts";
import type { Pdf } from "../../output/pdf/document.ts";
import { tableBlock } from "../../output/pdf/tableBlock.ts";
import { paragraph } from "../../output/pdf/words.ts";
import type { Report } from "../../report/report.ts";
import { LINES_PAPER, SECTIONS_PAPER } from "../forming/papers.ts";
import { basesOf, chosenPlan, phasesOf } from "../forming/plan.ts";
import { sectionsOf } from "../forming/sections.ts";
import { byHandWords } from "../forming/byHandWords.ts";
import { SETTING_NAMES, settingProblems, settingRows } from "../forming/settingRows.ts";
import { addedWords, gridOf, plannedWords } from "../forming/planned.ts";
import { degrees, numbersIn } from "../words/numbers.ts";
import { ROLL_NEVER } from "../words/work.ts";
import { basisRun, basisRuns } from "./basisRun.ts";
import { bold, caution, heading, picture, soft } from "./blocks.ts";

type Known = ReadonlyMap<string, string>;

const right = { align: "right" as const, share: 1 };
/** Height of a row that is written in. [mm] */
const WRITE_MM = 8;

/** How the part is formed, step by step, with room for what was set and measured; undefined where no machine takes it. */
export function workSheet(
  pdf: Pdf,
  report: Report,
  { shop, known }: { shop: Shop | undefined; known: Known },
): (Block | null)[] | undefined {
  const plan = chosenPlan(report);
  if (!plan) return undefined;
  const { part } = report;
  return [
    { ...paragraph(pdf, [bold(`Work sheet: ${part.title}`)], { capMm: 4.2 }), bookmark: "Steps" },
    paragraph(pdf, plan.machine ?? "no shop file given", { capMm: 2.4 }),
    caution(pdf, plan.route === "roll" ? ROLL_NEVER : []),
    ...(plan.brake ? lookFirst(pdf, plan.brake) : []),
    ...plan.steps.map((step) => stepBlock(pdf, step, report)),
    paragraph(pdf, [soft("Basis: "), ...basisRuns(known, basesOf(phasesOf(plan))), soft(".")]),
    ...(plan.batch.length > 0 ? [paragraph(pdf, [bold("The lot. "), { text: plan.batch.join(" ") }])] : []),
    ...(shop ? sections(pdf, report, plan, shop) : []),
    ...settings(pdf, report, plan, known),
    ...(plan.brake ? bendLines(pdf, report, { plan: plan.brake, known }) : []),
    ...inspection(pdf, report, known),
  ];
}

/** What can spoil the work or hurt before the first hit. */
const lookFirst = (pdf: Pdf, { remarks }: BrakePlan): Block[] =>
  remarks.length === 0
    ? []
    : [
        framed(
          pdf,
          stack(
            [
              paragraph(pdf, [bold("Look at this first.")]),
              ...remarks.map(({ text }) => paragraph(pdf, text, { mark: "–" })),
            ],
            0.3,
          ),
        ),
      ];

/** A step in few words and large letters; beside it lines to write on. */
function stepBlock(pdf: Pdf, step: FormingPlan["steps"][number], { part }: Report): Block {
  const unit = (one: string) =>
    one === "mm" ? part.units : one === "kN" && part.units === "in" ? "short tons" : one;
  const words = paragraph(
    pdf,
    [
      bold(`${step.title}. `),
      { text: `${step.brief} ` },
      ...(step.beware === undefined ? [] : [bold(step.beware)]),
    ],
    { capMm: 2.5, mark: String(step.number), indentMm: 7 },
  );
  const said = step.byHand ? stack([words, byHand(pdf, step.byHand, part.units)], 0.4) : words;
  if (step.toNote.length === 0) return said;
  const notes = step.toNote.map(({ label, unit: own, planned, onto }) => {
    const name = label.replace(/, (?:set|measured)$/, "");
    const text =
      planned === undefined
        ? `${name}${own === "-" ? "" : `, ${unit(own)}`}`
        : `${name}: ${onto ? `at 0 ______ ${addedWords(planned, own, part.units)} =` : plannedWords(planned, own, part.units)}`;
    return toWrite(pdf, text);
  });
  const grid = gridOf(step);
  if (grid !== "zone-sums" && grid !== "pairs") return beside([said, stack(notes, 0.4)], [2.5, 1]);
  // Too long to stand beside the words: below them, a row a zone.
  const shares = grid === "pairs" ? [1, 1] : [1.35, 1.05, 0.7];
  const rows = Array.from({ length: Math.ceil(notes.length / shares.length) }, (_, i) => {
    const row = notes.slice(i * shares.length, (i + 1) * shares.length);
    return beside(row, shares.slice(0, row.length), 3);
  });
  return stack([said, ...rows], 0.4);
}

/** The table to correct by without a screen. */
function byHand(pdf: Pdf, rows: NonNullable<FormingPlan["steps"][number]["byHand"]>, units: Units): Block {
  const { gaps, raises } = byHandWords(rows, units);
  const line = ({ name, cells }: typeof gaps) => [{ text: [bold(name)] }, ...cells.map((text) => ({ text }))];
  return tableBlock(pdf, {
    capMm: 1.5,
    columns: [{ align: "left", share: 2 }, ...rows.map(() => right)],
    head: [],
    rows: [line(gaps), line(raises)],
  });
}

/** A name and a line to write on behind it. */
function toWrite(pdf: Pdf, text: string): Block {
  const how = { capMm: 1.8 };
  const high = 5;
  return {
    height: () => high,
    draw: (x, y, width) => {
      pdf.write(text, [x, y + high - 1.6], how);
      const from = Math.min(pdf.width(text, how) + 1.5, width - 10);
      pdf.line([x + from, y + high], [x + width, y + high], { widthMm: 0.25 });
    },
  };
}

function sections(pdf: Pdf, report: Report, plan: FormingPlan, shop: Shop): Block[] {
  const all = sectionsOf(report, plan, shop);
  if (all.length === 0) return [];
  return [
    heading(pdf, "The rolls in section"),
    ...all.map((one) =>
      stack([
        picture(pdf, rollSections(one, { paper: SECTIONS_PAPER })),
        paragraph(pdf, [
          ...(all.length > 1 ? [bold(`${one.lines[0] ?? ""}. `)] : []),
          { text: sectionNote(one.units) },
        ]),
      ]),
    ),
  ];
}

function settings(
  pdf: Pdf,
  { part }: Report,
  { settings: found, noSettings, machine }: FormingPlan,
  known: Known,
): Block[] {
  if (!found)
    return noSettings === null
      ? []
      : [paragraph(pdf, `On ${machine ?? "a plate roll"} there are ${noSettings}.`)];
  const say = numbersIn(part.units);
  const several = found.zones.length > 1;
  const raise = (mm: number | null) => ({ text: mm === null ? "—" : say.column(mm) });
  const problems = settingProblems(found);
  return [
    heading(pdf, "Settings of the bending roll"),
    tableBlock(pdf, {
      capMm: 1.6,
      columns: [
        ...(several ? [{ align: "left" as const, share: 1.3 }] : []),
        { align: "left", share: 2.4 },
        ...SETTING_NAMES.map(() => right),
      ],
      head: [
        [
          { text: "", span: several ? 2 : 1 },
          { text: "Large end asks", span: 3 },
          { text: "Small end asks", span: 3 },
          { text: "Set to start with", span: 3 },
          { text: "At the bearings", span: 2 },
        ],
        [
          ...(several ? [{ text: "Zone" }] : []),
          { text: `Raise, ${part.units}` },
          ...SETTING_NAMES.map((text) => ({ text })),
        ],
      ],
      rows: settingRows(found).map(({ zone, number, label, raisesMm, tiltDeg, bearingsMm }) => [
        ...(several ? [{ text: `${number}: ${Math.round(zone.fromDeg)}–${Math.round(zone.toDeg)}°` }] : []),
        { text: [bold(label)] },
        ...raisesMm.map(raise),
        { text: tiltDeg === null ? "—" : degrees(tiltDeg, 1) },
        ...bearingsMm.map(raise),
      ]),
    }),
    ...(problems.length > 0
      ? [paragraph(pdf, [bold("Look at this first. "), { text: problems.join(" ") }])]
      : []),
    paragraph(pdf, [{ text: `${found.rule} ` }, basisRun(known, found.basis)]),
  ];
}

function bendLines(
  pdf: Pdf,
  report: Report,
  { plan, known }: { plan: BrakePlan; known: Known },
): (Block | null)[] {
  const { units } = report.part;
  const say = numbersIn(units);
  const own = report.blanks.filter(({ sameAs }) => sameAs === null);
  return [
    null,
    heading(pdf, "Bend lines"),
    ...own.flatMap((blank): Block[] => {
      const ends = endsOf(edgePaths(blank)).map((end) => end?.name ?? "point");
      return [
        picture(pdf, brakePicture(report, { paper: LINES_PAPER, blank, plan })),
        tableBlock(pdf, {
          columns: [{ align: "right", share: 0.6 }, ...Array.from({ length: 8 }, () => right)],
          head: [
            [
              "Line",
              "Bend",
              "Depth",
              ...ends.map((end) => `Along ${end}, ${units}`),
              `Length, ${units}`,
              `Bent, ${units}`,
              "Hit",
              `Force, ${units === "in" ? "short tons" : "kN"}`,
            ].map((text) => ({ text })),
          ],
          rows: linesOf(plan, blank).map((one) => [
            { text: [bold(String(one.number))] },
            ...[
              degrees(one.bendDeg, 1),
              one.depth,
              say.column(one.alongMm.a),
              say.column(one.alongMm.b),
              say.column(one.lengthMm),
              one.stopsShortMm > 0 ? say.column(one.lengthMm - one.stopsShortMm) : "all",
              String(one.order),
              forceColumn(one.forceKN, units),
            ].map((text) => ({ text })),
          ]),
        }),
      ];
    }),
    paragraph(pdf, [{ text: `${plan.rule} ` }, basisRun(known, plan.basis)]),
  ];
}

/** On a page of its own: it goes with the finished part. */
function inspection(pdf: Pdf, { part, forming }: Report, known: Known): (Block | null)[] {
  const found = forming.inspection;
  if (!found) return [];
  const say = numbersIn(part.units);
  const limited = found.toleranceClass !== null;
  const within = (nominalMm: number, withinMm: number | null) =>
    withinMm === null ? "—" : nominalMm === 0 ? say.column(withinMm) : `± ${say.column(withinMm)}`;
  return [
    null,
    heading(pdf, `Inspection: ${part.title}`),
    tableBlock(pdf, {
      rowMm: WRITE_MM,
      capMm: 1.8,
      columns: [
        { align: "left", share: 3 },
        right,
        ...(limited ? [right] : []),
        { align: "left", share: 3 },
        { align: "left", share: 1.6 },
      ],
      head: [
        [
          { text: "What" },
          { text: `Nominal, ${part.units}` },
          ...(limited ? [{ text: `Within, ${part.units}` }] : []),
          { text: "Measured" },
          { text: "Basis" },
        ],
      ],
      rows: found.rows.map(({ what, nominalMm, withinMm, basis, readings }) => [
        { text: [bold(what)] },
        { text: say.taped(nominalMm) },
        ...(limited ? [{ text: within(nominalMm, withinMm) }] : []),
        { text: "", toWrite: readings },
        { text: [basisRun(known, basis)] },
      ]),
    }),
    paragraph(pdf, found.note),
  ];
}
