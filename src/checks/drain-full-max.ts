import { type DrainPipe, drainPipeOf, drainPipes } from '../catalogue/pipe'
import { isOverHalf, MOST_SHARE } from '../model/drainState'
import type { Finding, Mend } from '../model/finding'
import type { DrainRun } from '../model/levels'
import type { DrainReturn } from '../model/returns'
import { halfFullLph } from '../solvers/gravity/manning'
import type { Bay, BayRule } from './context'
import { fallOf, flowTotalOf, found, inFeet, lengthOf, shareOf, term } from './found'

const RULE = 'drain-full-max'

/** The next size that carries a flow half full at the same fall. */
const bigEnough = (idMm: number, flowLph: number, slopeMmPerM: number, n: number): DrainPipe | undefined =>
  drainPipes.find((pipe) => pipe.idMm > idMm && halfFullLph(pipe.idMm, slopeMmPerM, n) >= flowLph)

const findingOf = (drain: DrainReturn, run: DrainRun, idMm: number, n: number): Finding => {
  const { part, fullest, halfFullLph: carriesLph } = drain
  const pipe = bigEnough(idMm, fullest.flowLph, run.slopeMmPerM, n)
  const mend: Mend | undefined = pipe && { kind: 'set', part, field: 'pipe', value: pipe.key }
  const { from, to } = fullest
  return found({
    rule: RULE,
    subject: 'drain',
    state: 'Backs up',
    parts: [part],
    at: { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 },
    measured: shareOf(fullest.share),
    limit: shareOf(MOST_SHARE),
    facts: { flow: fullest.flowLph, carries: carriesLph },
    terms: [
      term('Flow where it is fullest', flowTotalOf(fullest.flowLph)),
      term('What it carries half full', flowTotalOf(carriesLph)),
      term('Bore', lengthOf(idMm)),
      term('Fall', fallOf(run.slopeMmPerM)),
      term('From the high end', inFeet(fullest.fromMm)),
    ],
    ...(mend && { mend }),
  })
}

/** A line that does not fall carries nothing, however wide it is: that is told of its fall. */
const check = ({ returns, levels, builtOf, settings }: Bay): Finding[] =>
  [...returns.drains.values()].flatMap((drain) => {
    const run = levels.drains.get(drain.part)
    const stock = builtOf.get(drain.part)?.tubes.find(({ role }) => role === 'drain')?.stock
    if (!run || stock === undefined || run.slopeMmPerM <= 0 || !isOverHalf(drain.fullest.share)) return []
    return [findingOf(drain, run, drainPipeOf(stock).idMm, settings.manningN)]
  })

/** No drain runs more than half full. */
export const drainFullMax: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Water in a drain',
  limit: 'No more than half full: the upper half is for roots, solids and air',
  source:
    'Common practice, no source; depth by Manning (1891), as in V. T. Chow, Open-channel hydraulics (1959), equation 5-6',
  mending:
    'Take the next size of pipe, whose crown then lies higher over its invert, so that cover or start level change; or give the line more fall, or a second line part of its rows.',
  check,
  say: ({ parts, measured, facts }, { flowTotal, share, name }) => {
    const [line, flow] = [name(parts[0] ?? ''), flowTotal(Number(facts['flow']))]
    const is = measured.value < 1 ? `runs ${share(measured.value)} full` : 'is full and backs up'
    return `${line} ${is} where it carries ${flow}; half full it carries ${flowTotal(Number(facts['carries']))}.`
  },
}
