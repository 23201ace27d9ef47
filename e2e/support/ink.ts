import type { Picture, Rgb } from './png'

/** What can be seen on a sheet without reading it: lines, and how much ink of a colour a region bears. */

/** An upright or level line, px. */
export interface Line {
  /** Place across the line. */
  readonly at: number
  readonly from: number
  readonly to: number
}

export interface Region {
  readonly x: readonly [number, number]
  readonly y: readonly [number, number]
}

export type Ink = (pixel: Rgb) => boolean

/** Line work and letters, near black. */
export const pencil: Ink = ([red, green, blue]) => Math.max(red, green, blue) < 90
/** Sawn wood: ochre. */
export const timber: Ink = ([red, green, blue]) => red > 190 && green > 140 && blue < 130 && red - blue > 90
/** Pipe and water: blue. */
export const water: Ink = ([red, green, blue]) => blue > 110 && blue - red > 60 && green < 140

/** Words with a pale rim may lie across a line: breaks up to this long, inches of paper. */
const LONGEST_BREAK = 0.15

/** One column or row of pixels: whether it bears ink at a place along it, and where it ends. */
interface Track {
  readonly isInked: (along: number) => boolean
  readonly end: number
  readonly at: number
}

/** Stretches of ink in a track, breaks of up to `mostBreak` px included. */
const stretches = ({ isInked, end, at }: Track, mostBreak: number): Line[] => {
  const lines: Line[] = []
  for (let along = 0; along < end; along += 1) {
    if (!isInked(along)) continue
    const open = lines.at(-1)
    if (open && along - open.to <= mostBreak) lines[lines.length - 1] = { ...open, to: along }
    else lines.push({ at, from: along, to: along })
  }
  return lines
}

export const lengthPx = ({ from, to }: Line): number => to - from + 1

/** Dashes and rows of letters have less ink along them than a drawn line. */
const isSolid = ({ isInked }: Track, line: Line): boolean => {
  let inked = 0
  for (let along = line.from; along <= line.to; along += 1) inked += Number(isInked(along))
  return inked / lengthPx(line) > 0.8
}

const linesIn = (track: Track, leastInches: number, dpi: number): Line[] =>
  stretches(track, LONGEST_BREAK * dpi)
    .filter((line) => lengthPx(line) >= leastInches * dpi)
    .filter((line) => isSolid(track, line))

/** Upright lines, west to east, at least so many inches long. */
export const uprightLines = ({ width, height, dpi = 0, at }: Picture, leastInches: number): Line[] =>
  Array.from({ length: width }, (_, x) =>
    linesIn({ isInked: (y) => pencil(at(x, y)), end: height, at: x }, leastInches, dpi),
  ).flat()

/** Level lines from the top down. */
export const levelLines = ({ width, height, dpi = 0, at }: Picture, leastInches: number): Line[] =>
  Array.from({ length: height }, (_, y) =>
    linesIn({ isInked: (x) => pencil(at(x, y)), end: width, at: y }, leastInches, dpi),
  ).flat()

/** Pixels of an ink in a region. */
export const inkIn = ({ at }: Picture, { x, y }: Region, ink: Ink): number => {
  let inked = 0
  for (let py = Math.round(y[0]); py < y[1]; py += 1)
    for (let px = Math.round(x[0]); px < x[1]; px += 1) inked += Number(ink(at(px, py)))
  return inked
}
