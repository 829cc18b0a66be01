import type { FindingEntry } from '../service/answers';

export type Severity = FindingEntry['finding']['severity'];

/** One thing to do and what asks for it: several findings may go away by the same deed. */
export interface Task {
  readonly severity: Severity;
  readonly remedy: string;
  readonly findings: readonly FindingEntry[];
}

/** What each severity means for the reader, gravest first. */
export const severities: readonly {
  readonly id: Severity;
  readonly label: string;
  readonly meaning: string;
}[] = [
  { id: 'stop', label: 'Stop', meaning: 'While one of these stands it is NOT TO RUN.' },
  { id: 'act', label: 'Act', meaning: 'To be closed by name and time before the run.' },
  { id: 'note', label: 'Note', meaning: 'To know.' },
];

/** Findings grouped by what to do about them, in the service's order; the same sentence is said once. */
export function tasksOf(findings: readonly FindingEntry[]): readonly Task[] {
  const tasks = new Map<string, Task>();
  for (const entry of findings) {
    const { severity } = entry.finding;
    const key = `${severity}/${entry.remedy}`;
    const task = tasks.get(key) ?? { severity, remedy: entry.remedy, findings: [] };
    const said = task.findings.some(({ sentence }) => sentence === entry.sentence);
    tasks.set(key, said ? task : { ...task, findings: [...task.findings, entry] });
  }
  return [...tasks.values()];
}
