import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import type { Join } from '../../src/model/levels'
import { bay, type Sketch, type Spot } from '../support/bay'
import { judged, nameIn } from '../support/judged'
import { inchesOf } from '../support/site'

const PIT = { x: [400, 436], y: [80, 120] } as const

/** Where the low end of each drain comes to, as `Branch: drain-to-drain D`. */
const endings = (sketch: Sketch): string[] => {
  const layout = sketch.layout()
  return evaluate(layout)
    .bay.joins.filter(({ kind }) => kind === 'drain-to-drain' || kind === 'drain-to-pit')
    .map(
      ({ kind, from, to }) =>
        `${nameIn(layout, from)}: ${kind} ${to === undefined ? '-' : nameIn(layout, to)}`,
    )
}

/** A line from the west into a pit, and a branch from the north that ends at a place. */
const branchTo = (end: Spot): Sketch =>
  bay('40 x 60 ft')
    .pit('Pit', PIT)
    .drain('D', [
      [100, 100],
      [400, 100],
    ])
    .drain('Branch', [[250, 300], end])

describe('the low end of a drain', () => {
  test('on another drain is joined to it, so far along it, and asks for no pit', () => {
    const sketch = branchTo([250, 100])
    expect(endings(sketch)).toEqual(['D: drain-to-pit Pit', 'Branch: drain-to-drain D'])
    expect(judged('drain-pit-reach', sketch)).toEqual([])
    const joins: readonly Join[] = evaluate(sketch.layout()).bay.joins
    expect(
      joins.filter(({ kind }) => kind === 'drain-to-drain').map(({ alongMm }) => inchesOf(alongMm)),
    ).toEqual([150])
  })

  test('may stop 1-7/8 in short of the other drain, and no 2 in', () => {
    // The last fitting reaches over 50 mm. Common practice, no source.
    expect(endings(branchTo([250, 101.875]))[1]).toBe('Branch: drain-to-drain D')
    expect(endings(branchTo([250, 102]))[1]).toBe('Branch: drain-to-pit -')
  })

  test('in a pit comes to the pit, even where another drain ends there too', () => {
    expect(endings(branchTo([400, 100]))[1]).toBe('Branch: drain-to-pit Pit')
  })

  test('on its own pipe is joined to nothing', () => {
    const loop = bay('40 x 60 ft').drain('D', [
      [100, 100],
      [200, 100],
      [200, 200],
      [150, 100],
    ])
    expect(endings(loop)).toEqual(['D: drain-to-pit -'])
  })

  test('may join a line that itself joins another', () => {
    const chain = branchTo([250, 100]).drain('Twig', [
      [100, 200],
      [250, 200],
    ])
    expect(endings(chain)).toEqual([
      'D: drain-to-pit Pit',
      'Branch: drain-to-drain D',
      'Twig: drain-to-drain Branch',
    ])
    expect(judged('drain-pit-reach', chain)).toEqual([])
  })

  test('of two lines that end on each other comes to nothing, and a third that ends on one of them is not to blame', () => {
    const round = bay('40 x 60 ft')
      .drain('A', [
        [100, 100],
        [300, 100],
      ])
      .drain('B', [
        [300, 100],
        [300, 200],
        [200, 100],
      ])
      .drain('C', [
        [100, 300],
        [150, 100],
      ])
    expect(endings(round)).toEqual(['A: drain-to-pit -', 'B: drain-to-pit -', 'C: drain-to-drain A'])
    expect(judged('drain-pit-reach', round)).toHaveLength(2)
  })
})
