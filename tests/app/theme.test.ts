import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { nightTheme, paperTheme } from '../../src/drawing/theme'

const css = readFileSync('src/app/theme.css', 'utf8')
const [day = '', night = ''] = css.split('@media (prefers-color-scheme: dark)')
const colour = (block: string, name: string) => new RegExp(`--${name}: (#[0-9a-f]{6})`).exec(block)?.[1] ?? ''

/** Relative luminance and contrast as WCAG 2.2 defines them. */
const luminance = (hex: string) => {
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4))
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}
const contrast = (a: string, b: string) => {
  const [low = 0, high = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y)
  return (high + 0.05) / (low + 0.05)
}

describe.each([
  ['paper', day, paperTheme],
  ['night paper', night, nightTheme],
] as const)('%s', (_, block, theme) => {
  test('the page and the drawing share their inks', () => {
    expect(colour(block, 'paper')).toBe(theme.sheet)
    expect(colour(block, 'ink')).toBe(theme.ink)
    expect(colour(block, 'accent')).toBe(theme.pens['must-fix'].colour)
    expect(colour(block, 'water')).toBe(theme.pens.water.colour)
    expect(colour(block, 'timber')).toBe(theme.pens.timber.colour)
  })

  // WCAG 2.2, success criterion 1.4.3: 4.5 to 1 for text.
  test.each(['ink', 'ink-2', 'accent', 'water', 'good', 'watch'])('%s is readable on every paper', (name) => {
    for (const paper of ['paper', 'paper-2', 'paper-3', 'house'])
      expect(contrast(colour(block, name), colour(block, paper))).toBeGreaterThanOrEqual(4.5)
  })
})
