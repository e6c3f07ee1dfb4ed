import { BINDER_FILES } from "../../site/binder/binderFiles.ts";
import { printBinder } from "../../site/binder/printBinder.ts";

export const getStaticPaths = () =>
  BINDER_FILES.map(({ file, paper }) => ({ params: { file }, props: { paper } }));

/** The binder as one PDF, the same as the command writes. */
export const GET = ({ props }: { props: { paper: (typeof BINDER_FILES)[number]["paper"] } }): Response =>
  new Response(printBinder(props.paper), { headers: { "content-type": "application/pdf" } });
