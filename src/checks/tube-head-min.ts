import type { Finding, Mend } from '../model/finding'
import { inches } from '../units/length'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, flowOf, found, lengthOf, term } from './found'
import { meteringNeed } from './metering'
import { isGraded, rowHeadsOf, tubeLawOf, type WateredRow, wateredRows } from './rowHeads'
import { rowPlace } from './rowPlace'

const RULE = 'tube-head-min'

const METER = 'tube-1/8'

/** Tubes are cut to so much, and no builder hangs longer ones. Common practice, no source. */
const CUT_STEP_MM = inches(6)
const LONGEST_MM = inches(120)

/** More than is asked, since a tube that takes more head leaves less flow, and that less loss. */
const MARGIN = 1.05

/** A row whose tubes take more head must promise so much of the flow wanted. */
const PROMISED_SHARE = 0.8

/**
 * What the tubes of a row take, and what they should, mm. Of 1/8 in tubes the solved flows tell how even their lateral is, and
 * only the level of their open ends is asked for; wider ones leave both to chance.
 */
interface Taken {
  readonly headMm: number
  readonly dropMm: number
  readonly needMm: number
}

const takenBy = (watered: WateredRow, { settings, levels }: Bay): Taken => {
  const { row, built, feed } = watered
  const isMeter = feed.tubes[0]?.stock === METER
  const flowLph = isMeter ? settings.targetLph : row.figures.meanLph
  const dropMm = isMeter ? 0 : rowHeadsOf(row, built, levels).dropMm
  return {
    headMm: tubeLawOf(watered, settings.waterC).headAt(flowLph),
    dropMm,
    needMm: meteringNeed(dropMm, settings.outletErrorMm),
  }
}

/** Flow of the row's tubes if they were others, under the head that they stand under now. */
const flowWith = (watered: WateredRow, bay: Bay, tube: { stock?: string; lengthMm?: number }): number => {
  const { waterC } = bay.settings
  const headMm = tubeLawOf(watered, waterC).headAt(watered.row.figures.meanLph)
  return tubeLawOf(watered, waterC, tube).flowAt(headMm)
}

const givesEnough = (flowLph: number, { settings }: Bay): boolean =>
  flowLph >= PROMISED_SHARE * settings.targetLph

/** Lengths longer than a tube's own, to the next half foot. */
const longerThan = (lengthMm: number): number[] => {
  const first = Math.floor(lengthMm / CUT_STEP_MM) + 1
  const count = Math.max(0, Math.round(LONGEST_MM / CUT_STEP_MM) - first + 1)
  return Array.from({ length: count }, (_, k) => (first + k) * CUT_STEP_MM)
}

/** A tube of the meter's bore takes the head of now at less flow, and that loses less along the lateral. */
const narrower = (watered: WateredRow, bay: Bay): Mend | undefined => {
  const { headMm, dropMm } = takenBy(watered, bay)
  const flowLph = flowWith(watered, bay, { stock: METER })
  // The loss along the lateral falls at least as the flow does.
  const leftMm = dropMm * Math.min(1, flowLph / watered.row.figures.meanLph)
  const isSound = headMm >= MARGIN * meteringNeed(leftMm, bay.settings.outletErrorMm)
  return isSound && givesEnough(flowLph, bay)
    ? { kind: 'set', part: watered.row.part, field: 'microtube', value: METER }
    : undefined
}

const longer = (watered: WateredRow, ownMm: number, bay: Bay): Mend | undefined => {
  const { waterC, targetLph, outletErrorMm } = bay.settings
  const needMm = meteringNeed(0, outletErrorMm)
  const lengthMm = longerThan(ownMm).find(
    (mm) => tubeLawOf(watered, waterC, { lengthMm: mm }).headAt(targetLph) >= needMm,
  )
  return lengthMm !== undefined && givesEnough(flowWith(watered, bay, { lengthMm }), bay)
    ? { kind: 'set', part: watered.row.part, field: 'microtubeMm', value: lengthMm }
    : undefined
}

const mendFor = (watered: WateredRow, bay: Bay): Mend | undefined => {
  const own = watered.feed.tubes[0]
  if (!own || isGraded(watered.feed)) return undefined
  return own.stock === METER ? longer(watered, own.lengthMm, bay) : narrower(watered, bay)
}

const findingOf = (watered: WateredRow, bay: Bay): Finding[] => {
  const { row, built } = watered
  if (!built.rack || !(row.figures.meanLph > 0)) return []
  const { headMm, dropMm, needMm } = takenBy(watered, bay)
  if (headMm >= needMm - CLOSE_MM) return []
  const mend = mendFor(watered, bay)
  return [
    found({
      rule: RULE,
      subject: 'flow',
      state: 'Drifting',
      parts: [row.part],
      at: rowPlace(built.rack),
      measured: lengthOf(headMm),
      limit: lengthOf(needMm),
      facts: { dropMm, errorMm: bay.settings.outletErrorMm },
      terms: [
        term('Mean flow of the row', flowOf(row.figures.meanLph)),
        term('Flow wanted at each tower', flowOf(bay.settings.targetLph)),
        term('Lost along the laterals', lengthOf(dropMm)),
        term('Tube ends level within', lengthOf(bay.settings.outletErrorMm)),
      ],
      ...(mend && { mend }),
    }),
  ]
}

/** The tube is the meter: it takes far more head than anything else that differs from tower to tower. */
export const tubeHeadMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Tubes that meter',
  limit:
    'A tube takes at least 5 times the level error of its open end, and one wider than 1/8 in 5 times the loss along its lateral as well',
  source:
    'Common practice, no source: 1/4 in tube takes a quarter of the head of 1/8 in tube, and leaves evenness to the lateral',
  mending: 'Take 1/8 in tubes, or longer ones; or lose less along the laterals.',
  check: (bay) => wateredRows(bay).flatMap((watered) => findingOf(watered, bay)),
  say: ({ parts, measured, limit, facts }, { onTape, name }) => {
    const dropMm = Number(facts['dropMm'])
    const lost = dropMm > 0 ? `the ${onTape(dropMm)} lost along the laterals and ` : ''
    const of = `${lost}the ${onTape(Number(facts['errorMm']))} that their ends may be out of level`
    return `The tubes of ${name(parts[0] ?? '')} take ${onTape(measured.value)} of head; to be the meter they should take ${onTape(limit.value)}, 5 times ${of}.`
  },
}
