import { readBinder } from "../../site/binder/binder.ts";
import { binderFiles } from "../../site/binder/binderFiles.ts";
import { printBinder } from "../../site/binder/printBinder.ts";

export const getStaticPaths = () =>
  binderFiles(readBinder().parts.length).map(({ file, paper }) => ({ params: { file }, props: { paper } }));

/** The binder as one PDF, the same as the command writes. */
export const GET = ({
  props,
}: {
  props: { paper: ReturnType<typeof binderFiles>[number]["paper"] };
}): Response => new Response(printBinder(props.paper), { headers: { "content-type": "application/pdf" } });
