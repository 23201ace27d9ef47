import type { PartId } from '../model/ids'
import type { Join } from '../model/levels'
import { rememberLast } from '../model/remember'
import type { RowWater } from '../model/water'
import type { Bay } from './context'

/** All that one body of water runs through: pumps, head boxes, mains and rows that are joined. */
export interface WaterSystem {
  readonly parts: ReadonlySet<PartId>
  /** The pits and head boxes that give it water. */
  readonly supplies: readonly PartId[]
  /** Rows that water comes to, in the order of the bay's parts. */
  readonly rows: readonly RowWater[]
  readonly towers: number
  readonly totalLph: number
  /** Of a tower; 0 where nothing flows. */
  readonly meanLph: number
  /** Whether every trim valve that its water passes stands wide open: only pump, pipes and tubes then say what comes. */
  readonly hasOpenTrims: boolean
}

const WATER_JOINS: ReadonlySet<Join['kind']> = new Set([
  'zone-to-main',
  'zone-to-zone',
  'main-to-main',
  'pump-to-main',
  'box-to-main',
])

type Met = Join & { readonly to: PartId }

const isMet = (join: Join): join is Met => join.to !== undefined && WATER_JOINS.has(join.kind)

const isSupply = ({ kind }: Join): boolean => kind === 'pump-to-main' || kind === 'box-to-main'

/** The part that stands for all that a part is joined with. */
const rootIn = (over: ReadonlyMap<PartId, PartId>, part: PartId): PartId => {
  let root = part
  for (let next = over.get(root); next !== undefined && next !== root; next = over.get(root)) root = next
  return root
}

const rootsOf = (met: readonly Met[]): ReadonlyMap<PartId, PartId> => {
  const over = new Map<PartId, PartId>()
  for (const { from, to } of met) {
    const [a, b] = [rootIn(over, from), rootIn(over, to)]
    over.set(a, b)
    if (!over.has(b)) over.set(b, b)
  }
  return over
}

interface Joined {
  readonly parts: Set<PartId>
  readonly supplies: Set<PartId>
  readonly rows: RowWater[]
}

/** Everything that is joined, under the part that stands for it, in the order in which joins name its parts. */
const joinedParts = (met: readonly Met[], rootOf: (part: PartId) => PartId): Map<PartId, Joined> => {
  const systems = new Map<PartId, Joined>()
  for (const join of met) {
    const root = rootOf(join.from)
    const system = systems.get(root) ?? { parts: new Set(), supplies: new Set(), rows: [] }
    systems.set(root, system)
    system.parts.add(join.from).add(join.to)
    if (isSupply(join)) system.supplies.add(join.from)
  }
  return systems
}

const isTrimOpen = ({ zone }: RowWater, { builtOf }: Bay): boolean => {
  const valves = builtOf.get(zone)?.feed?.valves
  return valves === undefined || valves.trimTurns >= valves.trimTurnsAll
}

const systemFrom = ({ parts, supplies, rows }: Joined, bay: Bay): WaterSystem => {
  const towers = rows.reduce((sum, { tubeLph }) => sum + tubeLph.length, 0)
  const totalLph = rows.reduce((sum, row) => sum + row.totalLph, 0)
  return {
    parts,
    supplies: [...supplies],
    rows,
    towers,
    totalLph,
    meanLph: towers > 0 ? totalLph / towers : 0,
    hasOpenTrims: rows.every((row) => isTrimOpen(row, bay)),
  }
}

interface Systems {
  readonly all: readonly WaterSystem[]
  readonly of: ReadonlyMap<PartId, WaterSystem>
}

/** Found once for all rules that ask. */
const systemsIn = rememberLast((bay: Bay): Systems => {
  const met = bay.joins.filter(isMet)
  const over = rootsOf(met)
  const joined = joinedParts(met, (part) => rootIn(over, part))
  for (const row of bay.water.rows.values()) joined.get(rootIn(over, row.part))?.rows.push(row)
  const all = [...joined.values()].map((system) => systemFrom(system, bay))
  return { all, of: new Map(all.flatMap((system) => [...system.parts].map((part) => [part, system]))) }
})

/** Every body of water of a bay, those too that nothing gives water to. */
export const allSystems = (bay: Bay): readonly WaterSystem[] => systemsIn(bay).all

/** The bodies of water of a bay that a pump or a head box gives to. */
export const waterSystems = (bay: Bay): readonly WaterSystem[] =>
  allSystems(bay).filter(({ supplies }) => supplies.length > 0)

/** The system that a part belongs to; undefined for one that is joined to nothing. */
export const systemOf = (bay: Bay, part: PartId): WaterSystem | undefined => systemsIn(bay).of.get(part)

/** Least share of the flow wanted that a supply should give. */
export const SUPPLY_SHARE = 0.9

/** A supply that gives a greater share of the flow wanted is burnt in valves. Common practice, no source. */
export const OVER_SHARE = 1.5

/** Where a supply gives all towers too little though no valve holds it back: then no row is to blame. */
export const isShortSupplied = ({ towers, meanLph, hasOpenTrims }: WaterSystem, { settings }: Bay): boolean =>
  towers > 0 && meanLph < SUPPLY_SHARE * settings.targetLph && (meanLph === 0 || hasOpenTrims)

/** Where a supply gives all towers far more than they want, though nothing is set to hold it back. */
export const isOverSupplied = ({ towers, meanLph, hasOpenTrims }: WaterSystem, { settings }: Bay): boolean =>
  towers > 0 && meanLph > OVER_SHARE * settings.targetLph && hasOpenTrims
