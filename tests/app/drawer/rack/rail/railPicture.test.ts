import { describe, expect, test } from 'vitest'
import { levels, railPicture } from '../../../../../src/app/drawer/rack/rail/railPicture'
import { railLine, railSpan } from '../../../../support/handStrength'

const curve = {
  u: [0, 600, 1200, 1800, 2400],
  sagMm: [0, 4, 0, 2, 0],
  momentNmm: [0, 9000, -6000, 5000, 0],
}
const line = railLine({ curve })
const size = { width: 828, height: 250 }

const points = (path: string): number[][] =>
  path
    .split(/[ML]/)
    .filter(Boolean)
    .map((pair) => pair.split(' ').map(Number))

describe('a rail as drawn', () => {
  test('is as wide as there is room for, every place at one scale', () => {
    const { xOf, pxPerMm } = railPicture(line, [], size)
    expect([xOf(0), xOf(1200), xOf(2400)]).toEqual([14, 414, 814])
    expect(pxPerMm).toBeCloseTo(1 / 3, 12)
  })

  // 4 mm at 1/3 px a mm are 1.33 px; 26 px are 19.5 times that: 10 times is the round number below.
  test('sags by a round number of times that it says', () => {
    const { times, sag } = railPicture(line, [], size)
    expect(times).toBe(10)
    expect(points(sag[0]!)[1]![1]).toBeCloseTo(levels.rail + (4 / 3) * 10, 1)
  })

  test('moment lies on the stretched side: below where it sags, above over a riser', () => {
    const { moment, mostMoment, leastMoment } = railPicture(line, [], size)
    expect(points(moment)[2]![1]).toBeGreaterThan(levels.moment)
    expect(mostMoment).toMatchObject({ x: 214, nmm: 9000 })
    expect(leastMoment?.y).toBeLessThan(levels.moment)
  })

  test('what would not spring back is left out of the sag, and the rest scaled without it', () => {
    const bent = railSpan({ fromU: 0, toU: 1200, state: 'Too long' })
    const { sag, times } = railPicture(line, [bent], size)
    expect(sag).toHaveLength(1)
    expect(points(sag[0]!)[0]![0]).toBe(414)
    expect(times).toBe(20)
  })
})
