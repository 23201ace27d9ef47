import { describe, expect, test } from 'vitest'
import {
  bentSpans,
  sagging,
  sagLine,
  sagTimes,
  stripsOf,
} from '../../../../../src/app/drawer/rack/bench/sagLine'
import type { RailLine, RailSpan } from '../../../../../src/model/strength'

const span = (fromU: number, toU: number, stressMpa: number, state: RailSpan['state']): RailSpan => ({
  fromU,
  toU,
  isOverhang: false,
  stock: 'conduit-1',
  momentNmm: 1000 * stressMpa,
  stressMpa,
  sagMm: 10,
  state,
  used: 1,
  under: 'full',
})

/** Two spans of 1 m: the first sags 4 mm in its middle, the second 10 mm at a stress of 250 MPa. Set by hand. */
const rail: RailLine = {
  v: 500,
  z: 1800,
  sticks: [{ fromU: 0, toU: 2000, stock: 'conduit-1' }],
  hingesU: [],
  hangers: [],
  spans: [span(0, 1000, 100, 'Within'), span(1000, 2000, 250, 'Too long')],
  reactions: [],
  curve: {
    u: [0, 500, 1000, 1500, 2000],
    sagMm: [0, 4, 0, 10, 0],
    momentNmm: [0, 100_000, -90_000, 250_000, 0],
  },
}

const laid = { scale: 0.02, x: 10, y: 5 }
const row = { fromU: 0, toU: 2000, rack: undefined }

describe('the sag of a rail as drawn', () => {
  // 5 mm of glass at most: 4 mm * 0.02 = 0.08 mm, 50 times is 4 mm, 100 times would be 8; 10 mm: 20 times is 4.
  test.each([
    [4, 50],
    [10, 20],
    [0, 100],
    [400, 1],
  ])('%s mm is drawn %s times', (sagMm, times) => {
    expect(sagTimes(sagMm, 0.02)).toBe(times)
  })

  test('lies under its rail by so many times its sag', () => {
    const { runs, times, deepest } = sagLine(rail, row, laid, 300)
    expect(times).toBe(20)
    // 10 mm * 20 = 200 mm under the rail at 1800: 1600 * 0.02 + 5 = 37 mm of glass.
    expect(deepest).toEqual({ sagMm: 10, at: { x: 40, y: 37 } })
    expect(runs).toHaveLength(1)
  })

  test('past the assumed yield no elastic sag is drawn as if it happened', () => {
    expect(bentSpans(rail, 206.8)).toEqual([rail.spans[1]])
    const { runs, times, deepest, bent } = sagLine(rail, row, laid, 206.8)
    expect(bent).toHaveLength(1)
    expect(times).toBe(50)
    expect(deepest?.sagMm).toBe(4)
    expect(runs).toHaveLength(1)
    expect(Math.max(...runs.flat().map(({ x }) => x))).toBe(laid.x + 1000 * laid.scale)
  })

  test('a span whose worst stress comes of the proof load alone is drawn by what it has with everything hung', () => {
    const [first, second] = rail.spans
    // 375 MPa at the proof load of 1.5 x, 250 with everything hung: the moments stand in the same share.
    const proofed = { ...second!, momentNmm: 375_000, stressMpa: 375 }
    expect(bentSpans({ ...rail, spans: [first!, proofed] }, 300)).toEqual([])
  })

  test('of rails that lie behind each other the one that sags most is drawn', () => {
    const less = { ...rail, v: -500, curve: { ...rail.curve, sagMm: [0, 3, 0, 3, 0] } }
    expect(sagging([less, rail])).toBe(rail)
    expect(sagging([])).toBeUndefined()
  })

  test('only spans that are not within are marked, as far as they are drawn', () => {
    expect(stripsOf(rail, { fromU: 0, toU: 1500, rack: 1 }, laid)).toEqual([
      { state: 'Too long', from: { x: 30, y: 41 }, to: { x: 40, y: 41 } },
    ])
  })
})
