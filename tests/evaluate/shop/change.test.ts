import { describe, expect, test } from 'vitest'
import { changeWords, costChange } from '../../../src/canvas/counter/costChange'
import { beforeChecks } from '../../../src/evaluate/beforeChecks'
import { bayChange } from '../../../src/evaluate/shop/change'
import { nextRow, rowLike } from '../../../src/evaluate/shop/nextRow'
import { shopList } from '../../../src/evaluate/shop/shopList'
import { extendRow, movePartsBy, removeParts } from '../../../src/layout/edits'
import { kestrelBend } from '../../support/scenarios/kestrelBend'
import { inches } from '../../../src/units/length'

const layout = kestrelBend().layout()
const before = beforeChecks(layout)
const n1 = layout.parts.find(({ name }) => name === 'N1')!.id
const s1 = layout.parts.find(({ name }) => name === 'S1')!.id

const boughtOf = (evaluation: typeof before): number =>
  shopList(evaluation.cuts, evaluation.counts, evaluation.layout.counter).totals.boughtCents

describe('what a change does to boards, money and hours', () => {
  test('nothing, where nothing changes', () => {
    expect(bayChange(before, before)).toEqual({
      boards: 0,
      cents: 0,
      unpriced: 0,
      hours: 0,
      isPlaceholder: false,
    })
    expect(costChange(before, before)).toEqual([])
  })

  test('moving a row along its aisle changes no board', () => {
    const after = beforeChecks(movePartsBy(layout, [n1], inches(1), 0))
    expect(bayChange(before, after).boards).toBe(0)
  })

  test('a rack more: the difference of the two shop lists, and of two things without a price', () => {
    const after = beforeChecks(extendRow(layout, n1, 1))
    const change = bayChange(before, after)
    expect(change.cents).toBe(boughtOf(after) - boughtOf(before))
    // Towers and their hooks have no price until somebody puts one in.
    expect(change.unpriced).toBe(2)
    expect(change.isPlaceholder).toBe(true)
    expect(change.boards).toBeGreaterThan(0)
    // 32 towers alone take 4.5 min each: 2.4 h, with 15 % on top 2.8 h.
    expect(change.hours).toBeGreaterThan(2.8)
  })

  test('there and back is the same with the other sign', () => {
    const after = beforeChecks(extendRow(layout, n1, 1))
    const [there, back] = [bayChange(before, after), bayChange(after, before)]
    expect([back.boards, back.cents, back.hours]).toEqual([-there.boards, -there.cents, -there.hours])
  })
})

describe('in words', () => {
  const none = { boards: 0, cents: 0, unpriced: 0, hours: 0, isPlaceholder: false }

  test.each([
    [{ boards: 3, cents: 1800, hours: 1.2 }, ['+3 boards · +$18 · +1.2 h']],
    [{ boards: -1, cents: -620, hours: -0.3 }, ['−1 board · −$6.20 · −0.3 h']],
    [{ cents: 1800, unpriced: 2 }, ['+$18 and 2 unpriced']],
    [{ unpriced: 1 }, ['1 unpriced']],
    [{ cents: 1800, isPlaceholder: true }, ['+$18 at placeholder prices']],
    [{ cents: 123_456 }, ['+$1,235']],
    [{ hours: 0.04 }, []],
    [{}, []],
  ])('%j', (change, words) => {
    expect(changeWords({ ...none, ...change }, '$')).toEqual(words)
  })

  test('the job’s own currency', () => {
    expect(changeWords({ ...none, cents: 500 }, '€')).toEqual(['+€5.00'])
  })
})

describe('the next row', () => {
  test('is like the one that is chosen, else the longest', () => {
    expect(rowLike(before, [s1])).toBe(s1)
    // The north rows are the longer.
    expect(rowLike(before, [])).toBe(n1)
  })

  test('adds the towers of its like, and is fed and drained where its like is', () => {
    expect(nextRow(layout, before, n1)).toMatchObject({
      towers: 96,
      sites: 864,
      isFed: true,
      isDrained: true,
    })
    expect(nextRow(layout, before, s1)).toMatchObject({ towers: 64, sites: 576 })
  })

  test('costs about what the bay saves without one of two equal rows', () => {
    // N1 and N2 are alike but for their pipe from the main and their shims; packs round each by less than their own price.
    const [n2] = layout.parts.filter(({ name }) => name === 'N2')
    const without = removeParts(layout, [n2!.id])
    const saved = bayChange(beforeChecks(without), before)
    const more = nextRow(layout, before, n1)
    expect(more?.boards).toBeCloseTo(saved.boards, -1)
    expect(Math.abs((more?.cents ?? 0) - saved.cents)).toBeLessThan(0.15 * saved.cents)
  })

  test('where no main and no drain are in reach, it says so', () => {
    const dry = removeParts(
      layout,
      layout.parts.filter(({ kind }) => kind !== 'rack-row').map(({ id }) => id),
    )
    expect(nextRow(dry, beforeChecks(dry), n1)).toMatchObject({ isFed: false, isDrained: false })
  })
})
