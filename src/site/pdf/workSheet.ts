import { brakePicture, linesOf } from "../../drawing/forming/brakePicture.ts";
import { aboveNote, onRolls } from "../../drawing/forming/onRolls.ts";
import { rollSections, sectionNote } from "../../drawing/forming/rollSection.ts";
import { forceColumn } from "../../drawing/format.ts";
import { edgePaths, endsOf } from "../../drawing/pattern/edges.ts";
import type { Shop } from "../../forming/machine.ts";
import type { FormingPlan } from "../../forming/plan.ts";
import type { BrakePlan } from "../../forming/brakePlan.ts";
import { beside, type Block, framed, stack } from "../../output/pdf/block.ts";
import type { Pdf } from "../../output/pdf/document.ts";
import type { Room } from "../../output/pdf/flow.ts";
import { GAP_MM } from "../../output/pdf/paginate.ts";
import { tableBlock } from "../../output/pdf/tableBlock.ts";
import { paragraph } from "../../output/pdf/words.ts";
import type { Report } from "../../report/report.ts";
import { lotOf } from "../forming/lot.ts";
import { footnotes } from "../forming/footnotes.ts";
import { fromAbove } from "../forming/fromAbove.ts";
import { ABOVE_PAPER, linesPaper, SECTIONS_PAPER } from "../forming/papers.ts";
import { chosenPlan } from "../forming/plan.ts";
import { sectionsOf } from "../forming/sections.ts";
import { SETTING_NAMES, settingProblems, settingRows } from "../forming/settingRows.ts";
import { explainedIn, type Glossary } from "../forming/rollWords.ts";
import { isLarge, onTheBack, type Side, sidesOf, turnOver, WORDS_NEXT } from "../forming/stepSides.ts";
import { BESIDE_NOTE, hitsNote, WINDOW_NOTE } from "../forming/sheetWords.ts";
import { bendsBeside } from "../words/bendsBeside.ts";
import { alikeName } from "../words/alikeName.ts";
import { depthCell } from "../words/depthCell.ts";
import { degrees, numbersIn } from "../words/numbers.ts";
import { bentFrom } from "../words/shapes.ts";
import { neverOn, withCare } from "../words/work.ts";
import { basisRun } from "./basisRun.ts";
import { bold, caution, heading, picture } from "./blocks.ts";
import { isBlankApart } from "../forming/papers.ts";
import { blankBlocks } from "./blankBlocks.ts";
import { inspectionTable } from "./inspectionTable.ts";
import { lotTable } from "./lotTable.ts";
import { springbackPlots } from "./springbackPlots.ts";
import { stepCard, stepNotes, stepWords } from "./stepCard.ts";

type Known = ReadonlyMap<string, string>;

const right = { align: "right" as const, share: 1 };
/** What a work sheet is made with besides the report. */
interface Around {
  readonly shop: Shop | undefined;
  readonly known: Known;
  readonly glossary: Glossary;
  readonly room: Room;
}

/** How the part is formed, step by step, with room for what was set and measured; undefined where no machine takes it. */
export function workSheet(pdf: Pdf, report: Report, around: Around): (Block | null)[] | undefined {
  const plan = chosenPlan(report);
  if (!plan) return undefined;
  const { shop, known, room } = around;
  const few = lotOf(report, plan)?.few === true;
  const zones = plan.settings?.zones ?? [];
  const lotLines = lotTable(pdf, report, plan);
  const printed = steps(pdf, report, plan, around);
  return [
    ...printed.blocks,
    ...(few ? [] : [null, ...lotLines]),
    null,
    ...(shop ? [...seenFromAbove(pdf, report, plan, shop), ...sections(pdf, report, plan, shop)] : []),
    ...settings(pdf, report, plan, known),
    ...printed.wordsBehind,
    // In one piece: of a few lines none is left alone on another page.
    ...(few ? [stack(lotLines, GAP_MM)] : []),
    ...springbackPlots(pdf, report, { plan, known }),
    ...(isBlankApart(report, zones) ? blankBlocks(pdf, report, zones) : []),
    ...(plan.brake ? bendLines(pdf, report, { plan: plan.brake, known }) : []),
    ...inspectionTable(pdf, report, { plan, known, room }),
  ];
}

interface Printed {
  readonly blocks: readonly (Block | null)[];
  /** What their words mean, where that had to give way to larger letters. */
  readonly wordsBehind: readonly Block[];
}

