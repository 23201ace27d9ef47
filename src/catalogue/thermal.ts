import { PER_FAHRENHEIT } from '../units/temperature'
import { finder } from './lookup'

/** What a run is made of, and how much of its length it grows when it warms. */
export interface ThermalRow {
  readonly key: 'pvc' | 'pe' | 'steel' | 'aluminium'
  readonly title: string
  /** Of its length, a degree Celsius. */
  readonly growthPerC: number
  readonly source: string
}

/** Published in parts of the length a degree Fahrenheit. */
const row = (key: ThermalRow['key'], title: string, perFahrenheit: number, source: string): ThermalRow => ({
  key,
  title,
  growthPerC: perFahrenheit * PER_FAHRENHEIT,
  source,
})

export const thermalRows: readonly ThermalRow[] = [
  row(
    'pvc',
    'PVC',
    3e-5,
    'Bliesner, Designing, Operating and Maintaining Piping Systems Using PVC Fittings, 1987: some 3/8 in a 100 ft for 10 °F',
  ),
  row(
    'pe',
    'Polyethylene',
    9e-5,
    'Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2nd edition: some 1 in a 100 ft for 10 °F',
  ),
  row('steel', 'Steel', 6.5e-6, 'Tables of expansion coefficients, from memory'),
  row('aluminium', 'Aluminium', 12.8e-6, 'Tables of expansion coefficients, from memory'),
]

/** The row of a material, such as `pvc`. */
export const thermalOf: (key: string) => ThermalRow = finder(
  'material that grows',
  thermalRows,
  ({ key }) => key,
)
