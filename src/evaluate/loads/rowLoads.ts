import { polyOf } from '../../catalogue/pipe'
import { timberOf } from '../../catalogue/timber'
import type { Settings } from '../../layout/settings'
import type { Built, Stick, Tube } from '../../model/built'
import type { StockMeasures } from '../../model/measuredStock'
import type { RowLoads } from '../../model/strength'
import { weightOf } from '../../units/force'
import { MM_PER_M } from '../../units/length'
import { conduitsUsed, type ConduitsUsed } from './conduitUsed'
import type { Frame } from './frame'

/** The bay's assumptions that weights follow from. */
export type WeightSettings = Pick<Settings, 'wetTowerKg' | 'species'>

/** Cold fresh water, kg/m³, rounded up. */
const WATER_KG_PER_M3 = 1000

/** Polyethylene pipe, kg/m³: ASTM D3350 density classes, from memory. */
const POLY_KG_PER_M3 = 950

const CUBIC_MM_PER_M3 = MM_PER_M ** 3

/** What a pipe of the catalogue weighs full of water, N/mm. */
const fullPipe = (stock: string): number => {
  const { idMm, odMm } = polyOf(stock)
  const kgPerM3Mm2 = WATER_KG_PER_M3 * idMm ** 2 + POLY_KG_PER_M3 * (odMm ** 2 - idMm ** 2)
  return weightOf(((Math.PI / 4) * kgPerM3Mm2) / CUBIC_MM_PER_M3)
}

const fullPipes = new Map<string, number>()

export const fullPipeNPerMm = (stock: string): number => {
  const known = fullPipes.get(stock) ?? fullPipe(stock)
  fullPipes.set(stock, known)
  return known
}

/** Water that the row itself bears. The riser pipe stands on the floor, microtubes and drops weigh next to nothing. */
const BORNE: ReadonlySet<Tube['role']> = new Set(['lateral', 'header', 'sub-header'])

/** Pipes that hang on the row. */
export const borneTubes = ({ tubes }: Pick<Built, 'tubes'>): readonly Tube[] =>
  tubes.filter(({ role }) => BORNE.has(role))

const stickN = (stick: Stick, conduits: ConduitsUsed, timberNPerMm3: number): number => {
  const conduit = conduits.get(stick.stock)
  if (conduit) return conduit.weightNPerMm * stick.lengthMm
  // Vinyl troughs weigh little, and lie at the foot of the row: without them it tips sooner.
  if (!stick.stock.startsWith('lumber-')) return 0
  return stick.widthMm * stick.heightMm * stick.lengthMm * timberNPerMm3
}

const weights = (frame: Frame, settings: WeightSettings, conduits: ConduitsUsed): Map<string, number> => {
  const timberNPerMm3 = weightOf(timberOf(settings.species).kgPerM3) / CUBIC_MM_PER_M3
  const byMark = new Map<string, number>()
  const add = (mark: string, weightN: number): void => {
    if (weightN > 0) byMark.set(mark, (byMark.get(mark) ?? 0) + weightN)
  }
  for (const stick of frame.built.sticks) add(stick.mark, stickN(stick, conduits, timberNPerMm3))
  // Slack that is cut off or coiled up weighs nothing on the row.
  for (const { role, stock, path } of borneTubes(frame.built))
    add(role === 'lateral' ? 'lateral' : 'header', fullPipeNPerMm(stock) * pathMm(path))
  return byMark
}

const pathMm = (path: Tube['path']): number => {
  let mm = 0
  for (let index = 1; index < path.length; index += 1) {
    const [a, b] = [path[index - 1], path[index]]
    if (a && b) mm += Math.hypot(b.x - a.x, b.y - a.y, b.z - a.z)
  }
  return mm
}

/**
 * What a row carries and weighs, N. Towers weigh what was weighed in this row, else what the bay assumes; lumber by its species:
 * AWC Wood Structural Design Data (1992); conduit by the table of its maker's institute; laterals and headers full of water.
 * Hooks, screws and troughs are left out.
 */
export const loadsOf = (
  frame: Frame,
  settings: WeightSettings,
  measured: readonly StockMeasures[] = NONE_MEASURED,
): RowLoads => {
  const towerKg = frame.rack.towerKg
  const towerN = weightOf(towerKg ?? settings.wetTowerKg)
  const byMark = weights(frame, settings, conduitsUsed(measured))
  const ownN = [...byMark.values()].reduce((sum, weightN) => sum + weightN, 0)
  const towers = frame.towers.length
  const bars = frame.sticks.get('HB')?.length ?? 0
  return {
    towerN,
    isWeighed: towerKg !== undefined,
    towers,
    ownN,
    barN: bars > 0 ? (byMark.get('HB') ?? 0) / bars : 0,
    fullN: ownN + towers * towerN,
    byMark,
  }
}

const NONE_MEASURED: readonly StockMeasures[] = []
