import { type ComponentType, lazy, type LazyExoticComponent } from 'react'

/** What the drawer is about: water out to the towers under pressure and home again by gravity, the racks that carry it all, then what is cut and what is bought, and the papers of it all. */
export const runs = {
  out: 'Water run',
  home: 'Falls home',
  rack: 'Rack bench',
  saw: 'Saw bench',
  counter: 'Counter',
  box: 'Crew box',
} as const

/** A view of one of them. It is handed nothing: it reads the planner's state, and its code comes when it is first opened. */
interface DrawerView {
  readonly id: string
  readonly title: string
  readonly run: keyof typeof runs
  readonly View: LazyExoticComponent<ComponentType>
}

/**
 * In the order of the tabs, run by run. A view is a file here whose default export is its component, and a line in this list; charts of
 * their own are made of `chart/Chart` with `ChartData`, sliders of `SliderField`.
 */
export const drawerViews: readonly [DrawerView, ...DrawerView[]] = [
  { id: 'row', title: 'Row', run: 'out', View: lazy(() => import('./RowView')) },
  { id: 'main', title: 'Main & pump', run: 'out', View: lazy(() => import('./MainView')) },
  { id: 'zones', title: 'Zones', run: 'out', View: lazy(() => import('./ZonesView')) },
  { id: 'feeds', title: 'Feeds', run: 'out', View: lazy(() => import('./FeedsView')) },
  { id: 'tubes', title: 'Tubes', run: 'out', View: lazy(() => import('./TubesView')) },
  { id: 'causes', title: 'Causes', run: 'out', View: lazy(() => import('./CausesView')) },
  { id: 'flush', title: 'Flush & refill', run: 'out', View: lazy(() => import('./FlushView')) },
  { id: 'cut', title: 'Long cut', run: 'home', View: lazy(() => import('./longCut/LongCutView')) },
  { id: 'pegs', title: 'Pegs & levels', run: 'home', View: lazy(() => import('./pegs/PegsView')) },
  { id: 'pit', title: 'Pit', run: 'home', View: lazy(() => import('./pit/PitView')) },
  { id: 'stop', title: 'Stop the pump', run: 'home', View: lazy(() => import('./stop/StopView')) },
  { id: 'what-if', title: 'What if', run: 'home', View: lazy(() => import('./stop/WhatIfView')) },
  {
    id: 'collectors',
    title: 'Pits or collectors',
    run: 'home',
    View: lazy(() => import('./collectors/CollectorsView')),
  },
  { id: 'bench', title: 'Rack', run: 'rack', View: lazy(() => import('./rack/BenchView')) },
  { id: 'rail', title: 'Weigh the rail', run: 'rack', View: lazy(() => import('./rack/RailView')) },
  { id: 'stance', title: 'Stands or tips', run: 'rack', View: lazy(() => import('./rack/StanceView')) },
  { id: 'mends', title: 'What would mend it', run: 'rack', View: lazy(() => import('./rack/MendsView')) },
  { id: 'hands', title: 'Hands & backs', run: 'rack', View: lazy(() => import('./rack/HandsView')) },
  { id: 'saw-list', title: 'Saw list', run: 'saw', View: lazy(() => import('./saw/SawListView')) },
  { id: 'shave', title: 'Shave & save', run: 'saw', View: lazy(() => import('./shave/ShaveView')) },
  { id: 'sawn', title: 'What’s cut', run: 'saw', View: lazy(() => import('./sawn/SawnView')) },
  { id: 'stock', title: 'Stock', run: 'saw', View: lazy(() => import('./stock/StockView')) },
  { id: 'shop', title: 'Shop list', run: 'counter', View: lazy(() => import('./shop/ShopView')) },
  { id: 'prices', title: 'Price book', run: 'counter', View: lazy(() => import('./prices/PricesView')) },
  { id: 'cost', title: 'Cost & hours', run: 'counter', View: lazy(() => import('./cost/CostView')) },
  { id: 'take-off', title: 'Take-off', run: 'counter', View: lazy(() => import('./takeOff/TakeOffView')) },
  { id: 'papers', title: 'Papers', run: 'box', View: lazy(() => import('./box/PapersView')) },
  { id: 'issues', title: 'Issues & changes', run: 'box', View: lazy(() => import('./box/IssuesView')) },
  { id: 'versions', title: 'Versions', run: 'box', View: lazy(() => import('./box/VersionsView')) },
  { id: 'phone', title: 'On the phone', run: 'box', View: lazy(() => import('./box/PhoneView')) },
]

/** The views of one run, in the order of their tabs. */
export const viewsOf = (run: keyof typeof runs): readonly DrawerView[] =>
  drawerViews.filter((view) => view.run === run)

/** The run that a view belongs to; out to the towers for an id that no view has. */
export const runOf = (view: string): keyof typeof runs =>
  drawerViews.find(({ id }) => id === view)?.run ?? 'out'
