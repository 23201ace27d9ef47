import { balance, trimSettings } from '../../evaluate/water/balance'
import { handSet } from '../../evaluate/water/handSet'
import type { WaterInputs } from '../../evaluate/water/plan'
import type { HandSet, ValveCard } from '../../evaluate/water/valveCard'
import { type ZoneEffects, zoneEffects } from '../../evaluate/water/zoneEffects'
import { setFields } from '../../layout/setFields'
import { commitEdited } from '../../sidebar/commitEdited'
import { Said } from '../../sidebar/Said'
import { useWords } from '../../sidebar/words'
import type { Words } from '../../checks/context'
import { usePlanner, usePlannerState } from '../../store/react'
import type { Steps } from './steps'
import { useAnswer } from './useAnswer'
import { ZoneScenarios } from './ZoneScenarios'
import { handWords, isSetSo, turnsWords, verdictWords } from '../../sheets/valves/zoneWords'
import { HeadRow } from './chart/HeadRow'

interface CardProps {
  readonly card: ValveCard
  readonly hand: HandSet | undefined
  readonly words: Words
}

function Card({ card, hand, words }: CardProps) {
  return (
    <div className="chart-table" role="region" aria-label="Valve card" tabIndex={0}>
      <table>
        <HeadRow columns={['Zone', 'Sight tube', 'Turns open', 'K', 'Flow', 'Set by hand']} />
        <tbody>
          {card.zones.map((zone) => (
            <tr key={zone.part}>
              <th scope="row">
                {words.name(zone.part)}
                {zone.isNeediest && ', neediest'}
              </th>
              <td>
                <b>{words.sightTube(zone.sightMm)}</b>
              </td>
              <td>{turnsWords(zone)}</td>
              <td>{zone.trimK.toFixed(1)}</td>
              <td>{words.flowTotal(zone.flowLph)}</td>
              <td>{handWords(hand, zone.part, words)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

interface Set {
  readonly card: ValveCard
  readonly hand: HandSet | undefined
}

function Balanced({ card, hand }: Set) {
  const planner = usePlanner()
  const parts = usePlannerState((state) => state.evaluation.layout.parts)
  const words = useWords(parts)
  const take = () =>
    commitEdited(planner, 'Trim valves set by the valve card', (layout) =>
      setFields(
        layout,
        trimSettings(card).map(({ part, trimTurns }) => ({ part, values: { trimTurns } })),
      ),
    )
  return (
    <section>
      <h3>Valve card</h3>
      <p>
        <Said words={verdictWords(card, words)} />
      </p>
      <Card card={card} hand={hand} words={words} />
      <p className="water-note">
        Set each zone by its sight tube at the valve, read over the tube ends; turns get you near. Set by hand
        is what a zone then gets of its flow when every valve is off by 5 % of its turns, either way, over{' '}
        {hand?.scenarios ?? 0} trials that are the same each time. Loss by turns differs two- to threefold
        between published tables, so trust the sight tube.
      </p>
      {isSetSo(card, parts) ? (
        <b>All trim valves are set so.</b>
      ) : (
        <button onClick={take}>Set all trim valves so</button>
      )}
    </section>
  )
}

/** The card first, then what hands make of it, then what shutting does. */
function* balanceSteps(bay: WaterInputs): Steps<{ set: Set | undefined; effects: ZoneEffects | undefined }> {
  yield
  const card = balance(bay, 'target')
  yield
  const hand = card && handSet(bay, card)
  yield
  return { set: card && { card, hand }, effects: zoneEffects(bay) }
}

/** Every zone: how its valve is set so that all towers get the same, and what opening or shutting one does to the rest. */
export default function ZonesView() {
  const bay = usePlannerState((state) => state.evaluation.bay)
  const { answer, isCurrent } = useAnswer('zones', [bay], () => balanceSteps(bay))
  if (!answer) return <p className="water-none">Balancing the zones …</p>
  if (!answer.set || !answer.effects)
    return (
      <p className="water-none">
        No zone with an open valve gets water, so there is nothing to balance. Lay a main from a pump to the
        rows.
      </p>
    )
  return (
    <div
      className={isCurrent ? 'water-two water-zones' : 'water-two water-zones water-stale'}
      aria-busy={!isCurrent}
    >
      <Balanced card={answer.set.card} hand={answer.set.hand} />
      <ZoneScenarios effects={answer.effects} />
    </div>
  )
}
