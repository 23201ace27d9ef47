export default function HandsView() {
  return <p className="water-none">Nothing is screened yet.</p>
}
