import type { Finding, Mend } from '../model/finding'
import { inches } from '../units/length'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, fallOf, found, inFeet, lengthOf, term } from './found'
import { outletAt, troughsOf, type WetTrough } from './troughs'

const RULE = 'trough-puddle-max'

/** What dries in a day and breeds nothing. Common practice, no source. */
const MOST_MM = inches(1 / 8)

/** An outlet needs so much gutter behind it to be fixed. Common practice, no source; the schema asks for it too. */
const LEAST_TAIL_MM = inches(2)

/** Outlets are set to the inch. */
const STEP_MM = inches(1)

/** Only a trough that stands alone has its outlet where one likes: a row's lies between its foot plates. */
const mendFor = ({ built: { rack, part }, facts, trough }: WetTrough): Mend | undefined => {
  if (rack) return undefined
  const tailMm = ((facts.runMm - facts.outletFromHighMm) * MOST_MM) / trough.puddleMm
  return tailMm < LEAST_TAIL_MM
    ? undefined
    : {
        kind: 'set',
        part,
        field: 'outletFromLowMm',
        value: Math.floor(tailMm / STEP_MM) * STEP_MM,
      }
}

const findingOf = (wet: WetTrough): Finding => {
  const { built, facts, trough } = wet
  const { part, line, puddleMm } = trough
  const mend = mendFor(wet)
  return found({
    rule: RULE,
    subject: 'fit',
    state: 'Tight',
    parts: [part],
    at: outletAt(built, line),
    measured: lengthOf(puddleMm),
    limit: lengthOf(MOST_MM),
    terms: [
      term('Trough behind the outlet', inFeet(facts.runMm - facts.outletFromHighMm)),
      term('Fall', fallOf(facts.fallMmPerM)),
    ],
    ...(mend && { mend }),
  })
}

const check = (bay: Bay): Finding[] =>
  troughsOf(bay).flatMap((wet) => (wet.trough.puddleMm > MOST_MM + CLOSE_MM ? [findingOf(wet)] : []))

/** What a trough falls behind its outlet is what stands there when the pump rests. */
export const troughPuddleMax: BayRule = {
  over: 'bay',
  isOfRacks: true,
  id: RULE,
  title: 'Puddle behind the outlet',
  limit: 'No more than 1/8 in of water left standing behind an outlet',
  source: 'Common practice, no source: a pour test of one gallon leaves no deeper puddle',
  mending: 'Set the outlet nearer to the low end, let the gutters fall less, or set riser pairs closer.',
  check,
  say: ({ parts, measured, limit }, { onTape, name }) =>
    `When the pump rests ${onTape(measured.value)} of water stands behind the outlets of ${name(parts[0] ?? '')}; no more than ${onTape(limit.value)} is wanted.`,
}
