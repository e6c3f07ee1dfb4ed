import type { Tables } from "../../input/context.ts";
import type { Outline } from "../../input/outline.ts";
import { readPlainly } from "../../input/plainly.ts";
import type { TypedGroup } from "../../input/typed.ts";
import type { Part, ShapeId } from "../../shapes/part.ts";
import { fieldProblems } from "../../shapes/registry.ts";
import { isShapeId } from "../../shapes/ids.ts";
import { givenIn } from "../../shapes/loose.ts";
import { reading, type TypedReading } from "./typedReading.ts";

/** What each shape's file asks for. */
export type Outlines = Readonly<Record<ShapeId, Outline>>;

/** A part whose every value is right and plainly written; undefined where only the reader of files can tell. */
export function readPlainPart(
  typed: TypedGroup,
  outlines: Outlines,
  { catalogue }: Tables,
): TypedReading<Part> | undefined {
  const { shape } = typed;
  const part = isShapeId(shape) ? readPlainly(outlines[shape], typed, catalogue) : undefined;
  return part === undefined ? undefined : reading(part as Part, fieldProblems(part as Part, givenIn(part)));
}

/**
 * Reads what is typed by the rules of part files. They weigh as much as all the rest of a bench, so that they are loaded
 * when something is typed that wants them; until then plain sizes are read without.
 */
export class PartReader {
  private readonly outlines: Outlines;
  private readonly tables: Tables;
  private whole: typeof import("./readTyped.ts").readTypedPart | undefined;

  constructor(outlines: Outlines, tables: Tables) {
    this.outlines = outlines;
    this.tables = tables;
  }

  /** @returns undefined where the rules have to be loaded first */
  read(typed: TypedGroup): TypedReading<Part> | undefined {
    return this.whole ? this.whole(typed, this.tables) : readPlainPart(typed, this.outlines, this.tables);
  }

  async load(): Promise<void> {
    this.whole ??= (await import("./readTyped.ts")).readTypedPart;
  }
}
