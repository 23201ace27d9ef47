import { type AlikeLines, alikeLines } from '../evaluate/handling/alike'
import { handlingOf, type RowHandling } from '../evaluate/handling/handling'
import { placeOf } from '../evaluate/loads/frame'
import { pounds } from '../units/mass'
import { writeDecimal } from '../units/writeDecimal'
import { placesOf, type Hazard, type Walk } from './hazard'
import { heightWords } from './hazardRacks'
import { massWords } from './massWords'

/** What wet towers weigh. Common practice, no source. */
const LIGHT_TOWER_KG = pounds(12)
const HEAVY_TOWER_KG = pounds(30)

/** `2.4x on lines 2, 3; 1.1x on 1, 4`: the words say of what. */
const overLines = (over: readonly AlikeLines[]): string =>
  over
    .map(({ lines, lift: { index } }, place) => {
      const times = index < Infinity ? `${writeDecimal(index, 1)}x` : 'out of reach'
      return `${times} on ${place === 0 ? 'lines ' : ''}${lines.join(', ')}`
    })
    .join('; ')

/** Lines whose towers are more than is recommended where they are hung, from the better side; the worst first. */
const overLimit = ({ best }: RowHandling): readonly AlikeLines[] =>
  alikeLines(best.filter(({ word }) => word !== 'Under limit'))

const saysOf = (row: RowHandling, walk: Walk): string => {
  const over = overLimit(row)
  const lifted = `lifted to ${heightWords(row.frame.rack.liftTopMm + row.barTopMm - row.frame.rack.barTopMm, walk)}`
  return over.length === 0 ? lifted : overLines(over)
}

const spotOf = ({ part, frame }: RowHandling, { write }: Walk) => {
  const { x, y } = placeOf(frame.axes, { u: frame.lengthMm / 2, v: 0, z: 0 })
  return { name: write.name(part), at: { x, y } }
}

/** The index is over 1: risk is raised for some workers. Under it nothing is promised, so nothing is said of lines there. */
const overWords = (rows: readonly RowHandling[], { units }: Walk): string => {
  const over = rows.filter((row) => overLimit(row).length > 0)
  if (over.length === 0) return ''
  const loadKg = Math.max(...over.map((row) => row.loadKg))
  return ` 2x: twice the recommended lift, at ${massWords(loadKg, units)}.`
}

/** Whoever hangs towers and takes them down. */
export const handsHazardsOf = (walk: Walk): readonly Hazard[] => {
  const rows = [...handlingOf(walk.plan.bay).values()]
  if (rows.length === 0) return []
  const { units, write } = walk
  const between = `${massWords(LIGHT_TOWER_KG, units).replace(/ .*/, '')} to ${massWords(HEAVY_TOWER_KG, units)}`
  const over = overWords(rows, walk)
  return [
    {
      key: 'handling',
      title: 'Lifting, and wet floors',
      words:
        over === ''
          ? `A wet tower weighs ${between}: two people or a trolley. Wet aisles: boots that grip.`
          : `Two people or a trolley, boots that grip.${over}`,
      places: placesOf(rows.map((row) => ({ name: write.name(row.part), says: saysOf(row, walk) }))),
      sheets: ['assembly', 'round', 'safety'],
      stand: 'racks',
      source: over === '' ? 'Common practice, no source' : 'NIOSH Publication 94-110',
      spots: rows.map((row) => spotOf(row, walk)),
    },
  ]
}
