import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { balance } from '../../../src/evaluate/water/balance'
import { refill } from '../../../src/evaluate/water/refill'
import { waterOf } from '../../../src/evaluate/water/waterOf'
import { gph, toGpm } from '../../../src/units/flow'
import { scenarios } from '../../support/scenarios'

describe.each(Object.keys(scenarios))('the sample %s', (id) => {
  const { bay } = evaluate(scenarios[id]!())
  const { water } = bay

  test('is solved: every row gets water, or it is said why not', () => {
    expect(water.fault).toBeUndefined()
    const fed = bay.built.filter(({ feed }) => feed).map(({ part }) => part)
    expect([...water.rows.keys(), ...water.dry.keys()].toSorted()).toEqual(fed.toSorted())
  })

  test('what its pumps and boxes give is what its towers get', () => {
    let given = 0
    for (const { flowLph, bypassLph } of water.pumps.values()) given += flowLph - bypassLph
    for (const { inLph, outLph } of water.boxes.values()) given += outLph - inLph
    expect(given / water.totalLph).toBeCloseTo(1, 4)
  })

  test('when its pump starts again the water comes to every tower that gets any', () => {
    for (const { firstSeconds, lastSeconds } of refill(bay)?.rows.values() ?? []) {
      expect(firstSeconds).toBeGreaterThan(0)
      expect(lastSeconds).toBeLessThan(600)
    }
  })

  test('every number in it is one', () => {
    const unsound: string[] = []
    const look = (value: unknown, path: string): void => {
      if (typeof value === 'number' && !Number.isFinite(value)) unsound.push(path)
      else if (ArrayBuffer.isView(value)) {
        if (value instanceof Float64Array && !value.every(Number.isFinite)) unsound.push(path)
      } else if (value instanceof Map) for (const [key, each] of value) look(each, `${path}.${String(key)}`)
      else if (typeof value === 'object' && value)
        for (const [key, each] of Object.entries(value)) look(each, `${path}.${key}`)
    }
    look(water, 'water')
    expect(unsound).toEqual([])
  })
})

/** Hand arithmetic, trade notes 9.1: 480 towers at 4 gph are 32 gpm; 96 in each north row take 6.4, 64 in a south row 4.27. */
test('the first sample, balanced and held to 4 gph, runs at 32 gpm', () => {
  const { bay } = evaluate(scenarios['kestrel-bend-house-2']!())
  const inputs = { ...bay, settings: { ...bay.settings, targetLph: gph(4) } }
  const card = balance(inputs, 'target')!
  const turns = new Map(card.zones.map(({ part, trimTurns }) => [part, trimTurns]))
  const water = waterOf(inputs, { trimTurns: turns })
  expect(card.factor).toBeGreaterThan(1)
  expect(toGpm(water.totalLph)).toBeCloseTo(32, 1)
  const flows = [...water.zones.values()].map(({ flowLph }) => toGpm(flowLph)).toSorted((a, b) => a - b)
  expect(flows).toEqual([4.27, 4.27, 4.27, 6.4, 6.4, 6.4].map((flow) => expect.closeTo(flow, 1)))
})
