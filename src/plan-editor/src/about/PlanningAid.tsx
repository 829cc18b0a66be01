/** What the tool must say wherever it speaks. */
export function PlanningAid() {
  return (
    <section class="aid" aria-labelledby="aid">
      <h2 id="aid">This is a planning aid</h2>
      <p>
        A plan is valid for one date, one weather band, one engine and one version of the plan. It does not
        replace a competent person, the rules of the venue and the organiser, the fire authority, the insurers
        or local law. Results depend on measured data. A rotor burst can’t be made harmless by distance alone.{' '}
        <strong>Never run where the plan says NOT TO RUN.</strong>
      </p>
    </section>
  );
}
