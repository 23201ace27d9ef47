import { readdirSync, readFileSync } from 'node:fs'
import { posix } from 'node:path'
import { parseSync, Visitor, type ESTree } from 'vite'

/** One `import`, `export ... from`, `import()` or `import('...')` type of a source file. */
export interface Import {
  readonly specifier: string
  /** File below src without its extension, `parts/index` for a registry's folder; undefined for a package. */
  readonly target: string | undefined
  readonly isType: boolean
}

/** What the rules of the architecture need to know of one source file. */
export interface Source {
  /** Below src, with `/`: `parts/rack-row/derive.ts`. */
  readonly path: string
  readonly lineCount: number
  readonly imports: readonly Import[]
  /**
   * Names that the code reaches for: `window`, `Math.random`, and `.toLocaleString` for a member of anything.
   * A name that the file itself gives to something is no global.
   */
  readonly uses: ReadonlySet<string>
  /** Numeric literals by value. */
  readonly numbers: readonly number[]
  readonly hasAny: boolean
  readonly hasExportAll: boolean
}

/** The only folders that may have an index.ts, which lists what stands in them. */
export const registries = ['parts', 'checks', 'sheets', 'canvas/tools'] as const

const withoutExtension = (path: string): string => path.replace(/\.tsx?$/, '')

const resolve = (path: string, specifier: string): string | undefined => {
  if (!specifier.startsWith('.')) return undefined
  const target = withoutExtension(posix.join(posix.dirname(path), specifier))
  return registries.some((folder) => folder === target) ? `${target}/index` : target
}

const nameOf = (node: ESTree.Expression | ESTree.Super): string =>
  node.type === 'Identifier' ? node.name : ''

const stringOf = (node: { readonly type: string; readonly value?: unknown }): string =>
  node.type === 'Literal' && typeof node.value === 'string' ? node.value : ''

const importsOf = (path: string, program: ESTree.Program): readonly Import[] => {
  const imports: Import[] = []
  const add = (specifier: string, isType: boolean) =>
    imports.push({ specifier, target: resolve(path, specifier), isType })
  new Visitor({
    ImportDeclaration: (node) => add(node.source.value, node.importKind === 'type'),
    ExportNamedDeclaration: (node) => node.source && add(node.source.value, node.exportKind === 'type'),
    ExportAllDeclaration: (node) => add(node.source.value, node.exportKind === 'type'),
    ImportExpression: (node) => add(stringOf(node.source), false),
    TSImportType: (node) => add(stringOf(node.source), true),
  }).visit(program)
  return imports
}

/** The names that a pattern binds: `a` and `b` in `[a, { b }]`. */
const boundBy = (pattern: ESTree.ParamPattern | ESTree.BindingPattern): string[] => {
  switch (pattern.type) {
    case 'Identifier':
      return [pattern.name]
    case 'ObjectPattern':
      return pattern.properties.flatMap((part) =>
        boundBy(part.type === 'Property' ? part.value : part.argument),
      )
    case 'ArrayPattern':
      return pattern.elements.flatMap((part) =>
        part === null ? [] : boundBy(part.type === 'RestElement' ? part.argument : part),
      )
    case 'AssignmentPattern':
      return boundBy(pattern.left)
    case 'RestElement':
      return boundBy(pattern.argument)
    case 'TSParameterProperty':
      return boundBy(pattern.parameter)
  }
}

/** Every name that the file gives to something, wherever: rough, but a file that means both is ill named anyway. */
const ownNames = (program: ESTree.Program): ReadonlySet<string> => {
  const own = new Set<string>()
  const bind = (patterns: readonly (ESTree.ParamPattern | ESTree.BindingPattern)[]) =>
    patterns.flatMap(boundBy).forEach((name) => own.add(name))
  new Visitor({
    VariableDeclarator: (node) => bind([node.id]),
    ArrowFunctionExpression: (node) => bind(node.params),
    FunctionExpression: (node) => bind(node.params),
    FunctionDeclaration: (node) => bind([...node.params, ...(node.id ? [node.id] : [])]),
    ImportSpecifier: (node) => bind([node.local]),
  }).visit(program)
  return own
}

const usesOf = (program: ESTree.Program): ReadonlySet<string> => {
  const own = ownNames(program)
  const uses = new Set<string>()
  const add = (name: string, member = '') => own.has(name) || uses.add(`${name}${member}`)
  new Visitor({
    CallExpression: (node) => add(nameOf(node.callee)),
    NewExpression: (node) => add(nameOf(node.callee)),
    MemberExpression: (node) => {
      const member = `.${node.computed ? stringOf(node.property) : node.property.name}`
      add(nameOf(node.object))
      add(nameOf(node.object), member)
      uses.add(member)
    },
  }).visit(program)
  return uses
}

const numbersOf = (program: ESTree.Program): readonly number[] => {
  const numbers: number[] = []
  new Visitor({
    Literal: (node) => typeof node.value === 'number' && numbers.push(node.value),
  }).visit(program)
  return numbers
}

const has = (program: ESTree.Program, type: 'TSAnyKeyword' | 'ExportAllDeclaration'): boolean => {
  let isFound = false
  new Visitor({ [type]: () => (isFound = true) }).visit(program)
  return isFound
}

/** Lines of a text that ends with a line break, as it should, or without one. */
export const linesIn = (text: string): number => text.replace(/\n$/, '').split('\n').length

/** Reads one file of src. `text` need not be on disk, so that a test can show what the rules catch. */
export const readSource = (path: string, text: string): Source => {
  const { program, errors } = parseSync(path, text)
  if (errors.length > 0) throw new Error(`src/${path} cannot be parsed: ${errors[0]!.message}`)
  return {
    path,
    lineCount: linesIn(text),
    imports: importsOf(path, program),
    uses: usesOf(program),
    numbers: numbersOf(program),
    hasAny: has(program, 'TSAnyKeyword'),
    hasExportAll: has(program, 'ExportAllDeclaration'),
  }
}

/** Every TypeScript file below a folder, as paths below it. */
export const filesBelow = (folder: URL): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => /\.tsx?$/.test(path))
    .sort()

export const readSources = (folder: URL): Source[] =>
  filesBelow(folder).map((path) => readSource(path, readFileSync(new URL(path, folder), 'utf8')))
