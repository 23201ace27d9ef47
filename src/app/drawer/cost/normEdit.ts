import { labourNormOf } from '../../../catalogue/labour'
import { setCounter } from '../../../layout/bayEdits'
import type { Edited } from '../../../layout/edited'
import type { Layout } from '../../../layout/schema'

/** The crew's own minutes for a task; the norm of the program again where there are none, or they are just as many. */
export const setNorm = (layout: Layout, task: string, minutes: number | undefined): Edited => {
  const others = layout.counter.norms.filter((norm) => norm.task !== task)
  const isOwn = minutes !== undefined && minutes !== labourNormOf(task).minutes
  return setCounter(layout, { norms: isOwn ? [...others, { task, minutes }] : others })
}
