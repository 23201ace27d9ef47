import { describe, expect, test } from 'vitest'
import { mainHeadChart, mainVelocityChart } from '../../../src/app/drawer/mainCharts'
import type { MainWater } from '../../../src/model/water'
import { gpm } from '../../../src/units/flow'
import { feet, inches } from '../../../src/units/length'
import { feetPerSecond } from '../../../src/units/velocity'

const at = { x: 0, y: 0, z: 0 }

const main: MainWater = {
  part: 'M',
  points: [
    { at, alongMm: 0, headMm: inches(100), meets: 'P' },
    { at, alongMm: feet(10), headMm: inches(96), meets: 'N1' },
    // N2 joins where N1 does.
    { at, alongMm: feet(10), headMm: inches(96), meets: 'N2' },
    { at, alongMm: feet(20), headMm: inches(94), meets: undefined },
  ],
  legs: [
    { flowLph: gpm(32), velocityMS: feetPerSecond(3) },
    { flowLph: gpm(16), velocityMS: feetPerSecond(1.5) },
    { flowLph: gpm(-8), velocityMS: feetPerSecond(0.8) },
  ],
  fastestMS: feetPerSecond(3),
}

const name = (part: string) => ({ M: 'Main', P: 'Pit' })[part] ?? part

describe('head along a main', () => {
  const chart = mainHeadChart(main, inches(78), name, 'feet-inches')

  test('is read over the highest tube ends: 100 - 78 = 22 in down to 94 - 78 = 16', () => {
    expect(chart.says).toBe('From 22" down to 16" over the highest tube ends.')
    expect(chart.y.measure.sign).toBe('in')
  })

  test('names each tap at its place', () => {
    expect(chart.posts?.map((post) => post.name)).toEqual(['Pit', 'N1', 'N2'])
    expect(chart.stops[1]?.words).toBe(`N1, 10' 0" along: 18" over the highest tube ends`)
    expect(chart.table.rows.at(-1)).toEqual(['bend or end', `20' 0"`, '16"'])
  })

  test('is read in feet or metres where no sight tube is so long', () => {
    expect(mainHeadChart(main, 0, name, 'feet-inches').y.measure.sign).toBe('ft')
    expect(mainHeadChart(main, 0, name, 'metric').y.measure.sign).toBe('m')
  })

  test('a joint that is cut off is left out', () => {
    const cut = { ...main, points: [...main.points, { at, alongMm: feet(30), headMm: NaN, meets: 'N3' }] }
    expect(mainHeadChart(cut, 0, name, 'metric').lines[0]?.points).toHaveLength(4)
  })
})

test('velocity is a step each leg that has a length, whichever way it runs', () => {
  const chart = mainVelocityChart(main, name, 'feet-inches')
  expect(chart.table.rows).toEqual([
    [`0"`, `10' 0"`, '32.0 gpm', '3.0 ft/s'],
    [`10' 0"`, `20' 0"`, '8.0 gpm', '0.8 ft/s'],
  ])
  expect(chart.lines[0]?.points).toHaveLength(4)
  expect(chart.levels?.[0]?.name).toBe('no more than 5.0 ft/s')
})
