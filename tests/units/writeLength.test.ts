import { describe, expect, test } from 'vitest'
import { inches } from '../../src/units/length'
import { asTyped, atSaw, inTrench } from '../../src/units/precision'
import { writeBore, writeLength, writeOnTape } from '../../src/units/writeLength'

describe('feet and inches', () => {
  test.each([
    [66.5, `5' 6-1/2"`],
    [6.5, `6-1/2"`],
    [0.5, `1/2"`],
    [0, `0"`],
    [60, `5' 0"`],
    [60.5, `5' 0-1/2"`],
    [12, `1' 0"`],
    [11.9375, `11-15/16"`],
    [357.25, `29' 9-1/4"`],
    [-66.5, `-5' 6-1/2"`],
    [-0.25, `-1/4"`],
  ])('%d in is written %s', (inch, written) => {
    expect(writeLength(inches(inch), 'feet-inches')).toBe(written)
  })

  test('a length between two parts goes to the nearer, and a half part up', () => {
    expect(writeLength(inches(1 + 5 / 64), 'feet-inches')).toBe(`1-1/16"`)
    expect(writeLength(inches(1 + 7 / 64), 'feet-inches')).toBe(`1-1/8"`)
    expect(writeLength(inches(1 + 1 / 32), 'feet-inches')).toBe(`1-1/16"`)
    expect(writeLength(inches(-(1 + 1 / 32)), 'feet-inches')).toBe(`-1-1/16"`)
  })

  test('rounding carries into the inch and the foot', () => {
    expect(writeLength(inches(11.99), 'feet-inches')).toBe(`1' 0"`)
    expect(writeLength(inches(71.99), 'feet-inches')).toBe(`6' 0"`)
  })

  test('what rounds to nothing has no sign', () => {
    expect(writeLength(inches(-1 / 64), 'feet-inches')).toBe(`0"`)
    expect(writeLength(-0, 'feet-inches')).toBe(`0"`)
  })

  test('the precision is the finest part, not the only one', () => {
    expect(writeLength(inches(1.078125), 'feet-inches', asTyped)).toBe(`1-5/64"`)
    expect(writeLength(inches(1.5), 'feet-inches', asTyped)).toBe(`1-1/2"`)
    expect(writeLength(inches(1.3), 'feet-inches', { ...atSaw, inchParts: 2 })).toBe(`1-1/2"`)
  })
})

describe('on the tape', () => {
  // Worked example of the trade notes, hand arithmetic: base runners of a row of three racks.
  test('inches alone, however long', () => {
    expect(writeOnTape(inches(357.25), 'feet-inches')).toBe(`357-1/4"`)
    expect(writeOnTape(inches(-66.5), 'feet-inches')).toBe(`-66-1/2"`)
    expect(writeOnTape(inches(-1 / 64), 'feet-inches')).toBe(`0"`)
  })

  test('mm where the reader is metric', () => {
    expect(writeOnTape(1690, 'metric')).toBe('1690 mm')
  })
})

describe('metric', () => {
  test.each([
    [1690, '1690 mm', '1690 mm'],
    [1690.5, '1691 mm', '1690.5 mm'],
    [1690.04, '1690 mm', '1690 mm'],
    [0.05, '0 mm', '0.1 mm'],
    [0, '0 mm', '0 mm'],
    [-0.04, '0 mm', '0 mm'],
    [-0.4, '0 mm', '-0.4 mm'],
    [-12.3, '-12 mm', '-12.3 mm'],
    [-12.5, '-13 mm', '-12.5 mm'],
    [2_000_000, '2000000 mm', '2000000 mm'],
  ])('%d mm is read as %s and typed as %s', (mm, read, typed) => {
    expect(writeLength(mm, 'metric')).toBe(read)
    expect(writeLength(mm, 'metric', inTrench)).toBe(read)
    expect(writeOnTape(mm, 'metric')).toBe(read)
    expect(writeLength(mm, 'metric', asTyped)).toBe(typed)
  })
})

test('a length that is no number is a dash, not a sentence about NaN', () => {
  expect(writeLength(Infinity, 'feet-inches')).toBe('—')
  expect(writeLength(NaN, 'metric')).toBe('—')
  expect(writeOnTape(-Infinity, 'feet-inches')).toBe('—')
})

// 0.125 in are 3.175 mm, 0.137 in 3.4798 mm: by definition of the inch.
test('a bore is written so finely that flow can be told by it', () => {
  expect(writeBore(3.175, 'feet-inches')).toBe('0.125"')
  expect(writeBore(3.4798, 'feet-inches')).toBe('0.137"')
  expect(writeBore(3.4798, 'metric')).toBe('3.48 mm')
  expect(writeBore(NaN, 'metric')).toBe('—')
})
