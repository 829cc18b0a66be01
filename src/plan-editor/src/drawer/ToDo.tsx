import type { Assessment, FindingEntry } from '../service/answers';
import type { DrawerState } from './drawerState';
import { severities, type Task, tasksOf } from './tasks';

interface Props {
  readonly assessment: Assessment;
  readonly drawer: DrawerState;
}

/** What to do, gravest first: the deed in bold, what asks for it below. */
export function ToDo({ assessment, drawer }: Props) {
  const tasks = tasksOf(assessment.findings);
  if (tasks.length === 0) {
    return <p>Nothing stands on the list for the data given. That is not a permission to run.</p>;
  }
  return (
    <>
      {severities.map(({ id, label, meaning }) => {
        const some = tasks.filter((task) => task.severity === id);
        const findings = assessment.findings.filter(({ finding }) => finding.severity === id).length;
        return (
          some.length > 0 && (
            <section key={id} class="severity" data-severity={id} aria-labelledby={`severity-${id}`}>
              <h3 id={`severity-${id}`}>
                {label} <span class="count">{findings}</span>
              </h3>
              <p class="minor">{meaning}</p>
              <ol class="tasks">
                {some.map((task) => (
                  <TaskItem key={task.remedy} task={task} drawer={drawer} />
                ))}
              </ol>
            </section>
          )
        );
      })}
    </>
  );
}

function TaskItem({ task, drawer }: { readonly task: Task; readonly drawer: DrawerState }) {
  return (
    <li class="task">
      <p class="remedy">{task.remedy}</p>
      {task.findings.map((entry) => (
        <Cause key={entry.sentence} entry={entry} drawer={drawer} />
      ))}
    </li>
  );
}

function Cause({ entry, drawer }: { readonly entry: FindingEntry; readonly drawer: DrawerState }) {
  const { elementId, place } = entry.finding;
  if (elementId === undefined && place === undefined) {
    return <p class="cause">{entry.sentence}</p>;
  }
  return (
    <button type="button" class="cause" onClick={() => drawer.point({ elementId, place })}>
      {entry.sentence} <span class="where">Show on the plan</span>
    </button>
  );
}
