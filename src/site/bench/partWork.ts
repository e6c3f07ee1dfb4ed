import type { Tables } from "../../input/context.ts";
import type { Outline } from "../../input/outline.ts";
import { readPlainly } from "../../input/plainly.ts";
import { lay, type LaidOut, materialOf, type NamedPart } from "../../report/lay.ts";
import { givenIn } from "../../shapes/loose.ts";
import type { Part } from "../../shapes/part.ts";
import type { Shape } from "../../shapes/shape.ts";
import type { NamedTyped } from "./asTyped.ts";
import type * as Rules from "./rules.ts";
import type { Complaint } from "./typedReading.ts";

/** One shape: how it is laid out, and what its file asks for. */
export interface ShapeAtBench {
  readonly shape: Shape;
  readonly outline: Outline;
}

export type Worked =
  | { readonly kind: "laid"; readonly part: NamedPart; readonly made: LaidOut }
  | { readonly kind: "problems"; readonly problems: readonly Complaint[] };

/** A part that is plainly written and all right, as far as nobody needs a remedy; undefined where the rules have to look. */
function workPlainly(
  { name, part: typed }: NamedTyped,
  { shape, outline }: ShapeAtBench,
  { catalogue }: Tables,
): Worked | undefined {
  const part = readPlainly(outline, typed, catalogue) as Part | undefined;
  if (part === undefined || shape.problems(part, givenIn(part)).length > 0) return undefined;
  const made = lay(part, shape, materialOf(part, catalogue));
  return made.kind === "laid" ? { kind: "laid", part: { ...part, name }, made } : undefined;
}

/**
 * Reads what is typed and lays it out, by the rules of part files. Those weigh as much as all the rest of a bench, so that
 * they are loaded when something is typed that wants them: a part that is plainly written and right does without.
 */
export class PartWork {
  private readonly own: ShapeAtBench;
  private readonly tables: Tables;
  private rules: typeof Rules | undefined;

  constructor(own: ShapeAtBench, tables: Tables) {
    this.own = own;
    this.tables = tables;
  }

  /** @returns undefined where the rules have to be loaded first */
  of(typed: NamedTyped): Worked | undefined {
    // Most keys leave a part that is plainly written: the plain reader is quicker with it than the rules that it is held to.
    return workPlainly(typed, this.own, this.tables) ?? this.rules?.work(typed, this.tables);
  }

  /** What the rules say of a file, in words of the form. */
  inWords(text: string): string {
    return this.rules?.inFieldWords(text) ?? text;
  }

  async load(): Promise<void> {
    this.rules ??= await import("./rules.ts");
  }
}
