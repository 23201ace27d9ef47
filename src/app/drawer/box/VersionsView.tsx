export default function VersionsView() {
  return <p className="water-none">…</p>
}
