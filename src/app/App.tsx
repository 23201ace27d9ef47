import { type DragEvent, lazy, Suspense, useEffect, useMemo, useState } from 'react'
import { samples } from '../layout/samples'
import { usePlanner, usePlannerState } from '../store/react'
import { type Commands, commandsOf } from './commands'
import { DrawerFoot } from './drawer/DrawerFoot'
import { Notice } from './Notice'
import { keepOffline } from './offline/keepOffline'
import { proveBehind } from './proof/proveBehind'
import { holdsBay } from './share/bayHash'
import { shortcutFor } from './shortcuts'
import { TopBar } from './TopBar'
import './frame.css'

// The frame is painted first; the plan is asked for at once, everything else right behind it.
const floorPlan = import('../canvas/FloorPlan')
const FloorPlan = lazy(async () => ({ default: (await floorPlan).FloorPlan }))
const PartsShelf = lazy(async () => ({ default: (await import('../sidebar/PartsShelf')).PartsShelf }))
const Sidebar = lazy(async () => ({ default: (await import('../sidebar/Sidebar')).Sidebar }))
const NewBay = lazy(async () => ({ default: (await import('./NewBay')).NewBay }))
const Samples = lazy(async () => ({ default: (await import('./Samples')).Samples }))
const Earlier = lazy(async () => ({ default: (await import('./Earlier')).Earlier }))
const Keys = lazy(async () => ({ default: (await import('./Keys')).Keys }))
const ExportPlan = lazy(async () => ({ default: (await import('./ExportPlan')).ExportPlan }))
const ShareBay = lazy(async () => ({ default: (await import('./share/ShareBay')).ShareBay }))
const LinkedBay = lazy(async () => ({ default: (await import('./share/LinkedBay')).LinkedBay }))

type Sheet = 'new' | 'samples' | 'earlier' | 'keys' | 'export' | 'share' | undefined

const useShortcuts = (commands: Commands) => {
  const planner = usePlanner()
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const shortcut = shortcutFor(event)
      if (!shortcut) return
      event.preventDefault()
      shortcut.run(planner, commands)
    }
    window.addEventListener('keydown', press)
    return () => window.removeEventListener('keydown', press)
  }, [planner, commands])
}

/** The hash of the address, while it holds something, and how to be done with it: a reload then asks no second time. */
const useAddressHash = () => {
  const [hash, setHash] = useState(window.location.hash)
  useEffect(() => {
    const follow = () => setHash(window.location.hash)
    window.addEventListener('hashchange', follow)
    return () => window.removeEventListener('hashchange', follow)
  }, [])
  const clear = () => {
    window.history.replaceState(null, '', window.location.href.replace(/#.*$/, ''))
    setHash('')
  }
  return { hash, clear }
}

const holdsFile = (event: DragEvent): boolean => event.dataTransfer.types.includes('Files')

/** Takes a layout file that is dropped anywhere on the page. */
const fileDrop = (commands: Commands) => ({
  onDragOver: (event: DragEvent) => holdsFile(event) && event.preventDefault(),
  onDrop: (event: DragEvent) => {
    const [file] = event.dataTransfer.files
    if (!holdsFile(event) || !file) return
    event.preventDefault()
    void commands.takeFile(file)
  },
})

/** Whoever has opened a bay of their own needs no word about samples. */
const isSampleTitle = (title: string): boolean => samples.some((sample) => sample.title === title)

interface AppProps {
  /** Nothing of one's own is open yet. */
  readonly isSample: boolean
}

/** The whole page: bar on top, parts shelf, floor plan, sidebar, and the drawer at its foot. */
export function App({ isSample }: AppProps) {
  const planner = usePlanner()
  const commands = useMemo(() => commandsOf(planner), [planner])
  const [sheet, setSheet] = useState<Sheet>()
  const [isHinting, setIsHinting] = useState(isSample)
  const [units, title] = usePlannerState((state) => [state.units, state.layout.title])
  const close = () => setSheet(undefined)
  const address = useAddressHash()
  useShortcuts(commands)
  useEffect(() => proveBehind(planner), [planner])
  useEffect(keepOffline, [])

  return (
    <div className="frame" {...fileDrop(commands)}>
      <TopBar
        commands={commands}
        onNew={() => setSheet('new')}
        onSamples={() => setSheet('samples')}
        onEarlier={() => setSheet('earlier')}
        onKeys={() => setSheet('keys')}
        onExport={() => setSheet('export')}
        onShare={() => setSheet('share')}
      />
      {isHinting && isSampleTitle(title) && (
        <div className="frame-hint">
          <p>This is a sample bay, {title}: drag its rows, or start on your own.</p>
          <button onClick={() => setSheet('new')}>New bay</button>
          <button onClick={() => void commands.openFile()}>Open file</button>
          <button onClick={() => setIsHinting(false)}>Keep the sample</button>
        </div>
      )}
      <nav className="frame-shelf" aria-label="Parts shelf">
        <Suspense>
          <PartsShelf />
        </Suspense>
      </nav>
      <main className="frame-floor">
        <Suspense>
          <FloorPlan />
        </Suspense>
        <Notice onSave={commands.save} />
      </main>
      <DrawerFoot />
      <aside className="frame-side" aria-label="Warnings, cuts and parts">
        <Suspense>
          <Sidebar />
        </Suspense>
      </aside>
      <Suspense>
        {sheet === 'new' && (
          <NewBay
            units={units}
            onClose={close}
            onMake={(layout) => {
              commands.takeLayout(layout)
              setIsHinting(false)
              close()
            }}
          />
        )}
        {sheet === 'samples' && (
          <Samples
            onClose={close}
            onTake={(sample) => {
              void commands.takeSample(sample)
              close()
            }}
          />
        )}
        {sheet === 'earlier' && (
          <Earlier
            onClose={close}
            onTake={({ layoutText }) => {
              commands.takeText(layoutText)
              close()
            }}
          />
        )}
        {sheet === 'keys' && <Keys onClose={close} />}
        {sheet === 'export' && <ExportPlan onClose={close} />}
        {sheet === 'share' && <ShareBay onSave={commands.save} onClose={close} />}
        {holdsBay(address.hash) && (
          <LinkedBay
            hash={address.hash}
            onClose={address.clear}
            onTake={(layout) => {
              commands.takeLayout(layout)
              setIsHinting(false)
              address.clear()
            }}
          />
        )}
      </Suspense>
    </div>
  )
}
