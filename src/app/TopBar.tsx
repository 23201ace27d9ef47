import {
  ArchiveRestore,
  FilePlus2,
  FolderOpen,
  Hand,
  ImageDown,
  Keyboard,
  LayoutGrid,
  Maximize,
  MousePointer2,
  Redo2,
  Ruler,
  Save,
  Share2,
  Undo2,
} from 'lucide-react'
import type { ReactNode } from 'react'
import { toolOf } from '../canvas/tools/index'
import type { CutList } from '../model/cutList'
import type { ToolId } from '../store/planner'
import { usePlanner, usePlannerState } from '../store/react'
import { useCutLists } from '../store/useCutLists'
import type { Commands } from './commands'

interface TopBarProps {
  readonly commands: Commands
  readonly onNew: () => void
  readonly onSamples: () => void
  readonly onEarlier: () => void
  readonly onKeys: () => void
  readonly onExport: () => void
  readonly onShare: () => void
}

const tools: readonly { id: ToolId; icon: ReactNode }[] = [
  { id: 'select', icon: <MousePointer2 size={18} /> },
  { id: 'hand', icon: <Hand size={18} /> },
  { id: 'tape', icon: <Ruler size={18} /> },
]

function Tools() {
  const planner = usePlanner()
  const tool = usePlannerState((state) => state.tool)
  return (
    <div className="frame-group" role="group" aria-label="Tools">
      {tools.map(({ id, icon }) => (
        <button
          key={id}
          title={toolOf(id).title}
          aria-label={toolOf(id).title}
          aria-pressed={tool === id}
          onClick={() => planner.set({ tool: id, placing: undefined })}
        >
          {icon}
        </button>
      ))}
      <button title="Show the whole house" aria-label="Show the whole house" onClick={planner.fit}>
        <Maximize size={18} />
      </button>
    </div>
  )
}

function Steps() {
  const planner = usePlanner()
  const [undoes, redoes] = usePlannerState(({ history }) => [
    history.done.at(-1)?.label,
    history.undone.at(-1)?.label,
  ])
  const undoName = undoes ? `Undo: ${undoes}` : 'Nothing to undo'
  const redoName = redoes ? `Redo: ${redoes}` : 'Nothing to redo'
  return (
    <div className="frame-group" role="group" aria-label="Steps">
      <button title={undoName} aria-label={undoName} disabled={!undoes} onClick={planner.undo}>
        <Undo2 size={18} />
      </button>
      <button title={redoName} aria-label={redoName} disabled={!redoes} onClick={planner.redo}>
        <Redo2 size={18} />
      </button>
    </div>
  )
}

function Tally() {
  const [towers, sites] = usePlannerState(({ evaluation }) => [evaluation.towers, evaluation.sites])
  const boards = boardsOf(useCutLists())
  return (
    <div className="frame-tally">
      <span>
        <b>{towers.toLocaleString()}</b> towers, <b>{sites.toLocaleString()}</b> plant sites
      </span>
      <span>
        <b>{boards.toLocaleString()}</b> boards to buy
      </span>
    </div>
  )
}

const boardsOf = (cuts: readonly CutList[]): number =>
  cuts
    .filter(({ stock }) => stock.startsWith('lumber-'))
    .flatMap(({ bought }) => bought)
    .reduce((sum, { count }) => sum + count, 0)

/** Files on the left, tools in the middle, units and paper on the right. */
export function TopBar({ commands, onNew, onSamples, onEarlier, onKeys, onExport, onShare }: TopBarProps) {
  const [title, units] = usePlannerState((state) => [state.layout.title, state.units])
  return (
    <header className="frame-bar">
      <h1 className="frame-name">
        Kerf <i>&amp;</i> Fall
      </h1>
      <span className="frame-title" title={title}>
        {title}
      </span>
      <div className="frame-group" role="group" aria-label="Files">
        <button onClick={onNew} title="New bay" aria-label="New">
          <FilePlus2 size={18} /> <span className="frame-label">New</span>
        </button>
        <button onClick={() => void commands.openFile()} title="Open a layout file" aria-label="Open">
          <FolderOpen size={18} /> <span className="frame-label">Open</span>
        </button>
        <button onClick={commands.save} title="Save the layout as a file" aria-label="Save">
          <Save size={18} /> <span className="frame-label">Save</span>
        </button>
        <button onClick={onShare} title="Share this bay" aria-label="Share">
          <Share2 size={18} />
        </button>
        <button onClick={onSamples} title="Sample bays" aria-label="Samples">
          <LayoutGrid size={18} /> <span className="frame-label">Samples</span>
        </button>
        <button
          onClick={onEarlier}
          title="Earlier versions on this device"
          aria-label="Earlier versions on this device"
        >
          <ArchiveRestore size={18} />
        </button>
      </div>
      <Steps />
      <Tools />
      <span className="frame-push" />
      <Tally />
      <button onClick={commands.flipUnits} title="Change units">
        {units === 'metric' ? 'mm' : 'ft in'}
      </button>
      <button onClick={onKeys} title="Keys" aria-label="Keys">
        <Keyboard size={18} />
      </button>
      <button onClick={onExport}>
        <ImageDown size={18} /> Plan for the crew
      </button>
    </header>
  )
}
