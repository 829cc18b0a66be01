/** How to make a brief from the command line, in the order a newcomer needs the commands. */
const steps = [
  { say: 'Find out what is still missing from the plan:', type: 'find-out plan.json' },
  { say: 'Make the brief:', type: 'brief plan.json --out brief.pdf' },
  { say: 'Or write every number and the site plan to a folder:', type: 'assess plan.json --out results' },
] as const;

export function Commands() {
  return (
    <section aria-labelledby="commands">
      <h2 id="commands">Make a brief from the command line</h2>
      <ol class="steps">
        {steps.map((step) => (
          <li key={step.type}>
            {step.say}
            <code>dotnet run --project src/ShowSafety.Cli -- {step.type}</code>
          </li>
        ))}
      </ol>
    </section>
  );
}
