import { expect, it } from "vitest";
import { develop } from "../../src/report/develop.ts";
import { openReach } from "../../src/forming/openReach.ts";
import { chosenPlan } from "../../src/site/forming/plan.ts";
import { askedBendLines } from "../../src/site/words/asked/bendLines.ts";
import { formingCase } from "../../src/report/formingCase.ts";
import { layOut } from "../../src/report/layOut.ts";
import { askedChecks } from "../../src/site/words/asked/checks.ts";
import { askedInspection } from "../../src/site/words/asked/inspection.ts";
import { askedPattern } from "../../src/site/words/asked/pattern.ts";
import { PATTERN_FIGURES } from "../../src/site/words/asked/patternFigures.ts";
import { askedMarking } from "../../src/site/words/asked/marking.ts";
import type { TableAnswers } from "../../src/site/words/asked/answers.ts";
import { markingOf } from "../../src/site/words/marking.ts";
import { parts, reports, shop, SOURCES, tables, worth } from "./askedSums.ts";

interface Sum {
  readonly left: number;
  readonly right: number;
  readonly text: string;
  /** Half of the last place of what is told. */
  readonly half: number;
}

/** Every sum of an answer: what stands before an equals sign and what after. */
function sumsOf(numbers: string): Sum[] {
  return numbers.split(/; (?=class|straight|in the)|: (?=√|[\d.]+° \+|\d+ [+×])/).flatMap((text) => {
    const [left, after] = text.split(/ [=≈] /);
    const right = after && /^-?[\d.]+(?=\D|$)/.exec(after)?.[0].replace(/\.$/, "");
    if (!left || right === undefined || right === "" || !/[-−+×/²√π]/.test(left)) return [];
    const sum = left.replace(/^straight across the two points are /, "");
    const places = right.split(".")[1]?.length ?? 0;
    return [{ left: worth(sum), right: Number(right), text, half: 0.5 * 10 ** -places }];
  });
}

/** How many angles a sum of bends adds: "3 × 8.1° + 7.2°" four. */
const stretchOf = (text: string): number =>
  text
    .split(" = ")[0]!
    .split("+")
    .reduce((sum, term) => sum + Number(/(\d+) ×/.exec(term)?.[1] ?? 1), 1);

