import { shelf, type ShelfItem } from '../parts/index'

/** What a drag from the shelf carries, besides its data: the page's own type, so that nothing else can be dropped. */
export const SHELF_TYPE = 'application/x-kerf-and-fall-part'

/** How a shelf item is named while it is in hand: in the session, and by what is dragged from the shelf. */
export const shelfKey = ({ kind, preset }: ShelfItem): string => `${kind.kind}/${preset.id}`

/** The item of a name, undefined where nothing on the shelf is called so. */
export const shelfItemOf = (key: string | undefined): ShelfItem | undefined =>
  shelf.find((item) => shelfKey(item) === key)
