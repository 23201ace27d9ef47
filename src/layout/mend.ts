import type { Point } from '../geometry/point'
import type { Mend } from '../model/finding'
import type { PartId } from '../model/ids'
import { drainLineSchema } from '../parts/drain-line/schema'
import { addParts, movePartsBy } from './edits'
import { nextId, nextName } from './names'
import type { Layout } from './schema'
import { setField } from './setField'

/** A field set, or the layout as it was where the schema refuses the value. */
const withField = (layout: Layout, part: PartId, field: string, value: unknown): Layout => {
  const edited = setField(layout, part, field, value)
  return edited.ok ? edited.layout : layout
}

const withDrain = (layout: Layout, points: readonly Point[]): Layout => {
  const { leastDrop } = layout.settings
  const laid = drainLineSchema.safeParse({
    kind: 'drain-line',
    id: nextId(layout, 'drain-line'),
    name: nextName(layout, 'drain-line'),
    points,
    slope: leastDrop,
    leastSlope: leastDrop,
  })
  return laid.success ? addParts(layout, [laid.data]) : layout
}

/** A finding's repair as an edit. What can't be repaired so, such as a locked part to be moved, stays as it is. */
export const applyMend = (layout: Layout, mend: Mend): Layout => {
  switch (mend.kind) {
    case 'move':
      return movePartsBy(layout, mend.parts, mend.dxMm, mend.dyMm)
    case 'set':
      return withField(layout, mend.part, mend.field, mend.value)
    case 'add-drain':
      return withDrain(layout, mend.points)
  }
}
