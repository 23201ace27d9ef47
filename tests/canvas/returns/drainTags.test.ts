import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { lensOf } from '../../../src/canvas/lens'
import { drainTags } from '../../../src/canvas/returns/drainTags'
import { layTags } from '../../../src/canvas/returns/layTags'
import { paperTheme } from '../../../src/drawing/theme'
import { evaluate } from '../../../src/evaluate/evaluate'
import type { Evaluation } from '../../../src/evaluate/evaluation'
import type { DrainReach, DrainReturn } from '../../../src/model/returns'
import { inches } from '../../../src/units/length'
import { writerFor } from '../../../src/units/writer'
import { bay } from '../../support/bay'
import { at } from '../../support/site'

const writer = writerFor('feet-inches')

const evaluation = evaluate(
  bay('40 x 60 ft')
    .drain('Drain', [
      [40, 205],
      [400, 205],
    ])
    .drain('Other', [
      [40, 405],
      [400, 405],
    ])
    .layout(),
)

const reach = (from: number, to: number, state: DrainReach['state'], flowLph: number): DrainReach => ({
  fromMm: (from - 40) * inches(1),
  toMm: (to - 40) * inches(1),
  from: at(from, 205),
  to: at(to, 205),
  flowLph,
  depthMm: 10,
  share: 0.1,
  velocityMS: 0.5,
  state,
})

const withReaches = (reaches: readonly DrainReach[], state: DrainReturn['state']): Evaluation => {
  const home: DrainReturn = {
    part: 'drain-line-1',
    reaches,
    flowLph: reaches.at(-1)!.flowLph,
    state,
    fullest: reaches[0]!,
    halfFullLph: 1,
    scourLph: 1,
    standingL: 1,
  }
  const returns = { ...evaluation.bay.returns, drains: new Map([['drain-line-1', home]]) }
  return { ...evaluation, bay: { ...evaluation.bay, returns } }
}

// 227.1 L/h is 1 gpm: a US gallon is 3.785 L.
const GPM = 227.12

describe('what is said beside a drain', () => {
  const tags = drainTags(
    withReaches(
      [
        reach(40, 150, 'Falls', GPM),
        reach(150, 300, 'Backs up', 2 * GPM),
        reach(300, 400, 'Backs up', 3 * GPM),
      ],
      'Backs up',
    ),
    writer,
  ).filter(({ part }) => part === 'drain-line-1')

  test('begins with the state of its worst reach, and says it once in full', () => {
    expect(tags[0]).toMatchObject({ words: 'Backs up 1/8 in/ft, 2.0 gpm', state: 'Backs up', ofItsLength: 0 })
    expect(tags.filter(({ state, ofItsLength }) => state && ofItsLength === 0)).toHaveLength(1)
  })

  test('tells fall and flow of the whole, and the flow of each reach', () => {
    const said = tags.filter(({ as }) => as !== 'peg').map(({ words }) => words)
    expect(said).toContain('1/8 in/ft, 3.0 gpm at its end')
    expect(said).toContain('1/8 in/ft, 1.0 gpm')
  })

  test('has a shape only where it does not fall', () => {
    for (const { state, words } of tags) expect(state === undefined).toBe(!words.startsWith('Backs up'))
  })

  test('joins reaches that say the same', () => {
    const joined = drainTags(
      withReaches([reach(40, 150, 'Falls', GPM), reach(150, 400, 'Falls', GPM)], 'Falls'),
      writer,
    )
    expect(joined.filter(({ part, as }) => part === 'drain-line-1' && as === 'reach')).toHaveLength(1)
  })

  test('is its fall alone where no water runs', () => {
    const other = drainTags(evaluation, writer).filter(
      ({ part, as }) => part === 'drain-line-2' && as === 'drain',
    )
    expect(other.map(({ words }) => words)).toEqual(['1/8 in/ft'])
  })
})

describe('words along drains on the screen', () => {
  const size = { width: 900, height: 700 }
  const room = { x0: 0, y0: 0, x1: 900, y1: 700 }
  const all = drainTags(
    withReaches([reach(40, 200, 'Falls', GPM), reach(200, 400, 'Flat', 2 * GPM)], 'Flat'),
    writer,
  )
  const laidAt = (pxPerMm: number, chosen: readonly string[] = []) =>
    layTags(all, chosen, lensOf({ x: 0, y: 14000, pxPerMm }, size, paperTheme, 'feet-inches'), room, [])

  test('never cover each other, at any zoom, chosen or not', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.004, max: 0.4, noNaN: true }),
        fc.subarray(['drain-line-1', 'drain-line-2']),
        (pxPerMm, chosen) => {
          const slips = laidAt(pxPerMm, chosen).map(({ slip }) => slip)
          slips.forEach((a, i) => {
            for (const b of slips.slice(i + 1))
              expect(a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1).toBe(false)
          })
        },
      ),
      { seed: 20261125, numRuns: 60 },
    )
  })

  test('thin out from afar, where only what is wrong is left', () => {
    expect(laidAt(0.004).map(({ tag }) => tag.words)).toEqual([expect.stringMatching(/^Flat/)])
    expect(laidAt(0.05).length).toBeGreaterThan(3)
  })

  test('tell more of a drain that is chosen', () => {
    const of = (pxPerMm: number, chosen: readonly string[]) =>
      laidAt(pxPerMm, chosen).filter(({ tag }) => tag.part === 'drain-line-2').length
    expect(of(0.02, ['drain-line-2'])).toBeGreaterThan(of(0.012, []))
    expect(laidAt(0.03, ['drain-line-2']).filter(({ tag }) => tag.part === 'drain-line-2')).toHaveLength(
      all.filter(({ part }) => part === 'drain-line-2').length,
    )
  })
})
