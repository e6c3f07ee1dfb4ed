import type { Shop } from "../../forming/machine.ts";
import { develop } from "../../report/develop.ts";
import type { Report } from "../../report/report.ts";
import type { Catalogue } from "../../shapes/catalogue.ts";
import { Part } from "../../shapes/part.ts";

/** The worked example of a shape's page, developed like any part and asked of a shop where there is one. A page with a wrong example stops the build. */
export function workedExample(
  page: string,
  example: unknown,
  { catalogue, shop }: { readonly catalogue: Catalogue; readonly shop?: Shop | undefined },
): Report {
  const read = Part.safeParse(example);
  if (!read.success)
    throw new Error(
      `content/shapes/${page}.md: example: ${read.error.issues.map(({ path, message }) => `${path.join(".")}: ${message}`).join("; ")}`,
    );
  const developed = develop({ ...read.data, name: page }, { catalogue, ...(shop && { shop }) });
  if (developed.kind === "refused")
    throw new Error(
      `content/shapes/${page}.md: example: ${developed.issues.map(({ problem, remedy }) => `${problem}; ${remedy}`).join("; ")}`,
    );
  return developed.report;
}
