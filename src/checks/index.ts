import { airTrapVent } from './air-trap-vent'
import { aisleWidthMin } from './aisle-width-min'
import { barLoadMax } from './bar-load-max'
import { barRiserGap } from './bar-riser-gap'
import { barSleeveGap } from './bar-sleeve-gap'
import { bodyOverlap } from './body-overlap'
import { cartReachMin } from './cart-reach-min'
import { climbGuard } from './climb-guard'
import type { Rule } from './context'
import { digDepthMax } from './dig-depth-max'
import { doorHeadMin } from './door-head-min'
import { doorMissing } from './door-missing'
import { doorWallMax } from './door-wall-max'
import { doorWidthMin } from './door-width-min'
import { drainBranchLevel } from './drain-branch-level'
import { drainCleanout } from './drain-cleanout'
import { drainCoverMin } from './drain-cover-min'
import { drainFallMin } from './drain-fall-min'
import { drainFullMax } from './drain-full-max'
import { drainPitReach } from './drain-pit-reach'
import { exitAccessMin } from './exit-access-min'
import { fishDripClear } from './fish-drip-clear'
import { footGroundMax } from './foot-ground-max'
import { footShimMax } from './foot-shim-max'
import { gutterFallMin } from './gutter-fall-min'
import { gutterRunMax } from './gutter-run-max'
import { headBoxFillMin } from './head-box-fill-min'
import { headBoxLevelMin } from './head-box-level-min'
import { headroomMin } from './headroom-min'
import { holeBellGap } from './hole-bell-gap'
import { holeBitMin } from './hole-bit-min'
import { holeEdgeMin } from './hole-edge-min'
import { houseLoadMax } from './house-load-max'
import { insideHouse } from './inside-house'
import { jointRiserNear } from './joint-riser-near'
import { keepClearFree } from './keep-clear-free'
import { lateralFlushEnd } from './lateral-flush-end'
import { levelStackShort } from './level-stack-short'
import { lineReachMax } from './line-reach-max'
import { mainSupplyReach } from './main-supply-reach'
import { outletDrainReach } from './outlet-drain-reach'
import { outletDropMin } from './outlet-drop-min'
import { outletFlowMax } from './outlet-flow-max'
import { outletTowerGap } from './outlet-tower-gap'
import { pipeVelocityMax } from './pipe-velocity-max'
import { pitFootingClear } from './pit-footing-clear'
import { pitInletLevel } from './pit-inlet-level'
import { pitLevelOrder } from './pit-level-order'
import { pitOverflowLevel } from './pit-overflow-level'
import { pitOverflowSize } from './pit-overflow-size'
import { pitTransitRoom } from './pit-transit-room'
import { plasticTravelMax } from './plastic-travel-max'
import { polyFamilySame } from './poly-family-same'
import { pumpFlowFit } from './pump-flow-fit'
import { pumpLiftMin } from './pump-lift-min'
import { railInsertionMin } from './rail-insertion-min'
import { railJointFit } from './rail-joint-fit'
import { railSpanMax } from './rail-span-max'
import { railUpliftMax } from './rail-uplift-max'
import { riserBraceBoth } from './riser-brace-both'
import { riserLoadMax } from './riser-load-max'
import { rowHeightMax } from './row-height-max'
import { serviceCrossingMin } from './service-crossing-min'
import { stockLengthMax } from './stock-length-max'
import { suctionLevelMin } from './suction-level-min'
import { surveyLoopClose } from './survey-loop-close'
import { tipAirMin } from './tip-air-min'
import { tipTroughWidth } from './tip-trough-width'
import { tipWindowMin } from './tip-window-min'
import { tipsEmptyMin } from './tips-empty-min'
import { tipsOneSideMax } from './tips-one-side-max'
import { towerFlowEven } from './tower-flow-even'
import { towerStepMax } from './tower-step-max'
import { towerWithdrawalMin } from './tower-withdrawal-min'
import { trenchFootClear } from './trench-foot-clear'
import { troughFreeboardMin } from './trough-freeboard-min'
import { troughPuddleMax } from './trough-puddle-max'
import { tubeHeadMin } from './tube-head-min'
import { tubeTransitionBand } from './tube-transition-band'
import { wheelchairRouteMin } from './wheelchair-route-min'
import { zoneFlowBalance } from './zone-flow-balance'
import { zoneMainReach } from './zone-main-reach'
import { zoneValveOpen } from './zone-valve-open'

/** Every rule, in the order in which the sidebar groups them: floor, drains, water, racks, strength. */
export const rules: readonly Rule[] = [
  bodyOverlap,
  insideHouse,
  aisleWidthMin,
  keepClearFree,
  headroomMin,
  lineReachMax,
  surveyLoopClose,
  doorMissing,
  cartReachMin,
  exitAccessMin,
  doorWallMax,
  doorWidthMin,
  doorHeadMin,
  wheelchairRouteMin,
  outletDrainReach,
  outletDropMin,
  outletFlowMax,
  drainFallMin,
  drainFullMax,
  drainCoverMin,
  drainPitReach,
  drainBranchLevel,
  drainCleanout,
  holeBellGap,
  pitInletLevel,
  pitLevelOrder,
  pitTransitRoom,
  pitOverflowLevel,
  pitOverflowSize,
  pitFootingClear,
  trenchFootClear,
  serviceCrossingMin,
  digDepthMax,
  zoneMainReach,
  mainSupplyReach,
  zoneValveOpen,
  pumpLiftMin,
  pumpFlowFit,
  suctionLevelMin,
  headBoxLevelMin,
  headBoxFillMin,
  zoneFlowBalance,
  towerFlowEven,
  tubeTransitionBand,
  tubeHeadMin,
  pipeVelocityMax,
  airTrapVent,
  lateralFlushEnd,
  levelStackShort,
  footShimMax,
  gutterRunMax,
  gutterFallMin,
  tipWindowMin,
  tipAirMin,
  tipTroughWidth,
  outletTowerGap,
  troughPuddleMax,
  troughFreeboardMin,
  barRiserGap,
  barSleeveGap,
  railJointFit,
  railInsertionMin,
  holeBitMin,
  towerWithdrawalMin,
  towerStepMax,
  plasticTravelMax,
  stockLengthMax,
  polyFamilySame,
  fishDripClear,
  railSpanMax,
  barLoadMax,
  jointRiserNear,
  riserBraceBoth,
  riserLoadMax,
  holeEdgeMin,
  railUpliftMax,
  footGroundMax,
  houseLoadMax,
  tipsEmptyMin,
  tipsOneSideMax,
  rowHeightMax,
  climbGuard,
]

const byId = new Map(rules.map((rule) => [rule.id, rule]))

/** The rule of an id. @throws RangeError for an id that no rule has. */
export const ruleOf = (id: string): Rule => {
  const rule = byId.get(id)
  if (!rule) throw new RangeError(`There is no rule ${id}; the rules are ${[...byId.keys()].join(', ')}`)
  return rule
}
