import { typedAt, type TypedGroup } from "../../input/typed.ts";

/** What stands in the fold, as it was typed: "2 pieces, seam right, gap 3"; what is as usual is not said. */
export function foldWords(typed: TypedGroup): string {
  const word = (path: readonly string[], say: (text: string) => string): string[] => {
    const text = typedAt(typed, path);
    return typeof text === "string" && text.trim() !== "" ? [say(text.trim())] : [];
  };
  return [
    ...word(["pieces"], (text) => `${text} ${text === "1" ? "piece" : "pieces"}`),
    ...word(["seam", "at"], (text) => `seam ${text}${/\d$/.test(text) ? "°" : ""}`),
    ...word(["seam", "gap"], (text) => `gap ${text}`),
    ...word(["seam", "lap"], (text) => `lap ${text}`),
    ...word(["quantity"], (text) => `${text} to make`),
  ].join(", ");
}
