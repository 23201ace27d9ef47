import { describe, expect, test } from 'vitest'
import { beforeChecks } from '../../../src/evaluate/beforeChecks'
import { pitsBeside } from '../../../src/evaluate/loads/pitBeside'
import { inchesOf } from '../../support/site'
import { bay, type Sketch } from '../../support/bay'

/*
 * Load of a plate spreads at 1 to 1 into the ground (common practice, no source): a pit 37 in deep leaves 37 in. By hand: rails 40 in
 * apart about x = 165, so that risers stand at 185 and plates of 16 in reach to 193; the pit starts 50 in up the row, 150 less 100.
 */
const beside = (gap: number, row = {}, pit = {}): Sketch =>
  bay('40 x 60 ft')
    .row('A', [165, 100], row)
    .pit('Pit', { x: [193 + gap, 229 + gap], y: [150, 264] }, pit)

const told = (sketch: Sketch) => {
  const layout = sketch.layout()
  const { bay: known } = beforeChecks(layout)
  const row = layout.parts.find(({ name }) => name === 'A')!.id
  return pitsBeside(known, row).map(({ pit, gapMm, deepMm, footU, footV }) => ({
    pit: layout.parts.find(({ id }) => id === pit)!.name,
    gap: inchesOf(gapMm),
    deep: inchesOf(deepMm),
    u: inchesOf(footU),
    v: inchesOf(footV),
  }))
}

describe('a pit beside the feet of a row', () => {
  test('nearer than it is deep is told with its foot, how far and how deep', () => {
    const [seen, ...others] = told(beside(9))
    expect(seen).toMatchObject({ pit: 'Pit', gap: 9, deep: 37, v: 20 })
    // Pairs every 30 in: the first alongside the pit, from 50 to 164 in up the row, stands at 60.
    expect(seen!.u).toBe(60)
    expect(others).toEqual([])
  })

  test('the same row turned about has the pit on its left', () => {
    const sketch = bay('40 x 60 ft')
      .row('A', [165, 460], { heading: 270 })
      .pit('Pit', { x: [202, 238], y: [150, 264] })
    expect(told(sketch)).toMatchObject([{ gap: 9, v: -20 }])
  })

  test.each([
    ['as far off as it is deep', beside(37)],
    ['shallower than it is far', beside(30, {}, { bottom: -30 })],
    ['that stands on the floor', beside(9, {}, { bottom: 1 })],
    ['of a row that hangs from the house', beside(9, { carriedBy: 'house' })],
  ])('%s is not told', (_, sketch) => {
    expect(told(sketch)).toEqual([])
  })
})
