import type { Settings } from '../../layout/settings'
import type { StockMeasures } from '../../model/measuredStock'
import type { RowSpot, RowStrength, Screen, ScreenId } from '../../model/strength'
import { isWorse } from './allowed'
import { barScreen, carriedBars } from './bars'
import { barScreens } from './barScreens'
import { conduitsUsed } from './conduitUsed'
import { placeOf, type Frame, type FrameStick } from './frame'
import { groundScreens } from './ground'
import { hungOn } from './hung'
import { railChains } from './railChain'
import { carriedRail } from './rails'
import { railScreens, type HeldDown } from './railScreens'
import { riserScreens } from './risers'
import { loadsOf } from './rowLoads'
import { stanceOf } from './stance'

/** What a row's strength follows from beside its built things. */
export interface Assumed {
  readonly settings: Settings
  readonly measured: readonly StockMeasures[]
}

/** The settings that strength follows from: units, crops and water change nothing about it. */
const STRENGTH_SETTINGS = [
  'wetTowerKg',
  'pushN',
  'proofTimes',
  'conduitYieldMpa',
  'sagOver',
  'species',
  'woodIs',
  'soilKpa',
  'houseKpa',
] as const satisfies readonly (keyof Settings)[]

export const isSameAssumed = (a: Assumed, b: Assumed): boolean =>
  a.measured === b.measured &&
  (a.settings === b.settings || STRENGTH_SETTINGS.every((name) => a.settings[name] === b.settings[name]))

/** Kept or not as drawn, whatever hangs: close to such a limit nothing is used up. */
const GEOMETRY: ReadonlySet<ScreenId> = new Set<ScreenId>([
  'rail-joint',
  'riser-slenderness',
  'hole-edge',
  'hole-end',
])

const isKeptGeometry = ({ id, state }: Screen): boolean => GEOMETRY.has(id) && state === 'Within'

/** What is over a limit, then what a load uses most of, then geometry that is kept: the first of them governs. */
const worstFirst = (screens: readonly Screen[]): readonly Screen[] =>
  screens.toSorted(
    (a, b) =>
      Number(isKeptGeometry(a)) - Number(isKeptGeometry(b)) || Number(isWorse(b, a)) - Number(isWorse(a, b)),
  )

const isLumber = ({ stick }: FrameStick): boolean => stick.stock.startsWith('lumber-')

/** Weight of the frame without conduit and pipes that stands on each riser, and whether boards along the row tie them. */
const heldDown = ({ sticks }: Frame, byMark: ReadonlyMap<string, number>): HeldDown => {
  let [risers, lumberN] = [0, 0]
  let isTiedAlong = false
  for (const [mark, laid] of sticks) {
    const [first] = laid
    if (!first || !isLumber(first)) continue
    lumberN += byMark.get(mark) ?? 0
    if (mark.startsWith('RS')) risers += laid.length
    else if (mark === 'BR')
      isTiedAlong ||= Math.abs(first.to.u - first.from.u) > Math.abs(first.to.v - first.from.v)
  }
  return { frameN: risers > 0 ? lumberN / risers : 0, isTiedAlong }
}

/** Where to look first; the middle of a row of which nothing is screened. */
export const worstSpot = ([worst]: readonly Screen[], { lengthMm }: Frame): RowSpot =>
  worst?.at ?? { u: lengthMm / 2, v: 0, z: 0 }

/** Step 5 of one row, all of it. */
export const rowStrength = (frame: Frame, { settings, measured }: Assumed): RowStrength => {
  const conduits = conduitsUsed(measured)
  const loads = loadsOf(frame, settings, measured)
  const hung = hungOn(frame, loads.towerN, conduits)
  const chains = railChains(frame, conduits)
  const [left, right] = chains
  const carried =
    left && right
      ? [
          carriedRail(left, right.v, hung, conduits, settings),
          carriedRail(right, left.v, hung, conduits, settings),
        ]
      : []
  const railV = chains.map(({ v }) => v)
  const bars = carriedBars(hung.bars, railV, conduits, settings)
  const rails = carried.map(({ line }) => line)
  const input = { frame, facts: frame.rack, loads, rails, settings }
  const screens = worstFirst([
    ...railScreens(carried, settings, heldDown(frame, loads.byMark)),
    ...barScreens(bars, settings),
    ...riserScreens(input),
    ...groundScreens(input),
  ])
  return {
    part: frame.built.part,
    loads,
    screens,
    rails,
    bar: barScreen(bars, settings),
    stance: stanceOf(input),
    state: screens[0]?.state ?? 'Within',
    at: placeOf(frame.axes, worstSpot(screens, frame)),
  }
}
