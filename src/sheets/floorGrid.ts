import type { Mark } from '../model/drawing'
import { feet, type Units } from '../units/length'
import { discMark } from '../parts/marks'
import { lettered, LETTERS, ruled } from './ink'
import type { Plan } from './plan'

/** A tape's length that a crew can hold in mind. */
const SPACING_MM: Readonly<Record<Units, number>> = { 'feet-inches': feet(10), metric: 3000 }
const BUBBLE_MM = 2.6
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

const bubble = (x: number, y: number, text: string, ratio: number): Mark[] => [
  discMark({ x, y }, BUBBLE_MM * ratio, 'dimension', 'paper'),
  lettered(text, { x, y }, text.length > 2 ? LETTERS.small : LETTERS.body, { anchor: 'middle' }),
]

const lineCount = (fromMm: number, toMm: number, spacingMm: number): number =>
  Math.floor((toMm - fromMm) / spacingMm + 1e-9) + 1

/** Lines from the baseline: letters along the north edge, numbers along the east edge. In mm of floor. */
export const floorGrid = ({ house, reach, scale: { ratio } }: Plan, units: Units): Mark[] => {
  const spacing = SPACING_MM[units]
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
