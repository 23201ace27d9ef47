import { expect, test } from 'vitest'
import { fitting, gap, paragraph, stacked } from '../../src/sheets/block'

test('a paragraph is as tall as its lines and stays below its top', () => {
  const block = paragraph('one two three four five six seven eight', 20, 2.5)
  const marks = block.draw(10, 100)
  expect(marks.length).toBeGreaterThan(1)
  for (const mark of marks) {
    if (mark.as !== 'text') throw new Error('a paragraph is words')
    expect(mark.at.x).toBe(10)
    expect(mark.at.y).toBeLessThan(100)
    expect(mark.at.y).toBeGreaterThan(100 - block.heightMm)
  }
})

test('stacked blocks follow each other downwards', () => {
  const both = stacked([gap(5), paragraph('one', 50, 2), gap(3), paragraph('two', 50, 2)])
  const [one, two] = both.draw(0, 50)
  if (one?.as !== 'text' || two?.as !== 'text') throw new Error('two lines of words')
  expect(one.at.y - two.at.y).toBeCloseTo(2 * 1.32 + 3)
  expect(both.heightMm).toBeCloseTo(8 + 2 * 2 * 1.32)
})

test('no more blocks are kept than fit, from the front', () => {
  const blocks = [gap(5), gap(5), gap(5)]
  expect(fitting(blocks, 15)).toHaveLength(3)
  expect(fitting(blocks, 14.9)).toHaveLength(2)
  expect(fitting(blocks, -1)).toHaveLength(0)
})
