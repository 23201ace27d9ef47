import type { Finding, Mend } from '../model/finding'
import type { DrainRun, Join } from '../model/levels'
import { INLET_OVER_OVERFLOW_MM } from '../model/pitFacts'
import { dropOver } from '../units/slope'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, lengthOf, levelOf, stateFor, term } from './found'

const RULE = 'drain-branch-level'

const boreOf = ({ odMm, wallMm }: DrainRun): number => odMm - 2 * wallMm

/** A branch where it comes into a line. All mm. */
interface Meeting {
  readonly branch: DrainRun
  readonly line: DrainRun
  readonly lineMm: number
  /** How far the branch comes in over the line's invert, and how far it should. */
  readonly overMm: number
  readonly wantsMm: number
}

const meetingOf = (join: Join, drains: Bay['levels']['drains']): Meeting | undefined => {
  if (join.kind !== 'drain-to-drain' || join.to === undefined) return undefined
  const [branch, line] = [drains.get(join.from), drains.get(join.to)]
  if (!branch || !line) return undefined
  const lineMm = line.high.invertMm - dropOver(join.alongMm, line.slopeMmPerM)
  const overMm = branch.low.invertMm - lineMm
  return { branch, line, lineMm, overMm, wantsMm: Math.max(0, boreOf(line) - boreOf(branch)) }
}

/** How much lower a line may start before its own end comes in too low, mm. */
const roomBelow = ({ part, low }: DrainRun, { joins, levels, builtOf }: Bay): number => {
  const end = joins.find(
    ({ kind, from }) => from === part && (kind === 'drain-to-pit' || kind === 'drain-to-drain'),
  )
  if (!end || end.to === undefined) return Infinity
  const on = meetingOf(end, levels.drains)
  if (on) return on.overMm - on.wantsMm
  const pit = builtOf.get(end.to)?.pit
  return pit ? low.invertMm - pit.overflowMm - INLET_OVER_OVERFLOW_MM : Infinity
}

/** The line started so low that all its branches come in over it, if its own end then still does. */
const mendFor = (line: DrainRun, bay: Bay): Mend | undefined => {
  const short = bay.joins.flatMap((join) => {
    const meeting = join.to === line.part ? meetingOf(join, bay.levels.drains) : undefined
    return meeting ? [meeting.wantsMm - meeting.overMm] : []
  })
  const lowerMm = Math.max(...short)
  if (lowerMm > roomBelow(line, bay) + CLOSE_MM) return undefined
  return { kind: 'set', part: line.part, field: 'startInvertMm', value: line.high.invertMm - lowerMm }
}

const findingOf = (join: Join, { branch, line, lineMm, overMm, wantsMm }: Meeting, bay: Bay): Finding[] => {
  if (overMm >= wantsMm - CLOSE_MM) return []
  const mend = mendFor(line, bay)
  return [
    found({
      rule: RULE,
      subject: 'drain',
      state: stateFor('drain', overMm, wantsMm, 0),
      parts: [branch.part, line.part],
      at: join.at,
      measured: lengthOf(overMm),
      limit: lengthOf(wantsMm),
      terms: [
        term('Invert of the branch at its low end', levelOf(branch.low.invertMm)),
        term('Invert of the line there', levelOf(lineMm)),
      ],
      ...(mend && { mend }),
    }),
  ]
}

const check = (bay: Bay): Finding[] =>
  bay.joins.flatMap((join) => {
    const meeting = meetingOf(join, bay.levels.drains)
    return meeting ? findingOf(join, meeting, bay) : []
  })

/** A line that ends on another comes in no lower than it, so that the water of the one never stands in the other. */
export const drainBranchLevel: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Branch over the line that it joins',
  limit: 'Crown of a branch no lower than the crown of the line that it joins, insides of both pipes',
  source: 'Common practice, no source: crowns level where pipes meet',
  mending: 'Start the branch higher or let it fall less, or start the line that it joins lower.',
  check,
  say: ({ parts, measured, limit }, { onTape, name }) => {
    const [branch = '', line = ''] = parts
    const where = measured.value < 0 ? 'under' : 'over'
    const wants = limit.value > 0 ? `it wants ${onTape(limit.value)} over it` : 'it wants to be no lower'
    return `${name(branch)} comes into ${name(line)} ${onTape(Math.abs(measured.value))} ${where} its invert; ${wants}.`
  },
}
