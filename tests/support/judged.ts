import { evaluate } from '../../src/evaluate/evaluate'
import { sentence } from '../../src/checks/words'
import type { Aisle } from '../../src/checks/aisles'
import { applyMend } from '../../src/layout/mend'
import type { Layout } from '../../src/layout/schema'
import type { Finding, Quantity } from '../../src/model/finding'
import { toGph } from '../../src/units/flow'
import { toKsi, toPoundsForce, toPsf } from '../../src/units/force'
import { toGallons } from '../../src/units/volume'
import { toFeetPerSecond } from '../../src/units/velocity'
import { writerFor } from '../../src/units/writer'
import type { Sketch } from './bay'
import { inchesOf } from './site'

const layoutOf = (bay: Sketch | Layout): Layout => ('parts' in bay ? bay : bay.layout())

/** The name that a builder gave a part. */
export const nameIn = (layout: Layout, id: string): string =>
  layout.parts.find((part) => part.id === id)?.name ?? id

/** The finding as a builder reads it, in feet and inches. */
export const sentenceIn = (layout: Layout, finding: Finding): string =>
  sentence(finding, { ...writerFor('feet-inches'), name: (id) => nameIn(layout, id) })

/** Findings of one rule in a bay. */
export const findingsOf = (rule: string, bay: Sketch | Layout): readonly Finding[] =>
  evaluate(layoutOf(bay)).findings.filter((finding) => finding.rule === rule)

const thousandths = (value: number): number => Math.round(value * 1000) / 1000

const numberShown = ({ value, unit }: Quantity): number => {
  switch (unit) {
    case 'mm/m':
      return thousandths((value * 12) / 1000)
    case 'lph':
      return thousandths(toGph(value))
    case 'm/s':
      return thousandths(toFeetPerSecond(value))
    case 'share':
      return thousandths(value * 100)
    case 'L':
      return thousandths(toGallons(value))
    case 'N':
      return thousandths(toPoundsForce(value))
    case 'MPa':
      return thousandths(toKsi(value))
    case 'kPa':
      return thousandths(toPsf(value))
    case 'C':
    case 'ratio':
    case 'count':
      return thousandths(value)
    default:
      return inchesOf(value)
  }
}

/**
 * What a rule says of a bay, as `Tight, 18 of 36`: lengths in inches, falls in inches a foot, flows in US gallons an hour,
 * velocities in feet a second, volumes in US gallons, forces in pounds,
 * stresses in ksi, pressures on ground in psf, shares per cent, degrees Celsius, counts as they are; nothing where it finds nothing.
 */
export const judged = (rule: string, bay: Sketch | Layout): string[] =>
  findingsOf(rule, bay).map(({ state, measured, limit }) => {
    const shown = (value: number) => numberShown({ ...measured, value })
    return `${state}, ${shown(measured.value)} of ${shown(limit.value)}`
  })

/** What a rule says of a bay, in words. */
export const told = (rule: string, bay: Sketch | Layout): string[] => {
  const layout = layoutOf(bay)
  return findingsOf(rule, layout).map((finding) => sentenceIn(layout, finding))
}

/** The bay after one press on the mend of one of a rule's findings. */
export const mended = (rule: string, bay: Sketch | Layout, index = 0): Layout => {
  const layout = layoutOf(bay)
  const mend = findingsOf(rule, layout)[index]?.mend
  if (!mend) throw new RangeError(`${rule} has no mend for its finding ${index}.`)
  return applyMend(layout, mend)
}

/** The aisle between two parts, or from a part to the wall on a side, by the names of the parts. */
export const aisleBetween = (layout: Layout, from: string, to: string): Aisle => {
  const aisle = evaluate(layout).bay.aisles.find(({ row, other }) => {
    const names = [nameIn(layout, row), nameIn(layout, other ?? 'wall')]
    return names.includes(from) && names.includes(to)
  })
  if (!aisle) throw new RangeError(`There is no aisle between ${from} and ${to}.`)
  return aisle
}
