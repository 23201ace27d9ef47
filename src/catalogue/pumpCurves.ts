import type { PumpPoint } from '../model/supplyFacts'
import { gpm } from '../units/flow'
import { feet } from '../units/length'
import { finder } from './lookup'

/** What a submersible pump lifts at each flow. */
export interface PumpCurveRow {
  readonly key: 'small' | 'middle' | 'large' | 'extra-large'
  readonly title: string
  /** Flow rising from none, head falling all the way. */
  readonly curve: readonly PumpPoint[]
  readonly source: string
}

const INVENTED = 'Invented generic curve, not a pump of any maker: read your own from its label'

/** Points as a label prints them: gallons a minute, feet. */
const row = (
  key: PumpCurveRow['key'],
  title: string,
  points: readonly (readonly [flowGpm: number, headFeet: number])[],
): PumpCurveRow => ({
  key,
  title,
  curve: points.map(([flow, head]) => ({ flowLph: gpm(flow), headMm: feet(head) })),
  source: INVENTED,
})

export const pumpCurves: readonly PumpCurveRow[] = [
  row('small', 'Small pump', [
    [0, 13],
    [6, 12.1],
    [12, 10.2],
    [18, 7],
    [24, 2],
  ]),
  row('middle', 'Middle pump', [
    [0, 24],
    [12, 22.8],
    [24, 20.5],
    [37, 16.5],
    [48, 11.5],
    [60, 4],
  ]),
  row('large', 'Large pump', [
    [0, 30],
    [25, 28.4],
    [50, 25],
    [75, 19.5],
    [95, 12],
    [110, 4],
  ]),
  row('extra-large', 'Extra large pump', [
    [0, 40],
    [40, 37.5],
    [80, 32],
    [115, 24],
    [150, 12],
  ]),
]

/** The invented pump of a key, such as `middle`. */
export const pumpCurveRowOf: (key: string) => PumpCurveRow = finder('pump', pumpCurves, (pump) => pump.key)
