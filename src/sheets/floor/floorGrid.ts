import type { Mark } from '../../model/drawing'
import { feet, type Units } from '../../units/length'
import { discMark } from '../../parts/marks'
import { lettered, LETTERS, ruled } from '../ink'
import type { Plan } from './plan'

/** Tape's lengths that a crew can hold in mind, and fives of them for floors that are large on their paper. */
const SPACINGS_MM: Readonly<Record<Units, readonly number[]>> = {
  'feet-inches': [10, 20, 50, 100, 200].map(feet),
  metric: [3000, 6000, 15_000, 30_000, 60_000],
}
const BUBBLE_MM = 2.6
/** Bubbles nearer than this touch, mm of paper. */
const BUBBLES_APART_MM = 6
/** From the plan to the middle of a bubble, mm of paper. */
const OUT_MM = 7

/** Letters of a grid; I and O are left out, since they read as 1 and 0. */
const ALPHABET = 'ABCDEFGHJKLMNPQRSTUVWXYZ'

/** A, B ... Z, AA, AB ... */
export const gridLetter = (index: number): string => {
  const last = ALPHABET.charAt(index % ALPHABET.length)
  const before = Math.floor(index / ALPHABET.length)
  return before === 0 ? last : `${gridLetter(before - 1)}${last}`
}

/** The least handy spacing at which the bubbles of a grid stand clear of each other, mm of floor. */
export const gridSpacing = (ratio: number, units: Units): number => {
  const spacings = SPACINGS_MM[units]
  return spacings.find((mm) => mm / ratio >= BUBBLES_APART_MM) ?? spacings.at(-1) ?? feet(10)
}

const bubble = (x: number, y: number, text: string, ratio: number): Mark[] => [
  discMark({ x, y }, BUBBLE_MM * ratio, 'dimension', 'paper'),
  lettered(text, { x, y }, text.length > 2 ? LETTERS.small : LETTERS.body, { anchor: 'middle' }),
]

const lineCount = (fromMm: number, toMm: number, spacingMm: number): number =>
  Math.floor((toMm - fromMm) / spacingMm + 1e-9) + 1

/** Lines from the baseline: letters along the north edge, numbers along the east edge. In mm of floor. */
export const floorGrid = ({ house, reach, scale: { ratio } }: Plan, units: Units): Mark[] => {
  const spacing = gridSpacing(ratio, units)
  const north = reach.y1 + OUT_MM * ratio
  const east = reach.x1 + OUT_MM * ratio
  const rim = BUBBLE_MM * ratio
  const uprights = Array.from({ length: lineCount(house.x0, house.x1, spacing) }, (_, i) => {
    const x = house.x0 + i * spacing
    return [
      ruled({ x, y: house.y0 }, { x, y: north - rim }, 'grid'),
      ...bubble(x, north, gridLetter(i), ratio),
    ]
  })
  const levels = Array.from({ length: lineCount(house.y0, house.y1, spacing) }, (_, i) => {
    const y = house.y0 + i * spacing
    return [ruled({ x: house.x0, y }, { x: east - rim, y }, 'grid'), ...bubble(east, y, `${i + 1}`, ratio)]
  })
  return [...uprights, ...levels].flat()
}
