import type { Machine } from "../../../forming/machine.ts";
import { lengthText, type Units } from "../../../drawing/format.ts";
import { together } from "../../../drawing/together.ts";
import { closely } from "../girth.ts";
import type { Numbers } from "../numbers.ts";

type Size = readonly [name: string, mm: number | undefined];

/** Sizes of a machine that a check is reckoned from, by the check's id. */
const ROLL: Readonly<Record<string, (roll: Extract<Machine, { kind: "plate roll" }>) => readonly Size[]>> = {
  capacity: ({ coneRating, rating, workingWidth }) =>
    coneRating
      ? [
          ["thickness of the cone rating", coneRating.thickness],
          ["slant of the cone rating", coneRating.slant],
        ]
      : [
          ["rated thickness", rating.thickness],
          ["working width", workingWidth],
        ],
  thickness: ({ coneRating, rating }) => [["rated thickness", (coneRating ?? rating).thickness]],
  "working-width": ({ workingWidth, coneAttachment }) => [
    ["working width", workingWidth],
    ["stop, nearest to the drop end", coneAttachment?.range?.[0]],
  ],
  "pinch-trim": ({ workingWidth }) => [["working width", workingWidth]],
  "small-end": ({ rolls }) => [["diameter of the top roll", rolls.topDiameter]],
  "smallest-closed": ({ smallestDiameter }) => [["smallest inside diameter closed", smallestDiameter]],
  "bend-radius": ({ smallestDiameter, smallestRadius }) => [
    ["smallest radius bent", smallestRadius],
    ["smallest inside diameter closed", smallestRadius === undefined ? smallestDiameter : undefined],
  ],
};

/** Where the shop file counts in other units than the part, what its sizes in a sum are there: "working width 98.4252 in is 2500 mm in the shop file". */
function shopSizes(say: Numbers, sizes: readonly Size[], shopUnits: Units | undefined): string[] {
  if (shopUnits === undefined || shopUnits === say.unit) return [];
  return sizes.flatMap(([name, mm]) =>
    mm === undefined
      ? []
      : [
          `${name} ${closely(say, mm)}\u00a0${say.unit} is ${together(lengthText(mm, shopUnits))} in the shop file`,
        ],
  );
}

/** The same for a check. */
export const shopSizesOf = (
  id: string,
  machine: Machine | undefined,
  { say, shopUnits }: { readonly say: Numbers; readonly shopUnits: Units | undefined },
): string[] => (machine?.kind === "plate roll" ? shopSizes(say, ROLL[id]?.(machine) ?? [], shopUnits) : []);
