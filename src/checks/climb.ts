import { conduitOf } from '../catalogue/conduit'
import { tubeSection } from '../catalogue/section'
import type { Built, Stick } from '../model/built'
import type { RowStrength } from '../model/strength'
import { poundsForce } from '../units/force'
import { inches } from '../units/length'

/** A grown person with what is carried. An assumption. */
export const CLIMBER_N = poundsForce(200)

/** Stress of a conduit with a person at the middle of a span that stands alone, MPa: PL/4 over its section modulus. */
export const climbedMpa = (stock: string, spanMm: number): number =>
  (CLIMBER_N * spanMm) / 4 / tubeSection(conduitOf(stock.replace(/^conduit-/, ''))).sectionMm3

export interface Climbed {
  readonly stock: string
  readonly spanMm: number
  readonly stressMpa: number
  readonly u: number
  readonly v: number
}

/** The span of a row's rails that a person at its middle works hardest; undefined where it has none. */
export const worstClimbed = ({ rails }: Pick<RowStrength, 'rails'>): Climbed | undefined =>
  rails
    .flatMap(({ v, spans }) => spans.filter(({ isOverhang }) => !isOverhang).map((span) => ({ v, span })))
    .map(({ v, span: { fromU, toU, stock } }) => ({
      stock,
      spanMm: toU - fromU,
      stressMpa: climbedMpa(stock, toU - fromU),
      u: (fromU + toU) / 2,
      v,
    }))
    .reduce<Climbed | undefined>(
      (worst, each) => (worst && worst.stressMpa >= each.stressMpa ? worst : each),
      undefined,
    )

/**
 * Higher than a rung of a ladder (29 CFR 1910.23(b)(2): 10 to 14 in apart) and no higher than a knee is lifted. Runners and
 * bearers where they usually lie are lower, and nobody gets up on them. Common practice, no source.
 */
const STEP_MM = { from: inches(12), to: inches(40) }

/** Level members less than this apart are a ladder: International Swimming Pool and Spa Code 305.2.5 on barriers, from memory. */
const LADDER_MM = inches(45)

const topOf = ({ from, to, heightMm }: Stick): number => Math.max(from.z, to.z) + heightMm / 2

const isLevel = ({ from, to, heightMm }: Stick): boolean => Math.abs(from.z - to.z) < heightMm

/** Lumber and conduit bear a foot; a plastic trough does not. */
const bearsFoot = ({ stock }: Stick): boolean => /^(?:lumber|conduit)/.test(stock)

/** The highest member that a person can step on to get at rails of a height, with its mark; heights over the rack datum, mm. */
export const footholdOf = (
  { sticks }: Built,
  railMm: number,
): { readonly mark: string; readonly topMm: number } | undefined =>
  sticks
    .filter((stick) => bearsFoot(stick) && isLevel(stick))
    .map((stick) => ({ mark: stick.mark, topMm: topOf(stick) }))
    .filter(
      ({ topMm }) => topMm >= STEP_MM.from && topMm <= STEP_MM.to && Math.abs(railMm - topMm) < LADDER_MM,
    )
    .reduce<{ mark: string; topMm: number } | undefined>(
      (best, each) => (best && best.topMm >= each.topMm ? best : each),
      undefined,
    )
