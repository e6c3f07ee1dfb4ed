import type { OpenCascadeInstance, TopoDS_Shape } from "replicad-opencascadejs";

const EPS = 1e-9;

/** Surface area of a shape by the kernel's own quadrature. [mm²] */
export function kernelArea(oc: OpenCascadeInstance, shape: TopoDS_Shape): number {
  const props = new oc.GProp_GProps();
  oc.BRepGProp.SurfaceProperties(shape, props, EPS, false);
  return props.Mass();
}

function circle(oc: OpenCascadeInstance, centre: readonly [number, number, number], radius: number) {
  const axis = new oc.gp_Ax2(new oc.gp_Pnt(...centre), new oc.gp_Dir(0, 0, 1));
  return new oc.gp_Circ(axis, radius);
}

/** A ruled solid between two circles in level planes; area of its side and its volume. */
export function kernelFrustum(
  oc: OpenCascadeInstance,
  { R, r, h, e }: { R: number; r: number; h: number; e: number },
): { area: number; volume: number } {
  const wire = (centre: readonly [number, number, number], radius: number) => {
    const edge = new oc.BRepBuilderAPI_MakeEdge(circle(oc, centre, radius)).Edge();
    return new oc.BRepBuilderAPI_MakeWire(edge).Wire();
  };
  const loft = new oc.BRepOffsetAPI_ThruSections(true, true, EPS);
  loft.AddWire(wire([0, 0, 0], R));
  loft.AddWire(wire([e, 0, h], r));
  loft.Build(new oc.Message_ProgressRange());
  const shape = loft.Shape();
  const props = new oc.GProp_GProps();
  oc.BRepGProp.VolumeProperties(shape, props, EPS, true, false);
  return { area: kernelArea(oc, shape) - Math.PI * (R * R + r * r), volume: props.Mass() };
}

/** The eight faces of a square-to-round: a triangle on each side, a quarter cone at each corner. */
export function kernelTransition(
  oc: OpenCascadeInstance,
  { a, b, r, h, x, y }: { a: number; b: number; r: number; h: number; x: number; y: number },
): TopoDS_Shape[] {
  const corner = (i: number): [number, number, number] => {
    const signs = [
      [1, 1],
      [-1, 1],
      [-1, -1],
      [1, -1],
    ][i % 4] as [number, number];
    return [(signs[0] * a) / 2, (signs[1] * b) / 2, 0];
  };
  const round = (quarter: number): [number, number, number] => {
    const angle = (quarter * Math.PI) / 2;
    return [x + r * Math.cos(angle), y + r * Math.sin(angle), h];
  };
  const faces: TopoDS_Shape[] = [];
  for (let i = 0; i < 4; i++) {
    const point = (p: [number, number, number]) => new oc.gp_Pnt(...p);
    const side = (p: [number, number, number], q: [number, number, number]) =>
      new oc.BRepBuilderAPI_MakeEdge(point(p), point(q)).Edge();
    const [p, q, top] = [corner(i), corner(i + 1), round(i + 1)];
    const triangle = new oc.BRepBuilderAPI_MakeWire(side(p, q), side(q, top), side(top, p));
    faces.push(new oc.BRepBuilderAPI_MakeFace(triangle.Wire(), true).Shape());
    const arc = new oc.BRepBuilderAPI_MakeEdge(
      circle(oc, [x, y, h], r),
      (i * Math.PI) / 2,
      ((i + 1) * Math.PI) / 2,
    );
    const cone = new oc.BRepOffsetAPI_ThruSections(false, true, EPS);
    cone.AddVertex(new oc.BRepBuilderAPI_MakeVertex(point(corner(i))).Vertex());
    cone.AddWire(new oc.BRepBuilderAPI_MakeWire(arc.Edge()).Wire());
    cone.Build(new oc.Message_ProgressRange());
    faces.push(cone.Shape());
  }
  return faces;
}
