import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { contentRules } from './support/contentRules'
import { importRules } from './support/importRules'
import { filesBelow, linesIn, readSource, readSources } from './support/sources'

const src = new URL('../src/', import.meta.url)
const tests = new URL('./', import.meta.url)
const rules = [...importRules, ...contentRules]
const sources = readSources(src)

describe('the source tree', () => {
  test('was read: a rule over no files would always hold', () => {
    expect(sources.length).toBeGreaterThan(25)
    expect(sources.find(({ path }) => path === 'units/slope.ts')?.imports).toContainEqual({
      specifier: './length',
      target: 'units/length',
      isType: false,
    })
  })

  test.each(rules)('$title', ({ breaches }) => {
    expect(breaches(sources)).toEqual([])
  })

  test('test files too have at most 400 lines', () => {
    const long = filesBelow(tests).filter((path) => linesIn(readFileSync(new URL(path, tests), 'utf8')) > 400)
    expect(long).toEqual([])
  })
})

/** Files as path and text; the rules see them as if they were all of src. */
const breachesOf = (files: Readonly<Record<string, string>>): string[] => {
  const tree = Object.entries(files).map(([path, text]) => readSource(path, text))
  return rules.flatMap(({ breaches }) => breaches(tree))
}

const twoChecks = {
  'checks/index.ts': `import { aisle } from './aisle'\nimport { wall } from './wall'\nimport type { Bay } from './context'`,
  'checks/wall.ts': '',
  'checks/context.ts': '',
  'checks/words.ts': '',
}

describe('the rules catch', () => {
  test.each<[string, Readonly<Record<string, string>>, string]>([
    [
      'an import from later in the order',
      { 'units/a.ts': `import { box } from '../geometry/box'` },
      'src/units/a.ts imports ../geometry/box: units stands before geometry',
    ],
    [
      'a type from later in the order',
      { 'model/a.ts': `import type { Layout } from '../layout/schema'` },
      'src/model/a.ts imports ../layout/schema: model stands before layout',
    ],
    [
      'a type named in place',
      { 'model/a.ts': `type A = import('../layout/schema').Layout` },
      'src/model/a.ts imports ../layout/schema: model stands before layout',
    ],
    [
      'an import on demand',
      { 'sheets/a.ts': `export const load = () => import('../store/timeline')` },
      'src/sheets/a.ts imports ../store/timeline: sheets stands before store',
    ],
    [
      'a re-export from later in the order',
      { 'parts/a.ts': `export { edit } from '../layout/edit'` },
      'src/parts/a.ts imports ../layout/edit: parts stands before layout',
    ],
    [
      'canvas that reads the sidebar',
      { 'canvas/a.tsx': `import { Warnings } from '../sidebar/Warnings'` },
      'src/canvas/a.tsx imports ../sidebar/Warnings: canvas and sidebar meet in the store',
    ],
    [
      'a sidebar that reads the canvas',
      { 'sidebar/a.tsx': `import { Floor } from '../canvas/Floor'` },
      'src/sidebar/a.tsx imports ../canvas/Floor: sidebar and canvas meet in the store',
    ],
    [
      'a folder that the order does not know',
      { 'layout/a.ts': `import { x } from '../services/x'` },
      'src/layout/a.ts imports ../services/x: services stands in no known folder',
    ],
    [
      'an import from outside src',
      { 'units/a.ts': `import pack from '../../package.json'` },
      'src/units/a.ts imports ../../package.json: leaves src',
    ],
    [
      'a check that knows a part',
      { 'checks/a.ts': `import type { Sump } from '../parts/sump/schema'` },
      'src/checks/a.ts imports ../parts/sump/schema: checks read built things, never parts',
    ],
    [
      'a kind that knows another kind',
      { 'parts/rack-row/derive.ts': `import { lay } from '../trough/derive'` },
      'src/parts/rack-row/derive.ts imports ../trough/derive: nothing in parts but its registry imports trough',
    ],
    [
      'shared code of kinds that knows one of them',
      { 'parts/gutter.ts': `import type { Trough } from './trough/schema'` },
      'src/parts/gutter.ts imports ./trough/schema: nothing in parts but its registry imports trough',
    ],
    [
      'a kind that reads the registry',
      { 'parts/main/derive.ts': `import { kindOf } from '..'` },
      'src/parts/main/derive.ts imports ..: what stands in parts never reads its own registry',
    ],
    [
      'a rule that imports another rule',
      { ...twoChecks, 'checks/aisle.ts': `import { wall } from './wall'` },
      'src/checks/aisle.ts imports ./wall: nothing in checks but its registry imports wall',
    ],
    [
      'React in the core',
      { 'evaluate/a.ts': `import { useMemo } from 'react'` },
      'src/evaluate/a.ts imports react: the core knows no package but zod/mini and flatbush',
    ],
    [
      'the whole of zod in the core',
      { 'layout/a.ts': `import * as z from 'zod'` },
      'src/layout/a.ts imports zod: the core knows no package but zod/mini and flatbush',
    ],
    [
      'Konva in a tool',
      { 'canvas/tools/move.ts': `import type { KonvaEventObject } from 'konva/lib/Node'` },
      'src/canvas/tools/move.ts imports konva/lib/Node: a tool runs without a page',
    ],
    [
      'a file extension',
      { 'units/a.ts': `import { inches } from './length.ts'` },
      'src/units/a.ts imports ./length.ts: imports name no file extension',
    ],
    ['the page', { 'drawing/a.ts': `document.createElement('canvas')` }, 'src/drawing/a.ts uses document'],
    [
      'a window behind globalThis',
      { 'model/a.ts': `globalThis.innerWidth` },
      'src/model/a.ts uses globalThis',
    ],
    ['storage', { 'layout/a.ts': `localStorage.getItem('a')` }, 'src/layout/a.ts uses localStorage'],
    ['the date', { 'sheets/a.ts': `const today = new Date()` }, 'src/sheets/a.ts uses Date'],
    ['the stop-watch', { 'evaluate/a.ts': `performance.now()` }, 'src/evaluate/a.ts uses performance'],
    ['a timer', { 'checks/a.ts': `setTimeout(() => {}, 1)` }, 'src/checks/a.ts uses setTimeout'],
    ['chance', { 'solvers/a.ts': `const r = Math.random()` }, 'src/solvers/a.ts uses Math.random'],
    ['chance in brackets', { 'solvers/a.ts': `Math['random']()` }, 'src/solvers/a.ts uses Math.random'],
    ['random ids', { 'layout/a.ts': `crypto.randomUUID()` }, 'src/layout/a.ts uses crypto'],
    ['a locale number', { 'units/a.ts': `(12).toLocaleString()` }, 'src/units/a.ts uses .toLocaleString'],
    [
      'a locale order',
      { 'sheets/a.ts': `names.sort((a, b) => a.localeCompare(b))` },
      'src/sheets/a.ts uses .localeCompare',
    ],
    ['Intl', { 'units/a.ts': `new Intl.NumberFormat()` }, 'src/units/a.ts uses Intl'],
    [
      'an inch outside units',
      { 'app/a.ts': `const mm = 5 * 25.4` },
      'src/app/a.ts has 25.4, the mm in an inch: conversions stand in units',
    ],
    [
      'a gallon outside units',
      { 'catalogue/a.ts': `const litres = 3.785411784` },
      'src/catalogue/a.ts has 3.785411784, the litres in a US gallon: conversions stand in units',
    ],
    [
      'a pound outside units',
      { 'checks/a.ts': `const kg = .45359237 * 2` },
      'src/checks/a.ts has 0.45359237, the kg in a pound: conversions stand in units',
    ],
    ['a barrel', { 'geometry/a.ts': `export * from './box'` }, 'src/geometry/a.ts has `export *`'],
    ['an index file', { 'geometry/index.ts': '' }, 'src/geometry/index.ts is an index file but no registry'],
    ['a long file', { 'model/a.ts': '\n'.repeat(401) }, 'src/model/a.ts has 401 lines, more than 400'],
    ['any', { 'canvas/a.tsx': `const a: any = 1` }, 'src/canvas/a.tsx has the type any'],
  ])('%s', (_, files, breach) => {
    expect(breachesOf(files)).toEqual([breach])
  })
})

