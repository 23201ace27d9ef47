import { describe, expect, test } from 'vitest'
import type { Box } from '../../src/geometry/box'
import { clearWords } from '../../src/sheets/clearWords'

const within = { x0: 0, y0: 0, x1: 100, y1: 100 }
const at = (x: number): Box => ({ x0: x, y0: 40, x1: x + 10, y1: 50 })
const alone = (box: Box) => [box]

describe('words that keep clear', () => {
  test('take the first place that no word covers, and keep it', () => {
    const words = clearWords([at(0)], within)
    expect(words.first([at(5), at(20)], alone)).toEqual(at(20))
    expect(words.first([at(20), at(95)], alone)).toBeUndefined()
  })

  test('pass over a shunned line while there is another place, and stand on it when there is none', () => {
    const words = clearWords([], within)
    words.shun([{ x0: 0, y0: 44, x1: 30, y1: 46 }])
    expect(words.first([at(5), at(60)], alone)).toEqual(at(60))
    expect(words.firstOffLines([at(5)], alone)).toBeUndefined()
    expect(words.first([at(5)], alone)).toEqual(at(5))
  })
})
