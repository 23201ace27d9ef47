export default function StanceView() {
  return <p className="water-none">Nothing is screened yet.</p>
}
