import type { Check } from "../../forming/check.ts";
import type { Forming } from "../../forming/answer.ts";
import type { Shop } from "../../forming/machine.ts";
import { sayIn } from "../../forming/say.ts";
import { MM_PER_INCH, plain, type Units } from "../../drawing/format.ts";
import { numbersIn, percent } from "./numbers.ts";

/** Why no machine was asked. */
export const noMachine = (shop: Shop | undefined): string =>
  shop ? "The shop has no machine" : "No shop file was given";

/** How it will be made, in one sentence; where no machine was asked, with why. */
export function routeSentence({ route, machine, machines, verdict }: Forming, lacking: string): string {
  const way = route === "roll" ? "on the plate roll" : "on the press brake";
  if (machines.length === 0)
    return `Formed ${way}, the usual way for this shape. ${lacking}, so only the part itself was checked.`;
  if (machine === null)
    return `None of the shop’s machines takes it. The checks below are those of the nearest miss, ${way}.`;
  if (verdict === "fail") return `The nearest is ${machine}, ${way}.`;
  const other = machines.find((one) => one.verdict === "pass" && one.machine !== machine);
  const why = other && verdict === "caution" && other.kind === "press brake" && route === "roll";
  return `Formed ${way}: ${machine}.${why ? ` ${other.machine} takes it too, in many hits; rolling is the usual way for a round part.` : ""}`;
}

const MM2_PER_IN2 = MM_PER_INCH ** 2;

/** A check's number with its unit, in the part's own units where it is a length or an area. */
export function withUnit(value: number, unit: string, units: Units): string {
  const say = numbersIn(units);
  if (unit === "mm") return `${say.bare(value)}\u00a0${units}`;
  if (unit === "kg") return say.mass(value);
  if (unit === "kN") return say.force(value);
  if (unit === "kN/m") return sayIn(units).forceAlong(value);
  if (unit === "MPa") return sayIn(units).strength(value);
  // An area that thickness × slant come to: nobody knows either so well that a part of a mm² would tell.
  if (unit === "mm²" && units === "mm") return `${plain(value, 0)}\u00a0mm²`;
  if (unit === "mm²") return `${plain(value / MM2_PER_IN2, 1)}\u00a0in²`;
  const figure = plain(value, value !== 0 && Math.abs(value) < 10 ? 2 : 1);
  return unit === "-" ? figure : unit === "°" ? `${figure}°` : `${figure}\u00a0${unit}`;
}

/** What the part asks for and what is allowed: "3120 mm², at most 4000 mm² (22 % to spare)". */
export function checkFigures(
  { value, limit, sense, ofShop, unit, margin }: Check,
  units: Units,
): string | null {
  if (value === null) return null;
  const shops = (which: "value" | "limit") => (ofShop?.which === which ? ofShop.units : units);
  const told = (number: number, own: Units, more: readonly string[] = []): string => {
    const beside = [...(own === units ? [] : [withUnit(number, unit, units)]), ...more];
    return `${withUnit(number, unit, own)}${beside.length > 0 ? ` (${beside.join("; ")})` : ""}`;
  };
  const asked = told(value, shops("value"));
  if (limit === null) return asked;
  const spare = margin === null ? [] : [spareWords(margin)];
  return `${asked}, ${sense ?? "against"} ${told(limit, shops("limit"), spare)}`;
}

/** Why a machine does not take the part, as short as a printed sheet has room for: the checks that fail, with their figures. */
export const refusal = (checks: readonly Check[], units: Units): string =>
  checks
    .filter(({ verdict }) => verdict === "fail")
    .map((check) => {
      const figures = checkFigures({ ...check, margin: null }, units);
      return figures === null ? check.title : `${check.title} ${figures}`;
    })
    .join("; ");

/** A share beyond a whole limit says nothing to anybody as a percentage. */
function spareWords(margin: number): string {
  if (margin < 0) return `${percent(-margin)} beyond it`;
  return margin > 1 ? "ample room" : `${percent(margin)} to spare`;
}
