import { type FormEvent, type RefObject, useId, useRef, useState } from 'react'
import { emptyPlaces } from '../layout/takenOut'
import type { RackRow } from '../parts/rack-row/schema'
import { usePlanner } from '../store/react'
import { Fold } from './Fold'
import { rowSides } from './placeWords'
import { putBackNow, takeOutNow, towerPlaceWords } from './towerActions'
import './towersTakenOut.css'

interface EmptyPlacesProps {
  readonly row: RackRow
  /** Where the focus goes when the button that had it is gone. */
  readonly stationField: RefObject<HTMLInputElement | null>
}

function EmptyPlaces({ row, stationField }: EmptyPlacesProps) {
  const planner = usePlanner()
  const places = emptyPlaces(row)
  const putBack = (index: number) => {
    const place = places[index]
    if (place) putBackNow(planner, row, place)
    if (index === places.length - 1) stationField.current?.focus()
  }
  if (places.length === 0) return <p className="field-help">Every place has its tower.</p>
  return (
    <ul className="towers-out">
      {places.map((place, index) => (
        // By their order, so that after a press the focus stands on the next tower's button.
        <li key={index}>
          {towerPlaceWords(place)}
          <button aria-label={`Put back: ${towerPlaceWords(place)}`} onClick={() => putBack(index)}>
            Put back
          </button>
        </li>
      ))}
    </ul>
  )
}

interface NumberInputProps {
  readonly label: string
  readonly value: string
  readonly onChange: (text: string) => void
  readonly refusal: { readonly id: string; readonly isShown: boolean }
  readonly field?: RefObject<HTMLInputElement | null>
}

function NumberInput({ label, value, onChange, refusal, field }: NumberInputProps) {
  return (
    <label>
      {label}
      <input
        ref={field}
        required
        inputMode="numeric"
        autoComplete="off"
        value={value}
        aria-invalid={refusal.isShown}
        aria-describedby={refusal.id}
        onChange={(event) => onChange(event.target.value)}
      />
    </label>
  )
}

function TakeOutForm({ row, stationField }: EmptyPlacesProps) {
  const planner = usePlanner()
  const [station, setStation] = useState('')
  const [line, setLine] = useState('')
  const [sentence, setSentence] = useState<string>()
  const typed = (set: (text: string) => void) => (text: string) => {
    set(text)
    setSentence(undefined)
  }
  const refusal = { id: useId(), isShown: sentence !== undefined }
  const takeOut = (event: FormEvent) => {
    event.preventDefault()
    const refused = takeOutNow(planner, row, station, line)
    setSentence(refused)
    if (refused !== undefined) return
    setStation('')
    setLine('')
    stationField.current?.focus()
  }
  return (
    <form className="take-out" onSubmit={takeOut}>
      <NumberInput
        label="Station"
        value={station}
        onChange={typed(setStation)}
        refusal={refusal}
        field={stationField}
      />
      <NumberInput label="Line" value={line} onChange={typed(setLine)} refusal={refusal} />
      <button type="submit">Take out</button>
      <p id={refusal.id} className="field-refused" role={sentence && 'alert'}>
        {sentence}
      </p>
    </form>
  )
}

/** Single towers of a row, out and back by their numbers, as a press on the plan does it by their place. */
export function TowersTakenOut({ row }: { readonly row: RackRow }) {
  const stationField = useRef<HTMLInputElement>(null)
  const { start, left } = rowSides(row.heading)
  const count = emptyPlaces(row).length
  return (
    <Fold title={<h3>Towers taken out{count > 0 && `: ${count}`}</h3>}>
      <EmptyPlaces row={row} stationField={stationField} />
      <p className="field-help">
        Stations count from the {start} end of the row, lines from its {left} side.
      </p>
      <TakeOutForm row={row} stationField={stationField} />
    </Fold>
  )
}
