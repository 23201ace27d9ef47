import type { Mend } from '../model/finding'
import type { PartId } from '../model/ids'
import { levelsForInlet } from '../parts/sump/pitFor'
import { setSettings } from './bayEdits'
import { addParts, movePartsBy } from './edits'
import { nextId, nextName } from './names'
import { raisePit, sizePit } from './pitLevels'
import { type Layout, partSchema } from './schema'
import { setField } from './setField'

/** A field set, or the layout as it was where the schema refuses the value. */
const withField = (layout: Layout, part: PartId, field: string, value: unknown): Layout => {
  const edited = setField(layout, part, field, value)
  return edited.ok ? edited.layout : layout
}

const withSplit = (layout: Layout, part: PartId, feed: string): Layout =>
  withField(withField(layout, part, 'feed', feed), part, 'riserAt', 'inlet-end')

/** What a laid line has beside its points. */
const lineValues = (what: 'drain-line' | 'main', { settings }: Layout): object =>
  what === 'main' ? {} : { slope: settings.leastDrop }

const withPart = (layout: Layout, kind: 'drain-line' | 'main' | 'sump', values: object): Layout => {
  const made = partSchema.safeParse({
    kind,
    id: nextId(layout, kind),
    name: nextName(layout, kind),
    ...values,
  })
  return made.success ? addParts(layout, [made.data]) : layout
}

const withRowsLevelled = (layout: Layout): Layout => {
  const edited = setSettings(layout, { datum: 'row' })
  return edited.ok ? edited.layout : layout
}

/** A finding's repair as an edit. What can't be repaired so, such as a locked part to be moved, stays as it is. */
export const applyMend = (layout: Layout, mend: Mend): Layout => {
  switch (mend.kind) {
    case 'move':
      return movePartsBy(layout, mend.parts, mend.dxMm, mend.dyMm)
    case 'set':
      return withField(layout, mend.part, mend.field, mend.value)
    case 'split':
      return withSplit(layout, mend.part, mend.feed)
    case 'lay':
      return withPart(layout, mend.what, { points: mend.points, ...lineValues(mend.what, layout) })
    case 'lower':
      return raisePit(layout, mend.part, -mend.byMm)
    case 'size-pit':
      return sizePit(layout, mend.part, mend.asks)
    case 'level-rows':
      return withRowsLevelled(layout)
    case 'dig':
      return withPart(layout, 'sump', { at: mend.at, heading: mend.heading, ...levelsForInlet(mend.inletMm) })
  }
}
