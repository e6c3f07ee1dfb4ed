import type * as z from "zod/mini";
import { isWhole, limitsOf, quantityOf, type Schema } from "./introspect.ts";
import { seen } from "./treeWords.ts";
import { limitText, remedyFor } from "./remedy.ts";
import type { Tree } from "./tree.ts";
import type { Units } from "./units.ts";

interface Complaint {
  readonly problem: string;
  readonly remedy: string;
}

/**
 * What a schema found wrong with a field, in the words of the trade.
 * @param tree what the file has there; undefined where it has nothing
 * @param units undefined where the file does not say: limits of sizes cannot be judged then, and nothing is said
 */
export function complaint(
  issue: z.core.$ZodIssue,
  schema: Schema,
  tree: Tree | undefined,
  units: Units | undefined,
): Complaint | undefined {
  const remedy = remedyFor(schema, units ?? "mm");
  if (!tree) return { problem: "is missing", remedy };
  if (issue.code === "custom") return { problem: issue.message, remedy };
  if (issue.code === "too_small" || issue.code === "too_big") return outside(issue.code, schema, tree, units);
  if (tree.kind === "list") return { problem: "is a list, which does not belong here", remedy };
  if (tree.kind === "map") return { problem: "is a group of keys, which does not belong here", remedy };
  if (issue.code === "not_multiple_of") {
    return {
      problem: `${seen(tree)} is not ${issue.divisor === 2 ? "even" : `a multiple of ${issue.divisor}`}`,
      remedy,
    };
  }
  if (issue.code !== "invalid_type") return { problem: `${seen(tree)} does not fit`, remedy };
  return {
    problem: wrongKind(issue.expected, seen(tree), isWhole(schema) && typeof tree.value === "number"),
    remedy,
  };
}

function wrongKind(expected: string, written: string, isNumber: boolean): string {
  switch (expected) {
    case "number":
    case "int":
      return `${written} is not a ${isNumber ? "whole " : ""}number`;
    case "boolean":
      return `${written} is neither true nor false`;
    case "array":
    case "tuple":
      return `${written} is not a list`;
    case "object":
      return `${written} is a single value where a group of keys belongs`;
    default:
      return `${written} does not fit`;
  }
}

/** Too small, too large, too long, too short. */
function outside(
  code: "too_small" | "too_big",
  schema: Schema,
  tree: Tree,
  units: Units | undefined,
): Complaint | undefined {
  const whole = remedyFor(schema, units ?? "mm");
  if (tree.kind === "map") return { problem: "does not fit", remedy: whole };
  if (tree.kind === "list") return { problem: countOf(tree.items.length), remedy: whole };
  const written = seen(tree);
  const { min, max } = limitsOf(schema);
  const limit = code === "too_small" ? min : max;
  const quantity = quantityOf(schema);
  const number = typeof tree.value === "number" || quantity !== undefined;
  if (!number) {
    if (code === "too_small") return { problem: "is empty", remedy: whole };
    return { problem: `is ${tree.written.trim().length} characters long`, remedy: whole };
  }
  if ((quantity !== "length" && quantity !== "thickness") || !limit) {
    return { problem: `${written} is too ${code === "too_small" ? "small" : "large"}`, remedy: whole };
  }
  if (code === "too_small" && (limit.value === 0 || tree.written.trim().startsWith("-"))) {
    if (quantity === "thickness") return { problem: `${written} is not a thickness`, remedy: whole };
    if (limit.value === 0) return { problem: `${written} is not a size`, remedy: whole };
  }
  if (!units) return undefined;
  const bound = limitText(limit.value, units, code === "too_small" ? "up" : "down");
  const how =
    quantity === "thickness"
      ? ["thin", "thick"]
      : limit.value < 0
        ? ["far below 0", "large"]
        : ["small", "large"];
  const inches = units === "in" && /^\d+(?:\.\d*)?$/.test(tree.written.trim());
  const metric = inches && code === "too_big" ? `, or write ${tree.written.trim()} mm for millimetres` : "";
  return code === "too_small"
    ? { problem: `${written} is too ${how[0] ?? ""}`, remedy: `give at least ${bound}` }
    : { problem: `${written} is too ${how[1] ?? ""}`, remedy: `give at most ${bound}${metric}` };
}

function countOf(items: number): string {
  if (items === 0) return "is an empty list";
  return items === 1 ? "has 1 item" : `has ${items} items`;
}
