import { labourNorms } from '../../catalogue/labour'
import type { Bay } from '../../checks/context'
import type { Counter } from '../../layout/counter'
import type { Labour, LabourLine } from '../../model/shop'
import { MINUTES_PER_HOUR } from '../../units/time'
import { labourCounts } from './labourCounts'

/** What hours depend on beside the bay. */
export type CrewOf = Pick<Counter, 'crew' | 'hoursADay' | 'crewFactor' | 'supervision' | 'norms'>

/**
 * Hours of one person that a bay takes, task by task in the order of the work, by the norms of the program or the crew's own in
 * their place. Supervision and clean-up are a share on top; the crew's factor is for hands that do it for the first time or
 * are being taught.
 */
export const labour = (bay: Pick<Bay, 'built' | 'joinedPipes' | 'levels'>, crew: CrewOf): Labour => {
  const counts = labourCounts(bay)
  const own = new Map(crew.norms.map(({ task, minutes }) => [task, minutes]))
  const lines = labourNorms.flatMap(({ task, title, unit, minutes }): LabourLine[] => {
    const count = counts.get(task) ?? 0
    const minutesEach = own.get(task) ?? minutes
    return count > 0
      ? [{ task, title, unit, minutesEach, count, hours: (minutesEach * count) / MINUTES_PER_HOUR }]
      : []
  })
  const taskHours = lines.reduce((sum, { hours }) => sum + hours, 0)
  const hours = taskHours * (1 + crew.supervision) * crew.crewFactor
  return { lines, taskHours, hours, crewDays: hours / (crew.crew * crew.hoursADay) }
}
