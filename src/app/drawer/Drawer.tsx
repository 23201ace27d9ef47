import { Suspense } from 'react'
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components/Tabs'
import { usePlanner, usePlannerState } from '../../store/react'
import './drawer.css'
import { viewCode } from './viewCode'
import { drawerViews, runOf, runs, viewsOf } from './views'

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
      <TabList className="drawer-tabs" aria-label={runs[run]}>
        {views.map(({ id, title }) => (
          <Tab key={id} id={id}>
            {title}
          </Tab>
        ))}
      </TabList>
      {views.map(({ id }) => {
        const View = viewCode[id]
        return (
          <TabPanel key={id} id={id} className="drawer-panel">
            <Suspense fallback={<p className="water-none">Opening …</p>}>
              <View />
            </Suspense>
          </TabPanel>
        )
      })}
    </Tabs>
  )
}
