import type { PartId } from '../../model/ids'
import { paired } from './paired'

/** What a figure's number is: lengths mm, levels mm from the benchmark's zero, falls mm/m, flows L/h, shares of 1. */
export type FigureUnit =
  | 'length'
  | 'level'
  | 'fall'
  | 'flow' // of one tower
  | 'flow-total'
  | 'head'
  | 'share'
  | 'volume'
  | 'state'

/** A number, or a state word, of a plan that the crew knows by a name. */
export interface Figure {
  /** Stays the same while it is about the same thing. */
  readonly key: string
  /** Whose it is. */
  readonly part: PartId
  /** What it is, in the crew's words: `Invert at the low end`. */
  readonly what: string
  readonly unit: FigureUnit
  /** undefined where there is none, such as the flow of a dry row. */
  readonly value: number | string | undefined
}

export interface FigureChange extends Omit<Figure, 'value'> {
  /** undefined where that plan has no such figure. */
  readonly before: number | string | undefined
  readonly after: number | string | undefined
}

/** Differences under what the crew can read are none: 1/64 in, a twentieth of a litre an hour, half of a tenth of a percent. */
const LEAST: Readonly<Record<FigureUnit, number>> = {
  length: 0.4,
  level: 0.4,
  fall: 0.01,
  flow: 0.05,
  'flow-total': 5,
  head: 3,
  share: 0.0005,
  volume: 0.5,
  state: 0,
}

const isSame = (unit: FigureUnit, a: Figure['value'], b: Figure['value']): boolean =>
  typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) < LEAST[unit] : a === b

/** Figures that differ by more than anyone reads, by their keys. */
export const figureChanges = (before: readonly Figure[], after: readonly Figure[]): readonly FigureChange[] =>
  paired(before, after).flatMap((pair) => {
    const { value: _, ...said } = pair.said
    const [was, is] = [pair.before?.value, pair.after?.value]
    return isSame(said.unit, was, is) ? [] : [{ ...said, before: was, after: is }]
  })
