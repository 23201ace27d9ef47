import type { Layout } from '../layout/schema'
import type { PartId } from '../model/ids'

/** Parts that a preview has changed, added or taken out: they leave the sheet below and are drawn over it. */
export const movedIn = (layout: Layout, preview: Layout | undefined): readonly PartId[] => {
  if (!preview || preview === layout) return []
  const before = new Set(layout.parts)
  const after = new Set(preview.parts)
  const changed = [
    ...preview.parts.filter((part) => !before.has(part)),
    ...layout.parts.filter((part) => !after.has(part)),
  ]
  return [...new Set(changed.map(({ id }) => id))]
}
