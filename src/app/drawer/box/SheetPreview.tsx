import { ChevronLeft, ChevronRight, Maximize2 } from 'lucide-react'
import { useState } from 'react'
import type { Page } from '../../../drawing/page'
import { pageSvg } from '../../../drawing/svg'
import { paperTheme } from '../../../drawing/theme'
import type { Sheet } from '../../../sheets/sheet'
import { Dialog } from '../../Dialog'

/** One page as it will be printed. Its words are real text, so that a screen reader and a search find them. */
function PagePicture({ page, isLarge = false }: { readonly page: Page; readonly isLarge?: boolean }) {
  return (
    <div
      className={isLarge ? 'box-page box-page-large' : 'box-page'}
      // Scrolled by key too.
      tabIndex={0}
      role="region"
      aria-label={page.title}
    >
      <div
        role="img"
        aria-label={page.title}
        // Written by our own writer, which escapes every word.
        dangerouslySetInnerHTML={{ __html: pageSvg(page, paperTheme) }}
      />
    </div>
  )
}

interface SheetPreviewProps {
  readonly sheet: Sheet
  /** undefined before they are drawn for the first time. */
  readonly pages: readonly Page[] | undefined
  readonly isCurrent: boolean
}

interface TurnerProps {
  readonly at: number
  readonly of: number
  readonly onTurn: (to: number) => void
  readonly onLarge?: () => void
}

function Turner({ at, of, onTurn, onLarge }: TurnerProps) {
  return (
    <div className="box-turner" role="group" aria-label="Pages">
      <button aria-label="Page before" disabled={at === 0} onClick={() => onTurn(at - 1)}>
        <ChevronLeft size={18} />
      </button>
      <span aria-live="polite">
        Page {at + 1} of {of}
      </span>
      <button aria-label="Next page" disabled={at + 1 >= of} onClick={() => onTurn(at + 1)}>
        <ChevronRight size={18} />
      </button>
      {onLarge && (
        <button onClick={onLarge}>
          <Maximize2 size={16} /> Look closely
        </button>
      )}
    </div>
  )
}

/** The pages of a sheet, one at a time. */
export function SheetPreview({ sheet, pages, isCurrent }: SheetPreviewProps) {
  const [turned, setTurned] = useState(0)
  const [isLarge, setIsLarge] = useState(false)
  if (!pages) return <p className="water-none">Drawing the {sheet.title.toLowerCase()} …</p>
  const at = Math.min(turned, pages.length - 1)
  const page = pages[at]
  if (!page) return <p className="water-none">This bay needs no {sheet.title.toLowerCase()}.</p>
  return (
    <div className="box-preview" data-stale={!isCurrent}>
      <Turner at={at} of={pages.length} onTurn={setTurned} onLarge={() => setIsLarge(true)} />
      <PagePicture page={page} />
      {isLarge && (
        <Dialog title={sheet.title} onClose={() => setIsLarge(false)}>
          <Turner at={at} of={pages.length} onTurn={setTurned} />
          <PagePicture page={page} isLarge />
          <footer>
            <button onClick={() => setIsLarge(false)}>Close</button>
          </footer>
        </Dialog>
      )}
    </div>
  )
}
