import type { TypedGroup } from "../../../input/typed.ts";
import { nameProblem } from "../files/nameProblem.ts";
import { asCarried } from "../ownTrials.ts";
import { asTypedGroup, type NamedTyped, withSoundTrials } from "../asTyped.ts";

/** Parts that belong together, kept in this browser: a job that is not yet a folder. */
export interface TrayContent {
  /** Title, reference, date and notes of the job. */
  readonly job: TypedGroup;
  readonly parts: readonly NamedTyped[];
}

export const EMPTY: TrayContent = { job: {}, parts: [] };
/** As many as a job file names. */
export const MOST_PARTS = 1000;

/** What to do with a part whose name is taken by another. */
export type Clash = "replace" | "keep both";

/** Some systems do not tell capitals apart, so neither do names here. */
export const same = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

export const onTray = (tray: TrayContent, name: string): NamedTyped | undefined =>
  tray.parts.find((one) => same(one.name, name));

/** Is it the same part, whatever the order of its keys? */
const samePart = (a: NamedTyped, b: NamedTyped): boolean =>
  a.name === b.name && sorted(a.part) === sorted(b.part) && sameTrials(a, b);

const sameTrials = (a: NamedTyped, b: NamedTyped): boolean =>
  JSON.stringify(a.trials?.seen ?? []) === JSON.stringify(b.trials?.seen ?? []);

const sorted = (part: TypedGroup): string =>
  JSON.stringify(part, (_, value: unknown) =>
    typeof value === "object" && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );

/** Those of some parts whose names are taken by other parts. */
export const clashes = (tray: TrayContent, parts: readonly NamedTyped[]): NamedTyped[] =>
  parts.filter((one) => {
    const there = onTray(tray, one.name);
    return there !== undefined && !samePart(there, one);
  });

/** The tray with some parts more; the very same part is there once. */
export function withParts(tray: TrayContent, parts: readonly NamedTyped[], clash: Clash): TrayContent {
  const now = [...tray.parts];
  for (const one of parts) {
    const at = now.findIndex(({ name }) => same(name, one.name));
    const there = now[at];
    if (!there) now.push(one);
    else if (samePart(there, one)) continue;
    else if (clash === "replace") now[at] = one;
    else now.push({ ...one, name: freeName(one.name, now) });
  }
  return { ...tray, parts: now };
}

export const withoutPart = (tray: TrayContent, name: string): TrayContent => ({
  ...tray,
  parts: tray.parts.filter((one) => !same(one.name, name)),
});

/** cone, cone-2, cone-3 …: the first that is free, cut where it would be too long for a file. */
function freeName(name: string, taken: readonly NamedTyped[]): string {
  const isTaken = (one: string) => taken.some((part) => same(part.name, one));
  const stem = name.replace(/-\d+$/, "").slice(0, 74);
  let next = name;
  for (let i = 2; isTaken(next); i++) next = `${stem}-${i}`;
  return next;
}

/** A tray, from what a browser kept: the parts that are some, each with its trials as far as they are trials. */
export function asTray(value: unknown): TrayContent | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  const { job, parts } = value as Record<string, unknown>;
  const list: readonly unknown[] = Array.isArray(parts) ? parts : [];
  const sound = list.filter(isNamed);
  // An empty tray that was kept is one too.
  return sound.length > 0 || isWholeTray(value)
    ? { job: asTypedGroup(job) ?? {}, parts: sound.map(withSoundTrials) }
    : undefined;
}

/** Is all of it a tray, so that nothing is lost where it is written anew? */
export function isWholeTray(value: unknown): boolean {
  if (typeof value !== "object" || value === null) return false;
  const { job, parts } = value as Record<string, unknown>;
  return (
    asTypedGroup(job) !== undefined &&
    Array.isArray(parts) &&
    parts.every((one) => isNamed(one) && (one.trials === undefined || asCarried(one.trials) !== undefined))
  );
}

function isNamed(value: unknown): value is NamedTyped {
  if (typeof value !== "object" || value === null) return false;
  const { name, part } = value as Record<string, unknown>;
  return typeof name === "string" && nameProblem(name) === undefined && asTypedGroup(part) !== undefined;
}
