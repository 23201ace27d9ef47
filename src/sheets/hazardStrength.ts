import { worstClimbed } from '../checks/climb'
import { strengthOf } from '../evaluate/5-loads'
import type { Built } from '../model/built'
import { rankOf } from '../model/finding'
import type { RowStrength, Tip } from '../model/strength'
import { thousands } from '../units/thousands'
import { forReader, type Hazard, type Walk } from './hazard'
import { atRows } from './hazardRows'

/** A row with what it carries and how it stands. */
interface Row {
  readonly built: Built
  readonly strength: RowStrength
}

const rowsOf = ({ plan: { bay } }: Walk): readonly Row[] =>
  [...strengthOf(bay).values()].flatMap((strength) => {
    const built = bay.builtOf.get(strength.part)
    return built ? [{ built, strength }] : []
  })

const bars = ({ built }: Row): number => built.sticks.filter(({ mark }) => mark === 'HB').length

/** Nearly all rails fold under a person, and children find it out.  */
const climbWords = ({ units, write, plan }: Walk, rows: readonly Row[]): string => {
  const worst = Math.max(0, ...rows.map(({ strength }) => worstClimbed(strength)?.stressMpa ?? 0))
  const person = forReader(units, '200 lb', '90 kg')
  return worst > plan.bay.settings.conduitYieldMpa
    ? `No climbing or hanging: ${person} at mid span, ${write.stress(worst)}, fold it.`
    : 'Never climb on it.'
}

/** Steel Tube Institute, May 2016: conduit is neither tested nor listed for other uses, and its standards set no least strength. */
const conduit = (walk: Walk, rows: readonly Row[]): Hazard[] =>
  atRows(
    walk,
    rows.filter(({ built }) => built.sticks.some(({ stock }) => stock.startsWith('conduit'))),
    (row) => {
      const { state } = row.strength
      return `${thousands(bars(row))} bars, their rails${state === 'Within' ? '' : `: ${state}`}`
    },
    {
      key: 'conduit',
      title: 'Conduit as a beam',
      words: `Not rated for this use, screened only: load-test the first rack. ${climbWords(walk, rows)}`,
      sheets: ['assembly', 'round', 'safety'],
      source: 'Steel Tube Institute, May 2016, on conduit',
    },
  )

const isPoor = ({ state }: Tip): boolean => rankOf({ subject: 'stance', state }) > 0

/** The push that tips a row with nothing hung, or with one side hung where that takes less. */
const worstTip = ({ stance: { tips } }: RowStrength): Tip | undefined =>
  tips.filter(isPoor).reduce<Tip | undefined>((a, b) => (a && a.tipsAtN <= b.tipsAtN ? a : b), undefined)

const whenWords: Readonly<Record<Tip['under'], string>> = {
  empty: 'empty',
  'one-side': 'with one side hung',
  full: 'hung full',
  harvested: 'half harvested',
  proof: 'at the proof load',
}

const until = { anchored: ' until it is anchored', tied: ' until it is tied' } as const

/** A row that is held tips all the same before what holds it is in. */
const tipping = (walk: Walk, rows: readonly Row[]): Hazard[] =>
  atRows(
    walk,
    rows.filter(({ strength }) => worstTip(strength) !== undefined),
    ({ strength }) => {
      const tip = worstTip(strength)
      const { heldBy } = strength.stance
      const held = heldBy === undefined ? '' : until[heldBy]
      return tip ? `${walk.write.force(tip.tipsAtN)} ${whenWords[tip.under]}${held}` : ''
    },
    {
      key: 'tipping',
      title: 'Racks that tip',
      words:
        'A push at the rails tips these. Anchor or tie them before the first tower; hang both sides in turn.',
      sheets: ['assembly', 'round', 'safety'],
      source: 'International Building Code 1807.2.3 on overturning, borrowed',
    },
  )

const anchorsOf = ({ built: { fittings } }: Row): number =>
  fittings.filter(({ item }) => item === 'ground-anchor').length

/** What is driven into the ground meets what lies there. */
const anchors = (walk: Walk, rows: readonly Row[]): Hazard[] =>
  atRows(
    walk,
    rows.filter((row) => anchorsOf(row) > 0),
    (row) => `${anchorsOf(row)} anchors`,
    {
      key: 'anchors',
      title: 'Ground anchors',
      words: 'Call before you drive one, as before you dig. Their heads trip: flush, capped or flagged.',
      sheets: ['setting-out', 'assembly', 'round', 'safety'],
      source: 'Common practice, no source',
    },
  )

/** What can hurt whoever stands at racks that carry too little or stand too lightly. */
export const strengthHazardsOf = (walk: Walk): readonly Hazard[] => {
  const rows = rowsOf(walk)
  return [conduit, tipping, anchors].flatMap((hazard) => hazard(walk, rows))
}
