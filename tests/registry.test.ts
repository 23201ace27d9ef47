import { existsSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fittingOf } from '../src/catalogue/fittings'
import { stockOf } from '../src/catalogue/stock'
import { mirrorPoint, movePoint, type Mirror, type Motion } from '../src/geometry/motion'
import { length3, type Point } from '../src/geometry/point'
import { signedArea } from '../src/geometry/polygon'
import { partSchema } from '../src/layout/schema'
import type { Body, Built } from '../src/model/built'
import { fields, type FieldMeta } from '../src/model/fields'
import { kindOf, kinds, shelf, type AnyPart } from '../src/parts'
import { at, flatSite, sampleFloor, siteOn } from './support/site'

/** A part for every item of the shelf, dropped at one place. */
const samples = shelf.map(({ kind, preset }, index) => ({
  title: `${kind.kind}, ${preset.id}`,
  kind,
  part: kind.create(`${kind.kind}-${index + 1}`, preset.title, at(200, 300), preset),
}))

const site = flatSite()

/** A tick is 1/320 mm: places are kept on it, so that a moved part may be off by as much in each of a few sums. */
const TICKS_MM = 4 / 320

/** The same corners, whichever comes first. */
const isSameOutline = (a: readonly Point[], b: readonly Point[]): boolean =>
  a.length === b.length && a.every((p) => b.some((q) => Math.hypot(p.x - q.x, p.y - q.y) <= TICKS_MM))

const isSameBody = (a: Body, b: Body): boolean =>
  a.role === b.role &&
  Math.abs(a.fromMm - b.fromMm) <= TICKS_MM &&
  Math.abs(a.toMm - b.toMm) <= TICKS_MM &&
  isSameOutline(a.outline, b.outline)

/** Bodies that have no match among the others. */
const strangers = (bodies: readonly Body[], others: readonly Body[]): readonly Body[] =>
  bodies.filter((body) => !others.some((other) => isSameBody(body, other)))

const carried = ({ bodies }: Built, carry: (p: Point) => Point): Body[] =>
  bodies.map((body) => ({ ...body, outline: body.outline.map(carry) }))

const numbersIn = (value: unknown): number[] => {
  if (typeof value === 'number') return [value]
  if (value instanceof Float64Array) return [...value]
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(numbersIn) : []
}

interface Shaped {
  readonly _zod: { readonly def: { readonly innerType?: Shaped; readonly entries?: object } }
}

/** The words of a field, which may stand inside a default or a "may be empty". */
const wordsOf = (schema: Shaped): FieldMeta | undefined =>
  fields.get(schema as never) ?? (schema._zod.def.innerType && wordsOf(schema._zod.def.innerType))

const choicesOf = (schema: Shaped): string[] => {
  const { entries, innerType } = schema._zod.def
  return entries ? Object.values(entries as Record<string, string>) : innerType ? choicesOf(innerType) : []
}

/** Fields that a person changes on the plan or in a form of their own, not among the inspector's fields. */
const onThePlan = new Set([
  'id',
  'kind',
  'at',
  'heading',
  'points',
  'takenOut',
  'curve',
  'gradedTubes',
  'waterFrom',
  'trimTurns',
])

describe.each(kinds.map((kind) => ({ name: kind.kind, kind })))('kind $name', ({ name, kind }) => {
  test('is found by its parts', () => {
    const own = samples.filter((sample) => sample.kind === kind)
    expect(own.length).toBeGreaterThan(0)
    for (const { part } of own) expect(kindOf(part)).toBe(kind)
  })

  test('has a title, and hints that say more than it', () => {
    expect(kind.title).toMatch(/^[A-Z]/)
    for (const { title, hint } of kind.presets) {
      expect(title).toMatch(/^[A-Z]/)
      expect(hint.length).toBeGreaterThan(title.length)
    }
  })

  test('has a README of one screen', () => {
    const path = `src/parts/${name}/README.md`
    expect(existsSync(path)).toBe(true)
    expect(readFileSync(path, 'utf8').split('\n').length).toBeLessThanOrEqual(60)
  })

  test('has a label and a unit for every field of the inspector, and words for every choice', () => {
    const { shape } = (kind.schema as unknown as { _zod: { def: { shape: Record<string, Shaped> } } })._zod
      .def
    for (const [field, schema] of Object.entries(shape)) {
      if (onThePlan.has(field)) continue
      const words = wordsOf(schema)
      expect(words?.label, field).toMatch(/^[A-Z0-9]/)
      expect(words?.group, field).toMatch(/^[A-Z]/)
      expect(words?.unit, field).toBeTruthy()
      // A size such as `3/4` is its own word.
      for (const value of choicesOf(schema))
        expect(words?.choices?.[value] ?? value, field).toMatch(/^[A-Z0-9]/)
    }
  })
})

test('no two things on the shelf share an id or a title', () => {
  const ids = shelf.map(({ preset }) => preset.id)
  const titles = shelf.map(({ preset }) => preset.title)
  expect(new Set(ids).size).toBe(ids.length)
  expect(new Set(titles).size).toBe(titles.length)
})

