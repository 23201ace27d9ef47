import { type DragEvent, type PointerEvent, useState } from 'react'
import { kinds, shelf, type ShelfItem } from '../parts/index'
import { shelfKey, SHELF_TYPE } from '../store/inHand'
import { usePlanner, usePlannerState } from '../store/react'
import { PartSymbol } from './symbols'
import './shelf.css'

const HOW_TO = 'Drag a part on to the floor, or press it and then the place for it.'

const groups = kinds.map((kind) => ({ kind, items: shelf.filter((item) => item.kind === kind) }))

interface ItemProps {
  readonly item: ShelfItem
  readonly onLook: () => void
}

function Item({ item, onLook }: ItemProps) {
  const planner = usePlanner()
  const placing = shelfKey(item)
  const isTaken = usePlannerState((state) => state.tool === 'place' && state.placing === placing)
  const take = () => planner.set({ tool: 'place', placing })
  const startDrag = (event: DragEvent) => {
    event.dataTransfer.setData(SHELF_TYPE, placing)
    event.dataTransfer.effectAllowed = 'copy'
    take()
  }
  const putBack = () => planner.set({ tool: 'select', placing: undefined })
  const endDrag = (event: DragEvent) => {
    // Dropped where nothing takes it: the part goes back on the shelf.
    if (event.dataTransfer.dropEffect === 'none') putBack()
  }
  // A finger has no drag and drop of the browser's: the floor plan follows it from the shelf on.
  const touch = ({ pointerType }: PointerEvent) => {
    if (pointerType === 'touch') take()
  }
  return (
    <button
      className="shelf-item"
      aria-pressed={isTaken}
      draggable
      onDragStart={startDrag}
      onDragEnd={endDrag}
      onClick={take}
      onPointerDown={touch}
      // The finger turned out to scroll the shelf.
      onPointerCancel={putBack}
      onPointerEnter={onLook}
      onFocus={onLook}
    >
      <PartSymbol kind={item.kind.kind} preset={item.preset.id} />
      <span>
        {item.preset.title}
        <span className="only-heard">: {item.preset.hint}</span>
      </span>
    </button>
  )
}

/** All that can be set down on the floor: drag it there, or take it with a press and place it with the pointer or the keys. */
export function PartsShelf() {
  const [looked, setLooked] = useState<ShelfItem>()
  return (
    <div className="shelf">
      {groups.map(({ kind, items }) => (
        <section key={kind.kind} aria-label={kind.title}>
          <h2>{kind.title}</h2>
          {items.map((item) => (
            <Item key={item.preset.id} item={item} onLook={() => setLooked(item)} />
          ))}
        </section>
      ))}
      <p className="shelf-hint" aria-hidden="true">
        {looked ? looked.preset.hint : HOW_TO}
      </p>
    </div>
  )
}
