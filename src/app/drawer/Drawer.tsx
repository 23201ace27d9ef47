import { Suspense } from 'react'
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components/Tabs'
import { usePlanner, usePlannerState } from '../../store/react'
import './drawer.css'
import { drawerViews } from './views'

/** The views of the water run behind their tabs; only the open one is drawn. */
export function Drawer() {
  const planner = usePlanner()
  const open = usePlannerState((state) => state.drawer)
  return (
    <Tabs
      className="drawer"
      selectedKey={open ?? drawerViews[0].id}
      onSelectionChange={(key) => planner.set({ drawer: String(key) })}
    >
      <TabList className="drawer-tabs" aria-label="Water run">
        {drawerViews.map(({ id, title }) => (
          <Tab key={id} id={id}>
            {title}
          </Tab>
        ))}
      </TabList>
      {drawerViews.map(({ id, View }) => (
        <TabPanel key={id} id={id} className="drawer-panel">
          <Suspense fallback={<p className="water-none">Opening …</p>}>
            <View />
          </Suspense>
        </TabPanel>
      ))}
    </Tabs>
  )
}
