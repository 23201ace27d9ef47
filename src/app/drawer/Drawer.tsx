import { Suspense } from 'react'
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components/Tabs'
import { usePlanner, usePlannerState } from '../../store/react'
import './drawer.css'
import { drawerViews, runOf, runs, viewsOf } from './views'

/** The two runs of water as a pair of buttons; each leads to its first view. */
function Runs({ shown }: { readonly shown: keyof typeof runs }) {
  const planner = usePlanner()
  return (
    <div className="drawer-runs" role="group" aria-label="Run of water">
      {(['out', 'home'] as const).map((run) => (
        <button
          key={run}
          aria-pressed={run === shown}
          onClick={() => planner.set({ drawer: viewsOf(run)[0]?.id })}
        >
          {runs[run]}
        </button>
      ))}
    </div>
  )
}

/** The views of the open run behind their tabs; only the open one is drawn. */
export function Drawer() {
  const planner = usePlanner()
  const open = usePlannerState((state) => state.drawer) ?? drawerViews[0].id
  const run = runOf(open)
  const views = viewsOf(run)
  return (
    <Tabs
      className="drawer"
      selectedKey={open}
      onSelectionChange={(key) => planner.set({ drawer: String(key) })}
    >
      <div className="drawer-head">
        <Runs shown={run} />
        <TabList className="drawer-tabs" aria-label={runs[run]}>
          {views.map(({ id, title }) => (
            <Tab key={id} id={id}>
              {title}
            </Tab>
          ))}
        </TabList>
      </div>
      {views.map(({ id, View }) => (
        <TabPanel key={id} id={id} className="drawer-panel">
          <Suspense fallback={<p className="water-none">Opening …</p>}>
            <View />
          </Suspense>
        </TabPanel>
      ))}
    </Tabs>
  )
}
