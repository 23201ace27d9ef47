import { carry, type Carried, type CarryingBeam } from '../../../src/evaluate/loads/carrying'
import { conduitsUsed, type ConduitUsed } from '../../../src/evaluate/loads/conduitUsed'
import { settingsSchema } from '../../../src/layout/settings'
import { poundsForce, poundsPerInch } from '../../../src/units/force'
import { inches } from '../../../src/units/length'

/** Rails as one works them by hand, in inches and pounds. */

/** The bay's assumptions as they come: 30 ksi, L/180, 1.5 times. */
export const assumed = settingsSchema.parse({})

const conduits = conduitsUsed([])

const conduit = (trade: string): ConduitUsed => conduits.get(`conduit-${trade}`)!

export interface HandRail {
  readonly trade: string
  readonly length: number
  readonly supports: readonly number[]
  /** Even load, pounds a foot, on the whole rail. */
  readonly plf?: number
  /** Towers: pounds at places; those of one inner list are harvested together. */
  readonly hung?: readonly (readonly { readonly at: number; readonly pounds: number }[])[]
}

const beamByHand = ({ trade, length, supports, plf = 0, hung = [] }: HandRail): CarryingBeam => ({
  fromMm: 0,
  toMm: inches(length),
  sticks: [{ toMm: inches(length), conduit: conduit(trade) }],
  supportsMm: supports.map(inches),
  hingesMm: [],
  dead: {
    points: [],
    lines: [{ fromMm: 0, toMm: inches(length), downNPerMm: poundsPerInch(plf / 12) }],
  },
  groups: hung.map((group) =>
    group.map(({ at, pounds }) => ({
      atMm: inches(at),
      leftN: poundsForce(pounds / 2),
      rightN: poundsForce(pounds / 2),
      middleN: 0,
    })),
  ),
  proofTimes: assumed.proofTimes,
})

export const byHand = (rail: HandRail): Carried => carry(beamByHand(rail))!

/** A bar of so many pounds every foot from half a foot on, over a length in inches, all harvested as one. */
export const everyFoot = (from: number, to: number, pounds: number) =>
  Array.from({ length: (to - from) / 12 }, (_, k) => ({ at: from + 6 + 12 * k, pounds }))
