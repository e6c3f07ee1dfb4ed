import { degrees } from "../geometry/angle.ts";
import { SAME_ANGLE } from "../geometry/tolerance.ts";
import type { FormingCase } from "./case.ts";
import { cornerLimit } from "./cornerLimit.ts";
import { cornersLack } from "./cornersLack.ts";
import { type LinearClass, linearToleranceMm } from "./iso13920.ts";
import { AS_DRAWN, DERIVED } from "./judge.ts";
import { number, sayIn } from "./say.ts";
import { templateFigures } from "./sheet/touch.ts";
import { isPipe } from "./skin.ts";
import { MOST_ZONES, type RollZone, zonesOf } from "./zones.ts";
import { alikeZones } from "./zoneWords.ts";

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
  /** Does the drawing give the height itself, and not a slant or an angle? */
  readonly isHeightDrawn: boolean;
  readonly tapes: readonly { readonly label: string; readonly lengthMm: number }[];
  /** Both diagonals inside a rectangular end, which are alike; not present of round ends. */
  readonly diagonalMm?: number;
  /** Plan angle of seam 1. [degrees] */
  readonly seamDeg: number;
}

/** One line of the inspection sheet. */
interface InspectionRow {
  readonly id:
    | "diameter"
    | "side"
    | "diagonal"
    | "out-of-round"
    | "girth"
    | "height"
    | "tape"
    | "edge-offset"
    | "lap"
    | "template"
    | "corner";
  readonly what: string;
  /** Nought for what ought not to be there at all, and where an angle is measured. [mm] */
  readonly nominalMm: number;
  /** The angle to be measured; null where it is a length. [°] */
  readonly nominalDeg: number | null;
  /** Allowed to either side; null where nothing says. [mm] */
  readonly withinMm: number | null;
  /** The same for an angle; null where a length is measured. [°] */
  readonly withinDeg: number | null;
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
const FULL_TURN_DEG = 360;

/** A limit comes from the standard; where there is none the row has only its size. */
const basisOf = (withinMm: number | null, size: string): string => (withinMm === null ? size : ISO);

interface Template {
  readonly label: string;
  readonly value: number;
}

/**
 * Radii of inside templates that the finished part is held to. One setting serves a zone of an uneven skin, and bends it to
 * one radius, the mean of what runs on within it: that is what the zone can be held to, with the true ones beside it.
 * Where it is bent line by line, the templates are those of four elements, a quarter turn apart from the seam.
 */
function finishedTemplates(item: FormingCase): readonly Template[] {
  const { curvature = [], thicknessMm, rimsMm } = item;
  if (item.tightestRadiusMm === null) return [roundTemplate(item)];
  if (curvature.length === 0) return templateFigures(item, 1);
  if (inZones(item)) return zoneTemplates(item);
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

/** The template of a square-to-round: in the plane of its round end the radius is the drawing's own. [mm] */
export const roundTemplate = ({ insideDiameterMm }: FormingCase): Template => ({
  label: "template radius inside, round end, held in the plane of that end",
  value: insideDiameterMm.small / 2,
});

/** Angles between the two flats beside the corners, where no seam adjoins: alike ones in one row. [°] */
function cornersOf({
  bendZones = [],
  pieces,
}: FormingCase): { what: string; deg: number; readings: number }[] {
  const places = new Map<number, number>();
  const corners = bendZones.flatMap(({ piece, afterFlat, beforeFlat, acrossRad }) => {
    const place = (places.get(piece) ?? 0) + 1;
    places.set(piece, place);
    const name = `corner ${place}${pieces > 1 ? ` of piece ${piece}` : ""}`;
    return afterFlat && beforeFlat ? [{ name, deg: FULL_TURN_DEG / 2 - degrees(acrossRad) }] : [];
  });
  const between = "between its two flats, inside, square to the corner (greatest reading of a protractor)";
  const [first] = corners;
  if (!first) return [];
  return corners.every(({ deg }) => number(deg, 1) === number(first.deg, 1))
    ? [{ what: `each corner, ${between}`, deg: first.deg, readings: corners.length }]
    : corners.map(({ name, deg }) => ({ what: `${name}, ${between}`, deg, readings: 1 }));
}

/** Is it rolled with so few settings that each has a template of its own? */
function inZones(item: FormingCase): boolean {
  const zones = zonesOf(item).length;
  return (item.curvature?.length ?? 0) > 0 && zones > 0 && zones <= MOST_ZONES;
}

/** The means that zones are bent to at both ends, alike ones once, each with the true radii that it stands for. */
function zoneTemplates(item: FormingCase): Template[] {
  const { curvature = [], thicknessMm, units = "mm" } = item;
  const say = sayIn(units);
  const zones = zonesOf(item);
  const ends = isPipe(item)
    ? ([["ends", "largeRadiusMm"]] as const)
    : ([
        ["large end", "largeRadiusMm"],
        ["small end", "smallRadiusMm"],
      ] as const);
  return alikeZones(zones).flatMap(({ zone, name }) =>
    ends.map(([end, of]) => {
      const within = curvature.filter(({ planDeg }) => isWithin(planDeg, zone)).map((one) => one[of]);
      const inside = (mm: number) => Math.max(0, mm - thicknessMm / 2);
      const [tight, slack] = [inside(Math.min(...within)), inside(Math.max(...within))];
      return {
        label: `template radius inside, ${end}, ${zones.length > 1 ? name : "all round"}, mean (true ${say.length(tight)} to ${say.length(slack)}), held square to the element line`,
        value: inside(zone[of]),
      };
    }),
  );
}

/** Does an element at this plan angle lie in a zone, whose last angle may pass the whole turn? [degrees] */
function isWithin(planDeg: number, { fromDeg, toDeg }: Pick<RollZone, "fromDeg" | "toDeg">): boolean {
  const on = (((planDeg - fromDeg) % FULL_TURN_DEG) + FULL_TURN_DEG) % FULL_TURN_DEG;
  return on <= toDeg - fromDeg + degrees(SAME_ANGLE) || on >= FULL_TURN_DEG - degrees(SAME_ANGLE);
}

const MEANS =
  " One setting bends a zone to one radius, so templates of zones are means: held in the middle of its zone the mean is to fit; towards a zone's ends the true shape runs to the radii beside it, and a piece made right stands off it by no more than that.";

/** Where 0° is, and how many parts there are to inspect. */
function whereWords({ pieces, quantity }: FormingCase, { seamDeg, ends }: Finish): string {
  const seam =
    pieces === 1
      ? `the seam is at ${seamDeg}°`
      : `seam 1 is at ${seamDeg}°, one every ${number(360 / pieces, 2)}° from there`;
  const sheets = quantity === 1 ? "" : ` One sheet for each of the ${quantity} parts: copy it.`;
  return `Seen from above, the part standing with its ${ends[1]?.name ?? "point"} up, 0° is to the right as on the drawing, counted counter-clockwise; ${seam}.${sheets} `;
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
  const { finish, thicknessMm, seamLapMm = 0 } = item;
  if (!finish) return null;
  const { toleranceClass } = finish;
  const within = (nominalMm: number) =>
    toleranceClass === undefined ? null : linearToleranceMm(toleranceClass, nominalMm);
  const row = (
    id: InspectionRow["id"],
    what: string,
    nominalMm: number,
    more: Partial<InspectionRow> = {},
  ): InspectionRow => ({
    id,
    what,
    nominalMm,
    nominalDeg: null,
    withinMm: null,
    withinDeg: null,
    basis: DERIVED,
    readings: 1,
    ...more,
  });

  const corner = cornerLimit(item);
  // Across a lap the wall is there twice.
  const clear = seamLapMm > 0 ? ", clear of the laps" : "";
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
      row(
        "diameter",
        `${name}, diameter ${measured}, across two directions square to each other${clear}`,
        first,
        {
          withinMm: limit,
          basis: basisOf(limit, AS_DRAWN),
          readings: 2,
        },
      ),
      row("out-of-round", `${name}, largest less smallest diameter${clear}`, 0, {
        withinMm: limit === null ? null : 2 * limit,
      }),
      ...(girthMm === null ? [] : [row("girth", `${name}, tape round the outside`, girthMm)]),
    ];
  });
  // Lapped edges lie one above the other by the thickness: there the lap itself is what is measured.
  const seam =
    seamLapMm > 0
      ? [
          row("lap", "lap of the seam edges, at both ends and half way", seamLapMm, {
            withinMm: within(seamLapMm),
            basis: basisOf(within(seamLapMm), AS_DRAWN),
            readings: 3,
          }),
        ]
      : [
          row("edge-offset", "offset of the seam edges, one above the other", 0, {
            withinMm: within(thicknessMm),
          }),
        ];
  return {
    toleranceClass: toleranceClass ?? null,
    note: `${whereWords(item, finish)}${cornersLack(item)}${
      toleranceClass === undefined
        ? `The part names no tolerance class, so no limits of lengths are given${corner ? " (that of the corners is common practice)" : ""}: the foreman writes them in from the drawing. (The office can name the class in the part file, tolerance: A, B, C or D.)`
        : `Limits of class ${toleranceClass} of ISO 13920 for lengths${corner ? " and angles" : ""}; out of round${seamLapMm > 0 ? " is" : " and edge offset are"} derived from them. Where none is given, the foreman says what passes. A drawing or a code in force stands above.`
    }${inZones(item) ? MEANS : ""}`,
    rows: [
      ...ends,
      row("height", "height at four places", finish.heightMm, {
        withinMm: within(finish.heightMm),
        basis: basisOf(within(finish.heightMm), finish.isHeightDrawn ? AS_DRAWN : DERIVED),
        readings: 4,
      }),
      ...(finish.diagonalMm === undefined
        ? []
        : [
            row("diagonal", "inside, rectangular end, both diagonals", finish.diagonalMm, {
              withinMm: within(finish.diagonalMm),
              basis: basisOf(within(finish.diagonalMm), DERIVED),
              readings: 2,
            }),
          ]),
      ...finish.tapes.map(({ label, lengthMm }) =>
        row("tape", label, lengthMm, {
          withinMm: within(lengthMm),
          basis: basisOf(within(lengthMm), DERIVED),
        }),
      ),
      ...seam,
      ...finishedTemplates(item).map(({ label, value }) => row("template", label, value)),
      ...(item.tightestRadiusMm === null ? cornersOf(item) : []).map(({ what, deg, readings }) =>
        row("corner", what, 0, {
          nominalDeg: deg,
          readings,
          ...(corner && { withinDeg: corner.withinDeg, basis: corner.basis }),
        }),
      ),
    ],
  };
}
