import { inches, type Units } from '../../units/length'

/** A stretch of a member that one tile of the strip shows, mm from its foot. */
export interface Tile {
  /** From 1 at the foot. */
  readonly number: number
  readonly fromMm: number
  readonly toMm: number
}

/** A strip at full size, cut up into tiles that overlap. */
export interface Strip {
  readonly tiles: readonly Tile[]
  readonly overlapMm: number
}

/**
 * Steps of the tape on the strip, mm: its numbers, and the marks between. Tiles begin and end on numbers, so that a tile is laid by
 * the tape alone where those between are not printed.
 */
export const tapeStep = (units: Units): { readonly numberMm: number; readonly markMm: number } =>
  units === 'metric' ? { numberMm: 10, markMm: 5 } : { numberMm: inches(1), markMm: inches(1 / 4) }

/** Tiles overlap by more than the largest hole, so that every hole is whole on one of them. */
const overlapFor = (units: Units, largestMm: number): number => {
  const { numberMm } = tapeStep(units)
  const least = units === 'metric' ? 50 : inches(2)
  return Math.max(least, Math.ceil(largestMm / numberMm) * numberMm)
}

/** The tiles of a whole member on paper of some width; the last one ends with the member. */
export const stripOf = (
  lengthMm: number,
  {
    widthMm,
    largestMm,
    units,
  }: { readonly widthMm: number; readonly largestMm: number; readonly units: Units },
): Strip => {
  const { numberMm } = tapeStep(units)
  const overlapMm = overlapFor(units, largestMm)
  const tileMm = Math.max(overlapMm + numberMm, Math.floor(widthMm / numberMm + 1e-9) * numberMm)
  const stepMm = tileMm - overlapMm
  const count = Math.max(1, Math.ceil((lengthMm - overlapMm) / stepMm - 1e-9))
  const tiles = Array.from({ length: count }, (_, index) => ({
    number: index + 1,
    fromMm: index * stepMm,
    toMm: Math.min(lengthMm, index * stepMm + tileMm),
  }))
  return { tiles, overlapMm }
}

/** A stretch of the member that must be whole on a tile, mm from its foot. */
export interface Shown {
  readonly fromMm: number
  readonly toMm: number
}

const holds = ({ fromMm, toMm }: Tile, shown: Shown): boolean => fromMm <= shown.fromMm && shown.toMm <= toMm

/** How far into its tile a hole lies from the nearer end, mm. */
const roomAround = ({ fromMm, toMm }: Tile, shown: Shown): number =>
  Math.min(shown.fromMm - fromMm, toMm - shown.toMm)

const bestFor = (tiles: readonly Tile[], shown: Shown): Tile | undefined =>
  tiles
    .filter((tile) => holds(tile, shown))
    .reduce<Tile | undefined>(
      (best, tile) => (best && roomAround(best, shown) >= roomAround(tile, shown) ? best : tile),
      undefined,
    )

/** Tiles that say something: the foot, and the one that shows each hole best. Those between are bare wood and are measured over. */
export const tilesToPrint = ({ tiles }: Strip, holes: readonly Shown[]): readonly Tile[] => {
  const chosen = new Set([tiles[0], ...holes.map((hole) => bestFor(tiles, hole))])
  return tiles.filter((tile) => chosen.has(tile))
}
