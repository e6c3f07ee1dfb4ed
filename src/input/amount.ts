import { decimalRatio, plain } from "./ratio.ts";
import { read, shown, unreadable, type Reading } from "./reading.ts";
import { tidy } from "./typography.ts";
import {
  KG_PER_POUND,
  KN_PER_SHORT_TON,
  MPA_PER_KSI,
  N_PER_POUND_FORCE,
  type Units,
} from "../geometry/units.ts";

/** What is measured in units of its own, whatever the file's units of length. */
export type Amount = "force" | "strength" | "mass";

/** Pounds in the long ton; the US one, which is short, has 2,000. */
const LONG_TON_LB = 2240;
const TONNE_KN = 9.80665;
const N_PER_KN = 1000;

interface Kind {
  readonly what: string;
  /** The unit that the report uses, as it is written. */
  readonly unit: string;
  readonly examples: string;
  /** How many of it one of each unit is; names in small letters, in the singular, without points and spaces. */
  readonly units: Readonly<Record<string, number>>;
}

const KINDS: Readonly<Record<Amount, Kind>> = {
  force: {
    what: "a force",
    unit: "kN",
    examples: "1000 kN or 150 US tons",
    units: {
      kn: 1,
      n: 1 / N_PER_KN,
      mn: N_PER_KN,
      lbf: N_PER_POUND_FORCE / N_PER_KN,
      lb: N_PER_POUND_FORCE / N_PER_KN,
      pound: N_PER_POUND_FORCE / N_PER_KN,
      kip: N_PER_POUND_FORCE,
      kgf: TONNE_KN / N_PER_KN,
      tonne: TONNE_KN,
      tf: TONNE_KN,
      metricton: TONNE_KN,
      uston: KN_PER_SHORT_TON,
      shortton: KN_PER_SHORT_TON,
      longton: (LONG_TON_LB * N_PER_POUND_FORCE) / N_PER_KN,
      ukton: (LONG_TON_LB * N_PER_POUND_FORCE) / N_PER_KN,
    },
  },
  strength: {
    what: "a strength",
    unit: "MPa",
    examples: "250 MPa or 36 ksi",
    units: { mpa: 1, "n/mm2": 1, "n/mm^2": 1, gpa: 1000, ksi: MPA_PER_KSI, psi: MPA_PER_KSI / 1000 },
  },
  mass: {
    what: "a mass",
    unit: "kg",
    examples: "25 kg or 50 lb",
    units: { kg: 1, kilo: 1, kilogram: 1, lb: KG_PER_POUND, pound: KG_PER_POUND },
  },
};

/**
 * Reads a force [kN], a strength [MPa] or a mass [kg], with its unit: "150 US tons", "36 ksi", "50 lb".
 *
 * A plain "ton" is the US short ton of 2000 lbf (8.896 kN) where the file is in inches. In a file in millimetres it may
 * be the metric one (9.807 kN), and one has to say which.
 *
 * @param bare is a number without a unit in the unit of the key's own name? Where the key names none, it is refused
 */
export function readAmount(
  amount: Amount,
  text: string,
  { units, bare }: { units: Units | undefined; bare: boolean },
): Reading<number> {
  const kind = KINDS[amount];
  const tidied = tidy(text) ?? "";
  const [, digits = "", word = ""] = /^\+?\s*(\d+\.?\d*|\.\d+)\s*([a-zµ][^\d,]*[\d²]?)?$/i.exec(tidied) ?? [];
  const ratio = decimalRatio(digits);
  if (!ratio) return notOne(kind, text, tidied);
  const number = plain(ratio);
  if (word === "") {
    return bare
      ? read(number)
      : unreadable(`${shown(text)} has no unit`, `write it with its unit, as in ${kind.examples}`);
  }
  const name = word
    .toLowerCase()
    .replace("²", "2")
    .replace(/[\s.-]+/g, "");
  const singular = name.length > 2 ? name.replace(/s$/, "") : name;
  if (amount === "force" && /^(?:ton|tonf|tonforce|t)$/.test(singular))
    return tons(text, number, singular, units);
  const factor = Object.hasOwn(kind.units, singular) ? kind.units[singular] : undefined;
  return factor === undefined
    ? unreadable(
        `${shown(word)} is not a unit of ${kind.what.replace(/^a /, "")} here`,
        `give it as in ${kind.examples}`,
      )
    : read(number * factor);
}

/** A word that means one thing in one country and a tenth more in another. */
function tons(text: string, number: number, name: string, units: Units | undefined): Reading<number> {
  const digits = String(number);
  if (name === "t" && units !== "in") return read(number * TONNE_KN);
  if (name !== "t" && units !== "mm") return read(number * KN_PER_SHORT_TON);
  return unreadable(
    `${shown(text)} may be US tons of 8.896 kN or metric tonnes of 9.807 kN`,
    `write ${digits} US tons or ${digits} tonnes`,
  );
}

function notOne(kind: Kind, text: string, tidied: string): Reading<never> {
  const give = `give ${kind.unit}, or a number with its unit as in ${kind.examples}`;
  if (tidied === "") return unreadable("there is no number here", give);
  if (/\d,\d/.test(tidied))
    return unreadable(
      `${shown(text)} has a comma`,
      "use a point for decimals, and nothing between thousands",
    );
  return unreadable(`${shown(text)} is not ${kind.what}`, give);
}
