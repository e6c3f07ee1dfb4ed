import { capital } from "../capital.ts";

/** Which piece a picture is of and which face of it is up: "Piece 2, inside face up"; of a part in one piece the face alone. */
export function inBrief(faceUp: string, alike: readonly number[], blanks: number): string {
  const which = blanks === 1 ? "" : `${alike.length === 1 ? "piece" : "pieces"} ${alike.join(", ")}, `;
  return capital(`${which}${faceUp} face up`);
}
