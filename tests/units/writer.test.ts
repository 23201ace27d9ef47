import { expect, test } from 'vitest'
import { asTyped, inTrench } from '../../src/units/precision'
import { writerFor } from '../../src/units/writer'

test('a feet-and-inches writer, to 1/16 in unless the work asks otherwise', () => {
  const saw = writerFor('feet-inches')
  expect([saw.length(1689.1), saw.onTape(1689.1), saw.fall(1000 / 96)]).toEqual([
    `5' 6-1/2"`,
    `66-1/2"`,
    '1/8 in/ft',
  ])
  expect(saw.length(1690)).toBe(`5' 6-9/16"`)
  expect(writerFor('feet-inches', inTrench).length(1690)).toBe(`5' 6-1/2"`)
})

test('a metric writer, to the whole millimetre unless it writes what is typed', () => {
  const saw = writerFor('metric')
  expect([saw.length(1690), saw.onTape(1690.5), saw.fall(10)]).toEqual(['1690 mm', '1691 mm', '10 mm/m'])
  expect(writerFor('metric', inTrench).length(1690.4)).toBe('1690 mm')
  expect(writerFor('metric', asTyped).length(1690.4)).toBe('1690.4 mm')
})
