import type { Bay } from '../checks/context'
import type { Settings } from '../layout/settings'
import type { Built } from '../model/built'
import type { PartId } from '../model/ids'
import type { StockMeasures } from '../model/measuredStock'
import { rememberEach, rememberLast } from '../model/remember'
import type { RowStrength, Screen } from '../model/strength'
import { isWorse } from './loads/allowed'
import { barScreen, carriedBars } from './loads/bars'
import { barScreens } from './loads/barScreens'
import { conduitsUsed } from './loads/conduitUsed'
import { frameOf, placeOf, type Frame, type FrameStick } from './loads/frame'
import { groundScreens } from './loads/ground'
import { hungOn } from './loads/hung'
import { railChains } from './loads/railChain'
import { carriedRail } from './loads/rails'
import { railScreens, type HeldDown } from './loads/railScreens'
import { riserScreens } from './loads/risers'
import { loadsOf } from './loads/rowLoads'
import { stanceOf } from './loads/stance'

/** What a row's strength follows from beside its built things. */
interface Assumed {
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

const isSame = (a: Assumed, b: Assumed): boolean =>
  a.measured === b.measured &&
  (a.settings === b.settings || STRENGTH_SETTINGS.every((name) => a.settings[name] === b.settings[name]))

const worstFirst = (screens: readonly Screen[]): readonly Screen[] =>
  screens.toSorted((a, b) => Number(isWorse(b, a)) - Number(isWorse(a, b)))

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

const rowStrength = (frame: Frame, { settings, measured }: Assumed): RowStrength => {
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
  const [worst] = screens
  return {
    part: frame.built.part,
    loads,
    screens,
    rails,
    bar: barScreen(bars, settings),
    stance: stanceOf(input),
    state: worst?.state ?? 'Within',
    at: placeOf(frame.axes, worst?.at ?? { u: frame.lengthMm / 2, v: 0, z: 0 }),
  }
}

const strengthOfRow = rememberEach<Built, Assumed, RowStrength | undefined>((built, assumed) => {
  const frame = frameOf(built)
  return frame && rowStrength(frame, assumed)
}, isSame)

const ofBay = (
  rows: readonly Built[],
  settings: Settings,
  measured: readonly StockMeasures[],
): ReadonlyMap<PartId, RowStrength> => {
  const assumed = { settings, measured }
  return new Map(
    rows.flatMap((built): [PartId, RowStrength][] => {
      const strength = strengthOfRow(built, assumed)
      return strength ? [[built.part, strength]] : []
    }),
  )
}

const rememberedBay = rememberLast(ofBay)

/**
 * Step 5: what every row of racks carries and how it stands under it. Asked for apart from the evaluation, as findings are, so that
 * the bay is drawn before it has loaded; remembered for each row while its built things and the bay's assumptions stay the same.
 */
export const strengthOf = ({ built, settings, site }: Bay): ReadonlyMap<PartId, RowStrength> =>
  rememberedBay(built, settings, site.measured)
