import type { Words } from '../../checks/context'
import { balance } from '../../evaluate/water/balance'
import { handSet } from '../../evaluate/water/handSet'
import type { HandSet, ValveCard, ZoneSetting } from '../../evaluate/water/valveCard'
import type { ZoneEffect } from '../../evaluate/water/zoneEffects'
import { zoneEffects } from '../../evaluate/water/zoneEffects'
import type { Judged } from '../../evaluate/evaluation'
import type { PartId } from '../../model/ids'
import type { DryReason } from '../../model/water'
import { blank, counted, said, type Cell, type Table } from '../../model/table'
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

const rowsOf = (zone: PartId, { now }: Setting): readonly PartId[] =>
  now.bay.water.zones.get(zone)?.rows ?? [zone]

/** The widest spread of any row behind a valve, which a valve hardly moves; undefined where none has water. */
const spreadOf = (zone: PartId, setting: Setting): number | undefined => {
  const spreads = rowsOf(zone, setting).flatMap(
    (row) => setting.now.bay.water.rows.get(row)?.figures.spread ?? [],
  )
  return spreads.length === 0 ? undefined : Math.max(...spreads)
}

/** Only where one valve is for several rows; else the tag's name says it. */
const rowsCell = (zone: PartId, setting: Setting): readonly (readonly [string, string, Cell])[] => {
  const rows = rowsOf(zone, setting)
  return rows.length < 2 ? [] : [['rows', 'Waters', said(rows.map(setting.write.name).join(', '))]]
}

/** A setting a row; its key says the unit of its value, since no two rows have the same. */
const settingTable = (zone: ZoneSetting, setting: Setting): Table => {
  const { now, card, hand, write } = setting
  const { waterC } = now.layout.settings
  const spread = spreadOf(zone.part, setting)
  const towerLph = card.targetLph * card.setFactor
  const rows: readonly (readonly [key: string, what: string, cell: Cell])[] = [
    ['turns', 'Trim valve, turns open', counted(zone.trimTurns, turnsWords(zone))],
    ['flowLph', 'The zone then runs', counted(zone.flowLph, write.flowTotal(zone.flowLph))],
    ['towerLph', 'Each tower', counted(towerLph, write.flow(towerLph))],
    ['waterC', 'With water at', counted(waterC, write.temperature(waterC))],
    ['hand', 'Set by hand it gets', said(handWords(hand, zone.part, write))],
    [
      'spread',
      'Spread between its towers',
      spread === undefined ? blank('—') : counted(spread, write.share(spread)),
    ],
    ...rowsCell(zone.part, setting),
  ]
  return {
    id: `zone-${zone.part}`,
    title: `${write.name(zone.part)}: ball valve open, then`,
    columns: [
      { key: 'what', title: 'Setting', unit: 'text' },
      { key: 'value', title: 'To', unit: 'text' },
    ],
    rows: rows.map(([key, what, cell]) => ({ key, cells: [said(what), cell] })),
  }
}

const HOW = 'Over the open tube ends. Turns get you near; the sight tube decides.'

const SHUT = 'Shut: ball valve handle across the pipe. Leave the trim valve be.'

/** The tag of one zone: what the sight tube must show comes first, since turns only get near. */
const tagOf = (zone: ZoneSetting, setting: Setting, effect: ZoneEffect | undefined): readonly Piece[] => {
  const { write } = setting
  return [
    heading(`${write.name(zone.part)}${zone.isNeediest ? ', the neediest zone' : ''}`),
    words(`Sight tube ${write.sightTube(zone.sightMm)}`, 'big'),
    words(HOW, 'note'),
    tableOf(settingTable(zone, setting)),
    words([SHUT, ...(effect ? [effectWords(effect, write)] : [])].join(' '), 'note'),
    { as: 'blanks', labels: ['Test date, sight tube'] },
  ]
}

const DRY: Readonly<Record<DryReason, string>> = {
  'no-main': 'no main is in reach of its inlet',
  'no-supply': 'its main meets neither a pump nor a head box',
  shut: 'its ball valve is shut in the plan',
}

/** What keeps a zone from having a setting; nothing for a bay without valves. */
const missingPieces = (now: Judged, set: readonly PartId[], write: Words): readonly Piece[] => {
  const { built, water } = now.bay
  const without = built.filter(({ part, feed }) => feed?.valves !== undefined && !set.includes(part))
  const reasons = without.map(({ part }) => {
    const why = water.dry.get(part)
    return `${write.name(part)}: ${why === undefined ? (water.fault ?? 'the water could not be solved') : DRY[why]}`
  })
  return reasons.length === 0 ? [] : [words(`No setting yet for these zones. ${reasons.join('; ')}.`)]
}

/** One tag a page. */
const apart = (tags: readonly (readonly Piece[])[]): readonly Piece[] =>
  tags
    .filter((tag) => tag.length > 0)
    .flatMap((tag, i) => (i === 0 ? tag : [{ as: 'page' } as const, ...tag]))

const piecesOf = ({ now }: PlanOnPaper, { units }: SheetOptions): readonly Piece[] => {
  const write = sheetWords(now, units, atSaw)
  const card = balance(now.bay, 'target')
  if (card === undefined) return missingPieces(now, [], write)
  const setting = { now, card, hand: handSet(now.bay, card), write }
  const effects = card.zones.length <= MOST_SHUT ? zoneEffects(now.bay) : undefined
  const set = card.zones.map(({ part }) => part)
  return apart([
    cautionsFor('valves', now, units),
    ...card.zones.map((zone) => tagOf(zone, setting, effects?.shut(zone.part))),
    missingPieces(now, set, write),
  ])
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
