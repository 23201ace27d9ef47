import { describe, expect, test } from 'vitest'
import { paragraph } from '../../src/sheets/block'
import { pour, type Pourable, type Room } from '../../src/sheets/pour'

const LETTER_MM = 2
/** One line of words at any width. */
const line = (text: string): Pourable => ({ block: (widthMm) => paragraph(text, widthMm, LETTER_MM) })
const LINE_MM = paragraph('one', 50, LETTER_MM).heightMm
const room = (left: number, lines: number): Room => ({
  left,
  top: 100,
  widthMm: 50,
  heightMm: lines * LINE_MM + 0.01,
})
const told = ({ marks }: ReturnType<typeof pour>) =>
  marks.map((mark) => (mark.as === 'text' ? `${mark.text} at ${mark.at.x}` : ''))

describe('poured blocks', () => {
  test('fill a room before they go on into the next', () => {
    const poured = pour(['a', 'b', 'c'].map(line), [room(0, 2), room(60, 2)])
    expect(told(poured)).toEqual(['a at 0', 'b at 0', 'c at 60'])
    expect(poured.count).toBe(3)
  })

  test('keep their order: a short one never slips past a long one', () => {
    const long: Pourable = { block: (widthMm) => paragraph('x '.repeat(400), widthMm, LETTER_MM) }
    expect(pour([long, line('a')], [room(0, 2)])).toEqual({ marks: [], count: 0 })
  })

  test('say in a further room what goes on there, and only there', () => {
    const again = (widthMm: number) => paragraph('still', widthMm, LETTER_MM)
    const blocks = [line('a'), { ...line('b'), again }, { ...line('c'), again }]
    expect(told(pour(blocks, [room(0, 1), room(60, 3)]))).toEqual([
      'a at 0',
      'still at 60',
      'b at 60',
      'c at 60',
    ])
    expect(told(pour(blocks, [room(0, 3)]))).toEqual(['a at 0', 'b at 0', 'c at 0'])
  })

  test('skip a room that is too small for the next of them', () => {
    expect(told(pour([line('a')], [room(0, 0), room(60, 1)]))).toEqual(['a at 60'])
  })
})