describe('the rules allow', () => {
  test.each<[string, Readonly<Record<string, string>>]>([
    ['what stands before', { 'parts/sump/derive.ts': `import { inches } from '../../units/length'` }],
    ['shared plain files of kinds', { 'parts/sump/schema.ts': `import { baseFields } from '../base'` }],
    [
      'shared plain files of checks',
      {
        ...twoChecks,
        'checks/aisle.ts': `import type { Rule } from './context'\nimport { say } from './words'`,
      },
    ],
    [
      'shared words that ask the registry for the rule of a finding',
      { ...twoChecks, 'checks/aisle.ts': '', 'checks/words.ts': `import { ruleOf } from './index'` },
    ],
    ['the registry from later on', { 'evaluate/a.ts': `import { kindOf } from '../parts'` }],
    ['the clock and the page in the app', { 'app/a.ts': `document.title = new Date().toLocaleString()` }],
    [
      'words that only look like the page',
      { 'units/a.ts': `// window.open\nconst tip = { window: 'document.body' }` },
    ],
    [
      'a name of its own that the page has too',
      {
        'layout/a.ts': `const [document] = read()\nconst f = ({ self: { window = 1 } }) => window.at(document.value)`,
      },
    ],
    ['factors where they belong', { 'units/length.ts': `export const MM_PER_INCH = 25.4` }],
    ['numbers that only begin like a factor', { 'catalogue/a.ts': `const wall = 25.45` }],
  ])('%s', (_, files) => {
    expect(breachesOf(files)).toEqual([])
  })
})
