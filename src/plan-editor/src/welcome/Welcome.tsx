import { HealthLine } from '../health/HealthLine';
import { Commands } from './Commands';
import { PlanningAid } from './PlanningAid';

/** The page: what the tool is for, how to get a brief, what it is not, and whether the service runs. */
export function Welcome() {
  return (
    <main class="sheet">
      <header class="head">
        <h1>ShowSafety</h1>
        <p class="subject">Showing a hand-sized gas turbine to the public</p>
      </header>
      <p class="job">
        Give it a plan: the measured sound level, the engine sheet and a sketch of the site. It works out how
        loud it is and for how long people may stand where, where the exhaust blows, where pieces of a burst
        rotor would go, what the air of a tent or hall becomes, where fuel is kept and how the crowd leaves,
        and from all that the keep-out area and the crowd line. Every value comes with its unit, its
        uncertainty and its source, in a brief you can print and hand to the organiser.
      </p>
      <Commands />
      <PlanningAid />
      <footer class="title-block">
        <HealthLine />
      </footer>
    </main>
  );
}
