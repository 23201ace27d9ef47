import type { Finding } from '../model/finding'
import { datumAt, type DrainRun, type Join } from '../model/levels'
import { dropOver } from '../units/slope'
import type { Bay, BayRule } from './context'
import { inches } from '../units/length'
import { CLOSE_MM, found, lengthOf, levelOf, stateFor, term } from './found'

const RULE = 'outlet-drop-min'

/** Room for outlet, tube and slack. Common practice, no source. */
export const DROP_MM = inches(4)

const findingOf = (join: Join, run: DrainRun, outletMm: number, crownMm: number): Finding =>
  found({
    rule: RULE,
    subject: 'drain',
    state: stateFor('drain', outletMm - crownMm, DROP_MM, 0),
    parts: [join.from, run.part],
    at: join.at,
    measured: lengthOf(outletMm - crownMm),
    limit: lengthOf(DROP_MM),
    terms: [
      term('Trough invert at the outlet', levelOf(outletMm)),
      term('Drain crown under it', levelOf(crownMm)),
    ],
  })

/** The least drop from a row's outlets to the crown of its drain; one finding a row and drain. */
const check = ({ joins, levels }: Bay): Finding[] => {
  const worst = new Map<string, Finding>()
  for (const join of joins) {
    const run = join.to === undefined ? undefined : levels.drains.get(join.to)
    if (join.kind !== 'outlet-to-drain' || !run) continue
    const outletMm = join.at.z + datumAt(levels, join.from, join.at)
    const crownMm = run.high.crownMm - dropOver(join.alongMm, run.slopeMmPerM)
    if (outletMm - crownMm >= DROP_MM - CLOSE_MM) continue
    const finding = findingOf(join, run, outletMm, crownMm)
    const known = worst.get(finding.key)
    if (!known || known.measured.value > finding.measured.value) worst.set(finding.key, finding)
  }
  return [...worst.values()]
}

/** The outlet must stand far enough over the drain's crown. */
export const outletDropMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Drop from trough to drain',
  limit: '4 in from trough invert to drain crown',
  source: 'Common practice, no source',
  mending: 'Bury the drain deeper, or raise the trough.',
  check,
  say: ({ parts, measured, limit }, { onTape, name }) =>
    `${name(parts[0] ?? '')} has ${onTape(measured.value)} from trough to the crown of ${name(parts[1] ?? '')}; it wants ${onTape(limit.value)}.`,
}
