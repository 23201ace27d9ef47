/** What the drawer is about: water out to the towers under pressure and home again by gravity, the racks that carry it all, then what is cut and what is bought, and the papers of it all. */
export const runs = {
  out: 'Water run',
  home: 'Falls home',
  rack: 'Rack bench',
  saw: 'Saw bench',
  counter: 'Counter',
  box: 'Crew box',
} as const

/** A view of one of them. */
interface DrawerView {
  readonly id: string
  readonly title: string
  readonly run: keyof typeof runs
}

/** In the order of the tabs, run by run. What each shows stands in viewCode.ts under its id. */
export const drawerViews = [
  { id: 'row', title: 'Row', run: 'out' },
  { id: 'main', title: 'Main & pump', run: 'out' },
  { id: 'zones', title: 'Zones', run: 'out' },
  { id: 'feeds', title: 'Feeds', run: 'out' },
  { id: 'tubes', title: 'Tubes', run: 'out' },
  { id: 'causes', title: 'Causes', run: 'out' },
  { id: 'flush', title: 'Flush & refill', run: 'out' },
  { id: 'cut', title: 'Long cut', run: 'home' },
  { id: 'pegs', title: 'Pegs & levels', run: 'home' },
  { id: 'pit', title: 'Pit', run: 'home' },
  { id: 'stop', title: 'Stop the pump', run: 'home' },
  { id: 'what-if', title: 'What if', run: 'home' },
  { id: 'collectors', title: 'Pits or collectors', run: 'home' },
  { id: 'bench', title: 'Rack', run: 'rack' },
  { id: 'rail', title: 'Weigh the rail', run: 'rack' },
  { id: 'stance', title: 'Stands or tips', run: 'rack' },
  { id: 'mends', title: 'What would mend it', run: 'rack' },
  { id: 'hands', title: 'Hands & backs', run: 'rack' },
  { id: 'saw-list', title: 'Saw list', run: 'saw' },
  { id: 'shave', title: 'Shave & save', run: 'saw' },
  { id: 'sawn', title: 'What’s cut', run: 'saw' },
  { id: 'stock', title: 'Stock', run: 'saw' },
  { id: 'shop', title: 'Shop list', run: 'counter' },
  { id: 'prices', title: 'Price book', run: 'counter' },
  { id: 'cost', title: 'Cost & hours', run: 'counter' },
  { id: 'take-off', title: 'Take-off', run: 'counter' },
  { id: 'papers', title: 'Papers', run: 'box' },
  { id: 'issues', title: 'Issues & changes', run: 'box' },
  { id: 'versions', title: 'Versions', run: 'box' },
  { id: 'phone', title: 'On the phone', run: 'box' },
] as const satisfies readonly DrawerView[]

export type ViewId = (typeof drawerViews)[number]['id']

/** The views of one run, in the order of their tabs. */
export const viewsOf = (run: keyof typeof runs): readonly (typeof drawerViews)[number][] =>
  drawerViews.filter((view) => view.run === run)

/** The run that a view belongs to; out to the towers for an id that no view has. */
export const runOf = (view: string): keyof typeof runs =>
  drawerViews.find(({ id }) => id === view)?.run ?? 'out'
