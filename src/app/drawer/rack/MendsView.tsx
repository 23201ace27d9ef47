export default function MendsView() {
  return <p className="water-none">Nothing is screened yet.</p>
}
