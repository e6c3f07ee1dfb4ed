import type { Verdict } from "../forming/check.ts";

/** How each verdict reads, on a page and in a list of files. */
export const VERDICTS: Readonly<Record<Verdict, string>> = {
  pass: "goes",
  caution: "goes with care",
  fail: "does not go here",
};
