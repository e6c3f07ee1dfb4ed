import type { PassPoint } from "../passPoints.ts";
import type { RollStart } from "../passSettings.ts";
import { settableStart } from "../settingProblem.ts";
import type { RollSheetAsked } from "./asked.ts";

/** Where the roll is set at one moment, where that serves all round; null where it does not, is not known, or cannot be set. */
export function startAllRound(
  { settings }: Pick<RollSheetAsked, "settings">,
  id: PassPoint["id"],
): RollStart | null {
  const [zone, other] = settings?.zones ?? [];
  return other ? null : settableStart(zone?.passes.find((pass) => pass.id === id));
}
