import type { Part } from '../layout/schema'
import type { Units } from '../units/length'
import { ChoiceField } from './ChoiceField'
import { fieldWriter, readLength } from './fieldText'
import { Fold } from './Fold'
import { pointAfter, pointOf, pointRow, raisedPointOf, raisedRow } from './houseRows'
import { LengthTable } from './LengthTable'
import { placeNote, ways } from './placeWords'
import { TypedField } from './TypedField'

interface PlaceFieldsProps {
  readonly part: Part
  readonly units: Units
  readonly onValue: (field: string, label: string, value: unknown) => string | undefined
}

type Standing = Exclude<Part, { readonly points: unknown }>
type Run = Extract<Part, { readonly points: unknown }>

function StandingPlace({ part, units, onValue }: PlaceFieldsProps & { readonly part: Standing }) {
  const { at, locked } = part
  const { length } = fieldWriter(units)
  const note = placeNote(part)
  const take = (axis: 'x' | 'y') => (text: string) => {
    const read = readLength(text, units)
    return read.ok ? onValue('at', 'Place', { ...at, [axis]: read.value }) : read.sentence
  }
  return (
    <>
      <p className="field-help">{note.place}</p>
      <TypedField
        label="East of the west string"
        isDisabled={locked}
        shown={length(at.x)}
        onTyped={take('x')}
      />
      <TypedField
        label="North of the south string"
        isDisabled={locked}
        shown={length(at.y)}
        onTyped={take('y')}
      />
      <ChoiceField
        label={note.heading}
        isDisabled={locked}
        value={String(part.heading)}
        choices={ways.map(({ heading, words }) => ({ value: String(heading), words }))}
        onChoice={(value) => onValue('heading', 'Heading', Number(value))}
      />
    </>
  )
}

type MainPart = Extract<Part, { readonly kind: 'main' }>

/** Points of a main, each of which may go higher or lower than the rest: over a door, under an aisle. */
function MainPoints({ part, units, onValue }: PlaceFieldsProps & { readonly part: MainPart }) {
  const { points, locked } = part
  const after = (point: number) => raisedRow(pointAfter(points, point))
  return (
    <>
      <LengthTable
        rowName="Point"
        columns={['East', 'North', 'Height']}
        whenEmpty={{ Height: 'as main' }}
        rows={points.map(raisedRow)}
        units={units}
        isDisabled={locked}
        leastRows={2}
        newRow={() => after(points.length - 1)}
        rowAfter={after}
        onRows={(rows) => onValue('points', 'Points', rows.map(raisedPointOf))}
      />
      <p className="field-help">
        Height of the pipe’s centre above the floor at a point; emptied, it is that of the main. Two points on
        one spot make a straight rise.
      </p>
    </>
  )
}

function RunPoints({ part, units, onValue }: PlaceFieldsProps & { readonly part: Run }) {
  const { points, locked } = part
  const after = (point: number) => pointRow(pointAfter(points, point))
  return (
    <LengthTable
      rowName="Point"
      columns={['East', 'North']}
      rows={points.map(pointRow)}
      units={units}
      isDisabled={locked}
      leastRows={2}
      newRow={() => after(points.length - 1)}
      rowAfter={after}
      onRows={(rows) => onValue('points', 'Points', rows.map(pointOf))}
    />
  )
}

function PlaceOf({ part, ...rest }: PlaceFieldsProps) {
  if (part.kind === 'main') return <MainPoints part={part} {...rest} />
  return 'points' in part ? <RunPoints part={part} {...rest} /> : <StandingPlace part={part} {...rest} />
}

/** Where a part stands, from the two baseline strings. What is locked in place can be read, not typed. */
export function PlaceFields({ part, ...rest }: PlaceFieldsProps) {
  return (
    <Fold title={<h3>Place</h3>} isOpen>
      <PlaceOf part={part} {...rest} />
    </Fold>
  )
}
