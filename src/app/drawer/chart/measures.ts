import { toGph, toGpm, toLitresPerMinute } from '../../../units/flow'
import { toHeadFeet, toHeadM } from '../../../units/head'
import { INCHES_PER_FOOT, MM_PER_M, toInches, type Units } from '../../../units/length'
import { toFeetPerSecond } from '../../../units/velocity'
import { writerFor } from '../../../units/writer'

/** How one reader has what an axis measures: its unit, its number, and a value as it is read out. */
export interface Measure {
  readonly sign: string
  readonly toReader: (value: number) => number
  readonly write: (value: number) => string
}

type MeasureOf = (units: Units) => Measure

const asIs = (value: number): number => value

/** The flow of a tower, litres an hour. */
export const towerFlow: MeasureOf = (units) => ({
  ...(units === 'metric' ? { sign: 'L/h', toReader: asIs } : { sign: 'gph', toReader: toGph }),
  write: writerFor(units).flow,
})

/** The flow of a lateral, a main or a pump, litres an hour. */
export const totalFlow: MeasureOf = (units) => ({
  ...(units === 'metric' ? { sign: 'L/min', toReader: toLitresPerMinute } : { sign: 'gpm', toReader: toGpm }),
  write: writerFor(units).flowTotal,
})

/** A head as it stands in a sight tube, mm. */
export const sightTube: MeasureOf = (units) => ({
  ...(units === 'metric' ? { sign: 'mm', toReader: asIs } : { sign: 'in', toReader: toInches }),
  write: writerFor(units).sightTube,
})

/** The head of a pump or along a main, mm. */
export const pumpHead: MeasureOf = (units) => ({
  ...(units === 'metric' ? { sign: 'm', toReader: toHeadM } : { sign: 'ft', toReader: toHeadFeet }),
  write: writerFor(units).pumpHead,
})

/** A distance along a row or a main, mm. */
export const alongFloor: MeasureOf = (units) => ({
  ...(units === 'metric'
    ? { sign: 'm', toReader: (mm: number) => mm / MM_PER_M }
    : { sign: 'ft', toReader: (mm: number) => toInches(mm) / INCHES_PER_FOOT }),
  write: writerFor(units).length,
})

/** A velocity, m/s. */
export const pipeVelocity: MeasureOf = (units) => ({
  ...(units === 'metric' ? { sign: 'm/s', toReader: asIs } : { sign: 'ft/s', toReader: toFeetPerSecond }),
  write: writerFor(units).velocity,
})
