import type { KeyboardEvent, PointerEvent } from 'react'
import { DRAWER_SHARE, shareAt, shareByKey } from './drawerShare'

interface DrawerEdgeProps {
  readonly share: number
  readonly onShare: (share: number) => void
}

const inHundred = (share: number): number => Math.round(share * 100)

/** The upper edge of the drawer: dragged, or moved with the arrow keys. */
export function DrawerEdge({ share, onShare }: DrawerEdgeProps) {
  const press = (event: KeyboardEvent) => {
    const next = shareByKey(event.key, share)
    if (next === undefined) return
    event.preventDefault()
    onShare(next)
  }
  const take = ({ currentTarget, pointerId }: PointerEvent) => currentTarget.setPointerCapture(pointerId)
  const move = ({ currentTarget, pointerId, clientY }: PointerEvent) => {
    if (currentTarget.hasPointerCapture(pointerId)) onShare(shareAt(clientY, window.innerHeight))
  }
  return (
    <div
      className="drawer-edge"
      role="separator"
      tabIndex={0}
      aria-label="Height of the drawer"
      aria-orientation="horizontal"
      aria-valuemin={inHundred(DRAWER_SHARE.least)}
      aria-valuemax={inHundred(DRAWER_SHARE.most)}
      aria-valuenow={inHundred(share)}
      aria-valuetext={`${inHundred(share)} % of the window`}
      onKeyDown={press}
      onPointerDown={take}
      onPointerMove={move}
    />
  )
}
