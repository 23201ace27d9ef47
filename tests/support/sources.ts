import { readdirSync, readFileSync } from 'node:fs'
import { posix } from 'node:path'
import { parseSync, Visitor } from 'vite'

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
  /** Names that the code reaches for: `window`, `Math.random`, and `.toLocaleString` for a member of anything. */
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

type Node = Parameters<NonNullable<ConstructorParameters<typeof Visitor>[0]['MemberExpression']>>[0]['object']

const nameOf = (node: Node): string => (node.type === 'Identifier' ? node.name : '')

const stringOf = (node: { type: string; value?: unknown }): string =>
  node.type === 'Literal' && typeof node.value === 'string' ? node.value : ''

/** Reads one file of src. `text` need not be on disk, so that a test can show what the rules catch. */
export const readSource = (path: string, text: string): Source => {
  const { program, errors } = parseSync(path, text)
  if (errors.length > 0) throw new Error(`src/${path} cannot be parsed: ${errors[0]!.message}`)

  const imports: Import[] = []
  const uses = new Set<string>()
  const numbers: number[] = []
  let hasAny = false
  let hasExportAll = false

  const addImport = (specifier: string, isType: boolean) =>
    imports.push({ specifier, target: resolve(path, specifier), isType })

  new Visitor({
    ImportDeclaration: (node) => addImport(node.source.value, node.importKind === 'type'),
    ExportNamedDeclaration: (node) => {
      if (node.source) addImport(node.source.value, node.exportKind === 'type')
    },
    ExportAllDeclaration: (node) => {
      hasExportAll = true
      addImport(node.source.value, node.exportKind === 'type')
    },
    ImportExpression: (node) => addImport(stringOf(node.source), false),
    TSImportType: (node) => addImport(stringOf(node.source), true),
    CallExpression: (node) => uses.add(nameOf(node.callee)),
    NewExpression: (node) => uses.add(nameOf(node.callee)),
    MemberExpression: (node) => {
      const member = node.computed ? stringOf(node.property) : node.property.name
      uses
        .add(nameOf(node.object))
        .add(`.${member}`)
        .add(`${nameOf(node.object)}.${member}`)
    },
    TSAnyKeyword: () => {
      hasAny = true
    },
    Literal: (node) => {
      if (typeof node.value === 'number') numbers.push(node.value)
    },
  }).visit(program)

  return { path, lineCount: text.split('\n').length, imports, uses, numbers, hasAny, hasExportAll }
}

/** Every TypeScript file below a folder, as paths below it. */
export const filesBelow = (folder: URL): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => /\.tsx?$/.test(path))
    .sort()

export const readSources = (folder: URL): Source[] =>
  filesBelow(folder).map((path) => readSource(path, readFileSync(new URL(path, folder), 'utf8')))
