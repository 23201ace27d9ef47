import type { Finding, Mend } from '../model/finding'
import type { Join } from '../model/levels'
import { inches } from '../units/length'
import type { Bay, BayRule } from './context'
import { found, inFeet } from './found'

const RULE = 'drain-pit-reach'

/** Half the width of a usual pit: its wall is set at the drain's end. */
const HALF_PIT_MM = inches(18)

/** Where a bay has no pit at all, one is dug across the end of the drain. */
const digAt = (join: Join, { builtOf, levels }: Bay): Mend | undefined => {
  const run = levels.drains.get(join.from)
  const path = builtOf.get(join.from)?.tubes.find(({ role }) => role === 'drain')?.path ?? []
  const [before, end] = path.slice(-2)
  if (!run || !before || !end) return undefined
  const isEastWest = Math.abs(end.x - before.x) >= Math.abs(end.y - before.y)
  const dx = isEastWest ? Math.sign(end.x - before.x) * HALF_PIT_MM : 0
  const dy = isEastWest ? 0 : Math.sign(end.y - before.y) * HALF_PIT_MM
  const at = { x: end.x + dx, y: end.y + dy }
  return { kind: 'dig', at, heading: isEastWest ? 90 : 0, inletMm: run.low.invertMm }
}

const findingOf = (join: Join, bay: Bay): Finding => {
  const isAny = Number.isFinite(join.gapMm)
  const mend = isAny ? undefined : digAt(join, bay)
  return found({
    rule: RULE,
    subject: 'drain',
    state: 'Backs up',
    parts: [join.from],
    at: join.at,
    measured: inFeet(isAny ? join.gapMm : 0),
    limit: inFeet(0),
    facts: { none: isAny ? '' : 'none' },
    ...(mend && { mend }),
  })
}

/** A drain's low end must come to a pit, at once or by another line: what falls nowhere floods the floor. */
export const drainPitReach: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Drain comes to a pit',
  limit: 'The low end of each drain line ends in a pit, or on another line that does',
  source: 'Geometry',
  mending: 'Drag the low end of the line to the pit, or on to a line that leads there.',
  check: (bay) =>
    bay.joins
      .filter((join) => join.kind === 'drain-to-pit' && join.to === undefined)
      .map((join) => findingOf(join, bay)),
  say: ({ parts, measured, facts }, { length, name }) =>
    facts['none'] === 'none'
      ? `${name(parts[0] ?? '')} has no pit to fall to.`
      : `${name(parts[0] ?? '')} ends ${length(measured.value)} short of the nearest pit.`,
}
