import { type ComponentType, lazy, type LazyExoticComponent } from 'react'

/** A view of the water run. It is handed nothing: it reads the planner's state, and its code comes when it is first opened. */
interface DrawerView {
  readonly id: string
  readonly title: string
  readonly View: LazyExoticComponent<ComponentType>
}

/** In the order of the tabs. The first is open when the drawer is. */
export const drawerViews: readonly [DrawerView, ...DrawerView[]] = [
  { id: 'row', title: 'Row', View: lazy(() => import('./RowView')) },
  { id: 'main', title: 'Main & pump', View: lazy(() => import('./MainView')) },
]
