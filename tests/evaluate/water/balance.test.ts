import { describe, expect, test } from 'vitest'
import { balance, trimSettings } from '../../../src/evaluate/water/balance'
import { HAND_OFF_BY, handSet } from '../../../src/evaluate/water/handSet'
import type { ValveCard } from '../../../src/evaluate/water/valveCard'
import { waterOf } from '../../../src/evaluate/water/waterOf'
import { gph, toGpm } from '../../../src/units/flow'
import { waterBay } from '../../support/waterBay'

const long = (pumps = 1, suction = -24) =>
  waterBay()
    .pit('P', { pumps, suction })
    .main(
      'M',
      [
        [0, 0],
        [900, 0],
      ],
      'pe-1-1/2',
    )

const uneven = () =>
  long()
    .row('A', { along: 60, stations: 24 })
    .row('B', { along: 400, stations: 16 })
    .row('C', { along: 900, kind: 'centre-split' })

const turnsOf = (card: ValveCard) =>
  new Map(trimSettings(card).map(({ part, trimTurns }) => [part, trimTurns]))

describe('a balanced bay', () => {
  const inputs = uneven().inputs()
  const card = balance(inputs)!

  test('gives each zone the mean that the card says, when solved as a whole', () => {
    const water = waterOf(inputs, { trimTurns: turnsOf(card) })
    for (const { figures } of water.rows.values())
      expect(figures.meanLph / (card.targetLph * card.factor)).toBeCloseTo(1, 4)
    for (const zone of card.zones) {
      const solved = water.zones.get(zone.part)!
      expect(solved.flowLph / zone.flowLph).toBeCloseTo(1, 4)
      expect(solved.sightMm).toBeCloseTo(zone.sightMm, 0)
      expect(solved.inletHeadMm).toBeCloseTo(zone.inletHeadMm, 0)
    }
  })

  test('keeps exactly the neediest zone wide open', () => {
    const wide = card.zones.filter(({ trimTurns, trimTurnsAll }) => trimTurns > trimTurnsAll - 0.01)
    expect(wide.map(({ isNeediest }) => isNeediest)).toEqual([true])
    expect(card.zones.filter(({ isNeediest }) => isNeediest)).toHaveLength(1)
  })

  test('held to the target every zone gets it, and the sight tube shows what a tube needs', () => {
    const held = balance(inputs, 'target')!
    expect(held.setFactor).toBe(1)
    const water = waterOf(inputs, { trimTurns: turnsOf(held) })
    for (const { figures } of water.rows.values()) expect(figures.meanLph / gph(4)).toBeCloseTo(1, 2)
    for (const { trimTurns, trimTurnsAll } of held.zones) expect(trimTurns).toBeLessThan(trimTurnsAll)
  })
})

describe('the pump', () => {
  test('is too large for one short row, too small for many, and fits where its flow is wanted', () => {
    expect(balance(long().row('A', { stations: 6 }).inputs())!.verdict).toBe('too-large')
    let bay = long()
    for (let i = 0; i < 14; i += 1) bay = bay.row(`R${i}`, { along: 60 * i + 60 })
    const weak = balance(bay.inputs())!
    expect(weak.verdict).toBe('too-small')
    expect(weak.factor).toBeLessThan(0.95)
    const right = long()
      .row('A')
      .settings({ targetLph: gph(4) })
      .inputs()
    const { factor } = balance(right)!
    const wanted = long()
      .row('A')
      .settings({ targetLph: gph(4 * factor) })
      .inputs()
    expect(balance(wanted)).toMatchObject({ verdict: 'fits', factor: expect.closeTo(1, 3) })
  })

  test('that can not lift at all is too small, and says it without a fault', () => {
    const card = balance(long(1, -720).row('A').inputs())!
    expect(card.verdict).toBe('too-small')
    expect(card.factor).toBeLessThan(0.05)
  })

  test('of head boxes: a zone is balanced against their water', () => {
    const bay = waterBay()
      .box('B', 100, { main: 'M', along: 0 })
      .main('M', [
        [0, 0],
        [600, 0],
      ])
      .row('A', { along: 60 })
      .row('C', { along: 600 })
    const card = balance(bay.inputs())!
    expect(card.zones.map(({ isNeediest }) => isNeediest)).toEqual([false, true])
  })
})

describe('the card', () => {
  test('leaves out a shut zone, and is not made for a bay without water', () => {
    const bay = long()
      .row('A')
      .row('B', { along: 500, valves: { isOpen: false } })
    expect(balance(bay.inputs())!.zones.map(({ part }) => part)).toEqual(['A'])
    expect(balance(waterBay().row('A').inputs())).toBeUndefined()
  })

  test('sums up what a bay of four zones takes', () => {
    // Hand arithmetic, trade notes 9.1: 96 towers at 4 gph are 6.4 gpm, 64 are 4.27.
    const bay = long(2).row('N1', { along: 100, stations: 48 }).row('S1', { along: 100, stations: 32 })
    const card = balance(bay.inputs(), 'target')!
    expect(card.zones.map(({ flowLph }) => toGpm(flowLph))).toEqual([
      expect.closeTo(6.4, 2),
      expect.closeTo(4.27, 2),
    ])
  })

  test('set by hand keeps zones within a few percent, the same every time', () => {
    const inputs = uneven().inputs()
    const card = balance(inputs, 'target')!
    const set = handSet(inputs, card)!
    expect(set.offBy).toBe(HAND_OFF_BY)
    expect(set.leastShare).toBeGreaterThan(0.9)
    expect(set.leastShare).toBeLessThan(0.995)
    expect(set.mostShare).toBeLessThan(1.1)
    expect(set.mostShare).toBeGreaterThan(1.005)
    expect(handSet(inputs, card)!.leastShare).toBeCloseTo(set.leastShare, 5)
  })
})
