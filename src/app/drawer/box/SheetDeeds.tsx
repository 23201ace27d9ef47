import type { Page } from '../../../drawing/page'
import type { Sheet } from '../../../sheets/sheet'
import type { PaperSet } from './paperSet'

interface SheetDeedsProps {
  readonly sheet: Sheet
  readonly pages: readonly Page[]
  readonly set: PaperSet
}

export function SheetDeeds(_: SheetDeedsProps) {
  return <></>
}
