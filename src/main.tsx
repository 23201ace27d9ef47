import { createRoot } from 'react-dom/client'
import { App } from './app/App'
import { deviceShelf } from './app/files/deviceShelf'
import { keepBay } from './app/files/keepBay'
import { startBay } from './app/files/startBay'
import './app/theme.css'
import { createPlanner } from './store/planner'
import { PlannerContext } from './store/react'

const root = document.getElementById('root')
if (!root) throw new Error('The page has no element with the id root to draw in.')

const start = await startBay(deviceShelf)
const planner = createPlanner(start.layout)
planner.open(start.layout, start.history)
if (start.trouble) planner.set({ notice: { tone: 'trouble', text: start.trouble } })
keepBay(planner, deviceShelf, start.seen)

createRoot(root).render(
  <PlannerContext value={planner}>
    <App isSample={start.isSample} />
  </PlannerContext>,
)