/** What is worked by: on both sides of one sheet, in the largest letters that it has room for. */
function steps(pdf: Pdf, { part }: Report, plan: FormingPlan, { known, glossary, room }: Around): Printed {
  const notes = footnotes(plan, part.units);
  const before: Block[] = [
    {
      ...titled(
        pdf,
        `Work sheet: ${part.title}`,
        [plan.machine ?? "no machine given", withCare(plan)].filter(Boolean).join(". "),
      ),
      bookmark: "Steps",
    },
    // In one paragraph: the steps below need the room.
    caution(
      pdf,
      [neverOn(plan).join(" ")].filter((words) => words !== ""),
    ),
    ...(plan.brake ? lookFirst(pdf, plan.brake) : []),
    ...(plan.batch.length > 0 ? [paragraph(pdf, [bold("The lot. "), { text: plan.batch.join(" ") }])] : []),
  ];
  const basis = stepNotes(pdf, { notes, known });
  const words = stepWords(pdf, explainedIn(plan, glossary));
  const card = ({ steps: own, type }: Side) => stepCard(pdf, own, { units: part.units, notes, type });
  const front = (side: Side, over: string) => [...before, card(side), paragraph(pdf, [bold(over)])];
  const back = (side: Side, name: string, foot: readonly Block[]) => [
    titled(pdf, name, part.title),
    card(side),
    basis,
    ...foot,
  ];
  const sidesWith = (foot: readonly Block[]) =>
    sidesOf(plan.steps, (side, own, type) => {
      const one = { steps: own, type };
      // Which steps are named there makes no odds to the height.
      const blocks =
        side === "front" ? front(one, turnOver([one, one])) : back(one, onTheBack([one, one]), foot);
      return stack(blocks, GAP_MM).height(room.widthMm) <= room.heightMm;
    });
  const whole = (foot: readonly Block[], sides: readonly [Side, Side]) => [
    ...front(sides[0], turnOver(sides)),
    null,
    ...back(sides[1], onTheBack(sides), foot),
    null,
  ];
  const sides = sidesWith(words);
  if (sides.every(({ type }) => isLarge(type)) || !plan.settings)
    return { blocks: whole(words, sides), wordsBehind: [] };
  const next = [paragraph(pdf, WORDS_NEXT)];
  return { blocks: whole(next, sidesWith(next)), wordsBehind: words };
}

const titled = (pdf: Pdf, words: string, where: string): Block =>
  beside(
    [
      paragraph(pdf, [bold(words)], { capMm: 4, leading: 1.4 }),
      paragraph(pdf, where, { capMm: 2.4, align: "right" }),
    ],
    [3, 1],
  );

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

function seenFromAbove(pdf: Pdf, report: Report, plan: FormingPlan, shop: Shop): Block[] {
  const above = fromAbove(report, plan, shop);
  if (!above) return [];
  return [
    heading(pdf, "The blank on the rolls"),
    stack([picture(pdf, onRolls(above, { paper: ABOVE_PAPER })), paragraph(pdf, aboveNote(above))]),
  ];
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
          { text: sectionNote(one) },
        ]),
      ]),
    ),
  ];
}

function settings(
  pdf: Pdf,
  { part }: Report,
  { settings: found, noSettings, machine, steps }: FormingPlan,
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
      rows: settingRows(found, steps).map(({ zone, number, label, raisesMm, tiltDeg, bearingsMm }) => [
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
    ...steps.flatMap(({ number, example }) =>
      example === undefined ? [] : [paragraph(pdf, [bold(`Step ${number}. `), { text: example }])],
    ),
    paragraph(pdf, [{ text: `${found.rule} ${WINDOW_NOTE} ` }, basisRun(known, found.basis)]),
  ];
}

function bendLines(
  pdf: Pdf,
  report: Report,
  { plan, known }: { plan: BrakePlan; known: Known },
): (Block | null)[] {
  const { units } = report.part;
  const say = numbersIn(units);
  const beside = bendsBeside(report, plan);
  const own = report.blanks.filter(({ sameAs }) => sameAs === null);
  const several = report.blanks.length > 1;
  const named = (text: string): Block => ({ ...paragraph(pdf, [bold(text)]), withNext: true });
  return [
    heading(pdf, "Bend lines"),
    paragraph(pdf, `${hitsNote(report.part)} ${BESIDE_NOTE}`),
    ...own.flatMap((blank): Block[] => {
      const lines = linesOf(plan, blank);
      const ends = endsOf(edgePaths(blank)).map((end) => end?.name ?? "point");
      return [
        ...(several ? [named(alikeName(report, blank))] : []),
        picture(
          pdf,
          brakePicture(report, {
            paper: linesPaper({ lines: lines.length, underPlot: false, whole: false }),
            blank,
            plan,
          }),
        ),
        ...(several ? [] : [named("Lines from seam 1")]),
        tableBlock(pdf, {
          columns: [{ align: "right", share: 0.6 }, ...Array.from({ length: 9 }, () => right)],
          head: [
            [
              "Line",
              "Marking lines",
              "Bend",
              "Depth",
              ...ends.map((end) => `Along ${end}, ${units}`),
              `Length, ${units}`,
              `Bent from ${bentFrom(report.part.shape)}, ${units}`,
              "Hit",
              `Force, ${units === "in" ? "short tons" : "kN"}`,
            ].map((text) => ({ text })),
          ],
          rows: lines.map((one) => [
            { text: [bold(String(one.number))] },
            ...[
              beside.marking(one),
              degrees(one.bendDeg, 1),
              depthCell(plan, one, units),
              say.taped(one.alongMm.a),
              say.taped(one.alongMm.b),
              say.column(one.lengthMm),
              one.stopsShortMm > 0 ? say.taped(one.lengthMm - one.stopsShortMm) : "all",
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
