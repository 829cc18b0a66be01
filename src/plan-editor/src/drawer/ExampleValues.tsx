import type { PlanFile } from '../plan/planFile';
import { exampleValues } from './exampleValues';

/** What of the plan is invented still. Every output says EXAMPLE until the last of these is replaced. */
export function ExampleValues({ plan }: { readonly plan: PlanFile }) {
  const values = exampleValues(plan);
  if (values.length === 0) {
    return null;
  }
  const elements = [...new Set(values.map(({ of }) => of))];
  return (
    <details class="fold example-values">
      <summary>{values.length} values are still invented ones of an example</summary>
      <p class="minor">
        They stand in for yours until you replace them in the plan file; every output says EXAMPLE as long as
        one is left. So is every place and size drawn on the plan that you have not moved.
      </p>
      <ul>
        {elements.map((element) => (
          <li key={element}>
            <strong>{element}:</strong>{' '}
            {values
              .filter(({ of }) => of === element)
              .map(({ words }) => words)
              .join('; ')}
          </li>
        ))}
      </ul>
    </details>
  );
}
