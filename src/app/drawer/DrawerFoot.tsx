import { ChevronDown } from 'lucide-react'
import { type CSSProperties, lazy, Suspense, useState } from 'react'
import { usePlanner, usePlannerState } from '../../store/react'
import { DrawerEdge } from './DrawerEdge'
import { DRAWER_SHARE } from './drawerShare'
import { runOf, runs, viewsOf } from './views'

type Run = keyof typeof runs

const RUNS = ['out', 'home', 'rack', 'saw', 'counter', 'box'] as const satisfies readonly Run[]

const Drawer = lazy(async () => ({ default: (await import('./Drawer')).Drawer }))
const WaterInBrief = lazy(async () => ({ default: (await import('./WaterInBrief')).WaterInBrief }))

interface RunsProps {
  readonly open: string | undefined
  /** The view that was last open in each run. */
  readonly last: Readonly<Partial<Record<Run, string>>>
}

/** What the drawer is about as a row of buttons, in one place whether it is open or shut: each opens it, and shuts it again. */
function Runs({ open, last }: RunsProps) {
  const planner = usePlanner()
  const shown = open === undefined ? undefined : runOf(open)
  return (
    <div className="drawer-runs" role="group" aria-label="What the drawer shows">
      {RUNS.map((run) => (
        <button
          key={run}
          aria-expanded={run === shown}
          data-selected={run === shown}
          onClick={() =>
            planner.set({ drawer: run === shown ? undefined : (last[run] ?? viewsOf(run)[0]?.id) })
          }
        >
          {run === shown && <ChevronDown size={18} />} {runs[run]}
        </button>
      ))}
    </div>
  )
}

/** The foot of the page: one line while the drawer is shut, the drawer under it while it is open. */
export function DrawerFoot() {
  const open = usePlannerState((state) => state.drawer)
  const [last, setLast] = useState<RunsProps['last']>({})
  const [share, setShare] = useState(DRAWER_SHARE.start)
  if (open !== undefined && last[runOf(open)] !== open) setLast({ ...last, [runOf(open)]: open })
  const isOpen = open !== undefined
  return (
    <section
      className={isOpen ? 'frame-foot frame-foot-open' : 'frame-foot'}
      aria-label="Drawer"
      // A custom property is not among the style names that React's types know.
      style={{ '--drawer': share } as CSSProperties}
    >
      {isOpen && <DrawerEdge share={share} onShare={setShare} />}
      <Runs open={open} last={last} />
      <Suspense>{isOpen ? <Drawer /> : <WaterInBrief />}</Suspense>
    </section>
  )
}