function judge(answers: TableAnswers, slackOf: (key: string, sum: Sum) => number): number {
  let count = 0;
  for (const [key, { name, rows }] of answers) {
    expect(rows.length, name).toBeGreaterThan(0);
    for (const { worked } of rows) {
      expect(worked.rule.length, name).toBeGreaterThan(20);
      expect(SOURCES, `${name}: ${worked.basis}`).toContain(worked.basis);
      expect(`${worked.rule}${worked.numbers}`).not.toMatch(/NaN|undefined|Infinity|\[object/);
      for (const sum of sumsOf(worked.numbers)) {
        count++;
        expect(Math.abs(sum.left - sum.right), `${name}: ${sum.text}`).toBeLessThanOrEqual(slackOf(key, sum));
      }
    }
  }
  return count;
}

it.each(reports)(
  "%s: every column of the marking table is answered for every figure in it, and its sums come out",
  (_, report) => {
    const { columns, told, rows } = markingOf(report);
    const answers = askedMarking(report);
    const last = report.part.units === "mm" ? 0.05 : 0.0005;
    for (const { key, cell } of [...columns, ...told]) {
      const shown = rows.map(cell).filter((text) => text !== "");
      expect(answers.get(key)!.rows.length, key).toBe(shown.length);
    }
    const count = judge(answers, (key, { half }) =>
      // A bend is told at this line's lean, the angle in between is rounded to 0.001°. Straight lines: each number is off by
      // half of its last place, the differences by twice that.
      key === "plan" ? half + 0.006 : key === "bend" ? half + 0.02 : half + 4 * last,
    );
    expect(count).toBeGreaterThan(30);
    // A bend is near what its lean tells: the cosine changes slowly from line to line.
    for (const { worked } of answers.get("bend")?.rows ?? []) {
      const [near, exact] = worked.numbers.match(/[\d.]+(?=°[;.])/g)!.map(Number);
      expect(Math.abs(near! / exact! - 1), worked.numbers).toBeLessThan(0.1);
    }
  },
);

it.each(reports)("%s: the points of the pattern lie where the two arcs that are told cross", (_, report) => {
  const answers = askedMarking(report);
  const last = report.part.units === "mm" ? 0.05 : 0.0005;
  let arcs = 0;
  for (const key of ["ax", "bx"] as const)
    for (const { worked } of answers.get(key)!.rows) {
      const at = /cross at \((-?[\d.]+), (-?[\d.]+)\)/.exec(worked.numbers);
      if (!at) continue;
      const [x, y] = [Number(at[1]), Number(at[2])];
      for (const [, radius, cx, cy] of worked.numbers.matchAll(
        /arc of (-?[\d.]+) round \((-?[\d.]+), (-?[\d.]+)\)/g,
      )) {
        arcs++;
        expect(
          Math.abs(Math.hypot(x - Number(cx), y - Number(cy)) - Number(radius)),
          worked.numbers,
        ).toBeLessThan(4 * last);
      }
    }
  expect(arcs).toBeGreaterThan(10);
});

it.each(reports.filter(([, report]) => chosenPlan(report)?.brake))(
  "%s: every column of the bend lines is answered for every line, and its sums come out",
  (_, report) => {
    const { brake } = chosenPlan(report)!;
    const answers = askedBendLines(report, brake!);
    const last = report.part.units === "mm" ? 0.05 : 0.0005;
    const lines = brake!.lines.filter(({ piece }) =>
      report.blanks.some((one) => one.piece === piece && one.sameAs === null),
    );
    const told = [...answers].filter(([key]) => key.endsWith(" force")).flatMap(([, { rows }]) => rows);
    expect(told.length).toBe(lines.length);
    const count = judge(answers, (key, { half, right, text }) => {
      // Every bend of a long sum is rounded to 0.01°.
      if (key.endsWith("bend")) return half + 0.005 * stretchOf(text);
      // The bent length is told to a tenth.
      if (key.endsWith("force")) return half + (0.06 / 20) * right;
      // A share of two small spacings, each told to its last place.
      if (key.endsWith("bent")) return half + 0.02 * Number.parseFloat(text) + 4 * last;
      return half + 4 * last;
    });
    expect(count).toBeGreaterThan(3 * lines.length);
  },
);

it.each(reports)("%s: every row of the inspection is answered, and its sums come out", (_, report) => {
  const answers = askedInspection(report);
  const { inspection } = report.forming;
  expect([...answers.keys()]).toEqual(inspection!.rows.map(({ what }) => what));
  const last = report.part.units === "mm" ? 0.05 : 0.0005;
  judge(
    answers,
    (_key, { half, right }) =>
      // A template's lean is told to 0.01°; a girth by its diameter, which is rounded before it is taken π times.
      half + 8 * last + 0.0006 * right,
  );
  for (const row of inspection!.rows) {
    const { worked } = answers.get(row.what)!.rows[0]!;
    expect(worked.basis).toBe(row.basis);
    if (row.withinMm !== null) expect(worked.numbers).toMatch(new RegExp(`(?:± |= )${row.withinMm} mm`));
    if (row.id === "tape" || row.id === "template" || row.id === "girth")
      expect(worked.numbers).toMatch(/ = /);
  }
});

it.each(reports)(
  "%s: every check is answered with this part's numbers, and its sums come out",
  (_, report) => {
    const { forming, part } = report;
    const laid = layOut(part, tables);
    if (laid.kind !== "laid") throw new Error(part.name);
    const answers = askedChecks({
      checks: forming.checks,
      item: formingCase(part, laid),
      machine: shop!.machines.find(({ name }) => name === forming.machine),
      brake: chosenPlan(report)?.brake,
      shopUnits: shop!.units,
    });
    expect([...answers.keys()]).toEqual(forming.checks.map(({ id }) => id));
    let sums = 0;
    for (const { id, value, limit } of forming.checks) {
      const { numbers } = answers.get(id)!.rows[0]!.worked;
      expect(numbers, id).not.toMatch(/NaN|undefined|Infinity/);
      expect(/This part: /.test(numbers), numbers).toBe(value !== null);
      expect(/Allowed: /.test(numbers), numbers).toBe(limit !== null);
      for (const one of numbers.split("; ")) {
        const [, left, right] = /: (.*) = ([\d.-]+)/.exec(one.replaceAll("\u00a0", " ")) ?? [];
        if (left === undefined || right === undefined) continue;
        sums++;
        const isShare = /^(?:Left|Beyond)/.test(one);
        const came = worth(left) * (isShare ? 100 : 1);
        // What is told is rounded to its last place, and the numbers of the sum to four figures or more.
        const half = isShare ? 0.06 : 0.5 * 10 ** -(right.split(".")[1]?.length ?? 0);
        expect(Math.abs(came - Number(right)), one).toBeLessThan(half + 5e-4 * Math.abs(came));
      }
    }
    expect(sums).toBeGreaterThan(3);
  },
);

it.each(reports)("%s: figures under the pattern are answered, and their sums come out", (_, report) => {
  const answers = askedPattern(report);
  expect([...answers.keys()]).toEqual(PATTERN_FIGURES.map(({ id }) => id));
  const last = report.part.units === "mm" ? 0.05 : 0.0005;
  // A tenth of the last place for each edge; a lean is told to 0.001°, and a twelfth of a blank's edges have twelve chords.
  const count = judge(answers, (_key, { half }) => half + 0.3 * last);
  expect(count).toBeGreaterThan(1);
});

it("tells what the small edge slides, and from which number on a least is allowed", () => {
  const { part } = parts.find((one) => one.part.name === "overflow-shift")!;
  const made = develop(part, { ...tables, shop: shop! });
  const laid = layOut(part, tables);
  if (made.kind === "refused" || laid.kind !== "laid") throw new Error(part.name);
  const { forming } = made.report;
  const machine = shop!.machines.find(({ name }) => name === forming.machine);
  const item = formingCase(part, laid);
  const answers = askedChecks({ checks: forming.checks, item, machine, brake: undefined });
  const numbersOf = (id: string) => answers.get(id)!.rows[0]!.worked.numbers.replaceAll("\u00a0", " ");
  const slide = / = ([\d.]+) mm$/.exec(numbersOf("cone-attachment"))?.[1];
  expect(forming.checks.find(({ id }) => id === "cone-attachment")!.advice).toContain(
    `the large edge runs ${slide} mm further`,
  );
  expect(numbersOf("small-end")).toMatch(/^This part: .*; Allowed: .* or more; /);
  expect(numbersOf("room-beyond-stop")).toMatch(/^This part: .* × \(1 − cos\(.*\) × sin\(.* = /);
});

it.each([1, 4])("tells the reach past the stop of %i pieces from the drawing's own sizes on", (pieces) => {
  const { part } = parts.find((one) => one.part.name === "dust-cyclone-cone")!;
  const own = { ...part, pieces };
  const laid = layOut(own, tables);
  if (laid.kind !== "laid") throw new Error(part.name);
  const item = formingCase(own, laid);
  const roll = shop!.machines.find((one) => one.kind === "plate roll")!;
  const reach = openReach(item)!.pastMm;
  const machine = {
    ...roll,
    coneAttachment: { fitted: true, range: [0, 900], clearRoom: reach * 0.9 },
  } satisfies typeof roll;
  const made = develop(own, { ...tables, shop: { ...shop!, machines: [machine] } });
  if (made.kind === "refused") throw new Error(part.name);
  const { checks } = made.report.forming.machines[0]!;
  const { worked } = askedChecks({ checks, item, machine, brake: undefined }).get("room-beyond-stop")!
    .rows[0]!;
  const sums = worked.numbers.replaceAll("\u00a0", " ").split("; ");
  const about = (name: string) => sums.find((sum) => sum.startsWith(name))!;
  // The stop is set further in, and that is added to the room that the shop file gives.
  expect(about("Allowed")).toMatch(/^Allowed: [\d.]+ \+ [\d.]+ = /);
  // What each step comes to is what the next begins with.
  const came = (name: string) => / = ([\d.]+)/.exec(about(name))![1]!;
  const closed = came("Closed at the first trial");
  expect(about("Small end while open")).toContain(`/ ${closed} = `);
  expect(about("This part")).toContain(`${came("Small end while open")} / 2 × `);
  if (pieces > 1) expect(about("This part")).toContain(`cos(${came("Turn while open")}°)`);
  expect(about("Over the pinch")).toMatch(/ \/ tan\([\d.]+°\) = /);
  expect(about("Closed: ")).toContain(`cos(${pieces === 1 ? 180 : 90}°)`);
  for (const sum of sums.filter((one) => !one.startsWith("Left") && !one.startsWith("Beyond"))) {
    const [, left, right] = /: (.*) = ([\d.]+)/.exec(sum) ?? [];
    if (left !== undefined) expect(Math.abs(worth(left) / Number(right) - 1), sum).toBeLessThan(2e-3);
  }
  expect(worked.rule).toMatch(/diameter \/ closed, sin of the lean \/ closed, turn × closed/);
  expect(SOURCES).toContain(worked.basis);
});
