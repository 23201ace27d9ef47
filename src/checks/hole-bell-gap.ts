import { drainPipeOf } from '../catalogue/pipe'
import { bellsAlong } from '../geometry/bells'
import type { Built, Tube } from '../model/built'
import type { Finding, Mend } from '../model/finding'
import type { DrainRun, Peg } from '../model/levels'
import { inches } from '../units/length'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, inFeet, lengthOf, stateFor, term } from './found'

const RULE = 'hole-bell-gap'

/** Whole pipe between a hole's edge and a bell. Common practice, no source. */
const CLEAR_MM = inches(4)

/** The first stick is cut to a whole inch, and no shorter than holds straight in its bell. */
const STEP_MM = inches(1)
const SHORTEST_MM = inches(12)

/** A bell reaches from its mouth, which faces uphill, so far down the line. Gap from a hole's edge, mm; negative on the bell. */
const gapOf = ({ alongMm, holeMm }: Peg, mouthMm: number, bellMm: number): number =>
  Math.max(mouthMm - alongMm, alongMm - (mouthMm + bellMm)) - holeMm / 2

interface Near {
  readonly peg: Peg
  readonly gapMm: number
}

/** The hole that is nearest to a bell, of those too near. */
const nearest = (holes: readonly Peg[], mouths: readonly number[], bellMm: number): Near | undefined => {
  let least: Near | undefined
  for (const peg of holes)
    for (const mouthMm of mouths) {
      const gapMm = gapOf(peg, mouthMm, bellMm)
      if (gapMm < CLEAR_MM - CLOSE_MM && (!least || gapMm < least.gapMm)) least = { peg, gapMm }
    }
  return least
}

/** The longest first stick, in whole inches, with which every hole is clear of every bell. */
const mendFor = (part: string, { stock, path }: Tube, holes: readonly Peg[]): Mend | undefined => {
  const { stickMm, bellMm } = drainPipeOf(stock)
  const steps = Math.floor((stickMm - SHORTEST_MM) / STEP_MM)
  for (let step = 0; step <= steps; step += 1) {
    const firstMm = stickMm - step * STEP_MM
    if (nearest(holes, bellsAlong(path, stickMm, firstMm), bellMm)) continue
    return { kind: 'set', part, field: 'firstStickMm', value: step === 0 ? null : firstMm }
  }
  return undefined
}

const findingsOf = (run: DrainRun, built: Built | undefined): Finding[] => {
  const holes = run.pegs.filter(({ holeMm }) => holeMm > 0)
  const tube = built?.tubes.find(({ role }) => role === 'drain')
  if (!tube || holes.length === 0) return []
  const near = nearest(holes, run.bellsMm, drainPipeOf(tube.stock).bellMm)
  if (!near) return []
  const mend = mendFor(run.part, tube, holes)
  const { peg, gapMm } = near
  return [
    found({
      rule: RULE,
      subject: 'fit',
      state: stateFor('fit', gapMm, CLEAR_MM, 0),
      parts: [run.part],
      at: peg.at,
      measured: lengthOf(gapMm),
      limit: lengthOf(CLEAR_MM),
      facts: { fromLowMm: peg.fromLowMm },
      terms: [
        term('Hole', lengthOf(peg.holeMm)),
        term('Its middle, from the low end', inFeet(peg.fromLowMm)),
        term('Depth of a bell', lengthOf(drainPipeOf(tube.stock).bellMm)),
      ],
      ...(mend && { mend }),
    }),
  ]
}

const check = ({ levels, builtOf }: Bay): Finding[] =>
  [...levels.drains.values()].flatMap((run) => findingsOf(run, builtOf.get(run.part)))

/** A hole is cut in whole pipe, clear of the bells where the sticks are joined. */
export const holeBellGap: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Holes clear of the bells',
  limit: '4 in of whole pipe between the edge of a hole and a bell',
  source: 'Common practice, no source; depth of bells from ASTM D2729 and D3034, from memory',
  mending: 'Lay a shorter first stick at the low end, or set a tee where a hole would meet a bell.',
  check,
  say: ({ parts, measured, limit, facts }, { length, onTape, name }) => {
    const hole = `The hole ${length(Number(facts['fromLowMm']))} from the low end of ${name(parts[0] ?? '')}`
    return measured.value > 0
      ? `${hole} is ${onTape(measured.value)} from a bell; it wants ${onTape(limit.value)}.`
      : `${hole} runs into a bell; it wants ${onTape(limit.value)} of whole pipe beside it.`
  },
}
