import { forceOf, lengthOf, pressureOf, term } from '../../checks/found'
import type { RackFacts } from '../../model/rackFacts'
import type { Screen } from '../../model/strength'
import { kilopascals, poundsForce } from '../../units/force'
import { stateOf } from './risersScreen'
import type { RowInput } from './rowInput'

/** Purlins and trusses take so much at one place in mid span, N. Source: Bartok, citing the National Greenhouse Manufacturers Association. */
const MID_SPAN_N = poundsForce(100)

/** Width of the row, leaves included, mm: the outer lines' distances from the left face add up to it. */
const widthOf = ({ lineReachMm }: RackFacts): number => (lineReachMm[0] ?? 0) + (lineReachMm.at(-1) ?? 0)

/** The most that hangs at one place of the house, N. */
const worstHanging = ({ rails }: RowInput): number =>
  Math.max(0, ...rails.flatMap(({ reactions }) => reactions.map(({ mostN }) => mostN)))

/**
 * A row that hangs from the house against what its maker allows in writing, and what a purlin takes at one place. Without a
 * figure it is refused whatever it weighs; none for a row without a width.
 */
export const houseScreens = (input: RowInput): readonly Screen[] => {
  const { facts, loads, settings } = input
  const [lengthMm, widthMm] = [facts.runMm, widthOf(facts)]
  if (widthMm <= 0) return []
  const kpa = kilopascals(loads.fullN / (lengthMm * widthMm))
  const hangsN = worstHanging(input)
  const allowedKpa = settings.houseKpa ?? 0
  const byArea = allowedKpa > 0 ? kpa / allowedKpa : Infinity
  const byHanger = hangsN / MID_SPAN_N
  const used = Math.max(byArea, byHanger)
  const isByHanger = byHanger > byArea
  return [
    {
      id: 'house-load',
      mark: 'RL',
      state: stateOf(used),
      used,
      measured: isByHanger ? forceOf(hangsN) : pressureOf(kpa),
      limit: isByHanger ? forceOf(MID_SPAN_N) : pressureOf(allowedKpa),
      under: 'full',
      at: { u: lengthMm / 2, v: 0, z: facts.barTopMm },
      terms: [
        term('Row with all that hangs', forceOf(loads.fullN)),
        term('Length', lengthOf(lengthMm)),
        term('Width, leaves included', lengthOf(widthMm)),
        term('Load on its plan area', pressureOf(kpa)),
        term('Most at one hanger', forceOf(hangsN)),
        term('A purlin takes at mid span', forceOf(MID_SPAN_N)),
      ],
    },
  ]
}
