import { typedAt, type TypedGroup } from "../../../input/typed.ts";

/** The sizes of a part in one line, as they were typed: "900 → 400, height 700, 4 thick, mm". */
export function sizeSummary(part: TypedGroup): string {
  const at = (...path: string[]): string => {
    const value = typedAt(part, path);
    return typeof value === "string" && value.trim() !== "" ? value.trim() : "";
  };
  const ends = [
    at("largeEnd", "diameter"),
    rectangle(at),
    at("smallEnd", "diameter"),
    at("roundEnd", "diameter"),
  ];
  const tall = [
    ["height", at("height")],
    ["slant", at("slant")],
    ["half angle", at("halfAngle")],
  ].find(([, value]) => value !== "");
  const said = [
    ends.filter((end) => end !== "").join(" → "),
    tall?.join(" ") ?? "",
    at("thickness") && `${at("thickness")} thick`,
    at("units"),
  ];
  return said.filter((one) => one !== "").join(", ");
}

function rectangle(at: (...path: string[]) => string): string {
  const sides = [at("rectangularEnd", "length"), at("rectangularEnd", "width")];
  return sides.every((side) => side !== "") ? sides.join(" × ") : "";
}
