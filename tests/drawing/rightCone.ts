import { degrees, radians } from "../../src/geometry/angle.ts";
import { polygonArea } from "../../src/geometry/polygon.ts";
import type { Blank, MarkingRow, Report, SheetPoint, SpacePoint } from "../../src/report/report.ts";

export interface ConeSizes {
  /** Middle diameters, height between the ends, plate. [mm] */
  readonly large: number;
  readonly small: number;
  readonly height: number;
  readonly thickness: number;
  readonly divisions?: number;
  readonly units?: "mm" | "in";
}

/** A right cone's report by its closed form, seam at 0°, one blank: what the drawings read, and no more. */
export function rightConeReport(sizes: ConeSizes): Report {
  const { large, small, height, thickness, divisions = 12, units = "mm" } = sizes;
  const [R, r] = [large / 2, small / 2];
  const slant = Math.hypot(height, R - r);
  const outer = (R * slant) / (R - r);
  const inner = outer - slant;
  const sector = (2 * Math.PI * R) / outer;
  // End B is up the sheet: the apex lies above, the first line (seam 1) to the right.
  const at = (turn: number, reach: number): SheetPoint => {
    const angle = -Math.PI / 2 + sector / 2 - (turn / (2 * Math.PI)) * sector;
    return [reach * Math.cos(angle), reach * Math.sin(angle)];
  };
  const steps = 400;
  const arc = (reach: number): SheetPoint[] =>
    Array.from({ length: steps + 1 }, (_, i) => at((2 * Math.PI * i) / steps, reach));
  const raw = [...(r > 0 ? arc(inner) : [[0, 0] as const]), ...arc(outer).reverse()];
  const [left, low] = [Math.min(...raw.map((p) => p[0])), Math.min(...raw.map((p) => p[1]))];
  const shift = ([x, y]: SheetPoint): SheetPoint => [x - left, y - low];
  const top = raw.slice(0, r > 0 ? steps + 1 : 1).map(shift);
  const foot = arc(outer).reverse().map(shift);
  // Counter-clockwise from where seam 1 meets end A: seam 1, end B, seam 2, end A.
  const outline = [foot.at(-1) as SheetPoint, ...top, ...foot.slice(0, -1)];
  const turns = Array.from({ length: divisions + 1 }, (_, i) => (2 * Math.PI * i) / divisions);
  const rows: MarkingRow[] = turns.map((turn, i) => ({
    piece: 1,
    number: i + 1,
    planDeg: degrees(turn),
    a: shift(at(turn, outer)),
    b: shift(at(turn, inner)),
    trueMm: slant,
    planMm: R - r,
    next: null,
  }));
  const hand: MarkingRow[] = rows.map((row, i) => {
    const next = rows[i + 1];
    const gap = (p: SheetPoint, q: SheetPoint) => Math.hypot(p[0] - q[0], p[1] - q[1]);
    return next ? { ...row, next: { aMm: gap(row.a, next.a), bMm: gap(row.b, next.b), diagonalMm: gap(row.a, next.b) } } : row;
  });
  const alpha = Math.asin((R - r) / slant);
  const ring = (radius: number, z: number): SpacePoint[] =>
    radius <= 0 ? [[0, 0, z]] : Array.from({ length: 180 }, (_, i) => [radius * Math.cos(radians(2 * i)), radius * Math.sin(radians(2 * i)), z]);
  const half = thickness / 2 / Math.cos(alpha);
  const faces = (radius: number, z: number) => ({
    inside: ring(radius - half, z),
    middle: ring(radius, z),
    outside: ring(radius + half, z),
  });
  const elements = turns.map((turn) => ({
    planDeg: degrees(turn),
    a: [R * Math.cos(turn), R * Math.sin(turn), 0] as const,
    b: [r * Math.cos(turn), r * Math.sin(turn), height] as const,
  }));
  const blank: Blank = {
    piece: 1,
    sameAs: null,
    faceUp: "inside",
    areaMm2: polygonArea(outline),
    massKg: 1,
    box: { lengthMm: 1, widthMm: 1 },
    cutLengthMm: 1,
    outline,
    edges: [
      { name: "seam 1", lengthMm: slant, start: 0 },
      ...(r > 0 ? [{ name: "small end", lengthMm: 2 * Math.PI * r, start: 1 }] : []),
      { name: "seam 2", lengthMm: slant, start: top.length },
      { name: "large end", lengthMm: 2 * Math.PI * R, start: top.length + 1 },
    ],
    lines: rows.map((row) => ({ kind: "element", from: row.a, to: row.b, lengthMm: slant, planDeg: row.planDeg, bendDeg: 0 })),
  };
  return {
    part: {
      name: "fixture",
      shape: "right-cone",
      title: "Right cone",
      units,
      material: "s235",
      thickness,
      largeEnd: { diameter: large, measured: "middle" },
      smallEnd: { diameter: small, measured: "middle" },
      height,
    },
    shape: {
      areaMm2: blank.areaMm2,
      volumeMm3: 0,
      contentsMm3: 0,
      rims: { a: 2 * Math.PI * R, b: 2 * Math.PI * r },
      heightMm: height,
      seamDeg: 0,
      turningDeg: 360 * Math.cos(alpha),
    },
    blanks: [blank],
    massKg: 1,
    cone: {
      halfAngleDeg: degrees(alpha),
      slantMm: slant,
      outerRadiusMm: outer,
      innerRadiusMm: inner,
      sectorDeg: degrees(sector),
    },
    hand: { divisions, shortfallMm: { a: 0, b: 0 }, pointMm: 0, rows: hand },
    solid: { heightMm: height, a: faces(R, 0), b: faces(r, height), elements, seams: elements.slice(0, 1) },
    accuracy: { outlineMm: 0, rimMm: 0, areaRel: 0, wallMm: 0, lengthMm: 0, closureMm: 0, stations: steps },
    forming: { route: "roll", machine: null, verdict: "pass", checks: [], machines: [], closure: [] },
    notes: [],
  };
}
