import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components/Tabs'
import { findingsOf } from '../evaluate/8-checks'
import type { SidebarTab } from '../store/planner'
import { usePlanner, usePlannerState } from '../store/react'
import { Cuts } from './Cuts'
import { Inspector } from './Inspector'
import { PartsList } from './PartsList'
import './sidebar.css'
import { sortedByAcceptance } from './warningGroups'
import { Warnings } from './Warnings'

const count = (n: number) => n > 0 && <span className="sidebar-count">{n}</span>

/** What the program has to say of the bay, and what is selected in it. */
export function Sidebar() {
  const planner = usePlanner()
  const tab = usePlannerState((state) => state.sidebar)
  const [warnings, selected, parts] = usePlannerState(({ evaluation, selection }) => [
    sortedByAcceptance(findingsOf(evaluation.bay), evaluation.layout.settings.accepted).open.length,
    selection.length,
    evaluation.layout.parts.length,
  ])
  return (
    <Tabs
      className="sidebar"
      selectedKey={tab}
      // The cast: every key here is the id of one of the tabs below.
      onSelectionChange={(key) => planner.set({ sidebar: key as SidebarTab })}
    >
      <TabList className="sidebar-tabs" aria-label="Sidebar">
        <Tab id="warnings">Warnings {count(warnings)}</Tab>
        <Tab id="cuts">Cuts</Tab>
        <Tab id="part">{selected > 0 ? <>Part {selected > 1 && count(selected)}</> : 'Bay'}</Tab>
        <Tab id="list">List {count(parts)}</Tab>
      </TabList>
      <TabPanel id="warnings" className="sidebar-panel">
        <Warnings />
      </TabPanel>
      <TabPanel id="cuts" className="sidebar-panel">
        <Cuts />
      </TabPanel>
      <TabPanel id="part" className="sidebar-panel">
        <Inspector />
      </TabPanel>
      <TabPanel id="list" className="sidebar-list">
        <PartsList />
      </TabPanel>
    </Tabs>
  )
}
