import { type ComponentType, lazy, type LazyExoticComponent } from 'react'

/** A view of the water run. It is handed nothing: it reads the planner's state, and its code comes when it is first opened. */
interface DrawerView {
  readonly id: string
  readonly title: string
  readonly View: LazyExoticComponent<ComponentType>
}

/**
 * In the order of the tabs. A view is a file here whose default export is its component, and a line in this list; charts of
 * their own are made of `chart/Chart` with `ChartData`, sliders of `SliderField`.
 */
export const drawerViews: readonly [DrawerView, ...DrawerView[]] = [
  { id: 'row', title: 'Row', View: lazy(() => import('./RowView')) },
  { id: 'main', title: 'Main & pump', View: lazy(() => import('./MainView')) },
  { id: 'zones', title: 'Zones', View: lazy(() => import('./ZonesView')) },
  { id: 'feeds', title: 'Feeds', View: lazy(() => import('./FeedsView')) },
  { id: 'tubes', title: 'Tubes', View: lazy(() => import('./TubesView')) },
  { id: 'causes', title: 'Causes', View: lazy(() => import('./CausesView')) },
  { id: 'flush', title: 'Flush & refill', View: lazy(() => import('./FlushView')) },
]
