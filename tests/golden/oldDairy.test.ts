import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { toInches } from '../../src/units/length'
import { aisleBetween, findingsOf, judged, nameIn, told } from '../support/judged'
import { oldDairy } from '../support/scenarios/oldDairy'
import { inchesOf } from '../support/site'

/*
 * "Old Dairy corner", an invented room on a floor that falls 1.5 % north and 0.3 % east. Numbers: worked example of the
 * trade notes, hand arithmetic; where they follow from it, the sum stands beside.
 */
const layout = oldDairy().layout()
const evaluation = evaluate(layout)

const width = (from: string, to: string): number => inchesOf(aisleBetween(layout, from, to).widthMm)

const sentences = (rule: string, name: string): string[] =>
  told(rule, layout).filter((sentence) => sentence.includes(name))

test('256 towers, 2,304 plant sites', () => {
  expect([evaluation.towers, evaluation.sites]).toEqual([256, 2304])
})

describe('what fits', () => {
  test('the aisle between A and B is 62 in, and the way past the posts in it 52 in', () => {
    expect(width('A', 'B')).toBe(62)
    expect([width('A', 'South post'), width('A', 'North post')]).toEqual([52, 52])
    expect(sentences('aisle-width-min', 'post')).toEqual([])
  })

  test('nobody need pass between a post and B, since the other side is wide enough: 6 in keep the leaves off it', () => {
    expect([width('B', 'South post'), width('B', 'North post')]).toEqual([6, 6])
  })
})

describe('what must be seen', () => {
  test('the drain passes less than 12 in over the gas line', () => {
    const [crossing, ...others] = findingsOf('service-crossing-min', layout)
    expect(others).toEqual([])
    expect(crossing?.state).toBe('Tight')
    expect(toInches(crossing!.measured.value)).toBeLessThan(12)
    expect(toInches(crossing!.at.x)).toBeCloseTo(250, -1)
    expect(told('service-crossing-min', layout)[0]).toMatch(/Gas line.*Call before you dig\.$/)
  })

  test('row A stands 18 in from the heater front, which wants 36', () => {
    // 444 - (420 + 6) = 18.
    expect(sentences('keep-clear-free', 'Heater')).toEqual([
      'A stands 18" inside what must stay clear of Heater. Move A 18" south.',
    ])
  })

  test('row B stands over the old floor drain, which must be reached', () => {
    expect(sentences('keep-clear-free', 'Old floor drain')).toHaveLength(1)
  })

  test('rows C and D end 6 in from the inner corner: no way round that end', () => {
    // 300 - 6 - 288.
    expect(sentences('aisle-width-min', 'to the wall')).toEqual([
      'C to the wall is 6" leaf to leaf; wanted there is 36".',
      'D to the wall is 6" leaf to leaf; wanted there is 36".',
    ])
  })

  test('level rails ask for more than 4 in of shim under every row: refused', () => {
    expect(judged('foot-shim-max', layout).map((said) => said.split(',')[0])).toEqual([
      'Clash',
      'Clash',
      'Clash',
      'Clash',
    ])
    // From the first foot of A to its last 355.75 in at 1.5 %, and 40 in across at 0.3 %: 5.34 + 0.12.
    expect(told('foot-shim-max', layout)[0]).toBe(
      'The feet of A want up to 5-7/16" of shim; over 4" grade the floor or step the row.',
    )
  })

  test('82 in of headroom at the west edge of A would do on a level floor, and does not once its feet are shimmed', () => {
    // 78 + (24 - 18) x 12 / 18 = 82. Tower lifted off: 79-1/4, and 2 in of air: 81-1/4.
    const findings = findingsOf('headroom-min', layout)
    expect(findings.map(({ parts }) => parts.map((id) => nameIn(layout, id)))).toEqual([['A']])
    expect(findings[0]?.state).toBe('Clash')
    expect(inchesOf(findings[0]!.measured.value)).toBe(82)
    expect(inchesOf(findings[0]!.at.x)).toBe(24)
    const level = { ...layout, house: { ...layout.house, spotLevels: [] } }
    expect(judged('headroom-min', level)).toEqual([])
  })

  test('the leaves of A start 54 in inside the south door, where a cart is turned in 72', () => {
    // 60 - 6.
    expect(judged('door-head-min', layout)).toEqual(['Tight, 54 of 72'])
  })

  test('34 ft of drain fall 4-1/4 in to the pit, and nothing dug there wants a ladder', () => {
    // 24 to 432 in is 34 ft, at 1/8 in a foot.
    const [run] = [...evaluation.bay.levels.drains.values()]
    expect(inchesOf(run!.lengthMm)).toBe(408)
    expect(inchesOf(run!.high.invertMm - run!.low.invertMm)).toBe(4.25)
    expect(judged('dig-depth-max', layout)).toEqual([])
  })

  test('a whole first stick would put a bell under an outlet: the shorter one keeps every hole in whole pipe', () => {
    const whole = {
      ...layout,
      parts: layout.parts.map((part) => (part.kind === 'drain-line' ? { ...part, firstStickMm: null } : part)),
    }
    expect(told('hole-bell-gap', whole)).toEqual([
      'The hole 19\' 10" from the low end of Drain runs into a bell; it wants 4" of whole pipe beside it. Start Drain with a stick of 94" at its low end.',
    ])
  })

  test('and no more than that', () => {
    expect([...new Set(evaluation.findings.map(({ rule }) => rule))].sort()).toEqual([
      'aisle-width-min',
      'door-head-min',
      'foot-shim-max',
      'headroom-min',
      'keep-clear-free',
      'service-crossing-min',
      // C and D are one rack each: 208 lb on a base of 46-1/2 in tip at 68 lb, 1.36 of a person's push.
      'tips-empty-min',
      'tower-flow-even',
      'zone-flow-balance',
    ])
  })
})
