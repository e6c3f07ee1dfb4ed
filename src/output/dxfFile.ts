import type { Vec2 } from "../geometry/vector.ts";
import { type Contour, type FileUnits, perUnit } from "./contour.ts";
import { dxfWords } from "./dxfWords.ts";

/** Layers by what is done with their lines. Names as the oldest readers want them. */
const LAYERS = [
  { name: "CUT", colour: 7, lines: "CONTINUOUS" },
  { name: "BEND", colour: 5, lines: "DASHED" },
  { name: "ELEMENT", colour: 3, lines: "DASHED" },
  { name: "NUMBER", colour: 4, lines: "CONTINUOUS" },
  { name: "MARK", colour: 1, lines: "CONTINUOUS" },
  { name: "NOTE", colour: 8, lines: "CONTINUOUS" },
] as const;
/** The plate that blanks are laid on: to set the work to, never cut. */
const PLATE = { name: "PLATE", colour: 9, lines: "CONTINUOUS" } as const;
type Layer = (typeof LAYERS)[number] | typeof PLATE;
type LayerName = Layer["name"];

/** Eight decimals of a millimetre, twelve of a bulge: what is lost is far below the arcs' own error. */
const [DECIMALS, BULGE_DECIMALS] = [8, 12];
const ANGLE_DECIMALS = 4;

interface Lettering {
  readonly at: Vec2;
  readonly capMm: number;
  readonly words: string;
  /** About its middle, turned counter-clockwise; else level from its start. */
  readonly middle?: { readonly turnDeg: number };
}

/**
 * A DXF file of release 12, the oldest that every reader takes, written stroke by stroke: closed contours with true arcs,
 * lines and lettering on layers of their own.
 *
 * @param units what the numbers are in; told in the header
 * @see the published DXF reference of release 12
 */
export function dxfFile({
  units,
  size,
  hasPlate = false,
}: {
  units: FileUnits;
  size: Vec2;
  hasPlate?: boolean;
}) {
  const unit = perUnit(units);
  const out: string[] = [];
  const put: Put = (code, value) => out.push(String(code), String(value));
  const number = (code: number, mm: number) => put(code, trimmed(mm / unit, DECIMALS));
  const point = ([x, y]: Vec2, shift = 0) => {
    number(10 + shift, x);
    number(20 + shift, y);
    put(30 + shift, "0");
  };
  const begin = (kind: string, layer: LayerName) => {
    put(0, kind);
    put(8, layer);
  };
  header(put, number, size, units);
  tables(put, hasPlate ? [...LAYERS, PLATE] : LAYERS);
  put(0, "SECTION");
  put(2, "ENTITIES");
  return {
    contour({ start, pieces }: Contour, layer: LayerName): void {
      begin("POLYLINE", layer);
      put(66, 1);
      point([0, 0]);
      put(70, 1);
      // A vertex carries the bulge of the piece that leaves it.
      [start, ...pieces.slice(0, -1).map(({ to }) => to)].forEach((at, i) => {
        begin("VERTEX", layer);
        point(at);
        const bulge = pieces[i]?.bulge ?? 0;
        if (bulge !== 0) put(42, trimmed(bulge, BULGE_DECIMALS));
      });
      begin("SEQEND", layer);
    },
    line(from: Vec2, to: Vec2, layer: LayerName): void {
      begin("LINE", layer);
      point(from);
      point(to, 1);
    },
    text({ at, capMm, words, middle }: Lettering, layer: LayerName): void {
      begin("TEXT", layer);
      point(at);
      number(40, capMm);
      put(1, dxfWords(words));
      if (!middle) return;
      if (middle.turnDeg !== 0) put(50, trimmed(middle.turnDeg, ANGLE_DECIMALS));
      put(72, 4);
      point(at, 1);
    },
    end(): string {
      put(0, "ENDSEC");
      put(0, "EOF");
      return `${out.join("\r\n")}\r\n`;
    },
  };
}

/** A file as it is written. */
export type DxfFile = ReturnType<typeof dxfFile>;

type Put = (code: number, value: string | number) => unknown;

function header(put: Put, number: (code: number, mm: number) => unknown, size: Vec2, units: FileUnits): void {
  put(0, "SECTION");
  put(2, "HEADER");
  put(9, "$ACADVER");
  put(1, "AC1009");
  put(9, "$INSUNITS");
  put(70, units === "mm" ? 4 : 1);
  put(9, "$MEASUREMENT");
  put(70, units === "mm" ? 1 : 0);
  put(9, "$EXTMIN");
  put(10, "0");
  put(20, "0");
  put(9, "$EXTMAX");
  number(10, size[0]);
  number(20, size[1]);
  put(0, "ENDSEC");
}

function tables(put: Put, layers: readonly Layer[]): void {
  put(0, "SECTION");
  put(2, "TABLES");
  put(0, "TABLE");
  put(2, "LTYPE");
  put(70, 2);
  for (const [name, words, pattern] of [
    ["CONTINUOUS", "Solid line", []],
    ["DASHED", "Dashed", [6, -3]],
  ] as const) {
    put(0, "LTYPE");
    put(2, name);
    put(70, 0);
    put(3, words);
    put(72, 65);
    put(73, pattern.length);
    put(
      40,
      pattern.reduce<number>((sum, one) => sum + Math.abs(one), 0),
    );
    for (const one of pattern) put(49, one);
  }
  put(0, "ENDTAB");
  put(0, "TABLE");
  put(2, "LAYER");
  put(70, layers.length);
  for (const { name, colour, lines } of layers) {
    put(0, "LAYER");
    put(2, name);
    put(70, 0);
    put(62, colour);
    put(6, lines);
  }
  put(0, "ENDTAB");
  put(0, "TABLE");
  put(2, "STYLE");
  put(70, 1);
  put(0, "STYLE");
  put(2, "STANDARD");
  put(70, 0);
  put(40, 0);
  put(41, 1);
  put(50, 0);
  put(71, 0);
  put(42, 2.5);
  put(3, "txt");
  put(4, "");
  put(0, "ENDTAB");
  put(0, "ENDSEC");
}

function trimmed(value: number, decimals: number): string {
  const text = value.toFixed(decimals).replace(/\.?0+$/, "");
  return text === "-0" ? "0" : text;
}
