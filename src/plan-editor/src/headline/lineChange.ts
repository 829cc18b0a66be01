import type { Assessment } from '../service/answers';

// A tape across grass is no finer; less is called no change.
const leastMetres = 0.05;

/** What a change of the plan did to the suggested crowd line, in words. */
export function lineChangeInWords(before: Assessment, after: Assessment): string {
  const was = lineDistanceMetres(before);
  const is = lineDistanceMetres(after);
  if (is === null) {
    return was === null ? 'No crowd line can be suggested' : 'No crowd line can be suggested any more';
  }
  if (was === null) {
    return `A crowd line can be suggested: ${metres(is)} from the nozzle at its nearest`;
  }
  const back = is - was;
  if (Math.abs(back) < leastMetres) {
    return 'Suggested line unchanged';
  }
  return back > 0 ? `Suggested line ${metres(back)} farther back` : `Suggested line ${metres(-back)} closer`;
}

/** Distance in metres from the nearest nozzle to the suggested crowd line, or null when there is no line. */
export function lineDistanceMetres({ rooms }: Assessment): number | null {
  const distances = rooms.layout.figures
    .filter((figure) => figure.key === 'layout.line-distance')
    .map((figure) => figure.value.planning);
  return distances.length === 0 ? null : Math.min(...distances);
}

function metres(value: number): string {
  return `${value.toFixed(1)} m`;
}
