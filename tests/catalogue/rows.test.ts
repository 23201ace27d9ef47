import { describe, expect, test } from 'vitest'
import * as z from 'zod/mini'
import { conduits } from '../../src/catalogue/conduit'
import { fittingOf, fittings } from '../../src/catalogue/fittings'
import { gutters } from '../../src/catalogue/gutter'
import { lumbers } from '../../src/catalogue/lumber'
import { drainPipes, polys } from '../../src/catalogue/pipe'
import { stockOf, stocks } from '../../src/catalogue/stock'
import { drainLineSchema } from '../../src/parts/drain-line/schema'
import { mainSchema } from '../../src/parts/main/schema'
import { rackRowSchema } from '../../src/parts/rack-row/schema'
import { inches } from '../../src/units/length'

const words = z.string().check(z.regex(/\S.*\S/))
const mm = z.number().check(z.positive(), z.lte(50_000))
const key = (prefix: string) => z.string().check(z.regex(new RegExp(`^${prefix}-[0-9/x-]+(?:in)?$`)))
const named = (prefix: string) => ({ key: key(prefix), title: words, source: words })

const rowsOf = {
  lumber: [
    lumbers,
    z.strictObject({
      ...named('lumber'),
      nominal: words,
      thickMm: mm,
      wideMm: mm,
      lengthsMm: z.array(mm).check(z.minLength(1)),
    }),
  ],
  conduit: [
    conduits,
    z.strictObject({
      ...named('conduit'),
      trade: z.string(),
      odMm: mm,
      wallMm: mm,
      idMm: mm,
      kgPerM: z.number().check(z.positive()),
      stickMm: mm,
      slidesInto: z.optional(z.string()),
    }),
  ],
  gutter: [
    gutters,
    z.strictObject({
      ...named('gutter'),
      depthMm: mm,
      topMm: mm,
      bottomMm: mm,
      sectionMm: mm,
      growthPerC: z.number().check(z.gt(0), z.lt(1e-3)),
    }),
  ],
  'drain pipe': [
    drainPipes,
    z.strictObject({
      ...named('drain'),
      odMm: mm,
      idMm: mm,
      wallMm: mm,
      stickMm: mm,
      bellMm: mm,
      leastFallMmPerM: z.number().check(z.gt(0), z.lt(100)),
    }),
  ],
  poly: [
    polys,
    z.strictObject({
      ...named('(?:pe|drip|tube)'),
      family: z.enum(['poly-pipe', 'drip-tubing', 'microtube']),
      idMm: mm,
      odMm: mm,
      coilMm: mm,
    }),
  ],
  fitting: [
    fittings,
    z.strictObject({
      // Words, and the size where the thing comes in sizes; of pipe fittings the pipe, and the other one of a reducer.
      key: z
        .string()
        .check(
          z.regex(
            /^[a-z]+(?:-[a-z]+)*(?:-(?:1-)?(?:1\/16|1\/8|1\/4|1\/2|3\/4|[1-8](?:in)?))?(?:-to-[a-z0-9/-]+)?$/,
          ),
        ),
      noun: z.string().check(z.regex(/^[a-z]+(?:-[a-z]+)*$/)),
      title: words,
      group: z.enum(['growing', 'feet', 'conduit', 'gutter', 'drain', 'water', 'pit', 'fasteners']),
      unit: z.enum(['piece', 'ft', 'ft2']),
      isWork: z.boolean(),
      source: words,
    }),
  ],
} as const

describe.each(Object.entries(rowsOf))('%s', (_, [rows, schema]) => {
  test('every row is whole, with a source', () => {
    expect(z.array(schema).safeParse(rows).error?.issues).toBeUndefined()
  })

  test('no key and no title stands twice', () => {
    expect(new Set(rows.map((row) => row.key)).size).toBe(rows.length)
    expect(new Set(rows.map((row) => row.title)).size).toBe(rows.length)
  })
})

describe('stock', () => {
  test('everything that is cut is in it once, sold by lengths shortest first', () => {
    const cut = [...lumbers, ...conduits, ...gutters, ...drainPipes, ...polys].map((row) => row.key)
    expect(stocks.map((item) => item.key).toSorted()).toEqual(cut.toSorted())
    for (const { lengthsMm } of stocks) expect(lengthsMm).toEqual(lengthsMm.toSorted((a, b) => a - b))
  })

  test('lumber is sawn, conduit is parted by a cutter without loss, poly comes in coils', () => {
    expect(stockOf('lumber-2x4')).toMatchObject({ form: 'stick', kerf: 'saw' })
    expect(stockOf('conduit-3/4')).toMatchObject({ form: 'stick', kerf: 'none', lengthsMm: [inches(120)] })
    expect(stockOf('pe-3/4')).toMatchObject({ form: 'coil', kerf: 'none' })
  })

  test('an unknown stock is named', () => {
    expect(() => stockOf('rope')).toThrow('The catalogue has no stock "rope"')
  })
})

describe('what a layout may choose is in the catalogue', () => {
  const keys = new Set(stocks.map((item) => item.key))
  const choices: Record<string, readonly string[]> = {
    'drain line pipe': drainLineSchema.shape.pipe.def.innerType.options,
    'main pipe': mainSchema.shape.pipe.def.innerType.options,
    'rack row gutter': rackRowSchema.shape.gutter.def.innerType.options,
    'rack row lateral': rackRowSchema.shape.lateral.def.innerType.options,
    'rack row rail': rackRowSchema.shape.rail.def.innerType.options.map((trade) => `conduit-${trade}`),
    'rack row bar': rackRowSchema.shape.bar.def.innerType.options.map((trade) => `conduit-${trade}`),
  }
  test.each(Object.entries(choices))('%s', (_, chosen) => {
    expect(chosen.filter((stock) => !keys.has(stock))).toEqual([])
  })
})

test('an unknown fitting is named', () => {
  expect(fittingOf('bar-stop-3/4').group).toBe('conduit')
  expect(() => fittingOf('bolt')).toThrow('The catalogue has no fitting "bolt"')
})
