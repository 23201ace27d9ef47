import { polyOf } from '../../catalogue/pipe'
import type { Words } from '../../checks/context'
import type { Judged } from '../../evaluate/evaluation'
import type { ValveCard } from '../../evaluate/water/valveCard'
import type { PartId } from '../../model/ids'
import type { PitFacts } from '../../model/pitFacts'
import type { PumpFacts } from '../../model/supplyFacts'
import { type Cell, type Column, counted, type Row, said, type Table } from '../../model/table'
import { GRAVITY } from '../../solvers/water/properties'
import { toM3PerS } from '../../units/flow'
import { headM, toHeadM } from '../../units/head'
import { namesTogether } from '../hazard'

/** A part with the cells of its row. */
interface Reading {
  readonly part: PartId
  readonly cells: readonly Cell[]
}

/** A row for each reading, with the names of all that have it: eighteen pits alike are one line of a card. */
const rowsTogether = (readings: readonly Reading[], { name }: Words): readonly Row[] => {
  const alike = new Map<string, Reading[]>()
  for (const reading of readings) {
    const says = reading.cells.map(({ text }) => text).join('|')
    alike.set(says, [...(alike.get(says) ?? []), reading])
  }
  return [...alike.values()].map((those) => ({
    key: those[0]?.part ?? '',
    cells: [said(namesTogether(those.map(({ part }) => name(part)))), ...(those[0]?.cells ?? [])],
  }))
}

const pitCells = (pit: PitFacts, { onTape }: Words): readonly Cell[] =>
  [pit.lowAlarmMm, pit.makeUpMm, pit.runningMm, pit.drainBackMm]
    .map((levelMm) => levelMm - pit.bottomMm)
    .map((mm) => counted(mm, onTape(mm)))

const PIT_COLUMNS: readonly Column[] = [
  { key: 'pit', title: 'Pit', unit: 'text' },
  { key: 'lowAlarmMm', title: 'Low alarm', unit: 'mm' },
  { key: 'makeUpMm', title: 'Make-up opens', unit: 'mm' },
  { key: 'runningMm', title: 'Running', unit: 'mm', isMain: true },
  { key: 'stoppedMostMm', title: 'Pump stopped, at most', unit: 'mm' },
]

/** Marks on the wall of each pit, over its bottom. */
export const pitTable = ({ bay }: Judged, write: Words): Table => ({
  id: 'round-pits',
  title: 'Pit marks, over the bottom',
  columns: PIT_COLUMNS,
  rows: rowsTogether(
    bay.built.flatMap(({ part, pit }) => (pit ? [{ part, cells: pitCells(pit, write) }] : [])),
    write,
  ),
})

/**
 * How much further apart the sight tubes on the two sides of a filter stand when it is due for cleaning, mm: what its loss grows
 * by at the flow that the pump now gives. Velocity head v^2 / 2g in the discharge pipe, as all losses of fittings are told.
 */
export const filterRiseMm = (pump: PumpFacts, flowLph: number): number => {
  const boreM = toHeadM(polyOf(pump.stock).idMm)
  const velocityMS = toM3PerS(flowLph) / ((Math.PI * boreM ** 2) / 4)
  return headM(((pump.filterDirtyK - pump.filterCleanK) * velocityMS ** 2) / (2 * GRAVITY))
}

const PUMP_COLUMNS: readonly Column[] = [
  { key: 'pump', title: 'Pump in', unit: 'text' },
  { key: 'flowLph', title: 'Gives', unit: 'L/h' },
  { key: 'headMm', title: 'Lifts by', unit: 'mm' },
  {
    key: 'filterRiseMm',
    title: 'Clean the filter when its two sight tubes stand further apart by',
    unit: 'mm',
  },
]

const NO_FILTER: Cell = { value: null, text: 'no filter' }

/** What each pump does with clean filters, and how a filter shows that it is not. */
export const pumpTable = ({ bay }: Judged, write: Words): Table => ({
  id: 'round-pumps',
  title: 'Pump and filter',
  columns: PUMP_COLUMNS,
  rows: rowsTogether(
    [...bay.water.pumps.values()].flatMap(({ part, flowLph, bypassLph, headMm }) => {
      const pump = bay.builtOf.get(part)?.pump
      if (!pump) return []
      const riseMm = filterRiseMm(pump, flowLph - bypassLph)
      const filter = pump.filterDirtyK > 0 ? counted(riseMm, write.sightTube(riseMm)) : NO_FILTER
      return [
        {
          part,
          cells: [
            counted(flowLph, write.flowTotal(flowLph)),
            counted(headMm, write.pumpHead(headMm)),
            filter,
          ],
        },
      ]
    }),
    write,
  ),
})

/** More lines than this are not read on a walk: the tags at the valves say it. */
export const MOST_ZONES = 12

/** What the sight tube at each zone's valve shows once the valves are set by their cards. */
export const zoneTable = (card: ValveCard | undefined, write: Words): Table => ({
  id: 'round-zones',
  title: 'Sight tubes at the valves, over the open tube ends',
  columns: [
    { key: 'zone', title: 'Zone', unit: 'text' },
    { key: 'sightMm', title: 'Shows', unit: 'mm', isMain: true },
    { key: 'flowLph', title: 'Runs', unit: 'L/h' },
  ],
  rows: rowsTogether(
    (card?.zones ?? []).map(({ part, sightMm, flowLph }) => ({
      part,
      cells: [counted(sightMm, write.sightTube(sightMm)), counted(flowLph, write.flowTotal(flowLph))],
    })),
    write,
  ),
})
