import type { Settings } from '../../layout/settings'
import type { StrengthState } from '../../model/strength'
import type { StretchWorst } from './carrying'

/** The bay's assumptions that conduit is screened by. */
export type ConduitSettings = Pick<Settings, 'conduitYieldMpa' | 'sagOver' | 'proofTimes'>

/** Share of the assumed yield that conduit may be bent to: allowable stress design, AISC Manual of Steel Construction, from memory; for conduit an assumption. */
export const BENDING_SHARE = 0.6

/** Over its limit by no more than so many times, a sag is proof-loaded before it is lived with: L/120 where L/180 is asked. An assumption. */
const PROOF_SAG_TIMES = 1.5

/** An overhang counts as a span of twice its length: IBC Table 1604.3, footnote, from memory. */
const OVERHANG_TIMES = 2

/** What conduit may be bent to, MPa. */
export const allowedMpa = ({ conduitYieldMpa }: ConduitSettings): number => BENDING_SHARE * conduitYieldMpa

type Length = Pick<StretchWorst, 'fromMm' | 'toMm' | 'isOverhang'>

/** Length that the sag of a span is held against, mm. */
export const sagLength = ({ fromMm, toMm, isOverhang }: Length): number =>
  (toMm - fromMm) * (isOverhang ? OVERHANG_TIMES : 1)

/** What a span may sag, mm. */
export const allowedSag = (stretch: Length, { sagOver }: ConduitSettings): number =>
  sagLength(stretch) / sagOver

export interface Judged {
  readonly state: StrengthState
  readonly used: number
}

/** Within the share of yield that is allowed; else, at the proof load, within the yield itself; else too long. */
export const judgeStress = (
  { stressMpa, proofStressMpa }: Pick<StretchWorst, 'stressMpa' | 'proofStressMpa'>,
  settings: ConduitSettings,
): Judged => {
  const used = stressMpa / allowedMpa(settings)
  if (used <= 1) return { state: 'Within', used }
  const isProof = Math.max(stressMpa, proofStressMpa) <= settings.conduitYieldMpa
  return { state: isProof ? 'Proof-load' : 'Too long', used }
}

export const judgeSag = (stretch: Length & Pick<StretchWorst, 'sag'>, settings: ConduitSettings): Judged => {
  const used = Math.max(0, stretch.sag.value) / allowedSag(stretch, settings)
  if (used <= 1) return { state: 'Within', used }
  return { state: used <= PROOF_SAG_TIMES ? 'Proof-load' : 'Too long', used }
}

const RANK: Readonly<Record<StrengthState, number>> = { Within: 0, 'Proof-load': 1, 'Too long': 2 }

/** Worse by its state, then by how much of the limit is used. */
export const isWorse = (a: Judged, b: Judged): boolean =>
  RANK[a.state] === RANK[b.state] ? a.used > b.used : RANK[a.state] > RANK[b.state]

/** The worst of several; the first where two are alike. Undefined of none. */
export const worstOfAll = <T extends Judged>(all: readonly T[]): T | undefined => {
  let worst: T | undefined
  for (const each of all) if (!worst || isWorse(each, worst)) worst = each
  return worst
}
