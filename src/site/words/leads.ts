import type { Material } from "../../shapes/material.ts";

/** What a sheet is for, in a sentence below its title; the same on its page, in the whole binder and as PDF. */
export const LEADS = {
  materials:
    "Nominal values: density for masses, strengths for the checks. A mill certificate, where there is one, comes first.",
  gauges:
    "The same number is another thickness in another metal. Measure the plate; the number alone is not enough.",
  glossary: "The words of this binder, and other words for the same thing.",
  sources: "Where every number and rule comes from, and whether we have seen it ourselves.",
};

/** Below the plate of a job by material and thickness. */
export const NET_AREA_NOTE =
  "Net area of the blanks, without the waste between them. Masses from nominal thickness and density.";

/** A material as its table names it: its grade, and what the metal is called by whoever buys it. */
export const nameAndTrade = ({ name, trade }: Pick<Material, "name" | "trade">): string =>
  trade === undefined ? name : `${name}, ${trade}`;

/** Below the materials. */
export const FROM_MEMORY_NOTE =
  "What a metal is bought as and what else it is read as are from memory: order by the grade. A source marked “from memory” was recalled, not seen. Check it before you rely on it.";
