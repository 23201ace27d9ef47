import { type ComponentType, lazy, type LazyExoticComponent } from 'react'
import type { ViewId } from './views'

/**
 * The views of the drawer. One is handed nothing: it reads the planner's state, and its code comes when it is first opened. It is a file
 * here whose default export is its component, with a line in this record and one in views.ts; charts of its own are made of
 * `chart/Chart` with `ChartData`, sliders of `SliderField`. These stand apart from their titles, since the page needs only those at first.
 */
export const viewCode: Readonly<Record<ViewId, LazyExoticComponent<ComponentType>>> = {
  row: lazy(() => import('./RowView')),
  main: lazy(() => import('./MainView')),
  zones: lazy(() => import('./ZonesView')),
  feeds: lazy(() => import('./FeedsView')),
  tubes: lazy(() => import('./TubesView')),
  causes: lazy(() => import('./CausesView')),
  flush: lazy(() => import('./FlushView')),
  cut: lazy(() => import('./longCut/LongCutView')),
  pegs: lazy(() => import('./pegs/PegsView')),
  pit: lazy(() => import('./pit/PitView')),
  stop: lazy(() => import('./stop/StopView')),
  'what-if': lazy(() => import('./stop/WhatIfView')),
  collectors: lazy(() => import('./collectors/CollectorsView')),
  bench: lazy(() => import('./rack/BenchView')),
  rail: lazy(() => import('./rack/RailView')),
  stance: lazy(() => import('./rack/StanceView')),
  mends: lazy(() => import('./rack/MendsView')),
  hands: lazy(() => import('./rack/HandsView')),
  'saw-list': lazy(() => import('./saw/SawListView')),
  shave: lazy(() => import('./shave/ShaveView')),
  sawn: lazy(() => import('./sawn/SawnView')),
  stock: lazy(() => import('./stock/StockView')),
  shop: lazy(() => import('./shop/ShopView')),
  prices: lazy(() => import('./prices/PricesView')),
  cost: lazy(() => import('./cost/CostView')),
  'take-off': lazy(() => import('./takeOff/TakeOffView')),
  papers: lazy(() => import('./box/PapersView')),
  issues: lazy(() => import('./box/IssuesView')),
  versions: lazy(() => import('./box/VersionsView')),
  phone: lazy(() => import('./box/PhoneView')),
}
