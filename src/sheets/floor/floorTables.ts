import { type Aisle, aisleClass, aisleState } from '../../checks/aisles'
import { ruleOf } from '../../checks/index'
import type { Words } from '../../checks/context'
import type { Evaluation } from '../../evaluate/evaluation'
import { blank, counted, type Row, said, type Table } from '../../model/table'
import { isWorthALine } from './aisleMarks'
import { groupWords } from './findingGroups'
import type { State } from './state'

const sideOf = ({ x, y }: Aisle['out']): string => {
  if (Math.abs(x) >= Math.abs(y)) return x > 0 ? 'east' : 'west'
  return y > 0 ? 'north' : 'south'
}

/** Rows with what hangs in them, and all of them together. */
export const rowTable = ({ bay, towers, sites }: Evaluation, write: Words): Table => {
  const racked = bay.built.flatMap(({ part, rack }) => (rack ? [{ part, rack }] : []))
  const racks = racked.reduce((sum, { rack }) => sum + rack.racks, 0)
  return {
    id: 'rows',
    title: 'Rows',
    columns: [
      { key: 'row', title: 'Row', unit: 'text' },
      { key: 'racks', title: 'Racks', unit: 'count' },
      { key: 'lines', title: 'Lines', unit: 'count' },
      { key: 'runMm', title: 'Long', unit: 'mm' },
      { key: 'pitchMm', title: 'Tower to tower', unit: 'mm' },
      { key: 'lineSpacingMm', title: 'Line to line', unit: 'mm' },
      { key: 'towers', title: 'Towers', unit: 'count' },
      { key: 'sites', title: 'Plant sites', unit: 'count' },
    ],
    rows: [
      ...racked.map(({ part, rack }): Row => ({
        key: part,
        cells: [
          said(write.name(part)),
          counted(rack.racks),
          counted(rack.lines),
          counted(rack.runMm, write.length(rack.runMm)),
          counted(rack.pitchMm, write.onTape(rack.pitchMm)),
          counted(rack.lineSpacingMm, write.onTape(rack.lineSpacingMm)),
          counted(rack.towers),
          counted(rack.sites),
        ],
      })),
      ...(racked.length > 1
        ? [
            {
              key: 'all',
              isSum: true,
              cells: [
                said('Together'),
                counted(racks),
                blank(),
                blank(),
                blank(),
                blank(),
                counted(towers),
                counted(sites),
              ],
            },
          ]
        : []),
    ],
  }
}

/** The same way seen again from the same side, such as along two legs of a wall, has a number behind its key. */
const keysOf = (aisles: readonly Aisle[]): readonly string[] => {
  const seen = new Map<string, number>()
  return aisles.map((aisle) => {
    const key = `${aisle.row} ${sideOf(aisle.out)} ${aisle.other ?? 'wall'}`
    const times = (seen.get(key) ?? 0) + 1
    seen.set(key, times)
    return times > 1 ? `${key} ${times}` : key
  })
}

/** Every way between rows, walls and obstacles, leaf to leaf; wide ways past an obstacle are left out. */
export const aisleTable = ({ bay }: Evaluation, write: Words): Table => {
  const aisles = bay.aisles.filter(isWorthALine)
  const keys = keysOf(aisles)
  return {
    id: 'aisles',
    title: 'Aisles, leaf to leaf',
    columns: [
      { key: 'row', title: 'From', unit: 'text' },
      { key: 'side', title: 'Side', unit: 'text' },
      { key: 'other', title: 'To', unit: 'text' },
      { key: 'widthMm', title: 'Clear', unit: 'mm', isMain: true },
      { key: 'needMm', title: 'Needs', unit: 'mm' },
      { key: 'class', title: 'Good as', unit: 'text' },
      { key: 'state', title: 'State', unit: 'text' },
    ],
    rows: aisles.map((aisle, i): Row => ({
      key: keys[i] ?? aisle.row,
      cells: [
        said(write.name(aisle.row)),
        said(sideOf(aisle.out)),
        said(aisle.other === undefined ? 'wall' : write.name(aisle.other)),
        counted(aisle.widthMm, write.onTape(aisle.widthMm)),
        counted(aisle.needMm, write.onTape(aisle.needMm)),
        said(aisleClass(aisle.widthMm, bay.settings)),
        said(aisleState(aisle)),
      ],
    })),
  }
}

/** What is open, worst first; like ones share a line. */
export const openTable = ({ open }: State, write: Words): Table => ({
  id: 'open',
  title: 'To be mended or watched',
  columns: [
    { key: 'state', title: 'State', unit: 'text' },
    { key: 'places', title: 'Places', unit: 'count' },
    { key: 'what', title: 'What is wrong, and what mends it', unit: 'text' },
  ],
  rows: open.map((group) => ({
    key: group.worst.key,
    cells: [said(group.worst.state), counted(group.others.length + 1), said(groupWords(group, write))],
  })),
})

/** What the builder lives with, and why. */
export const acceptedTable = ({ accepted }: State, write: Words): Table => ({
  id: 'accepted',
  title: 'Accepted as it is',
  columns: [
    { key: 'what', title: 'What', unit: 'text' },
    { key: 'reason', title: 'Why', unit: 'text' },
    { key: 'by', title: 'By', unit: 'text' },
  ],
  rows: accepted.map(({ finding, reason, by }) => ({
    key: finding.key,
    cells: [said(ruleOf(finding.rule).say(finding, write)), said(reason), said(by)],
  })),
})
