import type { LabourTask } from '../../catalogue/labour'
import type { Bay } from '../../checks/context'
import type { Built, Tube } from '../../model/built'
import type { DrainRun } from '../../model/levels'
import { litresAt } from '../../model/pitFacts'
import { rememberEach } from '../../model/remember'
import { feet } from '../../units/length'
import { toCubicYards } from '../../units/volume'

/** How often each task is to be done, in the units of its norm; a task that is not there is not done. */
export type LabourCounts = ReadonlyMap<LabourTask, number>

const TEN_FEET_MM = feet(10)

/** What is done to a stick, by its mark. */
const byMark: Readonly<Record<string, readonly LabourTask[]>> = {
  'RS-p': ['riser-cut'],
  'RS-s': ['riser-cut'],
  'RS-d': ['riser-cut'],
  // One to a pair of risers, and so it counts the pairs.
  BX: ['member-cut', 'pair-assemble', 'pair-stand'],
  TT: ['member-cut'],
  SP: ['member-cut'],
  BR: ['runner-fix'],
  GB: ['member-cut', 'bearer-fix'],
  SB: ['member-cut', 'brace-fix'],
  XB: ['member-cut', 'brace-fix'],
  RL: ['rail-lay'],
  'RL-b': ['rail-lay'],
  HB: ['bar-hang'],
  GT: ['gutter-lay'],
}

const byItem: Readonly<Record<string, LabourTask>> = {
  tower: 'tower-hang',
  'trough-block': 'block-set',
  'head-box': 'head-box-set',
  'ground-anchor': 'anchor-set',
  'row-tie': 'tie-fix',
  'house-strap': 'strap-hang',
}

/** A run of pipe is laid by its length. The header comes with the zone's valves. */
const byRole: Partial<Readonly<Record<Tube['role'], LabourTask>>> = {
  lateral: 'lateral-lay',
  'sub-header': 'lateral-lay',
  main: 'supply-lay',
  'pump-pipe': 'supply-lay',
  'zone-pipe': 'supply-lay',
  drain: 'drain-lay',
}

/** The corners of a row are pegged. */
const ROW_PEGS = 4

/** What of a pit is under the floor, litres. */
const dugL = ({ bodies, pit }: Built): number => {
  const depthMm = -Math.min(0, ...bodies.filter(({ role }) => role === 'pit').map(({ fromMm }) => fromMm))
  return pit ? litresAt(pit, pit.bottomMm + depthMm) : 0
}

const countPart = (built: Built): LabourCounts => {
  const counts = new Map<LabourTask, number>()
  const add = (task: LabourTask | undefined, count: number): void => {
    if (task !== undefined && count > 0) counts.set(task, count + (counts.get(task) ?? 0))
  }
  const lines = built.rack?.lines ?? 0
  for (const { mark } of built.sticks) {
    for (const task of byMark[mark] ?? []) add(task, 1)
    if (mark === 'GB') add('bearer-shim', lines)
  }
  for (const { item, amount = 0 } of built.fittings) {
    add(item.startsWith('gutter-outlet') ? 'outlet-set' : byItem[item], 1)
    if (item === 'conduit-paint') add('conduit-paint', amount / TEN_FEET_MM)
  }
  for (const { role, lengthMm } of built.tubes) {
    add(byRole[role], lengthMm / TEN_FEET_MM)
    if (role === 'drain') add('trench-dig', lengthMm / TEN_FEET_MM)
    if (role === 'microtube') {
      add('tube-set', 1)
      add('flow-test', 1)
    }
  }
  if (built.rack) add('set-out', ROW_PEGS)
  if (built.pit) {
    add('pit-dig', toCubicYards(dugL(built)))
    add('pit-finish', 1)
  }
  if (built.pump) add('pump-station', 1)
  for (const { role } of built.mouths)
    if (role === 'zone-inlet') {
      add('zone-set', 1)
      add('leak-test', 1)
    }
  return counts
}

const countsOf = rememberEach<Built, null, LabourCounts>(countPart)

const pegsOf = (drains: Iterable<DrainRun>): number => {
  let pegs = 0
  for (const drain of drains) pegs += drain.pegs.length
  return pegs
}

/** How often each task is to be done for a bay; a part that has not changed since it was last asked is not counted again. */
export const labourCounts = ({
  built,
  joinedPipes,
  levels,
}: Pick<Bay, 'built' | 'joinedPipes' | 'levels'>): LabourCounts => {
  const sums = new Map<LabourTask, number>()
  const add = (task: LabourTask, count: number): void => {
    if (count > 0) sums.set(task, count + (sums.get(task) ?? 0))
  }
  for (const parts of [built, joinedPipes])
    for (const part of parts) for (const [task, count] of countsOf(part, null)) add(task, count)
  add('set-out', pegsOf(levels.drains.values()))
  // Only what can hold water is filled and tested.
  if (sums.has('zone-set')) sums.set('fill', 1)
  return sums
}
