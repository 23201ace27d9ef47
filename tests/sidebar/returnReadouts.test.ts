import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import type { Layout } from '../../src/layout/schema'
import { partRows } from '../../src/sidebar/partRows'
import { returnReadouts } from '../../src/sidebar/returnReadouts'
import { gph } from '../../src/units/flow'
import { writerFor } from '../../src/units/writer'
import { bay } from '../support/bay'
import { kestrelBend } from '../support/scenarios/kestrelBend'

const writer = writerFor('feet-inches')

const saidOf = (layout: Layout, name: string) => {
  const part = layout.parts.find((each) => each.name === name)!
  const { state, lines, view } = returnReadouts(evaluate(layout).bay.returns, part.id, writer)
  const said = lines.map(
    (line) => `${line.name}: ${line.value}${line.why === undefined ? '' : ` (${line.why})`}`,
  )
  return { state, view, said }
}

// The figures are those of the worked example of the trade notes, as the tests of the step have them.
describe('what the inspector says of the water on its way home in the sample bay', () => {
  const layout = kestrelBend().layout()

  test('of a drain: how full, how fast, and how it lies', () => {
    const { state, said, view } = saidOf(layout, 'Drain N')
    expect(state).toEqual({ word: 'Falls', rank: 0 })
    expect(view).toBe('cut')
    expect(said).toEqual([
      'Flow at its low end: 19.2 gpm',
      'Where it is fullest: 27.3 % full',
      'Half full it carries: 59.0 gpm',
      'Velocity there: 2.2 ft/s',
      'Air over the water: 72.7 % of the bore',
    ])
  })

  test('a drain too slow to scour is slow, not full', () => {
    expect(saidOf(layout, 'Drain S').said).toContain(
      'Velocity there: 1.9 ft/s (Slow, not full: 2.0 ft/s, at which water scours a pipe, wants 14.9 gpm at this fall. What settles is rodded out at the cleanouts.)',
    )
  })

  test('of the pit: what comes home, from where, and the room for it', () => {
    const { state, said } = saidOf(layout, 'Pit')
    expect(state).toEqual({ word: 'Holds', rank: 0 })
    expect(said).toEqual(
      expect.arrayContaining([
        'Drains bring: 32.0 gpm',
        'of it from towers: 72 gal',
        'Room over the running level: 151 gal',
        'Pump off to running: 115 gal',
        'Under pump off: 142 gal',
        'Overflow to rim: 231 gal',
        'A stuck make-up valve brings, until someone comes: 40 gal',
      ]),
    )
    // Behind the check valve nothing of the mains comes home.
    expect(said.join()).not.toContain('from mains')
  })

  test('of a row: its fullest line, its outlet and its puddle', () => {
    const { state, said } = saidOf(layout, 'N1')
    expect(state).toBeUndefined()
    expect(said[0]).toMatch(/^Line \d carries most: 1\.6 gpm$/)
    expect(said.join()).toMatch(/Water over the outlet: .*\(Its rim holds the water back, as a weir\.\)/)
    expect(said.join()).toContain('Puddle behind the outlet')
    // A section of 120 in of PVC, 5.4e-5 a degree C, grows by 120 x 5.4e-5 x 30 = 0.194 in.
    expect(said.join()).toContain('A section grows in the heat: 3/16", joiners have 1/4"')
  })
})

const drained = (values: object) =>
  bay('40 x 60 ft')
    .row('A', [165, 100], { racks: 2 })
    .trough('T', [300, 400])
    .drain(
      'D',
      [
        [100, 325],
        [300, 325],
      ],
      values,
    )
    .settings({ targetLph: gph(30) })
    .layout()

test('a dry row says that its flow is what is wanted, and a trough that nothing drips into has only its puddle', () => {
  const layout = drained({})
  expect(saidOf(layout, 'A').said[0]).toContain('(No water is solved for it: reckoned with the flow')
  expect(saidOf(layout, 'T').said).toEqual([expect.stringMatching(/^Puddle behind the outlet: /)])
})

test('a drain that does not fall, and one that nothing comes to, say so', () => {
  const { state, said } = saidOf(drained({ slope: 0 }), 'D')
  expect(state).toEqual({ word: 'Backs up', rank: 2 })
  expect(said).toContain('Half full it carries: nothing: it does not fall')
  expect(said.join()).toContain(
    '(Slow: 2.0 ft/s, at which water scours a pipe, is more than any water at this fall runs at.',
  )
  const idle = bay('40 x 60 ft')
    .drain('D', [
      [50, 100],
      [350, 100],
    ])
    .layout()
  expect(saidOf(idle, 'D').said[0]).toBe('Water in it: none comes in')
})

test('a part that no such water passes has nothing to say', () => {
  expect(saidOf(kestrelBend().layout(), 'Post')).toEqual({ state: undefined, view: undefined, said: [] })
})

test('the parts list has a pit’s room beside its fit, as of a row its flow', () => {
  const pitRow = (running: number) => {
    const layout = bay('40 x 60 ft')
      .row('A', [165, 100], { racks: 2 })
      .drain('D', [
        [100, 325],
        [300, 325],
      ])
      .pit('Pit', { x: [300, 336], y: [268, 382] }, { running, pumps: 0 })
      .layout()
    return partRows(evaluate(layout), writer).find(({ kind }) => kind === 'sump')?.rows[0]
  }
  expect(pitRow(-22.5)).toMatchObject({ water: { word: 'Holds', rank: 0, words: '151 gal' } })
  expect(pitRow(-15)).toMatchObject({
    word: 'Fits',
    water: { word: 'Thin', rank: 1, words: '18 gal' },
  })
})