describe.each(samples)('$title', ({ kind, part }) => {
  const built = kind.derive(part, site)

  test('comes off the shelf as the file keeps it', () => {
    expect(kind.schema.parse(part)).toEqual(part)
    expect(partSchema.parse(part)).toEqual(part)
  })

  test('derives to finite numbers, on level floor and on a plane', () => {
    for (const floor of [site, siteOn(sampleFloor)]) {
      const { rack: _facts, ...things } = kind.derive(part, floor)
      expect(numbersIn(things).every(Number.isFinite)).toBe(true)
    }
  })

  test('gives its own bodies, anticlockwise and the right way up', () => {
    expect(built.bodies.length).toBeGreaterThan(0)
    for (const body of built.bodies) {
      expect(body.part).toBe(part.id)
      expect(signedArea(body.outline)).toBeGreaterThan(0)
      expect(body.toMm).toBeGreaterThanOrEqual(body.fromMm)
    }
  })

  test('cuts each stick as long as it is drawn, and no tube shorter', () => {
    for (const { from, to, lengthMm } of built.sticks) expect(length3(from, to)).toBeCloseTo(lengthMm, 6)
    for (const { path, lengthMm } of built.tubes) {
      const drawnMm = path.slice(1).reduce((sum, to, index) => sum + length3(path[index]!, to), 0)
      expect(lengthMm).toBeGreaterThanOrEqual(drawnMm - 1e-6)
    }
  })

  test('is made only of what the catalogue has', () => {
    for (const { stock } of [...built.sticks, ...built.tubes]) expect(stockOf(stock).key).toBe(stock)
    for (const { item } of built.fittings) expect(fittingOf(item).key).toBe(item)
  })

  test('is drawn', () => {
    const marks = kind.draw(part, built)
    expect(marks.length).toBeGreaterThan(0)
    expect(numbersIn(marks).every(Number.isFinite)).toBe(true)
    expect(marks.some((mark) => mark.as === 'text')).toBe(true)
  })

  test('takes its bodies along when it is moved and turned', () => {
    const shifts = fc.integer({ min: -100_000, max: 100_000 })
    const turns = fc.constantFrom<Motion['quarterTurns'][]>(0, 1, 2, 3)
    fc.assert(
      fc.property(shifts, shifts, shifts, shifts, turns, (x, y, dxMm, dyMm, quarterTurns) => {
        const motion: Motion = { pivot: { x, y }, quarterTurns, dxMm, dyMm }
        const moved = kind.move(part, motion)
        expect(kind.schema.parse(moved)).toEqual(moved)
        const there = kind.derive(moved, site).bodies
        expect(there.length).toBe(built.bodies.length)
        expect(
          strangers(
            there,
            carried(built, (p) => movePoint(p, motion)),
          ),
        ).toEqual([])
      }),
      { seed: 20_250_303, numRuns: 25 },
    )
  })

  test('takes its bodies along through a mirror, and comes back the same through another', () => {
    const mirrors: Mirror[] = [
      { axis: 'x', atMm: 1234.5 },
      { axis: 'y', atMm: -20 },
    ]
    for (const mirror of mirrors) {
      const mirrored = kind.mirror(part, mirror)
      expect(kind.schema.parse(mirrored)).toEqual(mirrored)
      const there = kind.derive(mirrored, site).bodies
      expect(
        strangers(
          there,
          carried(built, (p) => mirrorPoint(p, mirror)),
        ),
      ).toEqual([])
      expect(kind.mirror(mirrored, mirror)).toEqual(part)
    }
  })

  test('stays a part of the file wherever a handle is dragged', () => {
    const coordinate = fc.integer({ min: -3_000_000, max: 3_000_000 })
    for (const { id } of kind.handles(part))
      fc.assert(
        fc.property(coordinate, coordinate, (x, y) => {
          const dragged = kind.drag(part, id, { x: x / 7, y: y / 7 })
          expect(kind.schema.parse(dragged)).toEqual(dragged)
          expect(dragged.id).toBe(part.id)
        }),
        { seed: 20_250_304, numRuns: 40 },
      )
  })

  test('stays as it is while a handle is held still, and for a handle that it has not', () => {
    for (const { id, at: held } of kind.handles(part)) {
      const again = kind.handles(kind.drag(part, id, held)).find((handle) => handle.id === id)
      expect(Math.hypot(again!.at.x - held.x, again!.at.y - held.y)).toBeLessThanOrEqual(TICKS_MM)
    }
    expect(kind.drag(part, 'no such handle', at(0, 0))).toBe(part)
  })

  test('takes and gives up a point, where it has points', () => {
    if (!kind.addPoint || !kind.removePoint) {
      expect('points' in part).toBe(false)
      return
    }
    const longer: AnyPart = kind.addPoint(part, at(210, 333))
    expect(kind.handles(longer)).toHaveLength(kind.handles(part).length + 1)
    expect(kind.schema.parse(longer)).toEqual(longer)
    expect(kind.removePoint(longer, 'p1')).toEqual(part)
    expect(kind.removePoint(part, 'p0')).toBe(part)
  })
})
