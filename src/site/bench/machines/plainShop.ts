import { typedAt, typedWith, type Typed, type TypedGroup } from "../../../input/typed.ts";
import type { FieldPath } from "../../../input/problem.ts";

/** Keys with a unit in their name, each with the key under which a form writes the same with its unit. */
const WITH_UNIT = {
  forceKN: ["force", "kN"],
  yieldMPa: ["yield", "MPa"],
  handLiftKg: ["handLift", "kg"],
} as const;

/** A shop as a form writes it: forces, strengths and masses with their units, and what is known of a stop as a group. */
export function plainShop(typed: TypedGroup): TypedGroup {
  let shop = typed;
  const machines = Array.isArray(typed["machines"]) ? typed["machines"].length : 0;
  const places: FieldPath[] = [[]];
  for (let i = 0; i < machines; i++) places.push(["machines", i], ["machines", i, "rating"]);
  for (const place of places)
    for (const [key, [plain, unit]] of Object.entries(WITH_UNIT)) {
      const value = typedAt(shop, [...place, key]);
      if (typeof value !== "string") continue;
      shop = moved(shop, [...place, key], [...place, plain], `${value} ${unit}`);
    }
  for (let i = 0; i < machines; i++) {
    const at = ["machines", i, "coneAttachment"];
    const value = typedAt(shop, at);
    if (typeof value === "boolean") shop = typedWith(shop, at, { fitted: value }) as TypedGroup;
  }
  return shop;
}

function moved(shop: TypedGroup, from: FieldPath, to: FieldPath, value: Typed): TypedGroup {
  return typedWith(typedWith(shop, from, undefined), to, value) as TypedGroup;
}
