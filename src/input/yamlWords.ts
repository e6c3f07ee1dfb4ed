import type { ErrorCode } from "yaml";

interface Words {
  readonly problem: string;
  readonly remedy: string;
}

const NO_COLON = { problem: "this line has no key, colon and space", remedy: "write it as key: value" };

/** What the YAML rules call an error, in the words of somebody who writes a part file twice a year. */
const WORDS: Partial<Record<ErrorCode, Words>> = {
  TAB_AS_INDENT: { problem: "this line is indented with a tab", remedy: "use spaces" },
  MULTIPLE_DOCS: {
    problem: "a line --- begins a second document",
    remedy: "keep one part or list in each file",
  },
  BLOCK_AS_IMPLICIT_KEY: {
    problem: "this line has a second colon, or is indented further than the one above it",
    remedy: "put a text with a colon in quotes, and start every key of a group in the same column",
  },
  MULTILINE_IMPLICIT_KEY: NO_COLON,
  MISSING_CHAR: {
    problem: "a sign or a space is missing here",
    remedy: "check commas, colons, hyphens and brackets",
  },
  BAD_SCALAR_START: { problem: "a value cannot begin with this sign", remedy: "put the value in quotes" },
  BAD_DQ_ESCAPE: {
    problem: "a backslash inside double quotes has a meaning of its own",
    remedy: "use single quotes, or write the backslash twice",
  },
  UNEXPECTED_TOKEN: {
    problem: "there is something here that does not belong",
    remedy: "check quotes and brackets, and write inches inside quotes as 3 in",
  },
  BAD_INDENT: {
    problem: "a bracket is not closed, or this line does not start in the column of its group",
    remedy: "close the bracket, or line the keys of a group up",
  },
  BAD_ALIAS: { problem: "a name after * or & is not one", remedy: "write the value out" },
  BAD_DIRECTIVE: { problem: "a line that begins with % is not understood", remedy: "take it out" },
  TAG_RESOLVE_FAILED: {
    problem: "a word that begins with ! is not understood",
    remedy: "write the value without it",
  },
  BAD_COLLECTION_TYPE: {
    problem: "a word that begins with ! does not fit",
    remedy: "write the value without it",
  },
  KEY_OVER_1024_CHARS: { problem: "a key is too long", remedy: "check the colon" },
  BLOCK_IN_FLOW: {
    problem: "inside brackets a new line cannot begin a group",
    remedy: "close the bracket first",
  },
  RESOURCE_EXHAUSTION: {
    problem: "groups are nested too deeply",
    remedy: "keep to the keys of a part or shop file",
  },
};

const MISSING_QUOTE = { problem: "a quote is not closed", remedy: "put the closing quote after the text" };
const ANY = {
  problem: "this line is not YAML as it stands",
  remedy: "check colons, quotes, brackets and spaces",
};

export function yamlWords(code: ErrorCode, message: string): Words {
  if (code === "MISSING_CHAR" && /quote/i.test(message)) return MISSING_QUOTE;
  if (code === "MISSING_CHAR" && /map values/i.test(message)) return NO_COLON;
  return WORDS[code] ?? ANY;
}
