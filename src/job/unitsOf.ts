import type { Units } from "../geometry/units.ts";
import type { JobParts } from "./job.ts";

/** The shop's own units, else those of the parts. */
export const unitsOf = ({ shop, parts }: JobParts): Units =>
  shop?.units ?? parts[0]?.report.part.units ?? "mm";
