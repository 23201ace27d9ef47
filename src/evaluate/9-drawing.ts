import type { Part } from '../layout/schema'
import type { Built } from '../model/built'
import type { Mark } from '../model/drawing'
import type { PartId } from '../model/ids'
import { kindOf } from '../parts'
import { rememberEach } from '../model/remember'

const marksFor = rememberEach<Part, Built, readonly Mark[]>((part, built) => kindOf(part).draw(part, built))

/** Step 9: the drawing operations of each part. `built` is in the order of `parts`. */
export const draw = (
  parts: readonly Part[],
  built: readonly Built[],
): ReadonlyMap<PartId, readonly Mark[]> => {
  const marks = new Map<PartId, readonly Mark[]>()
  parts.forEach((part, index) => {
    const things = built[index]
    if (things) marks.set(part.id, marksFor(part, things))
  })
  return marks
}
