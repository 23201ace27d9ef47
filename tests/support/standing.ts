import { frameOf, type Frame } from '../../src/evaluate/loads/frame'
import type { RowInput } from '../../src/evaluate/loads/rowInput'
import { settingsSchema, type Settings } from '../../src/layout/settings'
import type { RailLine, RowLoads } from '../../src/model/strength'
import type { RackRow } from '../../src/parts/rack-row/schema'
import { poundsForce } from '../../src/units/force'
import { build, row } from './rackRows'

/** A row's loads in pounds. */
export const loadsOf = (ownLb: number, towers: number, towerLb: number): RowLoads => ({
  towerN: poundsForce(towerLb),
  isWeighed: false,
  towers,
  ownN: poundsForce(ownLb),
  barN: 0,
  fullN: poundsForce(ownLb + towers * towerLb),
  byMark: new Map(),
})

/** Rails that hand so many pounds to every riser; their own solution is none of these tests' business. */
export const railsOf = (frame: Frame, riserLb: number): RailLine[] => {
  const risers = ['RS-p', 'RS-s'].flatMap((mark) => frame.sticks.get(mark) ?? [])
  return [-1, 1].map((side) => {
    const line = risers.filter(({ from }) => Math.sign(from.v) === side)
    const u = line.map(({ from }) => from.u).toSorted((a, b) => a - b)
    const newtons = poundsForce(riserLb)
    return {
      v: line[0]?.from.v ?? side,
      z: frame.sticks.get('RL')?.[0]?.from.z ?? 0,
      sticks: [{ fromU: u[0] ?? 0, toU: u.at(-1) ?? 0, stock: 'conduit-3/4' }],
      hingesU: [],
      hangers: [],
      spans: [],
      reactions: u.map((at) => ({ u: at, fullN: newtons, mostN: newtons, leastN: 0 })),
      curve: { u: [], sagMm: [], momentNmm: [] },
    }
  })
}

/** A row of the program, with hand-made loads: so many pounds bare, 25 lb towers and 105 lb to a riser where nothing else is said. */
export const standing = (
  part: Partial<RackRow> = {},
  {
    settings = {},
    ownLb = 300,
    towerLb = 25,
    riserLb = 105,
  }: { settings?: Partial<Settings>; ownLb?: number; towerLb?: number; riserLb?: number } = {},
): RowInput => {
  const built = build(row(part))
  const frame = frameOf(built)!
  return {
    frame,
    facts: built.rack!,
    loads: loadsOf(ownLb, frame.towers.length, towerLb),
    rails: railsOf(frame, riserLb),
    settings: { ...settingsSchema.parse({}), ...settings },
  }
}
