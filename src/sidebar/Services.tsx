import { Plus } from 'lucide-react'
import { houseSchema, type Service } from '../layout/house'
import { unwrapped } from '../layout/fieldAt'
import { defOf } from '../layout/limits'
import { fieldList } from './fieldList'
import type { HouseProps } from './houseProps'
import { newService, pointOf, pointRow, withItem } from './houseRows'
import { LengthTable } from './LengthTable'
import { SchemaField } from './SchemaField'

const services = defOf(unwrapped(houseSchema.shape.services).schema)
const serviceFields = services.type === 'array' ? fieldList(services.element) : []

interface OneServiceProps extends Pick<HouseProps, 'units'> {
  readonly service: Service
  /** Undefined takes the line out. */
  readonly onService: (label: string, service: Service | undefined) => string | undefined
}

function OneService({ service, units, onService }: OneServiceProps) {
  return (
    <fieldset className="house-item">
      <legend>{service.name}</legend>
      {serviceFields.map((field) => (
        <SchemaField
          key={field.key}
          field={field}
          value={Reflect.get(service, field.key)}
          units={units}
          onValue={(value) => onService(field.meta.label, { ...service, [field.key]: value })}
        />
      ))}
      <LengthTable
        rowName="Point"
        columns={['East', 'North']}
        rows={service.points.map(pointRow)}
        units={units}
        leastRows={2}
        newRow={() => service.points.map(pointRow).at(-1) ?? [0, 0]}
        onRows={(rows) => onService('Buried line', { ...service, points: rows.map(pointOf) })}
      />
      <button onClick={() => onService('Delete a buried line', undefined)}>Delete this line</button>
    </fieldset>
  )
}

/** What is buried in the floor, so that no trench or pit is dug through it. */
export function Services({ house, units, onHouse }: HouseProps) {
  const set = (label: string, list: readonly Service[]) => onHouse(label, { ...house, services: [...list] })
  return (
    <>
      <p className="field-help">Call before you dig. What is drawn here is only what was told.</p>
      {house.services.map((service, index) => (
        // Buried lines have no name of their own to go by: two may be called alike.
        <OneService
          key={index}
          service={service}
          units={units}
          onService={(label, changed) => set(label, withItem(house.services, index, changed))}
        />
      ))}
      <button onClick={() => set('Add a buried line', [...house.services, newService(house)])}>
        <Plus size={14} aria-hidden="true" /> Add buried line
      </button>
    </>
  )
}
