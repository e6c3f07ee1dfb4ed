import type { Catalogue } from "../shapes/catalogue.ts";
import type { Gauges } from "./gauge.ts";

/** What a file is read against. */
export interface Tables {
  readonly catalogue: Catalogue;
  readonly gauges: Gauges;
}

/** Which file it is: for the name in front of every problem. */
export interface FileContext extends Tables {
  readonly path: string;
}
