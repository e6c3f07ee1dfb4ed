import ts from "typescript";

/** Nothing to open: a point is one value on the page, and so is everything that is not an object of ours. */
const isPoint = (type: ts.Type, checker: ts.TypeChecker) => checker.isTupleType(type);

/**
 * Every field of an interface as a path, "blanks[].box.lengthMm", read from its source by the compiler.
 * Fields whose path is in `closed` are named but not opened.
 */
export function fieldsOf(file: string, name: string, closed: readonly string[] = []): string[] {
  const program = ts.createProgram([file], {
    strict: true,
    allowImportingTsExtensions: true,
    noEmit: true,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    target: ts.ScriptTarget.ES2023,
  });
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(file);
  const symbol = source && checker.getSymbolAtLocation(source);
  const root = symbol && checker.getExportsOfModule(symbol).find((one) => one.name === name);
  if (!root) throw new Error(`${file} exports no ${name}`);

  const paths = new Set<string>();
  const open = (type: ts.Type, path: string): void => {
    for (const one of type.isUnion() ? type.types : [type]) {
      if (
        one.flags &
        (ts.TypeFlags.StringLike |
          ts.TypeFlags.NumberLike |
          ts.TypeFlags.BooleanLike |
          ts.TypeFlags.Null |
          ts.TypeFlags.Undefined)
      )
        continue;
      if (isPoint(one, checker)) continue;
      const item = checker.isArrayType(one)
        ? checker.getTypeArguments(one as ts.TypeReference)[0]
        : undefined;
      if (item) {
        open(item, `${path}[]`);
        continue;
      }
      for (const property of checker.getPropertiesOfType(one)) {
        const child = path === "" ? property.name : `${path}.${property.name}`;
        paths.add(child);
        if (!closed.includes(child)) open(checker.getTypeOfSymbol(property), child);
      }
    }
  };
  open(checker.getDeclaredTypeOfSymbol(root), "");
  return [...paths];
}
