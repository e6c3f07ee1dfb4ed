import type { FormingCase } from "./case.ts";
import { angularToleranceDeg } from "./iso13920.ts";
import { COMMON_PRACTICE } from "./judge.ts";

/** How far a corner's reading may be off, to either side. */
export interface CornerLimit {
  readonly withinDeg: number;
  /** The standard where the part names a class; else common practice. */
  readonly basis: string;
}

/** Where the part names no class. Common practice, no source. [°] */
const NO_CLASS_DEG = 1;

/**
 * What a corner of a rectangular end is held to: the angular limit of the part's class for its shorter side, which is the
 * shorter leg of all its corners. Null where no end has sides.
 *
 * @see sources.yaml#iso-13920
 */
export function cornerLimit({ finish }: Pick<FormingCase, "finish">): CornerLimit | null {
  const sides = finish?.ends.find(({ acrossMm }) => acrossMm.length > 1)?.acrossMm;
  if (!finish || !sides) return null;
  return finish.toleranceClass === undefined
    ? { withinDeg: NO_CLASS_DEG, basis: COMMON_PRACTICE }
    : {
        withinDeg: angularToleranceDeg(finish.toleranceClass, Math.min(...sides)),
        basis: "iso-13920",
      };
}
