/** Where an element line lies on the blank, as cut. [mm] */
interface LinePlace {
  readonly planDeg: number;
  /** True length from end to end; 0 where it lies in the gap of a seam, off the plate. */
  readonly lengthMm: number;
  /** Along the edges of both ends, from seam edge 1 of the plate. */
  readonly alongMm: { readonly a: number; readonly b: number };
  /** On the pattern, x to the right and y up. */
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** A curved stretch of one blank between flats or seam edges, asked by the normal angle of its elements. */
export interface BendZone {
  /** 1 … pieces. */
  readonly piece: number;
  readonly fromRad: number;
  readonly toRad: number;
  /** Does a flat adjoin (else a seam edge)? */
  readonly afterFlat: boolean;
  readonly beforeFlat: boolean;
  /** Turning of the plate from where the zone begins to a normal angle. [rad] */
  turnedRad(theta: number): number;
  /** Angle between the planes that touch the plate where the zone begins and where it ends. [rad] */
  readonly acrossRad: number;
  /** Length of each end's edge along the zone. [mm] */
  readonly edgeMm: { readonly a: number; readonly b: number };
  /** Middle radius square to the element at the wider end. [mm] */
  wideRadiusMm(theta: number): number;
  place(theta: number): LinePlace;
}
