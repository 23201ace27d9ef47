import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { cartsOf } from '../../src/checks/carts'
import type { Judged } from '../../src/evaluate/evaluation'
import { movePoint, quarterTurn, shift, type Mirror, type Motion } from '../../src/geometry/motion'
import { length3, type Point } from '../../src/geometry/point'
import { copyParts, movePartsBy, removeParts, turnParts } from '../../src/layout/edits'
import { layoutSchema, type Layout } from '../../src/layout/schema'
import type { Finding } from '../../src/model/finding'
import { fromTicks, inches, onTick } from '../../src/units/length'
import { arbitraryBay } from '../support/arbitraryBay'
import { extremeLayout } from '../support/extremes'
import { firstTry } from '../support/firstTry'
import { scenarios } from '../support/scenarios'
import { mirroredBay, movedBay } from '../support/wholeBay'

const SEED = 20_251_201

/** Hundreds of bays are evaluated in one test. */
const SLOW = 120_000

/** As the program writes it at its finest, to 1/100 mm; a sum that ends in 5 may be rounded either way. */
const rounded = (mm: number): number => Math.round(mm * 100 + 1e-5) / 100 + 0

/** What a finding says, wherever the bay stands on the map. */
const said = ({ rule, state, parts, measured, limit }: Finding): string =>
  [rule, state, ...[...parts].sort(), rounded(measured.value), rounded(limit.value)].join(' ')

const allSaid = ({ findings }: Judged): string[] => findings.map(said).sort()

/** Whole ticks, as far as half a mile. */
const ticks = fc.integer({ min: -250_000_000, max: 250_000_000 }).map(fromTicks)

const motion = fc
  .record({ quarterTurns: fc.constantFrom<Motion['quarterTurns'][]>(0, 1, 2, 3), dxMm: ticks, dyMm: ticks })
  .map((by): Motion => ({ pivot: { x: 0, y: 0 }, ...by }))

const mirror = fc.record<Mirror>({ axis: fc.constantFrom('x', 'y'), atMm: ticks })

describe('a bay elsewhere on the map is the same bay', () => {
  test(
    'moved and turned by quarters it has the same findings',
    () => {
      fc.assert(
        fc.property(arbitraryBay, motion, (layout, by) => {
          expect(allSaid(evaluate(movedBay(layout, by)))).toEqual(allSaid(evaluate(layout)))
        }),
        { seed: SEED, numRuns: 100 },
      )
    },
    SLOW,
  )

  test(
    'seen in a mirror it has the same findings',
    () => {
      fc.assert(
        fc.property(arbitraryBay, mirror, (layout, by) => {
          expect(allSaid(evaluate(mirroredBay(layout, by)))).toEqual(allSaid(evaluate(layout)))
        }),
        { seed: SEED, numRuns: 100 },
      )
    },
    SLOW,
  )

  const motions: readonly (readonly [string, Motion])[] = [
    ['moved', shift(fromTicks(1_234_567), fromTicks(-7_654_321))],
    ['a quarter turned', quarterTurn({ x: 0, y: 0 }, 1)],
    ['half turned', quarterTurn({ x: inches(100), y: 0 }, 2)],
    ['three quarters turned', quarterTurn({ x: 0, y: inches(-77) }, 3)],
  ]
  const crowded = { 'first try': firstTry, ...scenarios }
  const cases = Object.entries(crowded)
    .filter(([id]) => id !== 'sallow-flats-one-acre')
    .flatMap(([id, build]) => motions.map(([how, by]) => ({ id, build, how, by })))

  /** Where two places are equally bad, either may be named. */
  const named = new Set(['keep-clear-free', 'headroom-min'])

  const placed = (finding: Finding, carry: (p: Point) => Point): string => {
    const { x, y } = carry(finding.at)
    if (named.has(finding.rule)) return said(finding)
    return `${said(finding)} at ${Math.round(x)} ${Math.round(y)}`
  }

  test.each(cases)('$id, $how: every finding is where it was in the house', ({ build, by }) => {
    const layout = build()
    const here = evaluate(layout).findings.map((finding) => placed(finding, (p) => movePoint(p, by)))
    const there = evaluate(movedBay(layout, by)).findings.map((finding) => placed(finding, (p) => p))
    expect(there.sort()).toEqual(here.sort())
  })
})

const isSound = (value: unknown): boolean => {
  if (typeof value === 'number') return Number.isFinite(value)
  if (value instanceof Float64Array) return value.every(Number.isFinite)
  if (value instanceof Map) return isSound([...value.values()])
  return value === null || typeof value !== 'object' || Object.values(value).every(isSound)
}

const expectSound = ({ bay, cuts, counts, findings, marksOf, towers, sites }: Judged): void => {
  const wholes = {
    cuts,
    counts,
    findings,
    marksOf,
    towers,
    sites,
    levels: bay.levels,
    carts: cartsOf(bay),
    aisles: bay.aisles,
  }
  for (const [name, whole] of Object.entries(wholes)) expect(isSound(whole), name).toBe(true)
}

describe('any layout that the schema accepts', () => {
  test(
    'has an evaluation without a number that is none',
    () => {
      fc.assert(
        fc.property(extremeLayout, (layout) => {
          expectSound(evaluate(layout))
        }),
        { seed: SEED, numRuns: 200 },
      )
    },
    SLOW,
  )
  test(
    'also of a plausible size',
    () => {
      fc.assert(
        fc.property(arbitraryBay, (layout) => {
          expectSound(evaluate(layout))
        }),
        { seed: SEED, numRuns: 100 },
      )
    },
    SLOW,
  )
})

