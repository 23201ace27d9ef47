import type { Member } from './members'
import type { RackBuilt } from './rowBuilt'

/** One riser pair with what ties it, as it is built flat on the floor; mm. */
export interface Frame {
  /** Middle of its risers, from the rack's high line. */
  readonly u: number
  readonly risers: readonly Member[]
  /** Across its foot: one cross-piece, or two short runners. */
  readonly feet: readonly Member[]
  readonly tie: Member | undefined
  /** Ties lie on the downhill face of the risers, but on the uphill one at the row's low end. */
  readonly tieIsDownhill: boolean
  readonly isSleeved: boolean
  /** Two lapped rails go through each of its risers. */
  readonly isDouble: boolean
}

const middleU = ({ from, to }: Member): number => (from.u + to.u) / 2

/** Boards of one frame lie within so much of its middle, mm: its own thickness and a little. */
const reachMm = ({ stick }: Member): number => 1.5 * stick.widthMm

const isNear = (u: number, member: Member): boolean => Math.abs(middleU(member) - u) < reachMm(member)

const isMarked =
  (...marks: readonly string[]) =>
  ({ stick }: Member): boolean =>
    marks.includes(stick.mark)

const isRiser = isMarked('RS-p', 'RS-s', 'RS-d')

/** Pairs of risers from the high end down. */
export const framesOf = ({ members }: Pick<RackBuilt, 'members'>): readonly Frame[] => {
  const risers = members.filter(isRiser)
  const us = [...new Set(risers.map(({ from }) => Math.round(from.u)))].toSorted((a, b) => a - b)
  return us.map((near) => {
    const pair = risers.filter(({ from }) => Math.abs(from.u - near) < 1)
    const u = pair[0]?.from.u ?? near
    const tie = members.find((member) => isMarked('TT')(member) && isNear(u, member))
    return {
      u,
      risers: pair,
      feet: members.filter((member) => isMarked('BX', 'BR')(member) && isNear(u, member)),
      tie,
      tieIsDownhill: tie === undefined || middleU(tie) > u,
      isSleeved: pair.some(isMarked('RS-s')),
      isDouble: pair.some(isMarked('RS-d')),
    }
  })
}

/** What the crew reads off a frame as it lies flat, mm. */
export interface FrameSizes {
  readonly riserMm: number
  readonly spacingMm: number
  readonly crossMm: number
  /** Top edge of the top tie, from the feet. */
  readonly tieTopMm: number
  /** Edges of what lies across the feet, from the feet. */
  readonly baseFromMm: number
  readonly baseToMm: number
  /** From the outer corner of a foot to the far upper corner of the tie: a riser cut long changes nothing. */
  readonly diagonalMm: number
}

export const frameSizes = (frame: Frame): FrameSizes | undefined => {
  const { risers, feet, tie } = frame
  const [left, right] = risers
  const foot = feet[0]
  if (!left || !right || !tie || !foot) return undefined
  const footZ = left.from.z
  const tieTopMm = tie.from.z + tie.stick.heightMm / 2 - footZ
  const crossMm = tie.stick.lengthMm
  return {
    riserMm: left.stick.lengthMm,
    spacingMm: Math.abs(right.from.v - left.from.v),
    crossMm,
    tieTopMm,
    baseFromMm: foot.from.z - foot.stick.heightMm / 2 - footZ,
    baseToMm: foot.from.z + foot.stick.heightMm / 2 - footZ,
    diagonalMm: Math.hypot(crossMm, tieTopMm),
  }
}
