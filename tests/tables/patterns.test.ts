import { describe, expect, it } from "vitest";
import { named, reportOf } from "../parts.ts";
import { inchesOf, numbersOf, tableOf } from "./all.ts";
import { halfLast, off } from "./arithmetic.ts";

describe("sector angle", () => {
  const { rows } = tableOf("sector-angle");

  it("every row comes out from a cone of height 1, by Pythagoras and the law of cosines", () => {
    for (const row of rows) {
      const [deg = 0] = numbersOf(row);
      const taper = Math.tan((deg * Math.PI) / 180);
      const slant = Math.sqrt(1 + taper * taper);
      const sector = (360 * taper) / slant;
      const chord = 1000 * Math.sqrt(2 - 2 * Math.cos((sector * Math.PI) / 180));
      const wanted = [
        2 * deg,
        90 - deg,
        2000 * taper,
        1000 * slant,
        (1000 * slant) / (2 * taper),
        sector,
        360 - sector,
      ];
      wanted.forEach((value, i) =>
        expect(off(row[i + 1]!, value), `${row.join(" ")}: ${value}`).toBeLessThanOrEqual(1),
      );
      expect(off(row[8]!, chord)).toBeLessThanOrEqual(1);
    }
  });

  it("runs from 5° to 85°, by half degrees where reducers lie", () => {
    const angles = rows.map(([deg]) => Number(deg));
    expect([angles[0], angles.at(-1)]).toEqual([5, 85]);
    expect(angles.toSorted((a, b) => a - b)).toEqual(angles);
    for (const deg of [7, 12.5, 22.5, 30, 34.5, 60]) expect(angles).toContain(deg);
  });

  it("apex angle 30° (Math Forum, Dr Math 61472: θ = 360 r/s): 93.17°; half angle 30° is half a disc", () => {
    expect(rows.find(([deg]) => deg === "15.0")?.[6]).toBe("93.17");
    expect(rows.find(([deg]) => deg === "30.0")?.slice(5)).toEqual(["1000.0", "180.00", "180.00", "2000.00"]);
  });
});

describe("shortfall", () => {
  const { rows } = tableOf("shortfall");

  it("every row comes out from a polygon whose corners lie on a circle of 1000 across", () => {
    for (const row of rows) {
      const n = Number(row[0]);
      const corner = (i: number) =>
        [500 * Math.cos((2 * Math.PI * i) / n), 500 * Math.sin((2 * Math.PI * i) / n)] as const;
      const spans = Array.from({ length: n }, (_, i) => {
        const [[x, y], [u, v]] = [corner(i), corner(i + 1)];
        return { chord: Math.hypot(u - x, v - y), rise: 500 - Math.hypot((x + u) / 2, (y + v) / 2) };
      });
      const girth = 1000 * Math.PI;
      const stepped = spans.reduce((sum, { chord }) => sum + chord, 0);
      const short = girth - stepped;
      const wanted = [
        360 / n,
        spans[0]!.chord,
        girth / n,
        spans[0]!.rise,
        short,
        (1000 * short) / girth,
        (100 * short) / girth,
      ];
      wanted.forEach((value, i) =>
        expect(off(row[i + 1]!, value), `${row.join(" ")}: ${value}`).toBeLessThanOrEqual(1),
      );
    }
  });

  // Computed beforehand from the identity 1 − n/π sin(π/n), for a diameter of 1000 where lengths.
  it.each([
    [12, 1.138407053, 35.764, 17.037],
    [16, 0.641314886, undefined, undefined],
    [24, 0.285334265, 8.964, 4.278],
    [36, 0.126876, undefined, undefined],
    [48, 0.071379418, undefined, 1.071],
    [96, 0.017848, undefined, undefined],
  ])("%d divisions lose %d %%", (n, percent, lost, rise) => {
    const row = rows.find(([first]) => first === String(n))!;
    expect(off(row[7]!, percent)).toBeLessThanOrEqual(1);
    if (lost !== undefined) expect(off(row[5]!, lost)).toBeLessThanOrEqual(1);
    if (rise !== undefined) expect(off(row[4]!, rise)).toBeLessThanOrEqual(1);
  });

  it("is what a part laid out by hand loses", () => {
    const { hand } = reportOf(
      named({
        shape: "right-cone",
        thickness: 1,
        divisions: 16,
        largeEnd: { diameter: 1000, measured: "middle" },
        smallEnd: { diameter: 500, measured: "middle" },
        height: 800,
      }),
    );
    expect(off(rows.find(([n]) => n === "16")![5]!, hand.shortfallMm.a)).toBeLessThanOrEqual(1);
  });
});

describe.each([
  { id: "template-mm", width: 1 },
  { id: "template-inch", width: 2 },
])("$id", ({ id, width }) => {
  const { rows, columns } = tableOf(id);
  const chords = columns
    .slice(1)
    .filter((_, i) => i % width === 0)
    .map(({ group = "", head }) => Number.parseFloat(width === 1 ? head : group.replace("Chord ", "")));

  it("every depth makes a circle of its row through both ends of the chord", () => {
    expect(chords.length).toBeGreaterThan(6);
    for (const row of rows) {
      const radius = Number(row[0]);
      chords.forEach((chord, i) => {
        const cell = row[1 + i * width]!;
        if (cell === "–") {
          expect(chord).toBeGreaterThan(2 * radius);
          return;
        }
        expect(chord).toBeLessThanOrEqual(2 * radius);
        const h = Number(cell);
        // Where the line of length r from the centre ends: (r − h)² + (c/2)² = r², and ∂/∂h = −2 (r − h).
        const miss = (radius - h) ** 2 + (chord / 2) ** 2 - radius ** 2;
        expect(Math.abs(miss), `${id} ${radius} ${chord}`).toBeLessThanOrEqual(
          2 * (radius - h + halfLast(cell)) * halfLast(cell) + 1e-6 * radius,
        );
      });
    }
  });

  it("has fractions within two per cent of the depth, where it has any", () => {
    if (width === 1) return;
    let some = 0;
    for (const row of rows)
      chords.forEach((_, i) => {
        const [decimal = "", fraction = ""] = row.slice(1 + 2 * i);
        if (fraction === "–") return;
        const value = inchesOf(fraction);
        some += 1;
        expect(Math.abs(value - Number(decimal))).toBeLessThanOrEqual(0.02 * Number(decimal) + 0.0005);
      });
    expect(some).toBeGreaterThan(100);
  });
});

it("a chord of the side of a hexagon is as deep as 1 − √3/2 of its radius (closed form)", () => {
  const { rows, columns } = tableOf("template-mm");
  const at = columns.findIndex(({ head }) => head === "500");
  expect(off(rows.find(([r]) => r === "500")![at]!, 500 * (1 - Math.sqrt(3) / 2))).toBeLessThanOrEqual(1);
});
