import type { Units } from "../../drawing/format.ts";
import type { Binder } from "../binder/binder.ts";

/** The shop's own units, else those of the parts. */
export const unitsOf = ({ shop, parts }: Binder): Units => shop?.units ?? parts[0]?.report.part.units ?? "mm";
