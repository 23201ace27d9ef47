import type { Words } from '../checks/context'
import type { Evaluation } from '../evaluate/evaluation'
import { levelReading } from '../layout/levelReading'
import type { Units } from '../units/length'
import type { Precision } from '../units/precision'
import { writerFor } from '../units/writer'

/** Numbers and names as the reader of one sheet has them: units of that sheet, the step of that work, levels as the crew reads them. */
export const sheetWords = ({ layout }: Evaluation, units: Units, precision: Precision): Words => {
  const names = new Map(layout.parts.map(({ id, name }) => [id, name]))
  const reading = levelReading(layout.settings, layout.house.benchmark)
  return { ...writerFor(units, precision, reading), name: (part) => names.get(part) || part }
}
