import { useState } from 'react'
import type { ZoneEffects } from '../../evaluate/water/zoneEffects'
import { setFields } from '../../layout/setFields'
import type { PartId } from '../../model/ids'
import { commitEdited } from '../../sidebar/commitEdited'
import { Said } from '../../sidebar/Said'
import { useWords } from '../../sidebar/words'
import { usePlanner, usePlannerState } from '../../store/react'
import { changeWords, effectWords } from '../../sheets/valves/zoneWords'
import { HeadRow } from './chart/HeadRow'

interface ZoneRowProps {
  readonly zone: PartId
  readonly isOpen: boolean
  readonly flow: string
  readonly change: string
  readonly isAsked: boolean
  readonly onAsk: () => void
}

function ZoneRow({ zone, isOpen, flow, change, isAsked, onAsk }: ZoneRowProps) {
  const planner = usePlanner()
  const parts = usePlannerState((state) => state.evaluation.layout.parts)
  const { name } = useWords(parts)
  const turn = () =>
    commitEdited(planner, `${isOpen ? 'Shut' : 'Open'} ${name(zone)}`, (layout) =>
      setFields(layout, [{ part: zone, values: { valve: isOpen ? 'shut' : 'open' } }]),
    )
  return (
    <tr>
      <th scope="row">{name(zone)}</th>
      <td>{isOpen ? flow : 'shut'}</td>
      <td>{change}</td>
      <td className="water-cell-deeds">
        <button onClick={turn} aria-label={`${isOpen ? 'Shut' : 'Open'} the valve of ${name(zone)}`}>
          {isOpen ? 'Shut' : 'Open'}
        </button>
        {isOpen && (
          <button onClick={onAsk} aria-pressed={isAsked} aria-label={`What shutting ${name(zone)} would do`}>
            What if?
          </button>
        )}
      </td>
    </tr>
  )
}

/** Zones opened and shut, and what one does to the others before anybody walks to the valve. */
export function ZoneScenarios({ effects }: { readonly effects: ZoneEffects }) {
  const evaluation = usePlannerState((state) => state.evaluation)
  const words = useWords(evaluation.layout.parts)
  const [asked, setAsked] = useState<PartId>()
  const effect = asked === undefined ? undefined : effects.shut(asked)
  const zones = evaluation.bay.built.filter(({ feed }) => feed?.valves !== undefined)
  return (
    <section>
      <h3>Open and shut</h3>
      <p>
        <Said
          words={effect ? effectWords(effect, words) : 'Shut a zone and see the others move, or ask first.'}
        />
      </p>
      <div className="chart-table" role="region" aria-label="Zones opened and shut" tabIndex={0}>
        <table>
          <HeadRow
            columns={[
              'Zone',
              'Flow',
              asked === undefined ? 'Change' : `With ${words.name(asked)} shut`,
              'Valve',
            ]}
          />
          <tbody>
            {zones.map(({ part, feed }) => {
              const change = effect?.changes.get(part)
              return (
                <ZoneRow
                  key={part}
                  zone={part}
                  isOpen={feed?.valves?.isOpen ?? false}
                  flow={words.flowTotal(evaluation.bay.water.zones.get(part)?.flowLph ?? 0)}
                  change={change === undefined ? '—' : changeWords(change, words)}
                  isAsked={asked === part}
                  onAsk={() => setAsked(asked === part ? undefined : part)}
                />
              )
            })}
          </tbody>
        </table>
      </div>
    </section>
  )
}
