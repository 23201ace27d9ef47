import { polyOf } from '../catalogue/pipe'
import type { Finding, Mend, Quantity } from '../model/finding'
import { reynoldsNumber } from '../solvers/water/friction'
import { waterAt } from '../solvers/water/properties'
import { toM3PerS } from '../units/flow'
import { toHeadM } from '../units/head'
import type { Bay, BayRule } from './context'
import { flowOf, found, temperatureOf, term } from './found'
import { meteringNeed } from './metering'
import { isGraded, rowHeadsOf, tubeLawOf, type WateredRow, wateredRows } from './rowHeads'
import { rowPlace } from './rowPlace'
import { BAND, isBetween } from './tubeBand'
import { isOverSupplied, systemOf } from './waterSystems'
import { isUnbalanced } from './zoneMeans'

const RULE = 'tube-transition-band'

const OTHER_BORE: Readonly<Record<string, string>> = { 'tube-1/8': 'tube-1/4', 'tube-1/4': 'tube-1/8' }

/** Shares of the flow wanted between which a row with another bore must promise to come out. */
const PROMISED = { least: 0.8, most: 1.5 }

const number = (reynolds: number): Quantity => ({ value: Math.round(reynolds), unit: 'count' })

/** Reynolds number of a row's tubes at a flow: it goes with the flow of the fastest. */
const reynoldsAt = ({ row }: WateredRow, flowLph: number): number => {
  const most = row.figures.most.flowLph
  return most > 0 ? (row.tubeReynolds * flowLph) / most : 0
}

/** The other bore, where under the same head it leaves the band, gives about what is wanted, and is still what meters. */
const mendFor = (watered: WateredRow, bay: Bay): Mend | undefined => {
  const { row, built, feed } = watered
  const { waterC, targetLph, outletErrorMm } = bay.settings
  const stock = OTHER_BORE[feed.tubes[0]?.stock ?? '']
  if (stock === undefined || isGraded(feed)) return undefined
  const headMm = tubeLawOf(watered, waterC).headAt(row.figures.meanLph)
  const flowLph = tubeLawOf(watered, waterC, { stock }).flowAt(headMm)
  const { kinematicM2S } = waterAt(waterC)
  const reynolds = reynoldsNumber(toM3PerS(flowLph), toHeadM(polyOf(stock).idMm), kinematicM2S)
  const { dropMm } = rowHeadsOf(row, built, bay.levels)
  const lostMm = dropMm * (flowLph / row.figures.meanLph) ** 2
  const isSound =
    !isBetween(reynolds) &&
    flowLph >= PROMISED.least * targetLph &&
    flowLph <= PROMISED.most * targetLph &&
    headMm >= meteringNeed(lostMm, outletErrorMm)
  return isSound ? { kind: 'set', part: row.part, field: 'microtube', value: stock } : undefined
}

/** Told of once, of the pump or of all zones, where too much flow is the cause and what is wanted would run smooth. */
const isToldElsewhere = ({ row }: WateredRow, bay: Bay): boolean => {
  const system = systemOf(bay, row.part)
  return system !== undefined && (isOverSupplied(system, bay) || isUnbalanced(system, bay))
}

const findingOf = (watered: WateredRow, bay: Bay): Finding[] => {
  const { row, built } = watered
  const { targetLph, waterC } = bay.settings
  const { meanLph } = row.figures
  const reynolds = reynoldsAt(watered, meanLph)
  if (!built.rack || !isBetween(reynolds)) return []
  const isWantedClear = !isBetween(reynoldsAt(watered, targetLph))
  if (isWantedClear && isToldElsewhere(watered, bay)) return []
  const mend = isWantedClear ? undefined : mendFor(watered, bay)
  const isNearerTop = BAND.toRe - reynolds < reynolds - BAND.fromRe
  return [
    found({
      rule: RULE,
      subject: 'flow',
      state: 'Drifting',
      parts: [row.part],
      at: rowPlace(built.rack),
      measured: number(reynolds),
      limit: number(isNearerTop ? BAND.toRe : BAND.fromRe),
      facts: {
        meanLph,
        targetLph,
        wantedIs: isWantedClear ? 'clear' : 'between',
      },
      terms: [
        term('Mean flow of the row', flowOf(meanLph)),
        term('Flow wanted at each tower', flowOf(targetLph)),
        term('Water', temperatureOf(waterC)),
        term('Reynolds number at the flow wanted', number(reynoldsAt(watered, targetLph))),
      ],
      ...(mend && { mend }),
    }),
  ]
}

/** Tubes run smooth, or churned, but not now the one and now the other. */
export const tubeTransitionBand: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Smooth or churned flow in the tubes',
  limit: 'No tube between Reynolds numbers 1,800 and 4,000, where flow is smooth or churned by chance',
  source:
    'Smooth up to 2,000 and churned from 4,000 in any text on pipe flow (Moody 1944); a tenth of margin under it is common practice, no source',
  mending: 'Bring the row to the flow wanted by its trim valve, or go one bore up or down.',
  check: (bay) => wateredRows(bay).flatMap((watered) => findingOf(watered, bay)),
  say: ({ parts, measured, facts }, { flow, name }) => {
    const runs = `The tubes of ${name(parts[0] ?? '')} run at ${flow(Number(facts['meanLph']))}, neither surely smooth nor surely churned (Reynolds number ${measured.value}, between ${BAND.fromRe} and ${BAND.toRe}): towers may differ for no visible reason.`
    return facts['wantedIs'] === 'clear'
      ? `${runs} At the ${flow(Number(facts['targetLph']))} wanted they would not: set its trim valve.`
      : runs
  },
}
