import type { FormingCase } from "./case.ts";
import { type LinearClass, linearToleranceMm } from "./iso13920.ts";
import { AS_DRAWN, DERIVED } from "./judge.ts";
import { number } from "./say.ts";
import { templateFigures } from "./sheet/touch.ts";

/** What of a finished part the drawing asks, and straight lines that a tape reaches. [mm] */
export interface Finish {
  readonly toleranceClass?: LinearClass;
  readonly ends: readonly {
    readonly name: string;
    /** Sizes across, as drawn: one diameter, or length and width. Nothing at a point. */
    readonly acrossMm: readonly number[];
    readonly measured: string;
    /** Round the outside; null where the wall has no outside there. */
    readonly girthMm: number | null;
  }[];
  readonly heightMm: number;
  readonly tapes: readonly { readonly label: string; readonly lengthMm: number }[];
  /** Plan angle of seam 1. [degrees] */
  readonly seamDeg: number;
}

/** One line of the inspection sheet. */
interface InspectionRow {
  readonly id:
    "diameter" | "side" | "out-of-round" | "girth" | "height" | "tape" | "edge-offset" | "template";
  readonly what: string;
  /** Nought for what ought not to be there at all. [mm] */
  readonly nominalMm: number;
  /** Allowed to either side; null where nothing says. [mm] */
  readonly withinMm: number | null;
  readonly basis: string;
  /** How many readings to write down. */
  readonly readings: number;
}

export interface Inspection {
  readonly toleranceClass: LinearClass | null;
  /** What the limits are, and what they are not, in a sentence. */
  readonly note: string;
  readonly rows: readonly InspectionRow[];
}

const ISO = "iso-13920";
/** A limit comes from the standard; where there is none the row has only its size. */
const basisOf = (withinMm: number | null, size: string): string => (withinMm === null ? size : ISO);

/**
 * Radii of inside templates that the finished part is held to. One setting serves a zone of an uneven skin, but its radius
 * runs on within it: there the templates are those of four elements, a quarter turn apart from the seam.
 */
function finishedTemplates(item: FormingCase): { readonly label: string; readonly value: number }[] {
  const { curvature = [], thicknessMm, rimsMm } = item;
  if (curvature.length === 0) return templateFigures(item, 1);
  return [0, 1, 2, 3].flatMap((quarter) => {
    const sample = curvature[Math.round((quarter * curvature.length) / 4)];
    if (!sample) return [];
    const at = `plan ${Math.round(sample.planDeg) % 360}°${quarter === 0 ? " (the seam)" : ""}`;
    const radius = (end: string, middleMm: number) => ({
      label: `template radius inside, ${end} at ${at}, held square to the element line`,
      value: Math.max(0, middleMm - thicknessMm / 2),
    });
    return [
      radius("large end", sample.largeRadiusMm),
      ...(rimsMm.small > 0 ? [radius("small end", sample.smallRadiusMm)] : []),
    ];
  });
}

/** Where 0° is, and how many parts there are to inspect. */
function whereWords({ pieces, quantity }: FormingCase, { seamDeg }: Finish): string {
  const seam =
    pieces === 1
      ? `the seam is at ${seamDeg}°`
      : `seam 1 is at ${seamDeg}°, one every ${number(360 / pieces, 2)}° from there`;
  const sheets = quantity === 1 ? "" : ` One sheet for each of the ${quantity} parts: copy it.`;
  return `Seen from above with end B up 0° is to the right as on the drawing, counted counter-clockwise; ${seam}.${sheets} `;
}

/**
 * The inspection sheet: sizes as the drawing measures them with the limits of the tolerance class that the part names,
 * and distances and templates to check them by. Null where the finished part is not known.
 *
 * Out of round: two diameters may each be off by the limit, so they differ by no more than twice that. Offset of the seam
 * edges: the limit for a length as small as the thickness. Both derived here from the class; a drawing or code stands above.
 *
 * @see sources.yaml#iso-13920
 */
export function inspectionOf(item: FormingCase): Inspection | null {
  const { finish, thicknessMm } = item;
  if (!finish) return null;
  const { toleranceClass } = finish;
  const within = (nominalMm: number) =>
    toleranceClass === undefined ? null : linearToleranceMm(toleranceClass, nominalMm);
  const row = (
    id: InspectionRow["id"],
    what: string,
    nominalMm: number,
    more: Partial<InspectionRow> = {},
  ): InspectionRow => ({ id, what, nominalMm, withinMm: null, basis: DERIVED, readings: 1, ...more });

  const ends = finish.ends.flatMap(({ name, acrossMm, measured, girthMm }) => {
    const [first, second] = acrossMm;
    if (first === undefined) return [];
    if (second !== undefined)
      return acrossMm.map((side, i) =>
        row("side", `${name}, ${i === 0 ? "length" : "width"}, ${measured}, at both ends of it`, side, {
          withinMm: within(side),
          basis: basisOf(within(side), AS_DRAWN),
          readings: 2,
        }),
      );
    const limit = within(first);
    return [
      row("diameter", `${name}, diameter ${measured}, across two directions square to each other`, first, {
        withinMm: limit,
        basis: basisOf(limit, AS_DRAWN),
        readings: 2,
      }),
      row("out-of-round", `${name}, largest less smallest diameter`, 0, {
        withinMm: limit === null ? null : 2 * limit,
      }),
      ...(girthMm === null ? [] : [row("girth", `${name}, tape round the outside`, girthMm)]),
    ];
  });
  return {
    toleranceClass: toleranceClass ?? null,
    note: `${whereWords(item, finish)}${
      toleranceClass === undefined
        ? "The part names no tolerance class, so no limits are given: take them from the drawing."
        : `Limits of class ${toleranceClass} of ISO 13920 for lengths; out of round and edge offset are derived from them. A drawing or a code in force stands above.`
    }`,
    rows: [
      ...ends,
      row("height", "height at four places", finish.heightMm, {
        withinMm: within(finish.heightMm),
        basis: basisOf(within(finish.heightMm), DERIVED),
        readings: 4,
      }),
      ...finish.tapes.map(({ label, lengthMm }) =>
        row("tape", label, lengthMm, {
          withinMm: within(lengthMm),
          basis: basisOf(within(lengthMm), DERIVED),
        }),
      ),
      row("edge-offset", "offset of the seam edges, one above the other", 0, {
        withinMm: within(thicknessMm),
      }),
      ...finishedTemplates(item).map(({ label, value }) => row("template", label, value)),
    ],
  };
}
