import { folderProblems } from "../binder/binder.ts";

/** Reads the data folder before anything is built: all its problems are told in one go, and nothing is written. */
export function stopOnProblems() {
  return {
    name: "stop-on-problems",
    hooks: {
      "astro:build:start": () => {
        const lines = folderProblems();
        if (lines.length === 0) return;
        const count = lines.length === 1 ? "1 problem" : `${lines.length} problems`;
        process.stderr.write(`${lines.join("\n")}\n${count} in the data folder\n`);
        process.exit(1);
      },
    },
  };
}
