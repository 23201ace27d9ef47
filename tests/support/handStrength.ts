import type { RailLine, RailSpan, RowStrength, Stance, Tip } from '../../src/model/strength'

/** A span of 1200 mm of 3/4 in conduit that is well. */
export const railSpan = (more: Partial<RailSpan>): RailSpan => ({
  fromU: 0,
  toU: 1200,
  isOverhang: false,
  stock: 'conduit-3/4',
  momentNmm: 40_000,
  stressMpa: 90,
  sagMm: 4,
  state: 'Within',
  used: 0.75,
  under: 'full',
  ...more,
})

/** A rail of two such spans. */
export const railLine = (more: Partial<RailLine>): RailLine => ({
  v: -500,
  z: 1800,
  sticks: [{ fromU: 0, toU: 2400, stock: 'conduit-3/4' }],
  hingesU: [],
  hangers: [],
  spans: [railSpan({}), railSpan({ fromU: 1200, toU: 2400 })],
  reactions: [],
  curve: { u: [], sagMm: [], momentNmm: [] },
  ...more,
})

export const tipOf = (more: Partial<Tip>): Tip => ({
  under: 'empty',
  way: 'across',
  weightN: 1000,
  armMm: 600,
  tipsAtN: 300,
  safety: 1.35,
  state: 'Shaky',
  ...more,
})

export const stanceWith = (more: Partial<Stance>): Stance => ({
  baseHalfMm: 600,
  railMm: 2000,
  riserMm: 2050,
  oneSideMm: 400,
  oneSideLimitMm: 480,
  heightToBase: 1.71,
  tips: [tipOf({})],
  heldBy: undefined,
  state: 'Shaky',
  ...more,
})

interface Row {
  readonly rails: readonly RailLine[]
  readonly towers: number
  readonly towerN: number
}

/** What views and papers of a row read, by hand. */
export const rowStrength = ({ rails, towers, towerN }: Row): RowStrength => ({
  part: 'row-1',
  loads: {
    towerN,
    isWeighed: false,
    towers,
    ownN: 500,
    barN: 10,
    fullN: 500 + towers * towerN,
    byMark: new Map(),
  },
  screens: [],
  rails,
  bar: undefined,
  stance: stanceWith({}),
  state: 'Within',
  at: { x: 0, y: 0, z: 0 },
})
