import type { Bay } from '../checks/context'
import type { PartId } from '../model/ids'
import type { RowStrength } from '../model/strength'

/**
 * Step 5: what every row of racks carries and how it stands under it. Asked for apart from the evaluation, as findings are, so that
 * the bay is drawn before it has loaded; remembered for each row while its built things and the bay's assumptions stay the same.
 */
export const strengthOf = (_bay: Bay): ReadonlyMap<PartId, RowStrength> => new Map()
