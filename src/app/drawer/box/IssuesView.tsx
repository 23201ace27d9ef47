export default function IssuesView() {
  return <p className="water-none">…</p>
}
