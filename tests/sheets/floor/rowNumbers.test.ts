import { describe, expect, test } from 'vitest'
import { rowBoxes } from '../../../src/checks/standing'
import { evaluate } from '../../../src/evaluate/evaluate'
import { overlaps } from '../../../src/geometry/box'
import { clearWords, isInside, textBox } from '../../../src/sheets/clearWords'
import { rowNumbers } from '../../../src/sheets/floor/rowNumbers'
import { bay } from '../../support/bay'

const everywhere = { x0: -1e6, y0: -1e6, x1: 1e6, y1: 1e6 }
const evaluation = evaluate(bay('30 x 50 ft').row('A12', [63, 100], { racks: 3 }).layout())
const row = rowBoxes(evaluation.bay.built)[0]!.box
const marksAt = (ratio: number) => rowNumbers(evaluation, ratio, clearWords([], everywhere))

describe.each([48, 64, 100, 192])('words of a row at 1:%d', (ratio) => {
  const boxes = marksAt(ratio).map((mark) => textBox(mark, ratio))

  test('stand clear of each other and by their row', () => {
    boxes.forEach((box, i) => {
      expect(overlaps(box, row)).toBe(true)
      for (const other of boxes.slice(i + 1)) expect(overlaps(box, other)).toBe(false)
    })
  })

  test('number every rack', () => {
    const texts = marksAt(ratio).map(({ text }) => text)
    for (const rack of ['1', '2', '3']) expect(texts).toContain(rack)
  })
})

test('lines are numbered too while their numbers stay apart', () => {
  // Three racks and four lines.
  expect(marksAt(64).filter(({ text }) => /^\d$/.test(text))).toHaveLength(7)
})

test('a name is as large as its row allows, and never under 2 mm', () => {
  const heightAt = (ratio: number) => marksAt(ratio).find(({ text }) => text === 'A12')!.paperMm
  expect(heightAt(64)).toBeGreaterThan(3)
  for (const ratio of [360, 600]) {
    const name = marksAt(ratio).find(({ text }) => text === 'A12')!
    if (name.paperMm > 2)
      expect(isInside(textBox({ ...name, paperMm: name.paperMm / 2 }, ratio), row)).toBe(true)
    expect(name.paperMm).toBeGreaterThanOrEqual(2)
  }
  expect(heightAt(2000)).toBe(2)
})
