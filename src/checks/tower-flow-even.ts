import type { FeedTube } from '../model/feedFacts'
import type { Finding, Mend } from '../model/finding'
import type { FlowState } from '../model/water'
import type { Bay, BayRule } from './context'
import { evenFeed } from './feedMend'
import { flowOf, found, lengthOf, shareOf, term } from './found'
import { leastTube } from './leastTower'
import { type RowHeads, rowHeadsOf, tubeLawOf, type WateredRow, wateredRows } from './rowHeads'
import { isShortSupplied, systemOf, type WaterSystem } from './waterSystems'

const RULE = 'tower-flow-even'

/** (Most - least) / most: up to the first a row is even, up to the second it drifts. */
const EVEN_SPREAD = 0.1
const DRIFTING_SPREAD = 0.2

/** A tower with less of the flow wanted starves. */
const STARVED_SHARE = 0.75

/** With its trim valve opened a row must promise so much of the flow wanted. */
const PROMISED_SHARE = 0.8

/** Of what a trim valve burns, what comes back to the towers when it is opened: mains and pump take the rest. */
const WON_BACK = 0.7

const isStarving = (flowLph: number, targetLph: number): boolean => flowLph < STARVED_SHARE * targetLph

/** Whether a row is low only because its pump gives every row too little: that is told once, of the pump. */
const isLowWithAll = ({ row }: WateredRow, system: WaterSystem | undefined, bay: Bay): boolean =>
  system !== undefined &&
  isShortSupplied(system, bay) &&
  !isStarving(row.figures.least.flowLph, system.meanLph)

const stateOf = (watered: WateredRow, isLow: boolean): FlowState => {
  const { spread } = watered.row.figures
  if (isLow || spread > DRIFTING_SPREAD) return 'Starved'
  return spread > EVEN_SPREAD ? 'Drifting' : 'Even'
}

/** Opens the trim valve that a row's water passes, where what it burns is what the towers lack. */
const openTrim = (watered: WateredRow, bay: Bay): Mend | undefined => {
  const { row } = watered
  const { targetLph, waterC } = bay.settings
  const valves = bay.builtOf.get(row.zone)?.feed?.valves
  const burntMm = bay.water.zones.get(row.zone)?.valveLossMm ?? 0
  if (!valves || valves.trimTurns >= valves.trimTurnsAll) return undefined
  const law = tubeLawOf(watered, waterC)
  const openMm = law.headAt(row.figures.least.flowLph) + WON_BACK * burntMm
  return law.flowAt(openMm) >= PROMISED_SHARE * targetLph
    ? { kind: 'set', part: row.zone, field: 'trimTurns', value: null }
    : undefined
}

const mendFor = (watered: WateredRow, heads: RowHeads, bay: Bay): Mend | undefined =>
  watered.row.figures.spread > EVEN_SPREAD
    ? evenFeed(watered, heads, bay.settings.targetLph, bay.settings.waterC)
    : openTrim(watered, bay)

const termsOf = ({ row }: WateredRow, heads: RowHeads, targetLph: number): Finding['terms'] => [
  term('Flow wanted at each tower', flowOf(targetLph)),
  term('Mean of the row', flowOf(row.figures.meanLph)),
  term('Least tower', flowOf(row.figures.least.flowLph)),
  term('Most', flowOf(row.figures.most.flowLph)),
  term('Least head over an open end', lengthOf(heads.leastMm)),
  term('Greatest head over an open end', lengthOf(heads.mostMm)),
  term('Lost along a lateral', lengthOf(heads.alongMm)),
  term('Lost between one lateral and another', lengthOf(heads.betweenMm)),
  term('What the open ends are out of level', lengthOf(heads.levelMm)),
]

const factsOf = (watered: WateredRow, least: FeedTube | undefined, isUneven: boolean): Finding['facts'] => {
  return {
    isUneven: isUneven ? 'uneven' : '',
    line: least?.line ?? 0,
    station: least?.station ?? 0,
    leastLph: watered.row.figures.least.flowLph,
  }
}

const findingOf = (watered: WateredRow, bay: Bay): Finding[] => {
  const { row, built } = watered
  const { targetLph } = bay.settings
  const { least, spread } = row.figures
  const isUneven = spread > EVEN_SPREAD
  const isLow = isStarving(least.flowLph, targetLph) && !isLowWithAll(watered, systemOf(bay, row.part), bay)
  if (!isUneven && !isLow) return []
  const heads = rowHeadsOf(row, built, bay.levels)
  const mend = mendFor(watered, heads, bay)
  const tube = leastTube(watered)
  const { x, y } = tube?.outlet ?? least.at
  return [
    found({
      rule: RULE,
      subject: 'flow',
      state: stateOf(watered, isLow),
      parts: [row.part],
      detail: isUneven ? '' : 'low',
      at: { x, y },
      measured: isUneven ? shareOf(spread) : flowOf(least.flowLph),
      limit: isUneven ? shareOf(EVEN_SPREAD) : flowOf(STARVED_SHARE * targetLph),
      facts: factsOf(watered, tube, isUneven),
      terms: termsOf(watered, heads, targetLph),
      ...(mend && { mend }),
    }),
  ]
}

/** The towers of a row get the same, and none much less than it wants. */
export const towerFlowEven: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Even towers in each row',
  limit:
    'A spread, (most - least) / most, of 10 % is even and over 20 % starves; no tower under 75 % of the flow wanted',
  source:
    'Common practice, no source; a flow variation of 10 to 20 % is what published design of drip laterals accepts (Wu and Gitlin 1979, from memory)',
  mending:
    'Split the feed, take bigger laterals, or cut the tubes in graded lengths; where the whole row is low, open its valve or balance the zones.',
  check: (bay) => wateredRows(bay).flatMap((watered) => findingOf(watered, bay)),
  say: ({ parts, measured, limit, facts }, { flow, share, name }) => {
    const row = name(parts[0] ?? '')
    const where = `Line ${facts['line']}, station ${facts['station']}`
    return facts['isUneven'] === 'uneven'
      ? `The towers of ${row} differ by ${share(measured.value)}; ${share(limit.value)} is even. ${where} gets least, ${flow(Number(facts['leastLph']))}.`
      : `All of ${row} is low. ${where} gets least, ${flow(measured.value)}, and starves under ${flow(limit.value)}.`
  },
}
