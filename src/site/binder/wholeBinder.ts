import { reckonerTables } from "../../tables/tables.ts";
import { MACHINES_HREF, slugs } from "../machines/slugs.ts";
import type { Binder } from "./makeBinder.ts";
import { partHref, shapeHref, workHref } from "./href.ts";

/** A page of the site as a sheet of the whole binder. */
export interface Leaf {
  readonly title: string;
  /** The id that the contents lead to. */
  readonly id: string;
  /** The page that it stands for. */
  readonly page: string;
}

const leaf = (title: string, page: string): Leaf => ({
  title,
  page,
  id: page.replaceAll(/^\/|\/$/g, "").replaceAll("/", "-"),
});

/** The sheets of the whole binder on one page, in the order of the PDF. */
export function wholeBinder(
  { shop, parts, tables }: Binder,
  {
    safety,
    shapes,
  }: { safety: string; shapes: readonly { readonly title: string; readonly shape: string }[] },
) {
  const machines = shop?.machines ?? [];
  const names = slugs(machines);
  return {
    safety: leaf(safety, "/safety/"),
    machines: machines.map(({ name }, i) => leaf(name, `${MACHINES_HREF}${names[i] ?? ""}/`)),
    shapes: shapes.map(({ title, shape }) => leaf(title, shapeHref(shape))),
    reckoners: reckonerTables(tables.catalogue).map((table) => ({
      ...leaf(table.title, `/tables/${table.id}/`),
      table,
    })),
    materials: leaf("Materials", "/tables/materials/"),
    gauges: leaf("Sheet gauges", "/tables/gauges/"),
    job: leaf("List of parts and plates to cut", "/job/"),
    parts: parts.map((one) => {
      const { name, title } = one.report.part;
      return { one, card: leaf(title, partHref(name)), work: leaf("Work sheet", workHref(name)) };
    }),
    glossary: leaf("Glossary", "/glossary/"),
    sources: leaf("Sources", "/sources/"),
  };
}

/** A line of the contents: a sheet, and one that goes with it. */
interface Line {
  readonly leaf: Leaf;
  readonly with?: Leaf;
}

/** The contents, section by section. */
export function contentsOf(all: ReturnType<typeof wholeBinder>): { title: string; lines: readonly Line[] }[] {
  const lines = (leaves: readonly Leaf[]): Line[] => leaves.map((one) => ({ leaf: one }));
  return [
    { title: "Safety", lines: lines([all.safety]) },
    { title: "Machines", lines: lines(all.machines) },
    { title: "Shapes", lines: lines(all.shapes) },
    { title: "Tables", lines: lines([...all.reckoners, all.materials, all.gauges]) },
    { title: "Job", lines: lines([all.job]) },
    { title: "Parts", lines: all.parts.map(({ card, work }) => ({ leaf: card, with: work })) },
    { title: "Words and sources", lines: lines([all.glossary, all.sources]) },
  ].filter(({ lines: own }) => own.length > 0);
}
