import type { Built, Mouth } from '../../model/built'
import type { PitReturn, TroughReturn } from '../../model/returns'
import type { HeadBoxWater, MainWater, PumpWater, RowWater, ZoneWater } from '../../model/water'
import { countField, type Field, numberField, quiet, sectionOf, textField, type Section } from '../fields'
import type { Told } from '../told'

interface Of {
  readonly part: string
}

/** Whose it is: its id for programs and its name for the reader. */
const whose = <T extends Of>(title: string, { words }: Told): readonly Field<T>[] => [
  quiet(textField('part', 'Part', ({ part }) => part)),
  textField('name', title, ({ part }) => words.name(part)),
]

interface Row extends Of {
  readonly water: RowWater | undefined
  readonly dry: string
}

const dryWords = { 'no-main': 'dry: no main', 'no-supply': 'dry: no supply', shut: 'shut' } as const

const rowFields = (told: Told): readonly Field<Row>[] => {
  const { flow, flowTotal, share } = told.words
  return [
    ...whose<Row>('Row', told),
    textField('state', 'State', ({ water, dry }) => water?.state ?? dry),
    countField('towers', 'Towers', ({ water }) => water?.figures.towers ?? 0),
    numberField('meanLph', 'Mean', 'L/h', flow, ({ water }) => water?.figures.meanLph),
    numberField('leastLph', 'Least', 'L/h', flow, ({ water }) => water?.figures.least.flowLph),
    numberField('mostLph', 'Most', 'L/h', flow, ({ water }) => water?.figures.most.flowLph),
    numberField('spreadShare', 'Spread', 'share', share, ({ water }) => water?.figures.spread),
    numberField('totalLph', 'Together', 'L/h', flowTotal, ({ water }) => water?.totalLph),
    quiet(textField('zone', 'Zone', ({ water }) => water?.zone ?? '')),
    quiet(
      numberField(
        'entryHeadMm',
        'Head at entry',
        'mm',
        told.words.sightTube,
        ({ water }) => water?.entryHeadMm,
      ),
    ),
  ]
}

/** How evenly each row is fed; a row without water says why. */
export const rowFlowsSection = (told: Told): Section => {
  const { built, water } = told.plan.bay
  const items = built.flatMap(({ part, rack }): Row[] => {
    const dry = water.dry.get(part)
    if (!rack) return []
    return [{ part, water: water.rows.get(part), dry: dry === undefined ? 'dry' : dryWords[dry] }]
  })
  return sectionOf({
    id: 'rowFlows',
    title: 'Flow of rows',
    fields: rowFields(told),
    items,
    keyOf: ({ part }) => part,
  })
}

const zoneFields = (told: Told): readonly Field<ZoneWater>[] => {
  const { flowTotal, sightTube } = told.words
  return [
    ...whose<ZoneWater>('Zone', told),
    quiet(textField('rows', 'Rows', ({ rows }) => rows.join(' '))),
    textField('rowNames', 'Rows', ({ rows }) => rows.map(told.words.name).join(', ')),
    textField('valve', 'Valve', ({ isOpen }) => (isOpen ? 'open' : 'shut')),
    numberField('flowLph', 'Flow', 'L/h', flowTotal, ({ flowLph }) => flowLph),
    numberField('sightMm', 'Sight tube', 'mm', sightTube, ({ sightMm }) => sightMm),
    numberField('valveLossMm', 'Lost in valves', 'mm', sightTube, ({ valveLossMm }) => valveLossMm),
  ]
}

/** Each valve set, what goes through it and what its sight tube shows. */
export const zonesSection = (told: Told): Section =>
  sectionOf({
    id: 'zones',
    title: 'Zones',
    fields: zoneFields(told),
    items: [...told.plan.bay.water.zones.values()],
    keyOf: ({ part }) => part,
  })

const pumpFields = (told: Told): readonly Field<PumpWater>[] => {
  const { flowTotal, pumpHead, watts } = told.words
  return [
    ...whose<PumpWater>('Pump in', told),
    numberField('flowLph', 'Flow', 'L/h', flowTotal, ({ flowLph }) => flowLph),
    numberField('headMm', 'Lifts', 'mm', pumpHead, ({ headMm }) => headMm),
    numberField('staticMm', 'Of it height', 'mm', pumpHead, ({ staticMm }) => staticMm),
    numberField('bypassLph', 'Bypass', 'L/h', flowTotal, ({ bypassLph }) => bypassLph),
    numberField('hydraulicW', 'Water power', 'W', watts, ({ watts: w }) => w),
    textField('lifts', 'State', ({ isLifting }) => (isLifting ? 'lifts' : 'does not lift')),
  ]
}

/** What each pump does as the bay runs. */
export const pumpsSection = (told: Told): Section =>
  sectionOf({
    id: 'pumps',
    title: 'Pumps',
    fields: pumpFields(told),
    items: [...told.plan.bay.water.pumps.values()],
    keyOf: ({ part }) => part,
  })

const boxFields = (told: Told): readonly Field<HeadBoxWater>[] => [
  ...whose<HeadBoxWater>('Head box', told),
  numberField('inLph', 'In', 'L/h', told.words.flowTotal, ({ inLph }) => inLph),
  numberField('outLph', 'Out', 'L/h', told.words.flowTotal, ({ outLph }) => outLph),
]

