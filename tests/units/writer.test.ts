import { expect, test } from 'vitest'
import { writerFor } from '../../src/units/writer'

test('a feet-and-inches writer, to 1/16 in unless the work asks otherwise', () => {
  const saw = writerFor('feet-inches')
  expect([saw.length(1689.1), saw.onTape(1689.1), saw.fall(1000 / 96)]).toEqual([
    `5' 6-1/2"`,
    `66-1/2"`,
    '1/8 in/ft',
  ])
  expect(saw.length(1690)).toBe(`5' 6-9/16"`)
  expect(writerFor('feet-inches', 8).length(1690)).toBe(`5' 6-1/2"`)
})

test('a metric writer', () => {
  const write = writerFor('metric')
  expect([write.length(1690), write.onTape(1690.5), write.fall(10)]).toEqual([
    '1690 mm',
    '1690.5 mm',
    '10 mm/m',
  ])
})
