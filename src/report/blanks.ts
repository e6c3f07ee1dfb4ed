import { degrees } from "../geometry/angle.ts";
import { type BlankOrder, cutBlank, type EdgeOf, type FlatBlank, type NoBlank } from "../geometry/blank.ts";
import { distance2, distance3, type Vec2 } from "../geometry/vector.ts";
import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import type { Layout } from "../shapes/layout.ts";
import type { Material } from "../shapes/material.ts";
import type { Refusal } from "../shapes/refusal.ts";
import type { Part } from "../shapes/part.ts";
import type { Shape } from "../shapes/shape.ts";
import { bendsDeg, type HandElement, handElements } from "./elements.ts";
import type { Blank, PatternLine } from "./report.ts";

const MM3_PER_M3 = 1e9;

/** A blank of the report with what it was made from. */
export interface LaidBlank {
  readonly order: BlankOrder;
  readonly flat: FlatBlank;
  readonly elements: readonly HandElement[];
  readonly blank: Blank;
}

const REFUSALS: Readonly<Record<NoBlank["because"], Refusal>> = {
  "gap too wide": {
    path: ["seam", "gap"],
    problem: "the gap is wider than an end of the blank",
    remedy: "make it smaller, as a weld needs a few millimetres at most",
  },
  "lap too wide": {
    path: ["seam", "lap"],
    problem: "the lap is wider than the blank can be continued",
    remedy: "make it smaller",
  },
  "overlaps itself": {
    path: ["pieces"],
    problem: "the flat blank would overlap itself",
    remedy: "check height and diameters: no number of pieces was found in which it does not",
  },
  "allowance crosses": {
    path: ["trimAllowance"],
    problem: "with the allowance an edge would run past its seam, or the outline would cross itself",
    remedy: "leave trimAllowance out and cut the edges bevelled, or add the allowance by hand",
    otherwise: "leave trimAllowance out and cut the edges bevelled, or add the allowance by hand",
  },
  "too extreme": {
    path: ["height"],
    problem: "the part leans so far over its height that it cannot be laid out within 0.01 mm",
    remedy: "check height and offset",
  },
};

function linesOf(laid: Omit<LaidBlank, "blank">, layout: Layout, kind: PatternLine["kind"]): PatternLine[] {
  const { flat, elements, order } = laid;
  const bends = bendsDeg(layout.skin, elements);
  const lines: PatternLine[] = [];
  elements.forEach(({ index, station, seam }, i) => {
    // Seams are edges of the plate already, except where a lap carries the plate on past seam 2.
    if (seam && !(order.joint.kind === "lap" && i > 0)) return;
    const [from, to] = [flat.net.a[index] as Vec2, flat.net.b[index] as Vec2];
    lines.push({
      kind: seam ? "element" : kind,
      from,
      to,
      lengthMm: distance3(station.a, station.b),
      planDeg: planDegrees(station.theta),
      bendDeg: bends[i] as number,
    });
  });
  return lines;
}

/** Plan angle within 0 … 360. */
export function planDegrees(theta: number): number {
  const at = degrees(theta) % 360;
  return at < 0 ? at + 360 : at;
}

/** An earlier blank with the same outline. */
function twin(flat: FlatBlank, earlier: readonly LaidBlank[]): number | null {
  const same = earlier.find(
    ({ flat: other }) =>
      other.outline.length === flat.outline.length &&
      other.outline.every((p, i) => distance2(p, flat.outline[i] as Vec2) < SAME_POINT_MM),
  );
  return same ? same.blank.piece : null;
}

/** Lays out every blank of a part. */
export function blanksOf(
  part: Part,
  shape: Shape,
  layout: Layout,
  orders: readonly BlankOrder[],
  material: Material,
): { readonly laid: readonly LaidBlank[] } | { readonly issue: Refusal } {
  const named: Record<EdgeOf, string> = { ...shape.ends, "seam 1": "seam 1", "seam 2": "seam 2" };
  const laid: LaidBlank[] = [];
  for (const order of orders) {
    const flat = cutBlank(layout.skin, order);
    if (flat.kind === "none") return { issue: REFUSALS[flat.because] };
    const made = { order, flat, elements: handElements(order, flat) };
    const edges = flat.edges.map(({ of, lengthMm, start }) => ({ name: named[of], lengthMm, start }));
    const blank: Blank = {
      piece: laid.length + 1,
      sameAs: twin(flat, laid),
      faceUp: order.mirror ? "outside" : "inside",
      areaMm2: flat.areaMm2,
      massKg: (flat.areaMm2 * part.thickness * material.densityKgM3) / MM3_PER_M3,
      asDrawn: flat.upright,
      box: {
        lengthMm: flat.box.lengthMm,
        widthMm: flat.box.widthMm,
        turnDeg: degrees(flat.box.turnRad),
      },
      cutLengthMm: edges.reduce((sum, edge) => sum + edge.lengthMm, 0),
      outline: flat.outline,
      edges,
      lines: linesOf(made, layout, shape.route === "brake" ? "bend" : "element"),
    };
    laid.push({ ...made, blank });
  }
  return { laid };
}
