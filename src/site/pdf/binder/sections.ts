import { dataSheets } from "./dataSheets.ts";
import { jobSheets } from "./jobSheets.ts";
import { machineSheets } from "./machineSheets.ts";
import type { BinderSection, Making } from "./model.ts";
import { partSheets } from "./partSheets.ts";
import { shapeSheets } from "./shapeSheets.ts";
import { reckonerSheets } from "./tableSheets.ts";
import { glossarySheet, safetySheets, sourcesSheet } from "./textSheets.ts";

/** The whole binder, or one half of it. */
export const HALVES = ["all", "job", "reference"] as const;
export type WhichHalf = (typeof HALVES)[number];

/** The sections of a binder in their order; safety and sources belong to either half. */
export function sectionsOf(making: Making, which: WhichHalf): BinderSection[] {
  const { binder } = making;
  const reference = which !== "job";
  const shop = binder?.shop;
  const all: BinderSection[] = [
    { title: "Safety", sheets: safetySheets(making) },
    { title: "Machines", sheets: binder && shop ? machineSheets(making, { ...binder, shop }) : [] },
    { title: "Shapes", sheets: reference ? shapeSheets(making) : [] },
    { title: "Tables", sheets: reference ? [...reckonerSheets(making), ...dataSheets(making)] : [] },
    { title: "Job", sheets: binder ? jobSheets(making, binder) : [] },
    { title: "Parts", sheets: binder ? partSheets(making, binder) : [] },
    {
      title: "Words and sources",
      sheets: [...(reference ? [glossarySheet(making)] : []), sourcesSheet(making)],
    },
  ];
  return all.filter(({ sheets }) => sheets.length > 0);
}