describe('what is drawn is what is cut', () => {
  /** Length of each material, mm. */
  const sum = (lengths: readonly (readonly [stock: string, mm: number])[]): Map<string, number> => {
    const total = new Map<string, number>()
    for (const [stock, mm] of lengths) total.set(stock, (total.get(stock) ?? 0) + mm)
    return total
  }
  const drawn = ({ bay }: Judged) =>
    sum(
      [...bay.built, ...bay.joinedPipes].flatMap(({ sticks, tubes }) => [
        ...sticks.map(({ stock, from, to }) => [stock, length3(from, to)] as const),
        ...tubes.map(({ stock, lengthMm }) => [stock, lengthMm] as const),
      ]),
    )
  const cut = ({ cuts }: Judged) =>
    sum(
      cuts.flatMap(({ stock, lines, tooLong }) =>
        [...lines, ...tooLong].map(({ count, lengthMm }) => [stock, count * lengthMm] as const),
      ),
    )
  const expectSame = (layout: Layout): void => {
    const evaluation = evaluate(layout)
    const [fromPlan, fromSaw] = [drawn(evaluation), cut(evaluation)]
    expect([...fromSaw.keys()].sort()).toEqual([...fromPlan.keys()].sort())
    // Pieces are cut to whole ticks of 1/320 mm: one part in a hundred thousand covers the shortest of them.
    for (const [stock, mm] of fromPlan) expect(Math.abs(fromSaw.get(stock)! / mm - 1)).toBeLessThan(1e-5)
  }

  test.each(Object.entries(scenarios))('%s', (_, build) => {
    expectSame(build())
  })

  test(
    'any bay',
    () => {
      fc.assert(fc.property(arbitraryBay, expectSame), { seed: SEED, numRuns: 60 })
    },
    SLOW,
  )
})

/** What an evaluation says, as data. */
const told = ({ bay, cuts, counts, findings, marksOf, towers, sites }: Judged) => ({
  cuts,
  counts,
  findings,
  marksOf,
  towers,
  sites,
  built: bay.built,
  joins: bay.joins,
  joinedPipes: bay.joinedPipes,
  levels: bay.levels,
  aisles: bay.aisles,
  carts: cartsOf(bay),
})

/** Flows are solved from those of the bay before, to a tolerance: numbers of findings may differ by that, and by no more. */
const near = (value: unknown): unknown => {
  if (typeof value === 'number') return expect.closeTo(value, 2)
  if (Array.isArray(value)) return value.map(near)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, near(each)]))
}

const toldNear = (evaluation: Judged) => {
  const all = told(evaluation)
  return { ...all, findings: near(all.findings) }
}

/** The same layout with no object in common, so that nothing remembered serves for it. */
const anew = (layout: Layout): Layout => layoutSchema.parse(JSON.parse(JSON.stringify(layout)))

describe('what is remembered is what would be found anew', () => {
  test(
    'evaluated twice, a layout says the same',
    () => {
      fc.assert(
        fc.property(arbitraryBay, (layout) => {
          expect(told(evaluate(layout))).toEqual(toldNear(evaluate(layout)))
        }),
        { seed: SEED, numRuns: 20 },
      )
    },
    SLOW,
  )

  type Edit = (layout: Layout, ids: readonly string[]) => Layout
  const edit = fc.oneof(
    fc.tuple(fc.integer({ min: -60, max: 60 }), fc.integer({ min: -60, max: 60 })).map(
      ([x, y]): Edit =>
        (layout, ids) =>
          movePartsBy(layout, ids, inches(x), inches(y)),
    ),
    fc.constant<Edit>((layout, ids) => turnParts(layout, ids)),
    fc.constant<Edit>((layout, ids) => removeParts(layout, ids)),
    fc.constant<Edit>((layout, ids) => copyParts(layout, ids, inches(48), 0)),
    fc
      .constantFrom(0, 0.5, 1)
      .map((growth): Edit => (layout) => ({ ...layout, settings: { ...layout.settings, growth } })),
    fc.integer({ min: 60, max: 150 }).map((high): Edit => (layout) => ({
      ...layout,
      house: { ...layout.house, headroomMm: onTick(inches(high)) },
    })),
  )
  const edits = fc.array(fc.tuple(edit, fc.nat(8)), { minLength: 1, maxLength: 6 })

  test(
    'after any edits, one by one',
    () => {
      fc.assert(
        fc.property(arbitraryBay, edits, (start, made) => {
          let layout = start
          evaluate(layout)
          for (const [change, which] of made) {
            const part = layout.parts[which % Math.max(1, layout.parts.length)]
            layout = change(layout, part ? [part.id] : [])
            expect(told(evaluate(layout))).toEqual(toldNear(evaluate(anew(layout))))
          }
        }),
        { seed: SEED, numRuns: 15 },
      )
    },
    SLOW,
  )

  test('after edits of a sample bay', () => {
    let layout = firstTry()
    evaluate(layout)
    for (const step of [14, -3, 7.5, 0.0625]) {
      layout = movePartsBy(layout, ['rack-row-1', 'obstacle-1', 'drain-line-1', 'sump-1'], 0, inches(step))
      expect(told(evaluate(layout))).toEqual(toldNear(evaluate(anew(layout))))
    }
  })
})
