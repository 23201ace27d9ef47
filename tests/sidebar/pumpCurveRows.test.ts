import { describe, expect, test } from 'vitest'
import { curvePointAfter, curveSentence, readPumpFlow, readPumpHead } from '../../src/sidebar/pumpCurveRows'
import { gpm } from '../../src/units/flow'
import { feet } from '../../src/units/length'
import { writerFor } from '../../src/units/writer'

const point = (flow: number, head: number) => ({ flowLph: gpm(flow), headMm: feet(head) })

describe('a number off a label', () => {
  test.each([
    // 1 US gallon is 3.785411784 L, 1 ft is 304.8 mm: definitions.
    ['flow', '37', 'feet-inches', 37 * 60 * 3.785411784],
    ['flow', '140', 'metric', 140 * 60],
    ['flow', '2200 gph', 'metric', 2200 * 3.785411784],
    ['head', '16.5', 'feet-inches', 16.5 * 304.8],
    ['head', '5,03', 'metric', 5030],
    ['head', '5 m', 'feet-inches', 5000],
    ['head', '198"', 'metric', 198 * 25.4],
  ] as const)('%s %s read in %s', (what, text, units, value) => {
    const read = what === 'flow' ? readPumpFlow(text, units) : readPumpHead(text, units)
    expect(read.ok && Number(read.value)).toBeCloseTo(value, 6)
  })

  test('what is none comes back as a sentence', () => {
    expect(readPumpFlow('plenty', 'metric').ok).toBe(false)
    expect(readPumpHead('high', 'metric').ok).toBe(false)
    expect(readPumpHead('-3', 'feet-inches')).toEqual({
      ok: false,
      sentence: 'A pump’s head is never below 0.',
    })
    expect(readPumpFlow('-3', 'metric')).toEqual({ ok: false, sentence: 'A pump’s flow is never below 0.' })
  })
})

describe('what is wrong with a curve', () => {
  const words = (points: ReturnType<typeof point>[]) => curveSentence(points, writerFor('feet-inches'))

  test('nothing', () => {
    expect(words([point(0, 24), point(37, 16.5), point(60, 4)])).toBeUndefined()
  })

  test.each([
    [
      [point(5, 24), point(37, 16.5), point(60, 4)],
      'Point 1 gives 5.0 gpm; a curve begins with the head at no flow.',
    ],
    [
      [point(0, 24), point(37, 16.5), point(30, 4)],
      'Point 3 after point 2: 30.0 gpm after 37.0 gpm. Flow must rise from point to point.',
    ],
    [
      [point(0, 24), point(37, 25), point(60, 4)],
      'Point 2 after point 1: 25.0 ft after 24.0 ft. Head must fall as flow rises; on a curve that rises a pump hunts between two flows.',
    ],
  ])('case %#', (points, sentence) => {
    expect(words(points)).toBe(sentence)
  })
})

test('a further point is always one that a curve can have', () => {
  const points = [point(0, 24), point(37, 16.5), point(60, 4)]
  for (const [index] of points.entries()) {
    const longer = points.toSpliced(index + 1, 0, curvePointAfter(points, index))
    expect(curveSentence(longer, writerFor('metric'))).toBeUndefined()
  }
})
