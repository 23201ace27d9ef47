import { houseSchema } from '../layout/house'
import { fieldList } from './fieldList'
import { fieldWriter, readLength } from './fieldText'
import type { HouseProps } from './houseProps'
import { SchemaField } from './SchemaField'
import { TypedField } from './TypedField'

const benchmarkFields = fieldList(houseSchema.shape.benchmark)

/** The mark that all levels are shot from: where it is, and what it is called on paper. */
export function BenchmarkFields({ house, units, onHouse }: HouseProps) {
  const { benchmark } = house
  const { length } = fieldWriter(units)
  const set = (label: string, changes: Partial<typeof benchmark>) =>
    onHouse(label, { ...house, benchmark: { ...benchmark, ...changes } })
  const take = (axis: 'x' | 'y') => (text: string) => {
    const read = readLength(text, units)
    return read.ok ? set('Benchmark', { at: { ...benchmark.at, [axis]: read.value } }) : read.sentence
  }
  return (
    <>
      {benchmarkFields.map((field) => (
        <SchemaField
          key={field.key}
          field={field}
          value={Reflect.get(benchmark, field.key)}
          units={units}
          onValue={(value) => set(field.meta.label, { [field.key]: value })}
        />
      ))}
      <TypedField label="East of the west string" shown={length(benchmark.at.x)} onTyped={take('x')} />
      <TypedField label="North of the south string" shown={length(benchmark.at.y)} onTyped={take('y')} />
    </>
  )
}
