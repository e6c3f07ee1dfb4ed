import { decimalRatio, plain } from "./ratio.ts";
import { read, shown, unreadable, type Reading } from "./reading.ts";
import { tidy } from "./typography.ts";

/** Reads an angle: a decimal number, with or without ° or deg. [degrees] */
export function readAngle(text: string): Reading<number> {
  const tidied = tidy(text);
  if (tidied === undefined) return notAnAngle(text);
  const [, sign, digits] = /^([-+]?)\s*(\d+\.?\d*|\.\d+)\s*(?:°|º|deg(?:rees?)?\.?)?$/i.exec(tidied) ?? [];
  const ratio = decimalRatio(digits ?? "");
  if (!ratio) return refused(text, tidied);
  const value = plain(ratio);
  return read(sign === "-" && value !== 0 ? -value : value);
}

function refused(text: string, tidied: string): Reading<never> {
  const seen = shown(text);
  if (tidied === "") return unreadable("there is no number here", "give degrees as a number, as in 22.5");
  if (/\d,\d/.test(tidied)) return unreadable(`${seen} has a comma`, "use a point for decimals");
  if (/^[-+]?[\d.]+e[-+]?\d+/i.test(tidied)) {
    return unreadable(`${seen} is a power of ten`, "write the number out, as in 22.5");
  }
  if (/[°º]\s*\d/.test(tidied)) {
    return unreadable(`${seen} has minutes of arc`, "write them as a decimal, as in 22.5 for 22°30'");
  }
  if (/rad/i.test(tidied)) return unreadable(`${seen} is in radians`, "give degrees as a number, as in 22.5");
  return notAnAngle(text);
}

const notAnAngle = (text: string) =>
  unreadable(`${shown(text)} is not an angle`, "give degrees as a number, as in 22.5");
