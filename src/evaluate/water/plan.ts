import type { Bay } from '../../checks/context'
import type { Place } from '../../geometry/point'
import type { Tube } from '../../model/built'
import type { PartId } from '../../model/ids'
import type { HeadBoxFacts, PumpFacts } from '../../model/supplyFacts'
import type { DryReason } from '../../model/water'
import type { MainStop } from './mainStops'
import type { FedRow } from './reach'
import type { RowPiece } from './rowPiece'

/** What the water of a bay is computed from. */
export type WaterInputs = Pick<Bay, 'built' | 'builtOf' | 'joins' | 'levels' | 'joinedPipes' | 'settings'>

/** A pipe outside the rows, between two nodes of the network. */
export interface Link {
  readonly from: number
  readonly to: number
  readonly lengthM: number
  readonly boreM: number
  readonly lossK: number
}

/** The pumps of a pit. */
export interface PlacedPump {
  readonly part: PartId
  readonly facts: PumpFacts
  readonly boreM: number
  /** The pit's own pipes. */
  readonly tubes: readonly Tube[]
  /** Its waters, as `FedRow.group`. */
  readonly group: PartId | undefined
  /** Index of the open level that it draws from. */
  readonly level: number
  /** First of its `PUMP_JOINTS` joints and of its `PUMP_VALVES` valves. */
  readonly joint: number
  readonly valve: number
}

/** A pump's joints: behind the pump, behind check valve and fittings (where the bypass leaves), behind the filter. */
export const PUMP_JOINTS = 3

/** Check valve with the other fittings, filter, bypass. */
export const PUMP_VALVES = 3

export interface PlacedBox {
  readonly part: PartId
  readonly facts: HeadBoxFacts
  readonly level: number
}

export interface PlacedMain {
  readonly part: PartId
  readonly path: readonly Place[]
  readonly stops: readonly MainStop[]
  readonly boreM: number
  /** First joint of its stops, first pipe of its legs. */
  readonly joint: number
  readonly pipe: number
}

/** A row with where its joints, pipes, tubes and valve begin in the network. */
export interface PlacedRow extends FedRow {
  readonly piece: RowPiece
  /** Site level of what the row's heights are measured from, m. */
  readonly datumM: number
  /** A place of the row with its level from the benchmark's zero. */
  readonly sitePlace: (at: Place) => Place
  readonly joint: number
  readonly pipe: number
  readonly mouth: number
  /** Undefined for a row without valves. */
  readonly valve: number | undefined
  /** The valve that its water comes through, its own or another row's. */
  readonly zoneValve: number | undefined
}

/** The bay's network before numbers are put in: what stands where. Joints are numbered without the levels before them. */
export interface Plan {
  readonly levels: number
  readonly joints: number
  readonly pipes: number
  readonly valves: number
  readonly mouths: number
  /** The pipes outside rows; they come first, and of them the legs of mains first. */
  readonly links: readonly Link[]
  readonly pumps: readonly PlacedPump[]
  readonly boxes: readonly PlacedBox[]
  readonly mains: readonly PlacedMain[]
  readonly rows: readonly PlacedRow[]
  readonly dry: ReadonlyMap<PartId, DryReason>
  readonly settings: WaterInputs['settings']
}
