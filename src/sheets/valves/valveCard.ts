import type { Words } from '../../checks/context'
import { balance } from '../../evaluate/water/balance'
import { handSet } from '../../evaluate/water/handSet'
import type { HandSet, ValveCard, ZoneSetting } from '../../evaluate/water/valveCard'
import type { ZoneEffect } from '../../evaluate/water/zoneEffects'
import { zoneEffects } from '../../evaluate/water/zoneEffects'
import type { Judged } from '../../evaluate/evaluation'
import { counted, said, type Cell, type Table } from '../../model/table'
import { atSaw } from '../../units/precision'
import { cautionsFor } from '../hazards'
import { heading, type Piece, tableOf, words } from '../piece'
import type { PlanOnPaper, Sheet, SheetOptions } from '../sheet'
import { sheetWords } from '../sheetWords'
import { effectWords, handWords, turnsWords } from './zoneWords'

/** Trim valves of more zones than this are not shut one by one for a card: it takes too long, and the screen tells it. */
const MOST_SHUT = 24

interface Setting {
  readonly now: Judged
  readonly card: ValveCard
  readonly hand: HandSet | undefined
  readonly write: Words
}

const settingTable = ({ part, ...zone }: ZoneSetting, { now, card, hand, write }: Setting): Table => {
  const { waterC } = now.layout.settings
  const towerLph = card.targetLph * card.setFactor
  const rows: readonly (readonly [key: string, what: string, cell: Cell])[] = [
    ['turns', 'Trim valve open, turns', counted(zone.trimTurns, turnsWords({ part, ...zone }))],
    ['flowLph', 'The zone then runs', counted(zone.flowLph, write.flowTotal(zone.flowLph))],
    ['towerLph', 'Each tower', counted(towerLph, write.flow(towerLph))],
    ['waterC', 'With water at', counted(waterC, write.temperature(waterC))],
    ['hand', 'Set by hand it gets', said(handWords(hand, part, write))],
  ]
  return {
    id: `zone-${part}`,
    title: `Settings of ${write.name(part)}`,
    columns: [
      { key: 'what', title: 'Setting', unit: 'text' },
      { key: 'value', title: 'To', unit: 'text' },
    ],
    rows: [...rows.map(([key, what, cell]) => ({ key, cells: [said(what), cell] }))],
  }
}

const shutWords = (effect: ZoneEffect | undefined, write: Words): readonly Piece[] =>
  effect === undefined ? [] : [words(effectWords(effect, write), 'note')]

/** The tag of one zone: what the sight tube must show comes first, since turns only get near. */
const tagOf = (zone: ZoneSetting, setting: Setting, effect: ZoneEffect | undefined): readonly Piece[] => {
  const { write } = setting
  return [
    heading(`${write.name(zone.part)}${zone.isNeediest ? ', the neediest zone' : ''}`),
    words(`Sight tube ${write.sightTube(zone.sightMm)}`, 'big'),
    words('Read it over the tube ends at the rails. Turns get you near; the sight tube decides.', 'note'),
    tableOf(settingTable(zone, setting)),
    ...shutWords(effect, write),
    { as: 'blanks', labels: ['Sight tube found', 'Tested on, by'] },
    { as: 'page' },
  ]
}

const piecesOf = ({ now }: PlanOnPaper, { units }: SheetOptions): readonly Piece[] => {
  const card = balance(now.bay, 'target')
  if (card === undefined) return []
  const write = sheetWords(now, units, atSaw)
  const setting = { now, card, hand: handSet(now.bay, card), write }
  const effects = card.zones.length <= MOST_SHUT ? zoneEffects(now.bay) : undefined
  return [
    ...cautionsFor('valves', now, units),
    ...card.zones.flatMap((zone) => tagOf(zone, setting, effects?.shut(zone.part))),
  ]
}

/** A tag for the valve of each zone, as the solved bay wants it set. */
export const valveCard: Sheet = {
  id: 'valves',
  code: 'VC',
  title: 'Valve card',
  reader: 'Grower',
  size: 'tag',
  pieces: piecesOf,
}
