import { parseSync, Visitor } from 'vite';

export type Import = { spec: string; typeOnly: boolean };

/** All that a module takes in: static, type-only and dynamic imports, re-exports, types by `import()`, workers. */
export function importsOf(file: string, text: string): Import[] {
  const { module, program } = parseSync(file, text);
  const imports: Import[] = [];
  const add = (spec: string, typeOnly = false) => void imports.push({ spec, typeOnly });
  for (const { moduleRequest, entries } of module.staticImports)
    add(moduleRequest.value, entries.length > 0 && entries.every(({ isType }) => isType));
  for (const { entries } of module.staticExports)
    for (const { moduleRequest, isType } of entries) if (moduleRequest) add(moduleRequest.value, isType);
  const at = (node: { start: number; end: number }) => text.slice(node.start + 1, node.end - 1);
  for (const { moduleRequest } of module.dynamicImports) add(at(moduleRequest));
  new Visitor({
    TSImportType: ({ source }) => add(source.value, true),
    NewExpression: ({ callee, arguments: [first, second] }) => {
      const local =
        callee.type === 'Identifier' && callee.name === 'URL' && second?.type === 'MemberExpression';
      if (local && first?.type === 'Literal') add(at(first));
    },
  }).visit(program);
  return imports;
}
