import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { cartsOf } from '../../src/checks/carts'
import type { RackFacts } from '../../src/model/rackFacts'
import { drainPegs, drainReadouts, pitReadouts, rackReadouts } from '../../src/sidebar/readouts'
import { inTrench } from '../../src/units/precision'
import { writerFor } from '../../src/units/writer'
import { scenarios } from '../support/scenarios'
import { nameOf } from '../../src/store/partNames'

const { bay, layout } = evaluate(scenarios['kestrel-bend-house-2']!())
const partOf = (name: string) => layout.parts.find((part) => part.name === name)!
const saw = writerFor('feet-inches')
const trench = writerFor('feet-inches', inTrench)

const valueOf = (readouts: readonly { name: string; value: string }[], name: string) =>
  readouts.find((readout) => readout.name === name)?.value

const rackOf = (name: string): RackFacts => bay.builtOf.get(partOf(name).id)!.rack!

describe('a row of three racks', () => {
  const id = partOf('N1').id
  const readouts = rackReadouts(rackOf('N1'), cartsOf(bay).get(id), false, 'feet-inches')

  // 96 towers, holes 69.3748 and 69.4428 in, riser half a 12 ft board: worked example of the trade notes, hand arithmetic.
  test('comes to its towers, its holes from the foot and its riser', () => {
    expect(valueOf(readouts, 'Towers')).toBe('96, with 864 plant sites')
    expect(valueOf(readouts, 'Plain hole, foot to centre')).toBe('69-3/8"')
    expect(valueOf(readouts, 'Big hole, foot to centre')).toBe('69-7/16"')
    expect(valueOf(readouts, 'Riser')).toBe('71-15/16"')
  })

  // Centres less half a bit: 69.3748 - 15/32 = 68.906 and 69.4428 - 19/32 = 68.849, which a sixteenth would not tell apart.
  test('tells the bottoms of its two holes apart', () => {
    expect(valueOf(readouts, 'Plain hole, foot to bottom')).toBe('68-29/32"')
    expect(valueOf(readouts, 'Big hole, foot to bottom')).toBe('68-27/32"')
  })

  test('names its long sides by the compass', () => {
    const { leftMm, rightMm } = cartsOf(bay).get(id)!
    expect(valueOf(readouts, 'Widest cart, west side')).toBe(saw.onTape(leftMm))
    expect(valueOf(readouts, 'Widest cart, east side')).toBe(saw.onTape(rightMm))
    expect(readouts.filter(({ name }) => name.startsWith('Widest cart'))).toHaveLength(2)
  })

  test('says that no cart comes where none does, at its ends too where a wheelchair must turn', () => {
    const none = { leftMm: 0, rightMm: 0, startMm: 0, endMm: 0, outMm: 0 }
    const turning = rackReadouts(rackOf('N1'), none, true, 'feet-inches')
    for (const side of ['west', 'east', 'south', 'north'])
      expect(valueOf(turning, `Widest cart, ${side} side`)).toBe('no cart')
  })
})

test('a single rack has no big hole to drill', () => {
  const rack = rackOf('N1')
  const alone = { ...rack, racks: 1, drilledFor: rack.drilledFor.slice(0, 1) }
  const readouts = rackReadouts(alone, undefined, false, 'feet-inches')
  expect(readouts.some(({ name }) => name.startsWith('Big hole'))).toBe(false)
})

describe('a drain', () => {
  const run = bay.levels.drains.get(partOf('Drain N').id)!

  // North drain: invert -8.23 in at the start, -11.08 in at the pit. Worked example of the trade notes, hand arithmetic.
  test('tells its inverts to an eighth of an inch', () => {
    const readouts = drainReadouts(run, trench)
    expect(valueOf(readouts, 'Invert, high end')).toBe('-8-1/4"')
    expect(valueOf(readouts, 'Invert, low end')).toBe('-11-1/8"')
  })

  test('has its pegs from the low end up, with the hole, and the cut from the peg’s own top', () => {
    const pegs = drainPegs(run, trench)
    // The pit's end, twelve outlets, the high end; at 10 and 20 ft from the pit an outlet's peg stands near.
    expect(pegs.map(({ fromPit }) => fromPit)).toHaveLength(14)
    // Dig 11-1/4 in there, and 6 in of peg: 11.22 + 6 to the eighth. Worked example of the trade notes, hand arithmetic.
    expect(pegs[1]).toEqual({
      number: 2,
      fromPit: '10"',
      hole: '2-1/2"',
      invert: '-11"',
      ground: '-1-7/8"',
      cut: '17-1/4"',
    })
  })

  test('has levels as shot from the benchmark, where the crew wants them so', () => {
    const rod = writerFor('feet-inches', inTrench, { zeroMm: 1203 * 25.4, in: 'feet' })
    // 1203 - 8.23 = 1194.77 in = 99.564 ft.
    expect(valueOf(drainReadouts(run, rod), 'Invert, high end')).toBe('99.56 ft')
    expect(valueOf(drainReadouts(run, rod), 'Length')).toBe(`22' 10"`)
  })
})

test('a pit tells at what level each of its drains comes in', () => {
  const name = (id: string) => nameOf(layout.parts.find((part) => part.id === id)!)
  const readouts = pitReadouts(partOf('Pit').id, bay.joins, bay.levels, name, trench)
  expect(readouts.map((readout) => readout.name).sort()).toEqual([
    'Drain N comes in at',
    'Drain S comes in at',
  ])
  expect(valueOf(readouts, 'Drain N comes in at')).toBe('-11-1/8"')
})
