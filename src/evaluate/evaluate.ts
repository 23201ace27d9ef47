import type { Layout } from '../layout/schema'
import { beforeChecks } from './beforeChecks'
import { findingsOf } from './8-checks'
import type { Judged } from './evaluation'

/**
 * From a layout to everything the program knows of it. Pure and total: every layout that the schema accepts gives an
 * evaluation; a plan that is wrong gives findings.
 */
export const evaluate = (layout: Layout): Judged => {
  const drawn = beforeChecks(layout)
  return Object.freeze({ ...drawn, findings: findingsOf(drawn.bay) })
}
