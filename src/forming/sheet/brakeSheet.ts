import type { PartAsked } from "../asked.ts";
import type { BrakePlan } from "../brakePlan.ts";
import { COMMON_PRACTICE } from "../judge.ts";
import { isPointed } from "../skin.ts";
import { INSPECT } from "./finish.ts";
import { type Figure, type NumberedStep, numbered, type PlanStep } from "./step.ts";

const mm = (label: string, value: number, basis: string): Figure => ({ label, value, unit: "mm", basis });

const GUARDS =
  "Hands never between punch and die; the blank lifts quickly at a hit: keep face and arms out of its swing. Guards and the machine's manual come first.";

function setUp({ item, say }: PartAsked, plan: BrakePlan): PlanStep[] {
  const by = (constant: number) => say.force((plan.greatestForceKN * constant) / plan.forceConstant.used);
  const blank = plan.lines.length / Math.max(1, item.pieces);
  return [
    {
      id: "mark",
      phase: "set-up",
      title: "Dress and mark",
      text: `Dress the edges. Scribe the ${Math.round(blank)} bend lines of each piece on the face that is up, with number and angle, by their distances along both edges; mark where a line stops short.`,
      brief: `Dress the edges. Scribe the ${Math.round(blank)} bend lines of each piece with number and angle, on the face that is up; mark where one stops short.`,
      beware: "Sharp and heavy: gloves.",
      figures: [],
      cautions: ["Cut plate is sharp and heavy: gloves, and the shop's own lifting rules."],
      toNote: [],
      basis: COMMON_PRACTICE,
    },
    {
      id: "tooling",
      phase: "set-up",
      title: "Tooling",
      text: `Die opening ${say.length(plan.dieMm)} (this thickness wants at least ${say.length(plan.leastDieMm)}); it leaves an inside radius of about ${say.length(plan.insideRadiusMm)}. The strongest hit takes about ${say.force(plan.greatestForceKN)} over the length that is bent, by constants in use ${by(plan.forceConstant.least)} to ${by(plan.forceConstant.greatest)}; plate stronger than its grade takes more.`,
      brief: `Die opening ${say.length(plan.dieMm)}. Strongest hit about ${say.force(plan.greatestForceKN)} (${by(plan.forceConstant.least)} to ${by(plan.forceConstant.greatest)}).`,
      beware: "Hands never between punch and die.",
      figures: [
        mm("die opening", plan.dieMm, COMMON_PRACTICE),
        mm("inside radius, about", plan.insideRadiusMm, COMMON_PRACTICE),
        mm("least inside radius advised", plan.leastInsideRadiusMm, plan.leastInsideRadiusBasis),
        {
          label: "greatest force of a hit",
          value: plan.greatestForceKN,
          unit: "kN",
          basis: "groover-memory",
        },
      ],
      cautions: [GUARDS, ...plan.remarks],
      toNote: [
        { label: "die used", unit: "mm" },
        { label: "force limit set", unit: "kN" },
      ],
      basis: COMMON_PRACTICE,
    },
    {
      id: "strip",
      phase: "set-up",
      title: "Trial strip",
      text: "Bend a strip of the same plate to the angle of an inner line and note the depth that leaves it after springback.",
      brief: "Bend a strip of the same plate to an inner line's angle; note the depth after springback.",
      figures: [],
      cautions: [],
      toNote: [{ label: "ram depth for an inner line", unit: "mm" }],
      basis: COMMON_PRACTICE,
    },
  ];
}

/** What becomes of the metal beyond the ends of lines that stop short. */
const TIPS = {
  corner:
    "at the tip of each corner fold the rest along the corner's middle line, in short hits, until the corner's whole angle is there",
  cone: "the narrow end beyond them is drawn in over a bar, by template",
  point:
    "next to the point no line can be bent: cut a small end and cap it, or draw the tip in over a bar by template",
} as const;

/** A piece so narrow that no hit finds room over the die. */
const NO_LINES: PlanStep = {
  id: "bend",
  phase: "bending",
  title: "Bring to the template",
  text: "No bend line finds room over this die: bring each piece to its template over a bar, or make the part in fewer pieces.",
  brief: "No bend line finds room over this die: by template over a bar, or in fewer pieces.",
  beware: "Hands never between punch and die.",
  figures: [],
  cautions: [GUARDS],
  toNote: [],
  basis: COMMON_PRACTICE,
};

