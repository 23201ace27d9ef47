import type { PartId } from '../../model/ids'
import type { DrainReturn, PitReturn } from '../../model/returns'
import type { PumpWater, RowWater } from '../../model/water'
import type { Judged } from '../evaluation'
import { type Figure, figureChanges, type FigureChange, type FigureUnit } from './figures'

type Told = readonly [id: string, what: string, unit: FigureUnit, value: Figure['value']]

const figuresOf = (part: PartId, told: readonly Told[]): readonly Figure[] =>
  told.map(([id, what, unit, value]) => ({ key: `${part}/${id}`, part, what, unit, value }))

const rowFigures = (part: PartId, water: RowWater | undefined): readonly Figure[] =>
  figuresOf(part, [
    ['state', 'Feed', 'state', water?.state ?? 'dry'],
    ['mean', 'Mean of its towers', 'flow', water?.figures.meanLph],
    ['least', 'Least tower', 'flow', water?.figures.least.flowLph],
    ['spread', 'Spread of its towers', 'share', water?.figures.spread],
  ])

const pumpFigures = ({ part, flowLph, headMm }: PumpWater): readonly Figure[] =>
  figuresOf(part, [
    ['pump', 'Pump, flow', 'flow-total', flowLph],
    ['head', 'Pump, lift', 'head', headMm],
  ])

const drainFigures = ({ part, state, fullest }: DrainReturn): readonly Figure[] =>
  figuresOf(part, [
    ['drainState', 'Drain', 'state', state],
    ['full', 'Drain, fullest', 'share', fullest.share],
  ])

const pitFigures = ({ part, state, transit, roomL }: PitReturn): readonly Figure[] =>
  figuresOf(part, [
    ['pitState', 'Pit', 'state', state],
    ['home', 'Comes home when the pump stops', 'volume', transit.totalL],
    ['room', 'Room for it', 'volume', roomL],
  ])

const flowFigures = ({ bay: { built, water, returns } }: Judged): readonly Figure[] =>
  built.flatMap(({ part, feed }) => {
    const [pump, drain, pit] = [water.pumps.get(part), returns.drains.get(part), returns.pits.get(part)]
    return [
      ...(feed ? rowFigures(part, water.rows.get(part)) : []),
      ...(pump ? pumpFigures(pump) : []),
      ...(drain ? drainFigures(drain) : []),
      ...(pit ? pitFigures(pit) : []),
    ]
  })

/** What rows, pumps, drains and pits do with their water, where that differs. */
export const flowChanges = (before: Judged, after: Judged): readonly FigureChange[] =>
  figureChanges(flowFigures(before), flowFigures(after))
