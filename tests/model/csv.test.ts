import { parse } from 'csv-parse/sync'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { csvText, guardCell, unguardCell } from '../../src/model/csv'

const MARK = '\uFEFF'

describe('a file', () => {
  test('has CR LF after every line, and quotes only where a cell needs them: RFC 4180, section 2', () => {
    expect(
      csvText([
        ['key', 'name'],
        ['screw', '2-1/2 in, coated'],
      ]),
    ).toBe(`${MARK}key,name\r\nscrew,"2-1/2 in, coated"\r\n`)
    expect(csvText([['3/4" tee', 'two\nlines']])).toBe(`${MARK}"3/4"" tee","two\nlines"\r\n`)
    expect(csvText([['a', '', ' b ']], ';')).toBe(`${MARK}a;;" b "\r\n`)
  })
})

test('a number is written as a number, also below nothing', () => {
  expect(csvText([[-5, 0.25, '-5']])).toBe(`${MARK}-5,0.25,'-5\r\n`)
})

describe('a cell that a sheet would run', () => {
  test.each([
    ['=1+1', "'=1+1"],
    ['+1 spare', "'+1 spare"],
    ['-5', "'-5"],
    ['@sum(a1)', "'@sum(a1)"],
    ['\t=1', "'\t'=1"],
    ['tee;=1+1', "tee;'=1+1"],
    ['tee\n=1+1', "tee\n'=1+1"],
    ['＝1', "'＝1"],
    ["'=1", "''=1"],
  ])('%j is written %j', (cell, guarded) => {
    expect(guardCell(cell)).toBe(guarded)
    expect(unguardCell(guarded)).toBe(cell)
  })

  test.each(['screw', "'s-hook'", '2-1/2 in', 'a = b', '5 %', "'", 'two\n\nlines'])('%j is none', (cell) => {
    expect(guardCell(cell)).toBe(cell)
    expect(unguardCell(cell)).toBe(cell)
  })
})

/** Cells of the signs that could go wrong, and of any others. */
const cells = fc.oneof(
  fc.string({ unit: fc.constantFrom(...Array.from('=+-@\t\r\n,;"\' a1＝é')) }),
  fc.string({ unit: 'grapheme' }),
)
const sheets = fc
  .integer({ min: 1, max: 6 })
  .chain((width) =>
    fc.array(fc.array(cells, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 8 }),
  )
  // A line of nothing but empty cells is no line to some readers.
  .filter((lines) => lines.every((line) => line.some((cell) => cell !== '')))

describe.each([',', ';'] as const)('parted by %s', (separator) => {
  const read = (text: string): string[][] =>
    parse(text, { bom: true, delimiter: separator, record_delimiter: '\r\n' })

  test('an independent reader gets back every cell, once its guard is off', () => {
    fc.assert(
      fc.property(sheets, (lines) => {
        const oneBreak = lines.map((line) => line.map((cell) => cell.replaceAll(/\r\n?/g, '\n')))
        expect(read(csvText(lines, separator)).map((line) => line.map(unguardCell))).toEqual(oneBreak)
      }),
      { seed: 20_260_405, numRuns: 500 },
    )
  })

  test('no cell begins with what a sheet runs, whatever sign it parts them at', () => {
    fc.assert(
      fc.property(sheets, (lines) => {
        for (const cell of read(csvText(lines, separator)).flat())
          for (const piece of cell.split(/[,;\t\n]/)) expect(piece).not.toMatch(/^[=+\-@＝＋－＠]/)
      }),
      { seed: 20_260_406, numRuns: 500 },
    )
  })
})