export const headBoxesSection = (told: Told): Section =>
  sectionOf({
    id: 'headBoxes',
    title: 'Head boxes',
    fields: boxFields(told),
    items: [...told.plan.bay.water.boxes.values()],
    keyOf: ({ part }) => part,
  })

const mostIn = ({ legs }: MainWater): number =>
  legs.reduce((most, { flowLph }) => Math.max(most, Math.abs(flowLph)), 0)

const mainFields = (told: Told): readonly Field<MainWater>[] => [
  ...whose<MainWater>('Main', told),
  numberField('lengthMm', 'Length', 'mm', told.words.length, ({ points }) => points.at(-1)?.alongMm),
  numberField('mostLph', 'Most in it', 'L/h', told.words.flowTotal, mostIn),
  quiet(numberField('fastestMS', 'Fastest', 'm/s', told.words.velocity, (of) => of.fastestMS)),
]

export const mainsSection = (told: Told): Section =>
  sectionOf({
    id: 'mains',
    title: 'Mains',
    fields: mainFields(told),
    items: [...told.plan.bay.water.mains.values()],
    keyOf: ({ part }) => part,
  })

const troughFields = (told: Told): readonly Field<TroughReturn>[] => {
  const { onTape, flowTotal, volume } = told.words
  return [
    ...whose<TroughReturn>('Troughs of', told),
    numberField('flowLph', 'Fullest line', 'L/h', flowTotal, ({ flowLph }) => flowLph),
    numberField('totalLph', 'All lines', 'L/h', flowTotal, ({ totalLph }) => totalLph),
    numberField('deepestMm', 'Deepest', 'mm', onTape, ({ deepestMm }) => deepestMm),
    numberField('freeboardMm', 'Under the lip', 'mm', onTape, ({ freeboardMm }) => freeboardMm),
    numberField('blockedFreeboardMm', 'Outlet blocked', 'mm', onTape, (of) => of.blockedFreeboardMm),
    quiet(numberField('tipAirMm', 'Tips over water', 'mm', onTape, ({ tipAirMm }) => tipAirMm)),
    quiet(numberField('standingL', 'Standing in them', 'L', volume, ({ standingL }) => standingL)),
  ]
}

export const troughsSection = (told: Told): Section =>
  sectionOf({
    id: 'troughs',
    title: 'Troughs',
    fields: troughFields(told),
    items: [...told.plan.bay.returns.troughs.values()],
    keyOf: ({ part }) => part,
  })

const pitFields = (told: Told): readonly Field<PitReturn>[] => {
  const { volume, flowTotal } = told.words
  return [
    ...whose<PitReturn>('Pit', told),
    textField('state', 'State', ({ state }) => state),
    numberField('inLph', 'Comes in', 'L/h', flowTotal, ({ inLph }) => inLph),
    numberField('transitL', 'Comes home', 'L', volume, ({ transit }) => transit.totalL),
    numberField('designL', 'Sized for', 'L', volume, ({ designL }) => designL),
    numberField('roomL', 'Room', 'L', volume, ({ roomL }) => roomL),
    quiet(numberField('swingL', 'Pump off to running', 'L', volume, ({ swingL }) => swingL)),
    quiet(numberField('deadL', 'Under pump off', 'L', volume, ({ deadL }) => deadL)),
    quiet(numberField('freeboardL', 'Overflow to rim', 'L', volume, ({ freeboardL }) => freeboardL)),
  ]
}

/** What comes home to each pit when its pumps stop, and the room for it. */
export const pitsSection = (told: Told): Section =>
  sectionOf({
    id: 'pits',
    title: 'Pits',
    fields: pitFields(told),
    items: [...told.plan.bay.returns.pits.values()],
    keyOf: ({ part }) => part,
  })

interface Tower extends Of {
  readonly head: Mouth
  /** undefined where no water comes. */
  readonly flowLph: number | undefined
}

/** Heads and flows of a row are in the same order. */
const towersOf = ({ part, mouths }: Built, water: RowWater | undefined): readonly Tower[] =>
  mouths
    .filter(({ role }) => role === 'tower-head')
    .map((head, index) => ({ part, head, flowLph: water?.tubeLph[index] }))

const towerFields = (told: Told): readonly Field<Tower>[] => [
  ...whose<Tower>('Row', told),
  countField('station', 'Station', ({ head }) => head.station),
  countField('line', 'Line', ({ head }) => head.line),
  numberField('xMm', 'East', 'mm', told.words.length, ({ head }) => head.at.x),
  numberField('yMm', 'North', 'mm', told.words.length, ({ head }) => head.at.y),
  numberField('flowLph', 'Flow', 'L/h', told.words.flow, ({ flowLph }) => flowLph),
]

/** Every tower, where it hangs and what it is fed. */
export const towersSection = (told: Told): Section => {
  const { built, water } = told.plan.bay
  return sectionOf({
    id: 'towers',
    title: 'Towers',
    fields: towerFields(told),
    items: built.flatMap((each) => towersOf(each, water.rows.get(each.part))),
    keyOf: ({ part, head }) => `${part}/${head.station}/${head.line}`,
    isForPrograms: true,
  })
}
