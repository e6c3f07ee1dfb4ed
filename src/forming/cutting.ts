import type { Shop } from "./machine.ts";

/** Common practice, no source: the thickness of the plate, but no less than this; along the edges always so much. [mm] */
const LEAST_SPACING_MM = 8;
const EDGE_MM = 10;

const NO_SOURCE = "common practice, no source";

/** How far blanks are kept apart and from the edges, and who says so. */
export interface Cutting {
  readonly spacingMm: number;
  readonly edgeMm: number;
  /** Where each of the two comes from. */
  readonly basis: { readonly spacing: string; readonly edge: string };
}

export function cuttingOf(shop: Shop | undefined, thicknessMm: number): Cutting {
  const { spacing, edge } = shop?.cutting ?? {};
  const from = (given: number | undefined) => (given === undefined ? NO_SOURCE : "the shop file");
  return {
    spacingMm: spacing ?? Math.max(LEAST_SPACING_MM, thicknessMm),
    edgeMm: edge ?? EDGE_MM,
    basis: { spacing: from(spacing), edge: from(edge) },
  };
}