function bend({ item, say }: PartAsked, plan: BrakePlan): PlanStep {
  if (plan.lines.length === 0) return NO_LINES;
  const corners = item.tightestRadiusMm === null;
  const pointed = isPointed(item);
  const whole = plan.zones
    .map(
      ({ turnDeg }, i) => `${plan.zones.length > 1 ? `corner ${i + 1} ` : ""}${Number(turnDeg.toFixed(1))}°`,
    )
    .join(", ");
  const angles = plan.lines.map(({ bendDeg }) => bendDeg);
  const short = Math.max(0, ...plan.lines.map(({ stopsShortMm }) => stopsShortMm));
  const [least, most] = [Math.min(...angles), Math.max(...angles)].map((deg) => `${Number(deg.toFixed(1))}°`);
  const range = least === most ? least : `${least} to ${most}`;
  return {
    id: "bend",
    phase: "bending",
    title: "Bend line by line",
    text: `Lay each line under the punch by its two ends and bend it by its own angle (${range}): from seam edge 1 to the middle, then turn the piece and go from seam edge 2 to the middle.${short > 0 ? ` End lines short of the narrow end where they run nearer than half the die opening, by up to ${say.length(short)}; ${TIPS[corners ? "corner" : pointed ? "point" : "cone"]}${corners ? `: ${whole}` : ""}.` : ""} Underbend at first and try the template after every few hits.`,
    brief: `Each line under the punch by its two ends, by its own angle (${range}): seam edge 1 to the middle, turn, seam edge 2 to the middle.${short > 0 ? ` Lines stop up to ${say.length(short)} short; ${TIPS[corners ? "corner" : pointed ? "point" : "cone"]}${corners ? `: ${whole}` : ""}.` : ""} Underbend first; template often.`,
    beware: "Look before each hit that no flange meets the machine.",
    figures: [
      ...(short > 0
        ? [mm("lines stop short of the narrow end by up to", short, "metalforming-step-bending")]
        : []),
      ...plan.zones.map(({ piece, zone, turnDeg }): Figure => ({
        label: `piece ${piece}, curve ${zone}: all its bends together`,
        value: turnDeg,
        unit: "°",
        basis: "derived here",
      })),
    ],
    cautions: [
      GUARDS,
      "A line bent too far is hard to open again.",
      "Look before each hit that no flange meets ram, punch holder or frame as it swings up.",
    ],
    toNote: [
      { label: "ram depth, borders", unit: "mm" },
      { label: "ram depth, inner lines", unit: "mm" },
    ],
    basis: COMMON_PRACTICE,
  };
}

/** The numbered work sheet of one part on a press brake. */
export function brakeSheet(asked: PartAsked, plan: BrakePlan): NumberedStep[] {
  const tack: PlanStep = {
    id: "tack",
    phase: "tack and re-round",
    title: "Tack",
    text: `Stand the ${asked.item.pieces === 1 ? "piece" : "pieces"} on a drawn outline of the larger end, bring the seam edges together and set sound tacks from the middle outwards.`,
    brief: "On a drawn outline of the larger end, seam edges together, sound tacks from the middle outwards.",
    beware: "Hot work.",
    figures: [],
    cautions: ["Hot work: fire watch and ventilation by local rules."],
    toNote: [],
    basis: COMMON_PRACTICE,
  };
  const ready = plan.lines.length > 0 ? setUp(asked, plan) : [];
  return numbered([...ready, bend(asked, plan), tack, INSPECT]);
}

/** How a lot goes through the brake. Nothing for a single blank. */
export function brakeBatch({ item }: PartAsked): string[] {
  const blanks = item.pieces * item.quantity;
  return blanks === 1
    ? []
    : [
        `${blanks} blanks in the lot (${item.quantity} × ${item.pieces}): mark each with its number.`,
        "Bend the first alone, try it against the templates and write down the ram depths; then all others by the same stops.",
      ];
}
