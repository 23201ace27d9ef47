export default function PapersView() {
  return <p className="water-none">…</p>
}
