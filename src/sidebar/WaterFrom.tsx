import { usePlannerState } from '../store/react'
import { ChoiceField } from './ChoiceField'
import type { FeedFormProps } from './feedForm'
import { NEAREST, waterFromNote, waterGiverChoices } from './waterGivers'
import { useWords } from './words'

/** What a row takes its water from: the nearest in reach, or what its builder chose. */
export function WaterFrom({ row, onValue }: FeedFormProps) {
  const [parts, joins] = usePlannerState(({ evaluation }) => [evaluation.layout.parts, evaluation.bay.joins])
  const { name } = useWords(parts)
  const from = joins.find((join) => join.from === row.id && join.kind.startsWith('zone-to-'))?.to
  return (
    <ChoiceField
      label="Water comes from"
      help={waterFromNote(row, from && name(from))}
      value={row.waterFrom ?? NEAREST}
      choices={waterGiverChoices(row, parts)}
      onChoice={(chosen) => onValue('waterFrom', 'Water source', chosen === NEAREST ? null : chosen)}
    />
  )
}
