import { describe, expect, test } from 'vitest'
import { beforeChecks } from '../../src/evaluate/beforeChecks'
import { chosenCut, cutChoices } from '../../src/evaluate/longCut/choices'
import { longCut, placeOnCut } from '../../src/evaluate/longCut/cut'
import type { LongCut } from '../../src/evaluate/longCut/section'
import { quarterTurn } from '../../src/geometry/motion'
import type { Layout } from '../../src/layout/schema'
import { feet, inches, toInches } from '../../src/units/length'
import { bay as sketch } from '../support/bay'
import { scenarios } from '../support/scenarios'
import { inchesOf } from '../support/site'
import { mirroredBay, movedBay } from '../support/wholeBay'

const sample = scenarios['kestrel-bend-house-2']!()
const idOf = (layout: Layout, name: string): string => layout.parts.find((part) => part.name === name)!.id

const cutIn = (layout: Layout, name: string): LongCut =>
  longCut(beforeChecks(layout).bay, idOf(layout, name))!

describe('along the sample’s drain N', () => {
  const cut = cutIn(sample, 'Drain N')

  // Peg table of the trade notes' worked example (hand arithmetic): the drain runs from x = 30 to 304 in, stations from the pit wall.
  test('outlets stand where the peg table has them, from the pit’s wall', () => {
    expect(toInches(cut.wallMm)).toBeCloseTo(274, 6)
    expect(cut.outlets.map(({ sMm }) => inchesOf(cut.wallMm - sMm))).toEqual([
      268, 250, 232, 214, 166, 148, 130, 112, 64, 46, 28, 10,
    ])
  })

  test('inverts under the outlets are the table’s, to a hundredth of an inch', () => {
    const inverts = cut.outlets.map(({ drainInvertMm }) => toInches(drainInvertMm))
    const table = [-8.29, -8.48, -8.67, -8.85, -9.35, -9.54, -9.73, -9.92, -10.42, -10.6, -10.79, -10.98]
    inverts.forEach((invert, index) => expect(Math.abs(invert - table[index]!)).toBeLessThan(0.01))
  })

  // The pit is 36 in wide from x = 304 in, and both drains come in: N at -11.08, S at -11.32.
  test('it goes on through the pit, where both drains come in', () => {
    const pit = cut.pit!
    expect(toInches(pit.toMm - pit.fromMm)).toBeCloseTo(36, 6)
    const [n, s] = pit.inlets.map(({ invertMm }) => toInches(invertMm))
    expect(n).toBeCloseTo(-11.08, 2)
    expect(Math.abs(s! + 11.32)).toBeLessThan(0.01)
    expect(cut.endMm).toBeGreaterThan(pit.toMm)
  })

  // The floor falls 1 in east over 352 in and 2 in south over 856 in, from 0 in the north-west; the drain lies at y = 425.
  test('the floor along it is the surveyed plane', () => {
    const [first] = cut.ground
    expect(toInches(first!.levelMm)).toBeCloseTo(-30 / 352 - (2 * (856 - 425)) / 856, 4)
    const last = cut.ground.at(-1)!
    const xAtEnd = 30 + toInches(last.sMm)
    expect(toInches(last.levelMm)).toBeCloseTo(-xAtEnd / 352 - (2 * (856 - 425)) / 856, 4)
  })
})

describe('along a row', () => {
  const cut = cutIn(sample, 'N1')
  const row = cut.row!

  test('it goes from the gutter’s high end to its outlet, then down the drain to the pit', () => {
    expect(cut.through).toEqual([idOf(sample, 'N1'), idOf(sample, 'Drain N'), cut.pit!.part])
    expect(cut.drains[0]!.fromMm).toBeCloseTo(row.outletMm, 6)
    expect(cut.wallMm - row.outletMm + cut.drains[0]!.alongMm).toBeCloseTo(inches(274), 6)
  })

  // 1/16 in a foot over the 341.5 in from the high end to the outlet: 1.78 in.
  test('its gutter falls as it is laid', () => {
    const [high, outlet] = row.inverts
    expect(toInches(outlet!.sMm)).toBeCloseTo(341.5, 1)
    expect(toInches(high!.levelMm - outlet!.levelMm)).toBeCloseTo(341.5 / 12 / 16, 2)
  })

  test('every station hangs a tip over it, from the high end down', () => {
    expect(row.tips).toHaveLength(24)
    const along = row.tips.map(({ sMm }) => sMm)
    expect(along).toEqual(along.toSorted((a, b) => a - b))
    expect(along.at(-1)!).toBeLessThan(row.toMm)
  })

  test('its own outlet is not drawn a second time across it', () => {
    expect(cut.outlets.some(({ part, line }) => part === row.part && line === row.line)).toBe(false)
  })
})

