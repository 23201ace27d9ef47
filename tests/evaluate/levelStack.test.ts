import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { levelStack } from '../../src/evaluate/levelStack'
import { shortGaps } from '../../src/evaluate/shortGaps'
import { readLayout } from '../../src/layout/file'
import { bay } from '../support/bay'
import { at, inchesOf } from '../support/site'

const sample = () => {
  const read = readLayout(
    readFileSync(new URL('../../public/bays/kestrel-bend-house-2.json', import.meta.url), 'utf8'),
  )
  if (!read.ok) throw new Error(read.sentence)
  return evaluate(read.layout)
}

const idOf = (evaluation: ReturnType<typeof evaluate>, name: string) =>
  evaluation.layout.parts.find((part) => part.name === name)!.id

const inInches = (levels: readonly { name: string; levelMm: number }[]) =>
  Object.fromEntries(levels.map(({ name, levelMm }) => [name, inchesOf(levelMm)]))

describe('the stack of levels', () => {
  test('of a row goes from its bars through drain and pit to the bottom', () => {
    const evaluation = sample()
    const stack = levelStack(evaluation, idOf(evaluation, 'N3'), { at: at(300, 600) })
    expect(stack.levels.map(({ name }) => name)).toEqual([
      'Bar top',
      'Tower tip',
      'Lip, high end',
      'Lip, low end',
      'Invert, high',
      'Invert at outlet',
      'Bearer top',
      'Rack datum',
      'Drop tube end',
      'Drain crown',
      'Drain invert',
      'Pit inlet',
      'Overflow',
      'Drain-back',
      'Running',
      'Make-up',
      'Low alarm',
      'Pump off',
      'Pump intake',
      'Bottom',
    ])
    expect(stack.parts).toHaveLength(3)
  })

  test('falls all the way in the sample bay, apart from tip and drop tube that hang inside what they drip into', () => {
    const evaluation = sample()
    const wet = levelStack(evaluation, idOf(evaluation, 'N1'), { at: at(60, 600) }).levels.slice(2)
    const levels = wet.filter(({ kind }) => kind !== 'drop-end').map(({ levelMm }) => levelMm)
    expect(levels).toEqual(levels.toSorted((a, b) => b - a))
  })

  test('names the line that the pointer is nearest to', () => {
    const evaluation = evaluate(bay('40 x 60 ft').row('Row 1', [100, 100], { racks: 1, lines: 4 }).layout())
    // The row falls north, so its lines count from west to east: 73, 91, 109, 127 in.
    const whose = (x: number) => levelStack(evaluation, 'rack-row-1', { at: at(x, 150) }).whose
    expect([70, 80, 95, 112, 140].map(whose)).toEqual([1, 1, 2, 3, 4].map((line) => `Row 1, line ${line}`))
  })

  test('follows a branch into the line that it joins, and that one to the pit', () => {
    const layout = bay('40 x 60 ft')
      .row('Row 1', [100, 100], { racks: 1 })
      .drain(
        'Branch',
        [
          [40, 205],
          [300, 205],
        ],
        { startInvert: -12 },
      )
      .drain(
        'Long line',
        [
          [300, 85],
          [300, 445],
        ],
        { startInvert: -16 },
      )
      .pit('Pit', { x: [280, 320], y: [445, 560] })
      .layout()
    const stack = levelStack(evaluate(layout), 'rack-row-1', { at: at(100, 150) })
    const below = stack.levels.slice(stack.levels.findIndex(({ kind }) => kind === 'crown'))
    expect(below.slice(0, 6).map(({ name }) => name)).toEqual([
      'Drain crown',
      'Drain invert',
      'Drain low end',
      'Long line crown',
      'Long line invert',
      'Pit inlet',
    ])
    // The branch falls 1/8 in a foot over 260 in: 260/12 x 1/8 = 2.708, from -12. It comes in 120 in down the long line,
    // which has fallen 1.25 in by then from -16, and ends after 360 in: 3.75 in lower than it starts.
    const levels = inInches(below)
    expect(levels['Drain low end']).toBeCloseTo(-14.708, 2)
    expect(levels['Long line invert']).toBeCloseTo(-17.25, 2)
    expect(levels['Pit inlet']).toBeCloseTo(-19.75, 2)
    expect(below.at(-1)?.name).toBe('Bottom')
    expect(stack.parts).toEqual(['rack-row-1', 'drain-line-1', 'drain-line-2', 'sump-1'])
  })

  test('of a line that was asked for is that line’s, wherever the pointer is', () => {
    const evaluation = evaluate(bay('40 x 60 ft').row('Row 1', [100, 100], { racks: 1, lines: 4 }).layout())
    expect(levelStack(evaluation, 'rack-row-1', { at: at(70, 150), line: 3 })).toMatchObject({
      whose: 'Row 1, line 3',
      line: 3,
      lines: 4,
    })
  })

  test('of a pit is its own levels as they were set', () => {
    const evaluation = evaluate(
      bay('40 x 60 ft')
        .pit('Pit', { x: [100, 136], y: [100, 214] }, { rim: 1, overflow: -13, bottom: -37 })
        .layout(),
    )
    expect(inInches(levelStack(evaluation, 'sump-1', { at: at(118, 150) }).levels)).toEqual({
      Rim: 1,
      Overflow: -13,
      'Drain-back': -14,
      Running: -22.5,
      'Make-up': -23.5,
      'Low alarm': -27,
      'Pump off': -29,
      'Pump intake': -35,
      Bottom: -37,
    })
  })

  test('of bare floor is the floor there', () => {
    const evaluation = evaluate(
      bay('40 x 60 ft').level([0, 0], 0).level([480, 0], -8).level([0, 720], 0).layout(),
    )
    expect(inInches(levelStack(evaluation, undefined, { at: at(240, 0) }).levels)).toEqual({ Floor: -4 })
  })

  test('of a row without a drain ends at its datum', () => {
    const evaluation = evaluate(bay('40 x 60 ft').row('Row 1', [100, 100], { racks: 1 }).layout())
    const { levels, parts } = levelStack(evaluation, 'rack-row-1', { at: at(100, 150) })
    expect(levels.at(-1)?.name).toBe('Rack datum')
    expect(parts).toEqual(['rack-row-1'])
  })
})

describe('gaps that are too small', () => {
  const withDrain = (startInvert: number) => {
    const layout = bay('40 x 60 ft')
      .row('Row 1', [100, 100], { racks: 1 })
      .drain(
        'Drain',
        [
          [40, 205],
          [300, 205],
        ],
        { startInvert },
      )
      .layout()
    return evaluate(layout)
  }

  test('are those that the checks found, with their state', () => {
    const evaluation = withDrain(8)
    const stack = levelStack(evaluation, 'rack-row-1', { at: at(100, 150) })
    const gaps = shortGaps(evaluation, stack).map(({ from, to, finding }) => [
      from.name,
      to.name,
      finding.state,
    ])
    expect(gaps).toContainEqual(['Invert at outlet', 'Drain crown', expect.stringMatching(/Flat|Backs up/)])
  })

  test('are none where the drain lies deep enough', () => {
    const evaluation = withDrain(-12)
    const stack = levelStack(evaluation, 'rack-row-1', { at: at(100, 150) })
    expect(stack.levels.map(({ name }) => name)).toContain('Drain crown')
    expect(shortGaps(evaluation, stack)).toEqual([])
  })
})
