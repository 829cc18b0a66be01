import { HealthLine } from '../health/HealthLine';
import { PlanningAid } from './PlanningAid';

/** What the tool is for, what it is not, and whether the service behind it runs. */
export function About() {
  return (
    <>
      <p>
        ShowSafety works out, for showing a hand-sized gas turbine to the public, how loud it is and for how
        long people may stand where, where the exhaust blows, where pieces of a burst rotor would go, what the
        air of a tent or hall becomes, where fuel is kept and how the crowd leaves, and from all that the
        keep-out and the crowd line. Drag the bench and see what changes; the brief has every value with its
        unit, its uncertainty and its source.
      </p>
      <PlanningAid />
      <HealthLine />
    </>
  );
}