describe('lines that join', () => {
  // A branch of 10 ft comes into a line of 30 ft 20 ft from its high end; the pit's wall is 30 ft from there.
  const layout = sketch('60 x 60 ft')
    .drain('Line', [
      [0, 360],
      [360, 360],
    ])
    .drain(
      'Branch',
      [
        [240, 480],
        [240, 360],
      ],
      { startInvert: -4 },
    )
    .pit('Pit', { x: [360, 396], y: [300, 420] })
    .layout()

  test('a branch is cut down the line that it joins: 10 ft of its own, 10 ft of the other', () => {
    const cut = cutIn(layout, 'Branch')
    expect(cut.through.slice(0, 2)).toEqual([idOf(layout, 'Branch'), idOf(layout, 'Line')])
    expect(cut.wallMm).toBeCloseTo(feet(20), 6)
    expect(cut.drains[1]!.alongMm).toBeCloseTo(feet(20), 6)
  })

  test('the line itself shows where the branch comes in', () => {
    const cut = cutIn(layout, 'Line')
    expect(cut.drains[0]!.branches.map(({ part, sMm }) => [part, inchesOf(sMm)])).toEqual([
      [idOf(layout, 'Branch'), 240],
    ])
    expect(cut.wallMm).toBeCloseTo(feet(30), 6)
  })
})

// Drain from x = 24 in; gas line at x = 250 in, 18 in deep (trade notes, scenario of the L-shaped room).
test('a buried line shows where it crosses, as deep as it lies', () => {
  const dairy = scenarios['old-dairy-corner']!()
  const cut = cutIn(dairy, 'Drain')
  const [gas] = cut.services
  expect(toInches(gas!.sMm)).toBeCloseTo(226, 6)
  const bay = beforeChecks(dairy).bay
  expect(gas!.levelMm).toBeCloseTo(bay.site.groundAt(inches(250), inches(405)) - inches(18), 6)
  expect(gas!.digMm!).toBeGreaterThan(gas!.levelMm)
})

describe('whatever way the bay lies', () => {
  const seen = (layout: Layout) => {
    const { ground, outlets, wallMm, endMm, pit } = cutIn(layout, 'Drain N')
    return [
      wallMm,
      endMm,
      pit!.toMm,
      ...ground.map(({ levelMm }) => levelMm),
      ...outlets.flatMap(({ sMm, invertMm, drainInvertMm }) => [sMm, invertMm, drainInvertMm]),
    ]
  }
  const upright = seen(sample)

  test.each([
    ['turned', movedBay(sample, quarterTurn({ x: 0, y: 0 }))],
    ['mirrored', mirroredBay(sample, { axis: 'x', atMm: inches(176) })],
  ])('%s, the section is the same', (_, layout) => {
    seen(layout).forEach((value, index) => expect(value).toBeCloseTo(upright[index]!, 3))
  })
})

describe('what is cut', () => {
  const { bay } = beforeChecks(sample)
  const id = (name: string) => idOf(sample, name)

  test('drains can be cut, and rows; nothing else', () => {
    expect(cutChoices(bay)).toEqual(['Drain N', 'Drain S', 'N1', 'S1', 'N2', 'S2', 'N3', 'S3'].map(id))
    expect(longCut(bay, sample.parts.find(({ kind }) => kind === 'sump')!.id)).toBeUndefined()
  })

  test('it follows the selection: a row, a drain, of a pit its longest drain; else it stays', () => {
    expect(chosenCut(bay, [id('S2')], id('N1'))).toBe(id('S2'))
    expect(chosenCut(bay, [sample.parts.find(({ kind }) => kind === 'sump')!.id], undefined)).toBe(
      id('Drain N'),
    )
    expect(chosenCut(bay, [], id('Drain S'))).toBe(id('Drain S'))
    expect(chosenCut(bay, [], 'gone')).toBe(id('Drain N'))
    expect(chosenCut(beforeChecks(sketch('20 x 20 ft').layout()).bay, [], undefined)).toBeUndefined()
  })

  test('a place on the floor is found on the section, with how far aside it lies', () => {
    const on = placeOnCut(bay, id('Drain N'), { x: inches(130), y: inches(445) })!
    expect([inchesOf(on.sMm), inchesOf(on.asideMm)]).toEqual([100, 20])
  })
})
