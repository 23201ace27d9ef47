import { POLYETHYLENE_C } from '../../solvers/water/hazenWilliams'
import type { Writer } from '../../units/writer'
import type { LateralCheck } from './lateralCheck'

/** What a table of the trade is good for: water near 20 °C that is churned. From memory, as of any such table. */
const TABLE_C = { from: 15, to: 25 }

const whyOff = ({ smoothShare }: LateralCheck, waterC: number, { share, temperature }: Writer): string => {
  const reasons = [
    ...(smoothShare > 0
      ? [`${share(smoothShare)} of this run’s tubes hang where water no longer churns (Reynolds under 4,000)`]
      : []),
    ...(waterC < TABLE_C.from || waterC > TABLE_C.to ? [`the water has ${temperature(waterC)}`] : []),
  ]
  return reasons.length === 0
    ? 'It knows of no barbs and no temperature; here neither matters much.'
    : `It holds for churned water near ${temperature(20)} and knows of no barbs; here ${reasons.join(', and ')}, so it is no judge of the smaller number.`
}

/** The cross-check of a lateral in words: both losses, how far apart, and when the table does not hold. */
export const checkWords = (check: LateralCheck, waterC: number, writer: Writer): string => {
  const { length, flowTotal, sightTube, share } = writer
  const { lateral, lengthMm, flowLph, solvedMm, tableMm } = check
  const off =
    solvedMm > 0 ? `, ${share(Math.abs(tableMm / solvedMm - 1))} ${tableMm < solvedMm ? 'less' : 'more'}` : ''
  return [
    `Lateral ${lateral}, ${length(lengthMm)} with ${flowTotal(flowLph)}: the solved network loses ${sightTube(solvedMm)}.`,
    `Hazen-Williams (C ${POLYETHYLENE_C}, polyethylene) with Christiansen’s factor gives ${sightTube(tableMm)}${off}.`,
    whyOff(check, waterC, writer),
  ].join(' ')
}
