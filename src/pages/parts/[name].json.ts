import { readBinder, type BinderPart } from "../../site/binder/binder.ts";

export const getStaticPaths = () =>
  readBinder().parts.map((one) => ({ params: { name: one.report.part.name }, props: { one } }));

/** The same report that the command prints. */
export const GET = ({ props }: { props: { one: BinderPart } }): Response =>
  new Response(`${JSON.stringify(props.one.report, null, 2)}\n`, {
    headers: { "content-type": "application/json" },
  });
