import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { comparePlans, isAlike } from '../../../src/evaluate/compare/comparePlans'
import { evaluate } from '../../../src/evaluate/evaluate'
import { setCounter, setSettings } from '../../../src/layout/bayEdits'
import type { Edited } from '../../../src/layout/edited'
import { copyParts, movePartsBy, removeParts } from '../../../src/layout/edits'
import { readLayout, writeLayout } from '../../../src/layout/file'
import type { Layout } from '../../../src/layout/schema'
import { setField } from '../../../src/layout/setField'
import { inches } from '../../../src/units/length'
import { scenarios } from '../../support/scenarios'

const ok = (edited: Edited): Layout => {
  if (!edited.ok) throw new Error(edited.sentence)
  return edited.layout
}

const bay = scenarios['kestrel-bend-house-2']!()
const was = evaluate(bay)
const n1 = bay.parts.find(({ name }) => name === 'N1')!.id
const differs = (layout: Layout) => comparePlans(was, evaluate(layout))

describe('two plans held against each other', () => {
  test('a plan and itself read back from its file differ in nothing', () => {
    const read = readLayout(writeLayout(bay))
    if (!read.ok) throw new Error(read.sentence)
    expect(isAlike(differs(read.layout))).toBe(true)
  })

  test('a row that runs north, moved 8 in west, lies 8 in to its left and not along itself', () => {
    const { parts, boards, bay: fields } = differs(movePartsBy(bay, [n1], inches(-8), 0))
    expect(parts).toHaveLength(1)
    expect(parts[0]).toMatchObject({ part: n1, name: 'N1', kind: 'rack-row', what: 'changed', fields: [] })
    const { move } = parts[0] as Extract<(typeof parts)[0], { what: 'changed' }>
    // 8 in are 203.2 mm.
    expect(move!.by.x).toBeCloseTo(-203.2, 6)
    expect(move!.by.y).toBe(0)
    expect(move!.alongMm).toBeCloseTo(0, 6)
    expect(move!.rightMm).toBeCloseTo(-203.2, 6)
    expect([boards, fields]).toEqual([[], []])
  })

  /**
   * By hand: a row of 3 racks with 3 middle pairs a rack that share their end pairs has 3 x 4 + 1 = 13 pairs, 26 risers, of which
   * 4 stand at the two sleeves. Where each is shorter than the gutters ask, its holes keep their distance from its top: cut 1 in and 3 in
   * shorter than the others, the holes stand 2 in apart.
   */
  test('risers of one row 2 in shorter: 22 plain and 4 sleeve risers, and no other stick', () => {
    const full = was.cuts[0]!.lines.find(({ marks }) => marks.includes('RS-p'))!.lengthMm
    const fixed = (mm: number) => evaluate(ok(setField(bay, n1, 'riserMm', mm)))
    const { pieces, levels, parts } = comparePlans(fixed(full - inches(1)), fixed(full - inches(3)))
    const sticks = pieces
      .filter(({ stock }) => stock === 'lumber-2x4')
      .map(({ mark, lengthMm, before, after }) => [
        mark,
        Math.round((full - lengthMm) / inches(1)),
        after - before,
      ])
    expect(sticks).toEqual([
      ['RS-p', 1, -22],
      ['RS-p', 3, 22],
      ['RS-s', 1, -4],
      ['RS-s', 3, 4],
    ])
    const hole = levels.find(({ key }) => key === `${n1}/bottomPlain`)!
    expect(Number(hole.before) - Number(hole.after)).toBeCloseTo(inches(2), 6)
    expect(parts).toMatchObject([{ part: n1, fields: [{ field: 'riserMm' }] }])
  })

  test('a dearer board changes money and nothing that is built', () => {
    const board = was.layout.counter.quotes
    const tower = {
      key: 'tower',
      name: 'Tower',
      spec: '',
      group: 'growing' as const,
      unit: 'each',
      pack: 1,
      cents: 100_00,
      breaks: [],
      supplier: '',
      aisle: '',
      leadDays: 0,
      waste: { kind: 'none' as const },
      isWholePack: true,
      isTaxed: true,
      isReturnable: false,
      date: '2027-05-01',
      note: '',
    }
    const first = evaluate(ok(setCounter(bay, { quotes: [...board, tower] })))
    const second = evaluate(ok(setCounter(bay, { quotes: [...board, { ...tower, cents: 101_00 }] })))
    const difference = comparePlans(first, second)
    expect(difference).toMatchObject({
      parts: [],
      pieces: [],
      boards: [],
      takeOff: [],
      levels: [],
      flows: [],
    })
    expect(difference.bay.map(({ of, field }) => [of, field])).toEqual([['counter', 'quotes']])
    // A dollar more for each of the 576 towers of this bay, built in and bought.
    const bought = difference.sums.find(({ key }) => key === 'boughtCents')!
    expect(bought.after - bought.before).toBe(was.towers * 100)
  })

  test('a new part, a part that is gone and a setting are told as such, gone ones last', () => {
    const more = copyParts(bay, [n1], inches(600), 0)
    const less = removeParts(more, [bay.parts.find(({ kind }) => kind === 'obstacle')!.id])
    const { parts, bay: fields } = differs(ok(setSettings(less, { cartMm: inches(30) })))
    expect(parts.map(({ what }) => what)).toEqual(['added', 'removed'])
    // 24 in are 609.6 mm, 30 in 762 mm.
    expect(fields).toEqual([{ of: 'settings', field: 'cartMm', from: 609.6, to: 762 }])
  })

  test('the number of the next issue and accepted warnings are no change', () => {
    const accepted = [{ key: 'a', reason: 'so', by: '' }]
    expect(isAlike(differs(ok(setSettings(bay, { issue: 7, accepted }))))).toBe(true)
  })
})

/** What A has more than B, B has less than A. */
test('backwards every count and figure is the same with before and after swapped', () => {
  const ids = bay.parts.filter(({ kind }) => kind === 'rack-row').map(({ id }) => id)
  fc.assert(
    fc.property(
      fc.subarray(ids, { minLength: 1 }),
      fc.integer({ min: -40, max: 40 }),
      fc.integer({ min: -40, max: 40 }),
      (rows, x, y) => {
        const now = evaluate(movePartsBy(bay, rows, inches(x), inches(y)))
        const [there, back] = [comparePlans(was, now), comparePlans(now, was)]
        for (const list of ['pieces', 'boards', 'takeOff', 'levels', 'flows', 'sums'] as const) {
          const turned = back[list].map(({ key, before, after }) => [key, after, before])
          expect(new Set(turned.map(String))).toEqual(
            new Set(there[list].map(({ key, before, after }) => String([key, before, after]))),
          )
        }
      },
    ),
    { seed: 7, numRuns: 8 },
  )
})
