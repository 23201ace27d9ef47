import type { Mouth, Stick } from '../../model/built'
import { fromTicks, inches } from '../../units/length'
import { dropOver } from '../../units/slope'
import { cutOf } from './cut'
import { numberOf, placeAt } from './frame'
import { invertAt } from './levels'
import type { RackPlan } from './plan'
import { layFrom, type Direction } from './stick'

/** How much shorter a gutter section may come: common practice, no source. */
const SECTION_MINUS_MM = inches(1 / 4)

/** Snips part gutter without a kerf. */
const SNIPS_KERF_MM = 0

/** What is left of a section below this is nothing. */
const NOTHING_MM = fromTicks(1)

/** Whole sections from the high end, then what is left, mm. */
const sectionLengths = (runMm: number, sectionMm: number): number[] => {
  const whole = Math.floor((runMm + NOTHING_MM) / sectionMm)
  const restMm = runMm - whole * sectionMm
  return [...Array<number>(whole).fill(sectionMm), ...(restMm > NOTHING_MM ? [restMm] : [])]
}

/** Down the fall of a gutter. */
const downFall = (slopeMmPerM: number): Direction => {
  const drop = dropOver(1, slopeMmPerM)
  const run = 1 / Math.hypot(1, drop)
  return { u: run, v: 0, z: -drop * run }
}

/** One trough under each line: sections end to end, each lying along its invert. */
export const gutterSticks = (plan: RackPlan): Stick[] => {
  const { part, frame, materials, positions, levels } = plan
  const { key, topMm, depthMm } = materials.gutter
  const section = materials.stickOf(materials.gutter)
  const sectionMm = section.measuredMm
  const down = downFall(part.gutterFall)
  const sections = sectionLengths(positions.lengthMm, sectionMm)
  return positions.lineV.flatMap((v) =>
    sections.map((lengthMm, index) => {
      const u = positions.gutterFromU + index * sectionMm * down.u
      const piece = {
        mark: 'GT',
        stock: key,
        lengthMm,
        widthMm: topMm,
        heightMm: depthMm,
        cut: cutOf(lengthMm, [section], SNIPS_KERF_MM),
        minusMm: SECTION_MINUS_MM,
        holes: [],
      }
      const rack = Math.min(Math.max(Math.floor((u + lengthMm / 2) / part.rackLengthMm), 0), part.racks - 1)
      return layFrom(frame, piece, { u, v, z: invertAt(part, levels, u) }, down, rack)
    }),
  )
}

/** Where each trough lets its water down. */
export const outletMouths = ({ part, frame, positions, levels }: RackPlan): Mouth[] => {
  const z = invertAt(part, levels, positions.outletU)
  return positions.lineV.map((v, index) => ({
    role: 'trough-outlet',
    at: placeAt(frame, positions.outletU, v, z),
    line: numberOf(frame.isFromStart, index, part.lines) + 1,
    station: 0,
  }))
}
