import { DURATION, FLAT_USE } from '../../catalogue/timberFactors'
import { forceOf, lengthOf, momentOf, stressOf, term } from '../../checks/found'
import type { Screen } from '../../model/strength'
import type { Braced, Riser } from './risersBuilt'
import { riserScreen, type Wood } from './risersScreen'

/** A push one way: how far over where the riser is held, and the section that bends. */
interface Pushed {
  readonly way: string
  readonly leverMm: number
  /** The side that lies the way of the push, mm, and the other. */
  readonly deepMm: number
  readonly wideMm: number
}

const leverMm = ({ hole }: Riser, { nodeMm }: Braced): number =>
  nodeMm === undefined ? hole.centreMm : Math.max(0, hole.centreMm - nodeMm)

/**
 * A push along the row is carried by its rails to the risers with side braces, so that one which a rail ties is not bent. Across
 * the row a rail is far too limber for that: each pair without a cross brace takes the push by itself, in one riser.
 */
const pushesOf = (riser: Riser): Pushed[] => {
  const { along, across, alongMm, acrossMm } = riser
  const isTiedAlong = along.isHeld && along.nodeMm === undefined
  const acrossPush = {
    way: 'across the row',
    leverMm: leverMm(riser, across),
    deepMm: acrossMm,
    wideMm: alongMm,
  }
  if (isTiedAlong) return [acrossPush]
  return [
    acrossPush,
    { way: 'along the row', leverMm: leverMm(riser, along), deepMm: alongMm, wideMm: acrossMm },
  ]
}

const bent = (riser: Riser, pushed: Pushed, pushN: number, { values }: Wood): Screen => {
  const { way, deepMm, wideMm } = pushed
  const sectionMm3 = (wideMm * deepMm ** 2) / 6
  const momentNmm = pushN * pushed.leverMm
  const bendingMpa = momentNmm / sectionMm3
  const flatUse = deepMm < wideMm ? FLAT_USE : 1
  const allowedMpa = values.bendingMpa * flatUse * DURATION.push
  return riserScreen('riser-push', riser, {
    used: bendingMpa / allowedMpa,
    measured: stressOf(bendingMpa),
    limit: stressOf(allowedMpa),
    terms: [
      term(`A person pushes ${way} with`, forceOf(pushN)),
      term('Rail over where the riser is held', lengthOf(pushed.leverMm)),
      term('Moment', momentOf(momentNmm)),
      term(`Side of the board ${way}`, lengthOf(deepMm)),
      term('Bending stress', stressOf(bendingMpa)),
      term("Fb' against a push", stressOf(allowedMpa)),
    ],
  })
}

/** A person who leans on a riser or pulls at it, at the height of the rail; both ways. */
export const pushScreens = (riser: Riser, pushN: number, wood: Wood): readonly Screen[] =>
  pushesOf(riser).map((pushed) => bent(riser, pushed, pushN, wood))
