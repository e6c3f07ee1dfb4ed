import type { Shop } from "../../forming/machine.ts";
import type { Report } from "../../report/report.ts";
import { otherWorkHref } from "../binder/href.ts";
import { slugs } from "../machines/slugs.ts";

/** A machine that would make the part too, and where its work sheet stands. */
interface OtherPlan {
  readonly machine: string;
  readonly slug: string;
  readonly href: string;
}

/** Machines that take the part besides the first choice, in the shop's order. */
export function otherPlans({ part, forming }: Report, shop: Shop | undefined): OtherPlan[] {
  const words = slugs(shop?.machines ?? []);
  return (shop?.machines ?? []).flatMap(({ name }, i) => {
    const slug = words[i] ?? "";
    return name !== forming.machine && forming.plans.some(({ machine }) => machine === name)
      ? [{ machine: name, slug, href: otherWorkHref(part.name, slug) }]
      : [];
  });
}
