import js from "@eslint/js";
import astro from "eslint-plugin-astro";
import svelte from "eslint-plugin-svelte";
import { defineConfig, globalIgnores } from "eslint/config";
import ts from "typescript-eslint";
import svelteConfig from "./svelte.config.js";

const core = ["src/{geometry,shapes,forming,report,nesting,drawing,tables,output,job}/**/*.ts"];
const pages = ["src/{site,pages}/**/*.{ts,svelte,astro}"];

export default defineConfig(
  globalIgnores(["dist/", "**/.astro/", "coverage/"]),
  js.configs.recommended,
  {
    files: ["**/*.ts", "**/*.svelte"],
    extends: [ts.configs.strictTypeChecked],
    languageOptions: {
      parserOptions: {
        projectService: true,
        extraFileExtensions: [".svelte"],
        tsconfigRootDir: import.meta.dirname,
      },
    },
  },
  svelte.configs.recommended,
  {
    files: ["**/*.svelte", "**/*.svelte.ts"],
    languageOptions: { parserOptions: { parser: ts.parser, svelteConfig } },
    rules: {
      // TypeScript itself reports unknown names; the base rule does not know the browser's types.
      "no-undef": "off",
    },
  },
  astro.configs.recommended,
  {
    files: ["**/*.ts", "**/*.svelte"],
    rules: {
      // Numbers in messages are the point of our messages.
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/no-confusing-void-expression": ["error", { ignoreArrowShorthand: true }],
      "@typescript-eslint/switch-exhaustiveness-check": "error",
      "@typescript-eslint/consistent-type-imports": "error",
      "no-undef": "off",
    },
  },
  {
    // The linter's parser takes a field's $state.raw() for nothing; the type checkers do not.
    files: ["**/*.svelte.ts"],
    rules: { "@typescript-eslint/no-confusing-void-expression": "off" },
  },
  {
    // The core is pure: same input, same output, in Node and in a browser.
    files: core,
    rules: {
      "no-restricted-globals": ["error", "window", "document", "process", "fetch"],
      "no-restricted-properties": [
        "error",
        { object: "Math", property: "random", message: "The core gives the same answer every time." },
        { object: "Date", property: "now", message: "The core gives the same answer every time." },
      ],
      "no-console": "error",
      "max-lines": ["warn", { max: 250, skipBlankLines: true, skipComments: true }],
    },
  },
  {
    // One file of tolerances, each with its unit and reason.
    files: core,
    ignores: ["src/geometry/tolerance.ts"],
    rules: {
      "no-restricted-syntax": [
        "error",
        {
          selector: "Literal[raw=/^\\d+(\\.\\d+)?e-\\d+$/]",
          message: "Name this tolerance in geometry/tolerance.ts.",
        },
        {
          selector: "Program > VariableDeclaration[kind='let']",
          message: "No hidden module state in the core.",
        },
      ],
    },
  },
  {
    files: pages,
    rules: {
      "no-restricted-properties": [
        "error",
        ...["sin", "cos", "tan", "atan2", "hypot", "sqrt"].map((property) => ({
          object: "Math",
          property,
          message: "Formulas live in the core.",
        })),
      ],
    },
  },
  {
    files: ["tests/**/*.ts"],
    rules: {
      // A test that meets undefined should fail at that line, not be guarded against it.
      "@typescript-eslint/no-non-null-assertion": "off",
    },
  },
  { files: ["**/*.js", "**/*.mjs"], languageOptions: { globals: { process: "readonly", URL: "readonly" } } },
);
