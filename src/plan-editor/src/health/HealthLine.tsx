import { useSignal, useSignalEffect } from '@preact/signals';
import { askHealth, type Health, healthInWords } from './health';

/** One sentence on the state of the service, read out by screen readers when it changes. */
export function HealthLine() {
  const health = useSignal<Health>({ kind: 'asking' });
  useSignalEffect(() => {
    void askHealth((address) => fetch(address)).then((answer) => {
      health.value = answer;
    });
  });
  return (
    <p class="health" data-kind={health.value.kind} role="status">
      {healthInWords(health.value)}
    </p>
  );
}
