import type { FormingCase } from "./case.ts";
import { isPipe } from "./skin.ts";

/** A place of the skin and its middle radius square to the element there. [mm] */
export interface CurvedPlace {
  readonly place: string;
  readonly radiusMm: number;
}

/**
 * The places whose radii stand for the whole skin: both ends of a right cone, the one radius of a pipe, and the tightest
 * and slackest element of a skin that is curved unevenly, at both ends. Nothing where the skin is folded. A point has radius 0.
 */
export function tightestAndSlackest(item: FormingCase): readonly CurvedPlace[] {
  const { cone, curvature, tightestRadiusMm } = item;
  if (cone) {
    const square = (level: number) => level / Math.cos(cone.halfAngleRad);
    const large = square(cone.largeRadiusMm);
    return isPipe(item)
      ? [{ place: "all over", radiusMm: large }]
      : [
          { place: "large end", radiusMm: large },
          { place: "small end", radiusMm: square(cone.smallRadiusMm) },
        ];
  }
  if (!tightestRadiusMm) return [];
  const tightest = [
    { place: "large end, tightest", radiusMm: tightestRadiusMm.large },
    { place: "small end, tightest", radiusMm: tightestRadiusMm.small },
  ];
  if (!curvature || curvature.length === 0) return tightest;
  const most = (radii: readonly number[]) => Math.max(...radii);
  return [
    ...tightest,
    { place: "large end, slackest", radiusMm: most(curvature.map(({ largeRadiusMm }) => largeRadiusMm)) },
    { place: "small end, slackest", radiusMm: most(curvature.map(({ smallRadiusMm }) => smallRadiusMm)) },
  ];
}
