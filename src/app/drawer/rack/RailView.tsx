export default function RailView() {
  return <p className="water-none">Nothing is screened yet.</p>
}
