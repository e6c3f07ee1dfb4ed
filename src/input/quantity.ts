import { MPA_PER_KSI } from "../geometry/units.ts";
import type { Quantity } from "../shapes/fields.ts";
import type { GaugeFamily } from "../shapes/material.ts";
import { readAmount } from "./amount.ts";
import { readAngle } from "./angle.ts";
import type { Tables } from "./context.ts";
import { readDirection } from "./direction.ts";
import { gaugeNumber, gaugeThickness } from "./gauge.ts";
import { readLength } from "./length.ts";
import { shown, unreadable, type Reading } from "./reading.ts";
import { tidy } from "./typography.ts";
import type { Units } from "./units.ts";

/** Metal whose gauges count; "unknown" where the file names one that is not in the catalogue, which is told there. */
export type Metal = GaugeFamily | "unknown" | undefined;

export interface Surroundings {
  readonly tables: Tables;
  readonly units: Units | undefined;
  readonly metal: Metal;
  /** Does the key name the unit of a bare number, as forceKN does and force does not? */
  readonly bare: boolean;
  /** From this on a bare number in inches is asked about; undefined where it is as of any length. [in] */
  readonly askFromIn?: number | undefined;
}

/** From this on a plain number for a thickness in inches is likelier a gauge or millimetres. [in] */
const THICK_IN = 3;
/** The same of a length: longer than a truck. [in] */
const LONG_IN = 300;
/** A plain strength below this in a file in inches is likelier ksi. [MPa] */
const WEAK_MPA = 100;
const THINNEST_GAUGE = 30;
const MOST_THICKNESS_IN = 7.874;
const MOST_LENGTH_IN = 787.4;

/** The text of a field as mm, degrees, kN, MPa or kg; undefined where it hangs on something that is itself in question. */
export function readQuantity(
  quantity: Quantity,
  written: string,
  around: Surroundings,
): Reading<number> | undefined {
  switch (quantity) {
    case "angle":
      return readAngle(written);
    case "direction":
      return readDirection(written);
    case "thickness":
      return thickness(written, around);
    case "length":
      return longInches(written, around) ?? readLength(written, around.units);
    case "strength":
      return weakInches(written, around) ?? readAmount(quantity, written, around);
    case "force":
    case "mass":
      return readAmount(quantity, written, around);
  }
}

/** A gauge or a length; undefined where the gauge hangs on a material that is itself in question. */
function thickness(written: string, { tables, units, metal }: Surroundings): Reading<number> | undefined {
  const gauge = gaugeNumber(written);
  if (gauge === undefined)
    return notAGauge(written) ?? thickInches(written, units) ?? readLength(written, units);
  if (metal === "unknown") return undefined;
  if (metal) return gaugeThickness(tables.gauges, metal, gauge);
  return unreadable(
    `${shown(written)} differs from metal to metal, and none is named here`,
    "give it in mm or in",
  );
}

/** "10 guage", "#10", "10 g", "1.5 ga". */
function notAGauge(written: string): Reading<never> | undefined {
  const tidied = tidy(written) ?? "";
  const slip =
    /^(\d{1,2})\s*-?\s*(?:gua?ge?|gauage|gaug|gague|gge|gg|g|swg|awg|bwg|#)\.?$/i.exec(tidied)?.[1] ??
    /^(?:#|no\.?)\s*(\d{1,2})$/i.exec(tidied)?.[1];
  if (slip !== undefined)
    return unreadable(`${shown(written)} is not a thickness`, `did you mean the sheet gauge ${slip} ga?`);
  if (/\d\s*-?ga(?:uge|ge)?\b/i.test(written))
    return unreadable(`${shown(written)} is not a gauge`, "write the number and ga, as in 10 ga");
  return undefined;
}

/** The number of a text that holds a number and nothing else; undefined in a file that is not in inches. */
function bareInches(written: string, units: Units | undefined): number | undefined {
  const tidied = tidy(written) ?? "";
  return units === "in" && /^\d+(?:\.\d*)?$/.test(tidied) ? Number(tidied) : undefined;
}

function thickInches(written: string, units: Units | undefined): Reading<never> | undefined {
  const inches = bareInches(written, units);
  if (inches === undefined || inches < THICK_IN) return undefined;
  const ways = [
    ...(Number.isInteger(inches) && inches <= THINNEST_GAUGE ? [`${inches} ga for a sheet gauge`] : []),
    `${inches} mm for millimetres`,
    ...(inches <= MOST_THICKNESS_IN ? [`${inches} in if it is as thick as that`] : []),
  ];
  return unreadable(`${shown(written)} would be ${inches} inches thick`, `write ${ways.join(", or ")}`);
}

function longInches(
  written: string,
  { units, askFromIn }: Pick<Surroundings, "units" | "askFromIn">,
): Reading<never> | undefined {
  const inches = bareInches(written, units);
  // What is beyond every part in inches is told as too large, with its limit.
  if (inches === undefined || inches > MOST_LENGTH_IN) return undefined;
  if (askFromIn === undefined ? inches <= LONG_IN : inches < askFromIn) return undefined;
  const feet = inches > LONG_IN ? `, more than ${Math.floor(inches / 12)} feet` : "";
  const size = inches > LONG_IN ? "long" : "large";
  return unreadable(
    `${shown(written)} would be ${inches} inches${feet}`,
    `write ${inches} mm for millimetres, or ${inches} in if it is as ${size} as that`,
  );
}

/** 36 in a file in inches, under a key whose bare numbers are MPa: only soft aluminium is as weak as that. */
function weakInches(written: string, { units, bare }: Surroundings): Reading<never> | undefined {
  const number = bareInches(written, units);
  if (!bare || number === undefined || number === 0 || number >= WEAK_MPA) return undefined;
  return unreadable(
    `${shown(written)} would be ${number} MPa, which is ${(number / MPA_PER_KSI).toFixed(1)} ksi`,
    `write ${number} ksi or ${Math.round(number * MPA_PER_KSI)} MPa, or ${number} MPa if it is as weak as that`,
  );
}
