import type { Frame, FrameStick, HungAt } from '../../src/evaluate/loads/frame'
import type { RowInput } from '../../src/evaluate/loads/rowInput'
import type { RailLine, RowSpot } from '../../src/model/strength'
import { inches } from '../../src/units/length'
import { loadsOf, standing } from './standing'

const RAIL_IN = 64
const LONG_IN = 120

const spot = (u: number, v: number, z: number): RowSpot => ({ u: inches(u), v: inches(v), z: inches(z) })

/** A 2x4 of the worked rack, laid from one place to another; whether it lies flat or on edge. */
const board = (mark: string, from: RowSpot, to: RowSpot, width: number, height: number): FrameStick => ({
  from,
  to,
  stick: {
    mark,
    stock: 'lumber-2x4',
    lengthMm: Math.hypot(to.u - from.u, to.v - from.v, to.z - from.z),
    from: { x: from.u, y: -from.v, z: from.z },
    to: { x: to.u, y: -to.v, z: to.z },
    widthMm: inches(width),
    heightMm: inches(height),
    cut: { kind: 'exact' },
    minusMm: 0,
    holes: [],
    rack: 0,
  },
})

const tower = (u: number, v: number): HungAt => ({ ...spot(u, v, RAIL_IN), line: 1, station: 1 })

/** What the worked rack has no part in: facts of a row that stands free, the bay's assumptions. */
const row = standing()

export interface Worked {
  /** Base across the push, in. */
  readonly base: number
  readonly ownLb: number
  readonly towerLb?: number
  /** Where towers hang, in from the centreline; ten stations of each. */
  readonly lines?: readonly number[]
  /** Whether its boards lie flat on the ground or stand on edge there. */
  readonly lies?: 'flat' | 'on-edge'
}

/**
 * The rack of 10 ft of the worked examples: two flat runners across it on the ground, risers, rails at 64 in; so many pounds bare,
 * towers of so many pounds over the middle of the base where nothing else is said.
 */
export const workedRack = ({ base, ownLb, towerLb = 25, lines = [0], lies = 'flat' }: Worked): RowInput => {
  const [wide, high] = lies === 'flat' ? [3.5, 1.5] : [1.5, 3.5]
  const runner = (u: number) =>
    board('BR', spot(u, -base / 2, high / 2), spot(u, base / 2, high / 2), wide, high)
  const rail = (v: number) => board('RL', spot(0, v, RAIL_IN), spot(LONG_IN, v, RAIL_IN), 1.163, 1.163)
  const towers = ownLb > 0 && towerLb > 0 ? lines.flatMap((v) => stations.map((u) => tower(u, v))) : []
  const frame: Frame = {
    ...row.frame,
    built: { ...row.frame.built, supports: [] },
    lengthMm: inches(LONG_IN),
    sticks: new Map([
      ['BR', [runner(1.75), runner(LONG_IN - 1.75)]],
      ['RL', [rail(-15), rail(15)]],
    ]),
    towers,
  }
  const lineOf = (v: number): RailLine => ({
    ...row.rails[0]!,
    v: inches(v),
    z: inches(RAIL_IN),
    reactions: [],
  })
  return { ...row, frame, loads: loadsOf(ownLb, towers.length, towerLb), rails: [lineOf(-15), lineOf(15)] }
}

const stations = Array.from({ length: 10 }, (_, index) => 6 + index * 12)
