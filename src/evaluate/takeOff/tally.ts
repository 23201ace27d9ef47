import { shimKey, shimStack } from '../../catalogue/shims'
import { tapeOf } from '../../catalogue/threads'
import type { Built, Fitting, Stick } from '../../model/built'
import type { Foot } from '../../model/levels'
import { rememberEach } from '../../model/remember'
import { runJoints } from './runJoints'

/** Counts by catalogue key: pieces, mm or mm². */
export type Tally = ReadonlyMap<string, number>

export const countIn = (tally: Map<string, number>, item: string, count: number): void => {
  tally.set(item, (tally.get(item) ?? 0) + count)
}

/** What a hole is drilled for tells the mark of its stick: the shared riser's takes a sleeve or a big rail. */
export const holeItem = ({ mark }: Stick): string => (mark === 'RS-s' ? 'sleeve-hole' : 'rail-hole')

/** Every counted thing stands among the fittings of its part but what follows from them, from its sticks and from its tubes. */
export const fittingsOf = (built: Built): readonly Fitting[] => {
  const joints = runJoints(built, null)
  return joints.length > 0 ? [...built.fittings, ...joints] : built.fittings
}

const countTape = (tally: Map<string, number>): void => {
  let tapeMm = 0
  for (const [item, count] of tally) tapeMm += count * tapeOf(item)
  if (tapeMm > 0) tally.set('ptfe-tape', tapeMm)
}

/** What one part brings. */
export const tallyOf = rememberEach<Built, null, Tally>((built) => {
  const tally = new Map<string, number>()
  for (const { item, amount = 1 } of fittingsOf(built)) countIn(tally, item, amount)
  for (const stick of built.sticks)
    if (stick.holes.length > 0) countIn(tally, holeItem(stick), stick.holes.length)
  countTape(tally)
  return tally
})

/** The shims under the feet of one part, by size. An absurd floor may ask for a mile of them. */
export const footShims = rememberEach<readonly Foot[], null, Tally>((feet) => {
  const tally = new Map<string, number>()
  for (const { shimMm } of feet)
    for (const { thickMm, count } of shimStack(shimMm)) countIn(tally, shimKey('foot-shim', thickMm), count)
  return tally
})
