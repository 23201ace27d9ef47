import { gutterOf } from '../../catalogue/gutter'
import { sizeOf } from '../../catalogue/fittings'
import { outletOf } from '../../catalogue/outlet'
import { offset } from '../../geometry/motion'
import type { Place } from '../../geometry/point'
import type { Body, Built, Fitting, Mouth, Stick, Support } from '../../model/built'
import { lengthAsMeasured } from '../../model/measuredStock'
import type { Site } from '../../model/site'
import type { TroughFacts } from '../../model/troughFacts'
import { inches, onTick } from '../../units/length'
import { dropOver } from '../../units/slope'
import { outlineAround } from '../footprint'
import type { Trough } from './schema'

/** Plastic gutter is borne at least this often. Common practice, no source. */
const BLOCK_SPACING_MM = inches(24)

/** An 8 x 16 in block, its long way across the trough. */
const HALF_BLOCK_MM = { along: inches(4), across: inches(8) }

/** A block this near the outlet's middle leaves no room for the drop. Common practice, no source. */
const OUTLET_ROOM_MM = inches(6)

/** The trough as it lies: distances along are on the flat from the high end, levels from the benchmark. All mm. */
interface Lie {
  readonly runMm: number
  readonly outletMm: number
  readonly placeAt: (alongMm: number) => Place
  readonly groundAt: (alongMm: number) => number
}

/** How far a sloping trough reaches over the floor, mm; a hair less than it is long. */
export const runOf = ({ lengthMm, gutterFall }: Trough): number =>
  lengthMm / Math.hypot(1, dropOver(1, gutterFall))

const lieOf = (part: Trough, site: Site): Lie => {
  const { at, heading, lengthMm, gutterFall } = part
  const runMm = runOf(part)
  const highMm = site.groundAt(at.x, at.y) + part.highInvertMm
  const floorAt = (alongMm: number) => offset(at, heading, alongMm, 0)
  return {
    runMm,
    outletMm: (runMm * Math.max(0, lengthMm - part.outletFromLowMm)) / lengthMm,
    placeAt: (alongMm) => ({ ...floorAt(alongMm), z: highMm - dropOver(alongMm, gutterFall) }),
    groundAt: (alongMm) => {
      const { x, y } = floorAt(alongMm)
      return site.groundAt(x, y)
    },
  }
}

/** Whole sections from the high end, then what is left of the last, mm. */
const sectionsOf = (lengthMm: number, sectionMm: number): number[] => {
  const whole = Math.floor(lengthMm / sectionMm)
  const restMm = onTick(lengthMm - whole * sectionMm)
  return [...Array<number>(whole).fill(sectionMm), ...(restMm > 0 ? [restMm] : [])]
}

const sticksOf = (part: Trough, lie: Lie, { measured }: Site): Stick[] => {
  const { key, sectionMm: stockMm, topMm, depthMm } = gutterOf(part.gutter)
  const sectionMm = lengthAsMeasured(stockMm, key, measured).measuredMm
  const alongOf = (lengthMm: number) => (lengthMm * lie.runMm) / part.lengthMm
  return sectionsOf(part.lengthMm, sectionMm).map((lengthMm, index) => ({
    mark: 'GT',
    stock: part.gutter,
    lengthMm,
    from: lie.placeAt(alongOf(index * sectionMm)),
    to: lie.placeAt(alongOf(index * sectionMm + lengthMm)),
    widthMm: topMm,
    heightMm: depthMm,
    cut: lengthMm === sectionMm ? { kind: 'uncut', stockMm } : { kind: 'exact' },
    minusMm: 0,
    holes: [],
    rack: 0,
  }))
}

/** Middles of the blocks along the trough, from the high end; one that would stand under the outlet moves uphill. */
const blocksAt = ({ runMm, outletMm }: Lie): number[] => {
  const spanMm = runMm - 2 * HALF_BLOCK_MM.along
  const bays = Math.max(1, Math.ceil(spanMm / BLOCK_SPACING_MM))
  return Array.from({ length: bays + 1 }, (_, index) => {
    const at = HALF_BLOCK_MM.along + (spanMm * index) / bays
    return Math.abs(at - outletMm) < OUTLET_ROOM_MM ? Math.max(0, outletMm - OUTLET_ROOM_MM) : at
  })
}

const supportsOf = ({ heading }: Trough, lie: Lie): Support[] => {
  const { along, across } = HALF_BLOCK_MM
  const lengthwise = heading === 0 || heading === 180
  return blocksAt(lie).map((alongMm) => ({
    rests: 'floor',
    at: { ...lie.placeAt(alongMm), z: lie.groundAt(alongMm) },
    halfXMm: lengthwise ? along : across,
    halfYMm: lengthwise ? across : along,
  }))
}

const fittingsOf = (
  part: Trough,
  sticks: readonly Stick[],
  supports: readonly Support[],
  lie: Lie,
): Fitting[] => [
  { item: `gutter-end-cap-${sizeOf(part.gutter)}`, at: lie.placeAt(0) },
  { item: `gutter-end-cap-${sizeOf(part.gutter)}`, at: lie.placeAt(lie.runMm) },
  ...sticks.slice(1).map(({ stock, from }) => ({ item: `gutter-joiner-${sizeOf(stock)}`, at: from })),
  { item: `gutter-outlet-${part.outletBore}`, at: lie.placeAt(lie.outletMm) },
  ...supports.map(({ at }) => ({ item: 'trough-block', at })),
]

const bodyOf = (part: Trough, lie: Lie): Body => {
  const { topMm, depthMm } = gutterOf(part.gutter)
  const inverts = [0, lie.runMm / 2, lie.runMm].map(
    (alongMm) => lie.placeAt(alongMm).z - lie.groundAt(alongMm),
  )
  return {
    part: part.id,
    role: 'trough',
    outline: outlineAround(part, { backMm: 0, frontMm: lie.runMm, leftMm: topMm / 2, rightMm: topMm / 2 }),
    fromMm: Math.min(...inverts),
    toMm: Math.max(...inverts) + depthMm,
  }
}

const outletMouth = (lie: Lie): Mouth => ({
  role: 'trough-outlet',
  at: lie.placeAt(lie.outletMm),
  line: 1,
  station: 0,
})

const troughFacts = (part: Trough, { runMm, outletMm }: Lie, joiners: number): TroughFacts => ({
  gutter: part.gutter,
  fallMmPerM: part.gutterFall,
  runMm,
  outletFromHighMm: outletMm,
  outletBoreMm: outletOf(part.outletBore).boreMm,
  lines: 1,
  stationFromHighMm: [],
  tipOverHighInvertMm: undefined,
  joiners,
})

/** Gutter sections end to end along the invert, on blocks. */
export const deriveTrough = (part: Trough, site: Site): Built => {
  const lie = lieOf(part, site)
  const sticks = sticksOf(part, lie, site)
  const supports = supportsOf(part, lie)
  return {
    part: part.id,
    zFrom: 'benchmark',
    sticks,
    tubes: [],
    fittings: fittingsOf(part, sticks, supports, lie),
    bodies: [bodyOf(part, lie)],
    mouths: [outletMouth(lie)],
    supports,
    trough: troughFacts(part, lie, sticks.length - 1),
  }
}
