import { describe, expect, test } from 'vitest'
import { rackParts } from '../../../src/app/drawer/pegs/shownDrain'
import { evaluate } from '../../../src/evaluate/evaluate'
import { levelStack } from '../../../src/evaluate/levelStack'
import { setFields } from '../../../src/layout/setFields'
import { gapRows } from '../../../src/sheets/levels/stackRows'
import { inches, toInches } from '../../../src/units/length'
import { scenarios } from '../../support/scenarios'

const layout = scenarios['kestrel-bend-house-2']!()
const evaluation = evaluate(layout)
const idOf = (name: string) => layout.parts.find((part) => part.name === name)!.id

describe('the gaps of a row', () => {
  const stackOf = (of: typeof evaluation) => {
    const [row] = rackParts(of)
    return levelStack(of, row, { at: of.bay.builtOf.get(row!)!.mouths[0]!.at, line: 1 })
  }

  test('are all well on the sample, with the least that is wanted', () => {
    const gaps = gapRows(evaluation, stackOf(evaluation))
    expect(gaps.every(({ rank }) => rank === 0)).toBe(true)
    const inlet = gaps.find(({ from }) => from.kind === 'inlet')!
    // Worked example of the trade notes: inlet -11.08 over an overflow at -13.0 is 1.92 in; 1 in is wanted.
    expect(toInches(inlet.gapMm)).toBeCloseTo(1.92, 1)
    expect(toInches(inlet.leastMm!)).toBeCloseTo(1, 9)
  })

  test('tell the one that a rule finds short, by its word', () => {
    const edited = setFields(layout, [{ part: idOf('Pit'), values: { overflowMm: inches(-11) } }])
    const high = evaluate(edited.ok ? edited.layout : layout)
    const inlet = gapRows(high, stackOf(high)).find(({ from }) => from.kind === 'inlet')!
    expect(inlet.rank).toBe(2)
    expect(inlet.state).toBe('Backs up')
    expect(inlet.gapMm).toBeLessThan(0)
  })
})
