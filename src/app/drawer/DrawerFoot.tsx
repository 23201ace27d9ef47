import { ChevronDown, ChevronUp } from 'lucide-react'
import { type CSSProperties, lazy, Suspense, useState } from 'react'
import { usePlanner, usePlannerState } from '../../store/react'
import { DrawerEdge } from './DrawerEdge'
import { DRAWER_SHARE } from './drawerShare'

const Drawer = lazy(async () => ({ default: (await import('./Drawer')).Drawer }))
const WaterInBrief = lazy(async () => ({ default: (await import('./WaterInBrief')).WaterInBrief }))

/** What opens first. Its place in the registry of views is not known here, so that none of them loads with the page. */
const FIRST_VIEW = 'row'

/** The foot of the page: one line while the drawer is shut, the drawer under it while it is open. */
export function DrawerFoot() {
  const planner = usePlanner()
  const open = usePlannerState((state) => state.drawer)
  const [last, setLast] = useState(FIRST_VIEW)
  const [share, setShare] = useState(DRAWER_SHARE.start)
  if (open !== undefined && open !== last) setLast(open)
  const isOpen = open !== undefined
  return (
    <section
      className={isOpen ? 'frame-foot frame-foot-open' : 'frame-foot'}
      aria-label="Water run"
      // A custom property is not among the style names that React's types know.
      style={{ '--drawer': share } as CSSProperties}
    >
      {isOpen && <DrawerEdge share={share} onShare={setShare} />}
      <button
        className="frame-foot-toggle"
        aria-expanded={isOpen}
        onClick={() => planner.set({ drawer: isOpen ? undefined : last })}
      >
        {isOpen ? <ChevronDown size={18} /> : <ChevronUp size={18} />} Water run
      </button>
      <Suspense>{isOpen ? <Drawer /> : <WaterInBrief />}</Suspense>
    </section>
  )
}
