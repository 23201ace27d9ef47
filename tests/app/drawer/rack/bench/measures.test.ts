import { describe, expect, test } from 'vitest'
import { alongDimensions } from '../../../../../src/app/drawer/rack/bench/measures'
import { drawnIn, racksOf } from '../../../../../src/app/drawer/rack/bench/stretch'
import { evaluate } from '../../../../../src/evaluate/evaluate'
import { frameOf } from '../../../../../src/evaluate/loads/frame'
import { writerFor } from '../../../../../src/units/writer'
import { bay } from '../../../../support/bay'

/** Words over and under a rack of eight bars 15 in apart, drawn so many mm of glass to the mm. */
const wordsAt = (scale: number): readonly string[] => {
  const { built } = evaluate(bay('40 x 40 ft').row('N1', [60, 60], { racks: 3 }).layout()).bay
  const frame = built.map((each) => frameOf(each)).find((each) => each !== undefined)!
  const members = drawnIn(frame, racksOf(frame)[1]!)
  const laid = { x: 0, y: 0, scale }
  const { marks } = alongDimensions(members, 1800, laid, writerFor('feet-inches'))
  return marks.flatMap((mark) => ('text' in mark ? [mark.text] : []))
}

// 120 in over 8 bars, the first half a space in: 15 in from bar to bar (trade notes 2.2, by hand).
describe('from bar to bar', () => {
  test('drawn big, the first two tell it', () => {
    expect(wordsAt(0.1)).toContain('bars 15"')
  })

  test('drawn small, as many as give the number room do, and nothing stands on end in the rail', () => {
    const words = wordsAt(0.01)
    expect(words.filter((text) => text.endsWith(' at 15"'))).toHaveLength(1)
    expect(words).not.toContain('15"')
  })
})
