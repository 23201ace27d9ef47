import { describe, expect, test } from 'vitest'
import { cividis, shadeColours, shadeOf, SHADES } from '../../src/drawing/cividis'

const channels = (hex: string) => [1, 3, 5].map((from) => Number.parseInt(hex.slice(from, from + 2), 16))

/** Relative luminance. Source: WCAG 2.2, which follows IEC 61966-2-1. */
const luminance = (hex: string): number => {
  const [r, g, b] = channels(hex).map((c) => {
    const v = c / 255
    return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!
}

describe('cividis', () => {
  // Nuñez, Anderton and Renslow 2018, supplementary table of 256 colours: rows that are not among the ten kept ones.
  test.each([
    [14, '#002a65'],
    [42, '#233e6c'],
    [71, '#49526b'],
    [99, '#64666f'],
    [128, '#7d7c78'],
  ])('between the kept colours is the published one, row %i, to twelve steps of 255', (row, published) => {
    const [found, wanted] = [channels(cividis(row / 255)), channels(published)]
    found.forEach((channel, index) => expect(Math.abs(channel - wanted[index]!)).toBeLessThanOrEqual(12))
  })

  test('is lighter at every step, so that it reads in grey as well', () => {
    const steps = shadeColours.map(luminance)
    steps.slice(1).forEach((light, index) => expect(light).toBeGreaterThan(steps[index]!))
  })

  test('ends where the published table ends, and stays there beyond', () => {
    expect([cividis(0), cividis(-3)]).toEqual(['#00204d', '#00204d'])
    expect([cividis(1), cividis(7)]).toEqual(['#ffea46', '#ffea46'])
  })

  test('has a class for every share', () => {
    expect([-1, 0, 0.999, 1, 4].map(shadeOf)).toEqual([0, 0, SHADES - 1, SHADES - 1, SHADES - 1])
    expect(shadeOf(0.5)).toBe(SHADES / 2)
  })
})
