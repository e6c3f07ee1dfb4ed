import { isShapeId } from "../../shapes/ids.ts";
import { siteHref } from "../bits/siteHref.ts";
import type { Bench } from "./bench.svelte.ts";
import { onTheBench, partInLink } from "./link.ts";
import { otherHash } from "./otherHash.ts";

/**
 * A part that came in the address; one of another shape has its bench on that shape's page.
 * @param ids of the page as it was published
 */
export function takeLink(bench: Bench, ids: ReadonlySet<string>): void {
  const broken = (why: string): void => {
    bench.message = `The link holds no part that can be read: ${why}. Nothing was changed.`;
  };
  const link = partInLink(location.hash);
  if (link.kind === "none") {
    // Something else behind #: a place on the page, or what is left of a link.
    const why = otherHash(location.hash, (id) => ids.has(id) || document.getElementById(id) !== null);
    if (why !== undefined) broken(why);
    return;
  }
  if (link.kind === "broken") {
    broken(link.why);
    return;
  }
  const shape = link.value.part["shape"];
  if (isShapeId(shape) && shape !== bench.typed["shape"]) {
    location.assign(`${siteHref(`/shapes/${shape}/`)}${location.hash}`);
    return;
  }
  history.replaceState(null, "", location.pathname + location.search);
  if (!isShapeId(shape)) {
    bench.message = "The link holds a part of no known shape. Nothing was changed.";
    return;
  }
  bench.take(link.value);
  bench.message = onTheBench(link.from ?? "The part that was sent here");
}
