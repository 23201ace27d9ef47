import type { Finding } from '../model/finding'
import type { DrainRun, Join } from '../model/levels'
import { dropOver } from '../units/slope'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, inFeet, lengthOf, stateFor, term } from './found'

const RULE = 'drain-branch-level'

const boreOf = ({ odMm, wallMm }: DrainRun): number => odMm - 2 * wallMm

const findingOf = (join: Join, branch: DrainRun, line: DrainRun): Finding[] => {
  const lineMm = line.high.invertMm - dropOver(join.alongMm, line.slopeMmPerM)
  const overMm = branch.low.invertMm - lineMm
  const wantsMm = Math.max(0, boreOf(line) - boreOf(branch))
  if (overMm >= wantsMm - CLOSE_MM) return []
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
        term('Invert of the branch at its low end', inFeet(branch.low.invertMm)),
        term('Invert of the line there', inFeet(lineMm)),
      ],
    }),
  ]
}

const check = ({ joins, levels: { drains } }: Bay): Finding[] =>
  joins.flatMap((join) => {
    if (join.kind !== 'drain-to-drain' || join.to === undefined) return []
    const [branch, line] = [drains.get(join.from), drains.get(join.to)]
    return branch && line ? findingOf(join, branch, line) : []
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
