import { outletOf } from '../../catalogue/outlet'
import type { Stick } from '../../model/built'
import type { TroughFacts } from '../../model/troughFacts'
import { dropOver } from '../../units/slope'
import { invertAt } from './levels'
import type { RackPlan } from './plan'

/** Stations count from the start of the row, wherever its gutters are high. */
const fromStart = ({ frame }: RackPlan, fromHigh: readonly number[]): readonly number[] =>
  frame.isFromStart ? fromHigh : fromHigh.toReversed()

/** What the row says of its troughs to whoever reckons the water in them. */
export const troughFacts = (plan: RackPlan, sticks: readonly Stick[]): TroughFacts => {
  const { part, positions, levels, materials } = plan
  const { gutterFromU, barU, outletU, lengthMm } = positions
  const sections = sticks.filter(({ mark }) => mark === 'GT').length / part.lines
  return {
    gutter: materials.gutter.key,
    fallMmPerM: part.gutterFall,
    runMm: lengthMm / Math.hypot(1, dropOver(1, part.gutterFall)),
    outletFromHighMm: outletU - gutterFromU,
    outletBoreMm: outletOf(part.outletBore).boreMm,
    lines: part.lines,
    stationFromHighMm: fromStart(
      plan,
      barU.map((u) => u - gutterFromU),
    ),
    tipOverHighInvertMm: levels.tipMm - invertAt(part, levels, gutterFromU),
    joiners: sections - 1,
  }
}
