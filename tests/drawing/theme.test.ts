import { describe, expect, test } from 'vitest'
import { nightTheme, paperTheme, type Theme } from '../../src/drawing/theme'

type Rgb = readonly [number, number, number]

/** sRGB to linear light, IEC 61966-2-1. */
const linear = (hex: string): Rgb => {
  const channel = (from: number) => {
    const c = Number.parseInt(hex.slice(from, from + 2), 16) / 255
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4
  }
  return [channel(1), channel(3), channel(5)]
}

/** Contrast ratio of two colours. Source: WCAG 2.2, relative luminance and success criterion 1.4.3. */
const contrast = (a: string, b: string): number => {
  const luminance = (hex: string) => {
    const [r, g, blue] = linear(hex)
    return 0.2126 * r + 0.7152 * g + 0.0722 * blue
  }
  const [low, high] = [luminance(a), luminance(b)].toSorted((x, y) => x - y)
  return (high! + 0.05) / (low! + 0.05)
}

/**
 * Full loss of one cone in linear light. Source: Machado, Oliveira and Fernandes, A Physiologically-based Model for
 * Simulation of Color Vision Deficiency, IEEE TVCG 15(6), 2009, table for severity 1.0 (from memory).
 */
const sights: Readonly<Record<string, readonly [Rgb, Rgb, Rgb]>> = {
  'full colour sight': [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
}

/** CIE 1976 L*a*b* of linear sRGB, white D65. */
const lab = ([r, g, b]: Rgb): Rgb => {
  const x = (0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505
  const y = 0.2126 * r + 0.7152 * g + 0.0722 * b
  const z = (0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089
  const f = (t: number) => (t > 216 / 24389 ? Math.cbrt(t) : (24389 / 27) * (t / 116) + 16 / 116)
  return [116 * f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))]
}

const seen = (hex: string, sight: readonly [Rgb, Rgb, Rgb]): Rgb => {
  const light = linear(hex)
  const [r, g, b] = sight.map((row) =>
    Math.min(1, Math.max(0, row[0] * light[0] + row[1] * light[1] + row[2] * light[2])),
  )
  return lab([r!, g!, b!])
}

const difference = (a: string, b: string, sight: readonly [Rgb, Rgb, Rgb]): number => {
  const [p, q] = [seen(a, sight), seen(b, sight)]
  return Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2])
}

const themes: readonly Theme[] = [paperTheme, nightTheme]

describe.each(themes)('the $name theme', (theme) => {
  const writing = Object.entries(theme.pens).filter(([pen]) => pen !== 'grid')

  test.each(writing)('%s writes words that can be read on the sheet and on the house floor', (_, pen) => {
    expect(contrast(pen.colour, theme.sheet)).toBeGreaterThanOrEqual(4.5)
    expect(contrast(pen.colour, theme.washes.house.colour!)).toBeGreaterThanOrEqual(4.5)
  })

  // A shut valve is filled with its own ink, and too small for words.
  test.each(['note', 'outline', 'dimension'] as const)('%s can be read on every wash but that', (pen) => {
    for (const [wash, { colour }] of Object.entries(theme.washes))
      if (wash !== 'water' && colour !== undefined)
        expect(contrast(theme.pens[pen].colour, colour)).toBeGreaterThanOrEqual(4.5)
  })

  // A CIE76 difference of 2.3 is just noticeable (Mahy et al. 1994, from memory); three times that is plain on a sheet.
  test.each(Object.entries(sights))('leaves stand apart from what lies about them in %s', (_, sight) => {
    const crop = theme.washes.crop.colour!
    for (const wash of ['house', 'timber', 'steel', 'trough', 'drain', 'pit', 'must-fix'] as const)
      expect(difference(crop, theme.washes[wash].colour!, sight), wash).toBeGreaterThan(7)
  })

  test.each(Object.entries(sights))(
    'the must-fix pen stands apart from timber and water in %s',
    (_, sight) => {
      for (const pen of ['timber', 'water', 'drain', 'outline'] as const)
        expect(difference(theme.pens['must-fix'].colour, theme.pens[pen].colour, sight), pen).toBeGreaterThan(
          7,
        )
    },
  )

  test('keep-clear, must-fix, pit and post are hatched, so that they do not hang on colour', () => {
    for (const wash of ['keep-clear', 'must-fix', 'pit', 'post'] as const)
      expect(theme.washes[wash].hatch, wash).toBeDefined()
  })

  // On a black-and-white print lightness alone is left: CIE L* apart by at least twice what is just noticeable.
  test.each([
    ['crop', 'house'],
    ['crop', 'trough'],
    ['crop', 'timber'],
    ['crop', 'steel'],
    ['timber', 'steel'],
    ['timber', 'trough'],
    ['steel', 'trough'],
    ['steel', 'house'],
    ['drain', 'trough'],
  ] as const)('%s and %s, which touch, stand apart in grey on paper', (a, b) => {
    const light = (wash: typeof a | typeof b) => lab(linear(paperTheme.washes[wash].colour!))[0]
    expect(Math.abs(light(a) - light(b))).toBeGreaterThan(5)
  })

  test('pens are of the ISO 128-2 widths', () => {
    // Source: ISO 128-2:2020, 5.1: 0.13 to 2 mm in steps of the square root of 2 (from memory).
    const series = [0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2]
    for (const { widthMm } of Object.values(theme.pens)) expect(series).toContain(widthMm)
  })

  test('hidden lines are dashed, centre lines long-dashed dotted, outlines continuous', () => {
    expect(theme.pens.hidden.dashMm).toHaveLength(2)
    expect(theme.pens.centre.dashMm).toHaveLength(4)
    expect(theme.pens.outline.dashMm).toHaveLength(0)
    const [long, gap, dot] = theme.pens.centre.dashMm
    expect(long! > gap! && gap! > dot!).toBe(true)
  })
})
