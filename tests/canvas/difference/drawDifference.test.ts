import { expect, test } from 'vitest'
import { differenceLabels, drawDifference } from '../../../src/canvas/difference/drawDifference'
import { lensOf } from '../../../src/canvas/lens'
import { paperTheme } from '../../../src/drawing/theme'
import type { PlaceChange } from '../../../src/evaluate/compare/placeChanges'
import { inches } from '../../../src/units/length'
import { RecordingCanvas } from '../../support/recordingCanvas'

const square = (x: number, y: number) => [
  { x, y },
  { x: x + 1000, y },
  { x: x + 1000, y: y + 1000 },
  { x, y: y + 1000 },
]

const lens = lensOf({ x: 0, y: 9000, pxPerMm: 0.1 }, { width: 900, height: 900 }, paperTheme, 'feet-inches')

const moved: PlaceChange = {
  part: 'rack-row-1',
  name: 'N1',
  what: 'moved',
  from: [square(1000, 1000)],
  to: [square(4048, 1000)],
  arrow: [
    { x: 1500, y: 1500 },
    { x: 4548, y: 1500 },
  ],
  by: { x: inches(120), y: 0 },
}

const added: PlaceChange = { part: 'b', name: 'B', what: 'added', from: [], to: [square(0, 0)] }
const removed: PlaceChange = { part: 'c', name: 'C', what: 'removed', from: [square(0, 0)], to: [] }
const changed: PlaceChange = { part: 'd', name: 'D', what: 'changed', from: [], to: [square(0, 0)] }

test('each change has a word of its own beside its shape', () => {
  expect(differenceLabels([moved, added, removed, changed], lens).map(({ words }) => words)).toEqual([
    'N1 moved 120" east',
    'B is new',
    'C is gone',
    'D has changed',
  ])
})

test('the word of a move stands between the two places', () => {
  const [label] = differenceLabels([moved], lens)
  // The middle of 1500 and 4548 mm east, at a tenth of a px a mm.
  expect(label?.at.x).toBeCloseTo(302.4, 3)
})

test('old places are dashed and new ones whole', () => {
  const dashes = (change: PlaceChange) => {
    const canvas = new RecordingCanvas()
    const seen: (readonly number[])[] = []
    const setLineDash = canvas.setLineDash.bind(canvas)
    canvas.setLineDash = (dash: number[]) => {
      seen.push(dash)
      setLineDash(dash)
    }
    drawDifference(canvas, [change], lens)
    return seen.map((dash) => dash.length > 0)
  }
  expect(dashes(removed)).toEqual([true])
  expect(dashes(added)).toEqual([false])
  expect(dashes(moved).slice(0, 2)).toEqual([true, false])
})
