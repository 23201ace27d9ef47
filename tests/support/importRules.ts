import { registries, type Import, type Source } from './sources'

/** Lowest first. Folders on one line stand beside each other and never import each other. */
const order: readonly (readonly string[])[] = [
  ['units'],
  ['geometry'],
  ['solvers'],
  ['model'],
  ['catalogue'],
  ['parts'],
  ['layout'],
  ['checks'],
  ['evaluate'],
  ['drawing'],
  ['sheets'],
  ['report'],
  ['store'],
  ['canvas', 'sidebar'],
  ['app'],
  ['main'],
]

const rankOf = (folder: string): number => order.findIndex((folders) => folders.includes(folder))

/** `main` for main.tsx, else the first folder. */
export const folderOf = (path: string): string => path.split('/')[0]!.replace(/\.tsx?$/, '')

/** Up to and including `report`: what must run without a page, a clock, chance or a locale. */
export const isCore = (path: string): boolean => rankOf(folderOf(path)) <= rankOf('report')

/** All knowledge of a schema and a spatial index; anything else in the core is ours. */
const corePackages = ['zod/mini', 'flatbush']

/** What a gesture must do without, so that a test can drive it. */
const pagePackages = /^(react|konva|lucide)/

type Judge = (source: Source, imported: Import, all: readonly Source[]) => string | undefined

/** The folder or file below a registry's folder that a path stands in: `rack-row`, `aisle-width-min`. */
const ribOf = (base: string, path: string): string | undefined =>
  path.startsWith(`${base}/`)
    ? path
        .slice(base.length + 1)
        .split('/')[0]!
        .replace(/\.tsx?$/, '')
    : undefined

/** What a registry lists: what it imports from its own folder for more than a type. The rest there is shared. */
const listedIn = (base: string, all: readonly Source[]): ReadonlySet<string> => {
  const registry = all.find(({ path }) => path === `${base}/index.ts`)
  const listed = registry?.imports.filter(({ isType }) => !isType) ?? []
  return new Set(listed.flatMap(({ target }) => ribOf(base, target ?? '') ?? []))
}

const followsOrder: Judge = ({ path }, { target }) => {
  if (target === undefined) return undefined
  if (target.startsWith('..')) return 'leaves src'
  const [from, to] = [folderOf(path), folderOf(target)]
  if (rankOf(to) < 0) return `${to} stands in no known folder`
  if (rankOf(to) > rankOf(from)) return `${from} stands before ${to}`
  return rankOf(to) === rankOf(from) && to !== from ? `${from} and ${to} meet in the store` : undefined
}

const checksWithoutParts: Judge = ({ path }, { target }) =>
  folderOf(path) === 'checks' && folderOf(target ?? '') === 'parts'
    ? 'checks read built things, never parts'
    : undefined

const ribsApart: Judge = ({ path }, { target }, all) => {
  const base = registries.find((folder) => ribOf(folder, path) && ribOf(folder, target ?? ''))
  if (base === undefined || path === `${base}/index.ts`) return undefined
  const [from, to] = [ribOf(base, path)!, ribOf(base, target!)!]
  const listed = listedIn(base, all)
  const isRib = (rib: string, file: string) =>
    listed.has(rib) || file.split('/').length > base.split('/').length + 1
  if (from === to) return undefined
  if (to === 'index' && isRib(from, path)) return `what stands in ${base} never reads its own registry`
  return isRib(to, target!) ? `nothing in ${base} but its registry imports ${to}` : undefined
}

const corePackagesOnly: Judge = ({ path }, { specifier, target }) =>
  isCore(path) && target === undefined && !corePackages.includes(specifier)
    ? `the core knows no package but ${corePackages.join(' and ')}`
    : undefined

const toolsWithoutPage: Judge = ({ path }, { specifier, target }) =>
  path.startsWith('canvas/tools/') && target === undefined && pagePackages.test(specifier)
    ? 'a tool runs without a page'
    : undefined

const withoutExtension: Judge = (_, { specifier, target }) =>
  target !== undefined && /\.tsx?$/.test(specifier) ? 'imports name no file extension' : undefined

/** Each rule with what it says of one import of one file, undefined where all is well. */
const judges: Readonly<Record<string, Judge>> = {
  'a folder imports itself and what stands before it': followsOrder,
  'checks never import parts': checksWithoutParts,
  'a kind, rule, sheet or tool never imports another of its sort': ribsApart,
  'the core imports no React, Konva or other package of the page': corePackagesOnly,
  'tools are written without React and Konva': toolsWithoutPage,
  'imports name no file extension': withoutExtension,
}

/** Each breach as a sentence that names the file and the import. */
const breaches = (judge: Judge, sources: readonly Source[]): string[] =>
  sources.flatMap((source) =>
    source.imports.flatMap((imported) => {
      const why = judge(source, imported, sources)
      return why === undefined ? [] : [`src/${source.path} imports ${imported.specifier}: ${why}`]
    }),
  )

export const importRules = Object.entries(judges).map(([title, judge]) => ({
  title,
  breaches: (sources: readonly Source[]) => breaches(judge, sources),
}))
