import type { RollAsked } from "./asked.ts";
import type { Check, Verdict } from "./check.ts";
import { DERIVED, state } from "./judge.ts";
import { flatContact, sectionOf } from "./rollSetting.ts";
import { rollSettings } from "./rollSettings.ts";
import { reachesBendingRoll } from "./turnOnStop.ts";
import { type SettingProblem, worstProblems } from "./settingProblem.ts";

export const SETTINGS_CHECK = "roll-settings";

const answer = (verdict: Verdict, advice: string): Check =>
  state({
    id: SETTINGS_CHECK,
    title: "Settings of the bending roll",
    unit: "-",
    verdict,
    basis: DERIVED,
    rule: "the bending roll on its slide reaches the start of both passes in every zone, clear of the pinch roll",
    advice,
  });

const NOT_BESIDE =
  "By the slide in the shop file the bending roll does not stand beside the pinch when it touches this plate: measure the slide; till then no setting is worked out.";

/** So wide a cone turns about an apex that lies near: its flat blank ends before the bending roll. */
const tooShort = ({ say }: RollAsked, acrossMm: number): string =>
  `With its element lines parallel at the pinch the flat blank does not reach the bending roll, ${say.length(acrossMm)} away, or leaves nothing to roll: take a smaller roll, or the press brake.`;

/** What is to be done about it, besides what the sentence of a problem says itself. */
function remedy(problems: readonly SettingProblem[]): string | null {
  const stops = (what: SettingProblem["stops"]) => problems.some((one) => one.stops === what);
  if (stops("part"))
    return "measure the rolls and the slide first, for this goes by what the shop file says of them; if they are right, it takes another machine";
  if (problems.some(({ id }) => id === "refused"))
    return "ask the maker of the roll, or check the slide in the shop file";
  return null;
}

/** One of several sentences that become one: without its full stop, and without its capital where it is not the first. */
const clause = (words: string, i: number): string => {
  const bare = words.replace(/\.$/, "");
  return i === 0 ? bare : `${bare.charAt(0).toLowerCase()}${bare.slice(1)}`;
};

/**
 * Can the bending roll be set for both passes on this machine? A start that the plate itself asks for and that is beyond the
 * slide, or inside the pinch roll, refuses the part. What only a straight roll's tilt asks for beyond the plate wants care:
 * with less tilt it goes. Told only where something stands in the way: else the settings themselves are the answer.
 */
export function canBeSet(asked: RollAsked): Check | null {
  const section = sectionOf(asked.roll);
  if (!section) return null;
  const { acrossMm } = flatContact(section, asked.item.thicknessMm);
  if (acrossMm <= 0) return answer("caution", NOT_BESIDE);
  if (!reachesBendingRoll(asked.item, acrossMm)) return answer("fail", tooShort(asked, acrossMm));
  const found = rollSettings(asked);
  if (found.kind === "none") return null;
  const problems = worstProblems(
    found.settings.zones.flatMap(({ passes }) => passes.flatMap((pass) => pass.problems)),
  );
  if (problems.length === 0) return null;
  const verdict = problems.some(({ stops }) => stops === "part") ? "fail" : "caution";
  const more = remedy(problems);
  const clauses = [...problems.map(({ words }, i) => clause(words, i)), ...(more === null ? [] : [more])];
  return answer(verdict, `${clauses.join("; ")}.`);
}
