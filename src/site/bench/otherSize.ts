import { plain } from "../../drawing/format.ts";
import { MM_PER_INCH } from "../../geometry/units.ts";
import { typedWith, type TypedGroup } from "../../input/typed.ts";
import type { Shaped } from "../../report/report.ts";

/** Which size says how tall a right cone is. */
type Tall = "height" | "slant" | "halfAngle";

/** The same cone by another of its sizes: that size as it is now, so that nothing jumps. */
export function byOtherSize(
  { typed, shaped }: { readonly typed: TypedGroup; readonly shaped: Shaped | undefined },
  { from, to }: { readonly from: Tall; readonly to: Tall },
): TypedGroup {
  const inches = typed["units"] === "in";
  const size = (mm: number) => plain(inches ? mm / MM_PER_INCH : mm, inches ? 4 : 2);
  const now =
    to === "height"
      ? shaped && size(shaped.shape.heightMm)
      : to === "slant"
        ? shaped?.cone && size(shaped.cone.slantMm)
        : shaped?.cone && plain(shaped.cone.halfAngleDeg, 3);
  return typedWith(typedWith(typed, [from], undefined), [to], now ?? "") as TypedGroup;
}
