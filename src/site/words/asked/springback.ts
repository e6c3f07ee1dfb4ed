import { plateOf, yieldBand } from "../../../forming/springback.ts";
import type { FormingCase } from "../../../forming/case.ts";
import type { SpringbackAnswer } from "../../../forming/springbackAnswer.ts";
import type { Units } from "../../../geometry/units.ts";
import { closely } from "../girth.ts";
import { numbersIn, type Numbers } from "../numbers.ts";
import type { TableAnswers } from "./answers.ts";
import { SPRINGBACK } from "./springbackKey.ts";
import { figures, stress, underLoad } from "./underLoad.ts";

type Place = SpringbackAnswer["places"][number];

const RULE =
  "A bent plate opens again when it is let go. Radius when free = radius under load / ((1 − 2x)² × (1 + x)), x = radius under load × yield / (stiffness × thickness); the same the other way round tells what it has to be bent to. Radii are to the middle of the plate, square to its lines. Plate is often stronger than its grade: the band runs to 1.4 times its yield, where no certificate tells it.";

/** What each place of the part has to be bent to, and how far stronger plate departs from that. */
export function askedSpringback(
  { places, basis }: SpringbackAnswer,
  item: FormingCase,
  units: Units,
): TableAnswers {
  const say = numbersIn(units);
  const rows = places.map((place) => ({
    row: place.place,
    worked: { rule: RULE, numbers: placeLines(place, item, say).join("\n"), basis },
  }));
  return new Map([[SPRINGBACK, { name: "Springback", rows }]]);
}

function placeLines(
  { freeMm, loadedMm, strongLoadedMm, strongFreeMm }: Place,
  item: FormingCase,
  say: Numbers,
): string[] {
  const plate = plateOf(item);
  const [, strong] = yieldBand(plate);
  const own = [
    `Wanted when free: ${closely(say, freeMm)}\u00a0${say.unit}.`,
    ...underLoad(plate, freeMm, say),
  ];
  if (strongLoadedMm === null) return own;
  const x = figures((loadedMm * strong.yieldMPa) / (strong.youngsMPa * strong.thicknessMm));
  const told = closely(say, loadedMm);
  return [
    ...own,
    "The same for plate of 1.4 times the yield.",
    ...underLoad(strong, freeMm, say),
    "What such plate springs back to, bent as plate of the grade is.",
    `x: ${told} × ${stress(strong.yieldMPa, say)} / (${stress(strong.youngsMPa, say)} × ${closely(say, strong.thicknessMm)}) = ${x}`,
    strongFreeMm === null
      ? "From x = 0.5 on it springs back flat."
      : `Radius when free: ${told} / ((1 − 2 × ${x})² × (1 + ${x})) = ${closely(say, strongFreeMm)}\u00a0${say.unit}`,
  ];
}
