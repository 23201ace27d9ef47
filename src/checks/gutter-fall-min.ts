import type { Built } from '../model/built'
import type { Finding } from '../model/finding'
import { gutterEnds } from '../model/gutterEnds'
import { datumAt, type Levels } from '../model/levels'
import type { RackFacts } from '../model/rackFacts'
import { inchesPerFoot } from '../units/slope'
import type { Bay, BayRule } from './context'
import { fallOf, found, inFeet, levelOf, stateFor, term } from './found'

const RULE = 'gutter-fall-min'

const LEAST_FALL = inchesPerFoot(1 / 16)

/** Half of it still runs, and leaves puddles. Common practice, no source. */
const FLAT_FALL = LEAST_FALL / 2

const findingsFor = (built: Built, rack: RackFacts, levels: Levels): readonly Finding[] => {
  const { high, low } = gutterEnds(built, rack)
  const [highMm, lowMm] = [
    datumAt(levels, built.part, high) + rack.invertHighMm,
    datumAt(levels, built.part, low) + rack.invertLowMm,
  ]
  const fall = ((highMm - lowMm) / rack.runMm) * 1000
  const state = stateFor('drain', fall, LEAST_FALL, FLAT_FALL)
  if (state === 'Falls') return []
  return [
    found({
      rule: RULE,
      subject: 'drain',
      state,
      parts: [built.part],
      at: { x: (high.x + low.x) / 2, y: (high.y + low.y) / 2 },
      measured: fallOf(fall),
      limit: fallOf(LEAST_FALL),
      terms: [
        term('Invert at the high end', levelOf(highMm)),
        term('Invert at the outlet’s end', levelOf(lowMm)),
        term('Length', inFeet(rack.runMm)),
      ],
      mend: { kind: 'level-rows' },
    }),
  ]
}

const check = ({ built, levels }: Bay): Finding[] =>
  built.flatMap((b) => (b.rack && levels.grades.has(b.part) ? findingsFor(b, b.rack, levels) : []))

/** On grade the floor adds to a gutter's own fall, or eats it. A row on level rails has the fall that it was given. */
export const gutterFallMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Fall of gutters on grade',
  limit: '1/16 in a foot toward the outlet, with the floor’s own fall counted in',
  source: 'Common practice; city and sheet-metal guidance for roof gutters says the same, from memory',
  mending: 'Let the rails be level, give the gutters more fall, or let them fall with the floor.',
  check,
  say: ({ parts, measured, limit }, { fall, name }) =>
    measured.value > 0
      ? `On grade the gutters of ${name(parts[0] ?? '')} fall only ${fall(measured.value)}; they want ${fall(limit.value)}.`
      : `On grade the floor rises against the gutters of ${name(parts[0] ?? '')} by more than they fall: water runs from the outlet.`,
}
