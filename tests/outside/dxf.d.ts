/** As much as the tests take of a reader that comes without types. */
declare module "dxf" {
  interface Point {
    readonly x: number;
    readonly y: number;
  }
  export interface Entity {
    readonly type: string;
    readonly layer: string;
    readonly closed?: boolean;
    readonly vertices?: readonly (Point & { readonly bulge?: number })[];
    readonly start?: Point;
    readonly end?: Point;
    readonly string?: string;
  }
  export interface Drawing {
    readonly header: { readonly insUnits?: number };
    readonly tables: { readonly layers: Readonly<Record<string, unknown>> };
    readonly entities: readonly Entity[];
  }
  export function parseString(text: string): Drawing;
  export function toPolylines(drawing: Drawing): {
    readonly polylines: readonly { readonly vertices: readonly (readonly [number, number])[] }[];
  };
}
