import { pathLength } from '../geometry/path'
import { length3, type Place } from '../geometry/point'
import type { Built, Fitting, Tube } from '../model/built'
import type { PartId } from '../model/ids'
import type { Join } from '../model/levels'
import { rememberEach } from '../model/remember'
import { branchOn, onPipe } from '../parts/onPipe'
import { elbowsOf } from '../parts/points'
import { inches } from '../units/length'
import { isSameMeetings, mainEndFittings, type MainMeetings, meetingFittings } from './mainEnds'
import { isSameRun, mainOf, type SupplyRun, supplyRunOf, type Ways } from './supplyRuns'

/** Poly pipe grows and creeps, and is never cut to the last inch. Common practice, no source. */
const SLACK = 1.01

/** Poly pipe bends up or down by so much without an elbow. Common practice, no source. */
const BENDS_BY_MM = inches(6)

/** A pipe shorter than this is none: the two fittings meet. */
const LEAST_PIPE_MM = 1

const isSupply = ({ join: { kind } }: SupplyRun): boolean => kind === 'pump-to-main' || kind === 'box-to-main'

/** A supply's pipe rises where it stands and then runs across; a row's runs across to over or under its inlet first. */
const runPath = (run: SupplyRun): Place[] => {
  const { from, to } = run
  if (Math.abs(to.z - from.z) <= BENDS_BY_MM) return [from, to]
  const corner = isSupply(run) ? { x: from.x, y: from.y, z: to.z } : { x: to.x, y: to.y, z: from.z }
  return [from, corner, to].filter((at, index, all) => index === 0 || length3(at, all[index - 1] ?? at) > 0)
}

const pipeOf = (run: SupplyRun, path: readonly Place[]): Tube[] => {
  const lengthMm = pathLength(path)
  const role = isSupply(run) ? 'pump-pipe' : 'zone-pipe'
  return lengthMm < LEAST_PIPE_MM ? [] : [{ role, stock: run.stock, path, lengthMm: lengthMm * SLACK }]
}

/** The row's own foot elbow takes a level pipe: one that comes from above or below needs another before it. */
const rowFittings = (
  { join, from, to, stock, mainStock, isBuried }: SupplyRun,
  path: readonly Place[],
): Fitting[] => [
  // Behind another row's valve the tee stands at the head of that row's riser pipe.
  ...(join.kind === 'zone-to-zone' ? onPipe('tee', stock, from) : branchOn(mainStock, stock, from, isBuried)),
  ...elbowsOf(path).flatMap((at) => onPipe('elbow', stock, at)),
  ...(Math.abs(to.z - from.z) > BENDS_BY_MM ? onPipe('elbow', stock, to) : []),
]

const supplyFittings = (
  { from, to, on, stock, mainStock, isBuried }: SupplyRun,
  path: readonly Place[],
): Fitting[] => [
  ...elbowsOf(path).flatMap((at) => onPipe('elbow', stock, at)),
  ...meetingFittings(to, { before: path.at(-2) ?? from, after: on }, stock, mainStock, isBuried),
]

const things = (part: PartId, tubes: readonly Tube[], fittings: readonly Fitting[]): Built => ({
  part,
  zFrom: 'benchmark',
  sticks: [],
  tubes,
  fittings,
  bodies: [],
  mouths: [],
  supports: [],
})

/** The pipes of a part: several from one pump or box leave it by tees. */
const pipesOf = (part: PartId, runs: readonly SupplyRun[]): Built => {
  const laid = runs.map((run) => ({ run, path: runPath(run) }))
  const given = runs.filter(isSupply)
  return things(
    part,
    laid.flatMap(({ run, path }) => pipeOf(run, path)),
    [
      ...given.slice(1).flatMap(({ from, stock }) => onPipe('tee', stock, from)),
      ...laid.flatMap(({ run, path }) => (isSupply(run) ? supplyFittings : rowFittings)(run, path)),
    ],
  )
}

const isSameRuns = (a: readonly SupplyRun[], b: readonly SupplyRun[]): boolean =>
  a.length === b.length && a.every((run, index) => isSameRun(run, b[index] ?? run))

const joinedTo = rememberEach<Built, readonly SupplyRun[], Built>(
  (built, runs) => pipesOf(built.part, runs),
  isSameRuns,
)

const endsOf = rememberEach<Built, MainMeetings, Built>(
  (built, meetings) => things(built.part, [], mainEndFittings(built, meetings)),
  isSameMeetings,
)

/** Adds to the list that a map holds under a key. */
const listIn = <T>(lists: Map<PartId, T[]>, key: PartId, item: T): void => {
  const known = lists.get(key)
  if (known) known.push(item)
  else lists.set(key, [item])
}

const MEETS_MAIN: ReadonlySet<Join['kind']> = new Set(['main-to-main', 'pump-to-main', 'box-to-main'])

const meetingsByMain = (joins: readonly Join[], { builtOf }: Ways): ReadonlyMap<PartId, MainMeetings> => {
  const own = new Map<PartId, Join[]>()
  const others = new Map<PartId, Join[]>()
  for (const join of joins) {
    if (join.to === undefined || !MEETS_MAIN.has(join.kind)) continue
    listIn(others, join.to, join)
    if (join.kind === 'main-to-main') listIn(own, join.from, join)
  }
  const parts = new Set([...own.keys(), ...others.keys()])
  return new Map(
    [...parts].map((part) => {
      const of = own.get(part) ?? []
      const onto = of.flatMap(({ to }) => (to === undefined ? [] : (builtOf.get(to) ?? [])))
      return [part, { own: of, onto, others: others.get(part) ?? [] }]
    }),
  )
}

const ALONE: MainMeetings = { own: [], onto: [], others: [] }

const runsByPart = (joins: readonly Join[], ways: Ways): ReadonlyMap<PartId, readonly SupplyRun[]> => {
  const runs = new Map<PartId, SupplyRun[]>()
  for (const join of joins) {
    const run = supplyRunOf(join, ways)
    if (run) listIn(runs, join.from, run)
  }
  return runs
}

/**
 * Step 3, once levels are known: the pipes that lie between parts, each as a part of what it leads to or from, and what
 * stands at the ends of the mains. Levels from the benchmark's zero. Each part's is remembered while its water comes the
 * same way.
 */
export const joinedPipes = (
  built: readonly Built[],
  joins: readonly Join[],
  ways: Ways,
): readonly Built[] => {
  const runs = runsByPart(joins, ways)
  const meetings = meetingsByMain(joins, ways)
  return built.flatMap((each) => {
    const own = runs.get(each.part)
    return [
      ...(own ? [joinedTo(each, own)] : []),
      ...(mainOf(each) ? [endsOf(each, meetings.get(each.part) ?? ALONE)] : []),
    ]
  })
}
