import { describe, expect, test } from 'vitest'
import { addParts, copyParts, removeParts } from '../../src/layout/edits'
import { nameAfter, nextId, nextName } from '../../src/layout/names'
import type { Layout } from '../../src/layout/schema'
import { obstacleSchema } from '../../src/parts/obstacle/schema'
import { bay } from '../support/bay'

const rows = (...names: string[]): Layout =>
  names.reduce((at, name, k) => at.row(name, [60 + 102 * k, 100]), bay('60 x 96 ft')).layout()

describe('nextId', () => {
  test('counts on from the greatest of its kind', () => {
    expect(nextId(rows(), 'rack-row')).toBe('rack-row-1')
    expect(nextId(rows('A', 'B', 'C'), 'rack-row')).toBe('rack-row-4')
    expect(nextId(rows('A', 'B'), 'obstacle')).toBe('obstacle-1')
  })

  test('fills no gap, so that a part put in later never passes for one that was there', () => {
    expect(nextId(removeParts(rows('A', 'B', 'C'), ['rack-row-2']), 'rack-row')).toBe('rack-row-4')
  })

  test('finds a gap when the numbers are used up', () => {
    const last = obstacleSchema.parse({ kind: 'obstacle', id: 'obstacle-999999999', at: { x: 0, y: 0 } })
    const first = obstacleSchema.parse({ ...last, id: 'obstacle-1' })
    expect(nextId(addParts(rows(), [last, first]), 'obstacle')).toBe('obstacle-2')
  })
})

describe('nextName', () => {
  test('calls things as a crew does', () => {
    const empty = rows()
    const kinds = ['rack-row', 'drain-line', 'sump', 'main', 'trough', 'obstacle', 'opening'] as const
    expect(kinds.map((kind) => nextName(empty, kind))).toEqual([
      'Row 1',
      'Drain 1',
      'Pit 1',
      'Main 1',
      'Trough 1',
      'Obstacle 1',
      'Opening 1',
    ])
  })

  test('takes a stem of its own', () => {
    expect(nextName(bay('30 x 96 ft').post('Post 1', [10, 10]).layout(), 'obstacle', 'Post')).toBe('Post 2')
  })

  test('numbers on from the greatest and renames nothing', () => {
    const layout = rows('Row 1', 'Row 7', 'North row')
    expect(nextName(layout, 'rack-row')).toBe('Row 8')
    expect(copyParts(layout, ['rack-row-1'], 0, 0).parts.map(({ name }) => name)).toEqual([
      'Row 1',
      'Row 7',
      'North row',
      'Row 8',
    ])
  })
})

test.each([
  ['N2', 'N4'],
  ['Row 9', 'Row 10'],
  ['North row', 'North row 2'],
  ['', 'Row 10'],
  ['1', '2'],
])('after %j comes %j', (name, next) => {
  const layout = rows('N1', 'N3', 'Row 9', 'North row', name)
  const part = layout.parts.find((p) => p.name === name)
  expect(part && nameAfter(layout, part)).toBe(next)
})
