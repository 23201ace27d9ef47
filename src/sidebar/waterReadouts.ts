import { stateWords, type StateWord } from '../model/finding'
import type { PartId } from '../model/ids'
import type { HeadBoxWater, MainWater, PumpWater, RowWater, TowerAt, Water, ZoneWater } from '../model/water'
import { dryWords, standWords } from '../store/waterWords'
import type { Writer } from '../units/writer'
import type { Readout } from './readouts'

/** What the solved water says of one part. */
export interface WaterReadouts {
  /** Of a row that is fed. */
  readonly state?: { readonly word: StateWord; readonly rank: number }
  /** Why there is no water. */
  readonly why?: string
  readonly lines: readonly Readout[]
}

const NOTHING: WaterReadouts = { lines: [] }

/** 0 is good, 1 is to be looked at, 2 must be mended. */
export const flowRank = (state: RowWater['state']): number => stateWords.flow.indexOf(state)

const towerValue = (tower: TowerAt, { flow }: Writer): string =>
  `${flow(tower.flowLph)}, ${standWords(tower)}`

/** In this band a tube flips between smooth and churned flow, and like tubes differ. Common practice, no source. */
const isChurning = (reynolds: number): boolean => reynolds >= 1800 && reynolds <= 4000

const tubeReadouts = ({ tubeReynolds }: RowWater): Readout[] =>
  isChurning(tubeReynolds)
    ? [
        {
          name: 'Reynolds of the fastest tube',
          value: Math.round(tubeReynolds).toLocaleString(),
          why: 'Between smooth and churned: like towers may differ for no reason that shows. Take the next bore up or down.',
        },
      ]
    : []

/** How a row is fed, in the order that the crew asks. */
const rowReadouts = (row: RowWater, writer: Writer): Readout[] => {
  const { figures } = row
  const { flow, flowTotal, share, sightTube, velocity } = writer
  return [
    { name: 'Spread, (most − least) / most', value: share(figures.spread) },
    { name: 'Mean tower', value: flow(figures.meanLph) },
    { name: 'Least tower', value: towerValue(figures.least, writer) },
    { name: 'Most tower', value: towerValue(figures.most, writer) },
    { name: 'Low quarter over mean', value: share(figures.lowQuarter) },
    { name: 'Head at the entry', value: `${sightTube(row.entryHeadMm)} of water` },
    { name: 'The whole row takes', value: flowTotal(row.totalLph) },
    { name: 'Fastest in its pipes', value: velocity(row.fastestMS) },
    ...tubeReadouts(row),
  ]
}

/** The valve of a row; a row behind another's has none of its own. */
const zoneReadouts = (zone: ZoneWater | undefined, { sightTube, flowTotal }: Writer): Readout[] =>
  zone?.isOpen
    ? [
        { name: 'Sight tube at the valve', value: sightTube(zone.sightMm) },
        ...(zone.rows.length > 1
          ? [{ name: `Through the valve, ${zone.rows.length} rows`, value: flowTotal(zone.flowLph) }]
          : []),
      ]
    : []

const mainReadouts = ({ points, legs, fastestMS }: MainWater, writer: Writer): Readout[] => {
  const start = legs.at(0)
  const heads = points.map(({ headMm }) => headMm)
  return [
    ...(start ? [{ name: 'Flow at its start', value: writer.flowTotal(Math.abs(start.flowLph)) }] : []),
    { name: 'Fastest stretch', value: writer.velocity(fastestMS) },
    { name: 'Head lost along it', value: writer.sightTube(Math.max(...heads) - Math.min(...heads)) },
  ]
}

const CANT_LIFT = 'The pump can’t lift the water to the tube ends: nothing flows.'

const pumpReadouts = (pump: PumpWater, writer: Writer): Readout[] => [
  { name: 'Pump gives', value: writer.flowTotal(pump.flowLph) },
  { name: 'against', value: writer.pumpHead(pump.headMm) },
  { name: 'of it to lift the water', value: writer.pumpHead(pump.staticMm) },
  { name: 'Power in the water', value: writer.watts(pump.watts) },
  ...(pump.bypassLph > 0
    ? [{ name: 'Back through the bypass', value: writer.flowTotal(pump.bypassLph) }]
    : []),
]

const boxReadouts = ({ inLph, outLph }: HeadBoxWater, { flowTotal }: Writer): Readout[] => [
  { name: 'Water in', value: flowTotal(inLph) },
  { name: 'Water out to the rows', value: flowTotal(outLph) },
]

const fedRow = (water: Water, row: RowWater, writer: Writer): WaterReadouts => ({
  state: { word: row.state, rank: flowRank(row.state) },
  lines: [...rowReadouts(row, writer), ...zoneReadouts(water.zones.get(row.part), writer)],
})

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`

/** What the solved water says of a part; nothing of one that no water runs through. */
export const waterReadouts = (water: Water, part: PartId, writer: Writer): WaterReadouts => {
  const row = water.rows.get(part)
  if (row) return fedRow(water, row, writer)
  const reason = water.dry.get(part)
  if (reason) return { why: sentence(dryWords(reason)), lines: [] }
  const main = water.mains.get(part)
  if (main && main.legs.length > 0) return { lines: mainReadouts(main, writer) }
  const pump = water.pumps.get(part)
  if (pump) return { lines: pumpReadouts(pump, writer), ...(pump.isLifting ? {} : { why: CANT_LIFT }) }
  const box = water.boxes.get(part)
  return box ? { lines: boxReadouts(box, writer) } : NOTHING
}
