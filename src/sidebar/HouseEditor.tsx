import { setHouse } from '../layout/bayEdits'
import { type House, houseSchema } from '../layout/house'
import { usePlanner, usePlannerState } from '../store/react'
import { BenchmarkFields } from './BenchmarkFields'
import { commitEdited } from './commitEdited'
import { CurvedWalls } from './CurvedWalls'
import { fieldList } from './fieldList'
import { fieldWriter, readLength, readNumber } from './fieldText'
import { Fold } from './Fold'
import {
  cornerAfter,
  pointOf,
  pointRow,
  rectangleOf,
  spotLevelRows,
  withRectangle,
  withSpotLevels,
} from './houseRows'
import type { HouseProps } from './houseProps'
import { LengthTable } from './LengthTable'
import { SchemaField } from './SchemaField'
import { Services } from './Services'
import { TypedField } from './TypedField'

const houseFields = fieldList(houseSchema)

function Rectangle({ house, units, onHouse }: HouseProps) {
  const size = rectangleOf(house.outline)
  if (!size) return null
  const [widthMm, lengthMm] = size
  const { length } = fieldWriter(units)
  const take = (resized: (mm: number) => House) => (text: string) => {
    const read = readLength(text, units)
    return read.ok ? onHouse('Size of the house', resized(Number(read.value))) : read.sentence
  }
  return (
    <>
      <TypedField
        label="Inside, west to east"
        shown={length(widthMm)}
        onTyped={take((mm) => withRectangle(house, mm, lengthMm))}
      />
      <TypedField
        label="Inside, south to north"
        shown={length(lengthMm)}
        onTyped={take((mm) => withRectangle(house, widthMm, mm))}
      />
    </>
  )
}

function North({ house, onHouse }: HouseProps) {
  const take = (text: string) => {
    const read = readNumber(text)
    return read.ok ? onHouse('True north', { ...house, northDegrees: Number(read.value) }) : read.sentence
  }
  return (
    <TypedField
      label="True north, degrees right of the plan’s up"
      shown={String(house.northDegrees)}
      onTyped={take}
    />
  )
}

function Outline({ house, units, onHouse }: HouseProps) {
  const { outline } = house
  const after = (corner: number) => pointRow(cornerAfter(outline, corner))
  return (
    <LengthTable
      rowName="Corner"
      columns={['East', 'North']}
      rows={outline.map(pointRow)}
      units={units}
      leastRows={3}
      newRow={() => after(outline.length - 1)}
      rowAfter={after}
      onRows={(rows) => onHouse('Outline of the house', { ...house, outline: rows.map(pointOf) })}
    />
  )
}

function SpotLevels({ house, units, onHouse }: HouseProps) {
  return (
    <LengthTable
      rowName="Spot level"
      columns={['East', 'North', 'Level']}
      levelColumn="Level"
      rows={spotLevelRows(house)}
      units={units}
      leastRows={0}
      newRow={() => [0, 0, 0]}
      onRows={(rows) => onHouse('Spot levels', withSpotLevels(house, rows))}
    />
  )
}

/** The house as it was surveyed: walls, headroom, floor levels, what lies under the floor. */
export function HouseEditor({ house }: { readonly house: House }) {
  const planner = usePlanner()
  const units = usePlannerState((state) => state.units)
  const onHouse = (label: string, changed: House) =>
    commitEdited(planner, label, (layout) => setHouse(layout, changed))
  const props = { house, units, onHouse }
  return (
    <>
      <Fold title={<h3>House</h3>}>
        <Rectangle {...props} />
        {houseFields.map((field) => (
          <SchemaField
            key={field.key}
            field={field}
            value={Reflect.get(house, field.key)}
            units={units}
            onValue={(value) => onHouse(field.meta.label, { ...house, [field.key]: value })}
          />
        ))}
        <North {...props} />
      </Fold>
      <Fold title={<h3>Corners of the house</h3>}>
        <p className="field-help">Inside of the walls, anticlockwise seen from above.</p>
        <Outline {...props} />
      </Fold>
      <Fold title={<h3>Floor levels and benchmark</h3>}>
        <BenchmarkFields {...props} />
        <SpotLevels {...props} />
      </Fold>
      <Fold title={<h3>Under the floor</h3>}>
        <Services {...props} />
      </Fold>
      <Fold title={<h3>Headroom at curved walls</h3>}>
        <CurvedWalls {...props} />
      </Fold>
    </>
  )
}
