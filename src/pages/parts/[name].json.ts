import { printJson } from "../../output/json.ts";
import { readBinder, type BinderPart } from "../../site/binder/binder.ts";

export const getStaticPaths = () =>
  readBinder().parts.map((one) => ({ params: { name: one.report.part.name }, props: { one } }));

/** The same report that the command prints, letter for letter. */
export const GET = ({ props }: { props: { one: BinderPart } }): Response =>
  new Response(`${printJson(props.one.report)}\n`, {
    headers: { "content-type": "application/json" },
  });
