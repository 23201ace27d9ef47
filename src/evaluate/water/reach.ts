import type { Built } from '../../model/built'
import type { FeedFacts } from '../../model/feedFacts'
import type { PartId } from '../../model/ids'
import type { Join } from '../../model/levels'
import type { DryReason } from '../../model/water'

/** What is joined to what, of all that a bay's water comes through. */
export interface WaterWays {
  readonly built: readonly Built[]
  readonly builtOf: ReadonlyMap<PartId, Built>
  readonly joins: readonly Join[]
}

/** A join that meets something. */
export type Met = Join & { readonly to: PartId }

/** A row that water can come to. */
export interface FedRow {
  readonly built: Built
  readonly feed: FeedFacts
  readonly join: Met
  /** The row whose valves it is behind; itself where it joins a main. */
  readonly zone: PartId
  /** Its waters: rows and supplies of one group are in one network. */
  readonly group: PartId
}

/** What water from a pump or a head box can come to, each in the order of the bay's parts. */
export interface Reach {
  /** Joins of pumps and of head boxes to mains. */
  readonly supplies: readonly Met[]
  readonly mains: readonly Built[]
  readonly mainJoins: readonly Met[]
  readonly rows: readonly FedRow[]
  readonly dry: ReadonlyMap<PartId, DryReason>
  /** The group of each main and of each supply. */
  readonly groupOf: ReadonlyMap<PartId, PartId>
}

const metBy = (joins: readonly Join[], kinds: readonly Join['kind'][]): readonly Met[] =>
  joins.flatMap((join) =>
    kinds.includes(join.kind) && join.to !== undefined ? [{ ...join, to: join.to }] : [],
  )

/** The mains that each main's water can run to, itself and those beyond included. */
const groupsOf = (joins: readonly Met[]): ReadonlyMap<PartId, PartId> => {
  const above = new Map<PartId, PartId>()
  const top = (main: PartId): PartId => {
    let at = main
    for (let next = above.get(at); next !== undefined; next = above.get(at)) at = next
    return at
  }
  for (const { from, to } of joins) {
    const [a, b] = [top(from), top(to)]
    if (a !== b) above.set(a, b)
  }
  return new Map(joins.flatMap(({ from, to }) => [from, to]).map((main) => [main, top(main)]))
}

/** The join by which a row's water comes off a main: its own, or that of the row it is behind. */
const offMain = (row: PartId, joinOf: ReadonlyMap<PartId, Met>): Met | undefined => {
  const passed = new Set<PartId>()
  let join = joinOf.get(row)
  while (join?.kind === 'zone-to-zone' && !passed.has(join.from)) {
    passed.add(join.from)
    join = joinOf.get(join.to)
  }
  return join?.kind === 'zone-to-zone' ? undefined : join
}

/** What the bay's pumps and head boxes can feed, and why each other row stays dry. */
export const reachOf = ({ built, builtOf, joins }: WaterWays): Reach => {
  const supplies = metBy(joins, ['pump-to-main', 'box-to-main']).filter(({ from }) => {
    const giver = builtOf.get(from)
    return giver?.pump !== undefined || giver?.headBox !== undefined
  })
  const allMainJoins = metBy(joins, ['main-to-main'])
  const groupOf = groupsOf([...allMainJoins, ...supplies])
  const supplied = new Set(supplies.map(({ from }) => groupOf.get(from)))
  const joinOf = new Map(metBy(joins, ['zone-to-main', 'zone-to-zone']).map((join) => [join.from, join]))
  const rows: FedRow[] = []
  const dry = new Map<PartId, DryReason>()
  for (const each of built) {
    if (!each.feed) continue
    const join = joinOf.get(each.part)
    const atMain = offMain(each.part, joinOf)
    const group = atMain && groupOf.get(atMain.to)
    if (!join || !atMain) dry.set(each.part, 'no-main')
    else if (group === undefined || !supplied.has(group)) dry.set(each.part, 'no-supply')
    else rows.push({ built: each, feed: each.feed, join, zone: atMain.from, group })
  }
  return {
    supplies,
    mains: built.filter(({ part }) => groupOf.has(part) && supplied.has(groupOf.get(part))),
    mainJoins: allMainJoins.filter(({ from }) => supplied.has(groupOf.get(from))),
    rows,
    dry,
    groupOf,
  }
}
