import { type ReadonlySignal, useSignal } from '@preact/signals';
import type { PlanFile } from '../plan/planFile';
import { reasonOf } from '../service/refusal';
import type { Service } from '../service/service';
import { fileNameOf, handOver } from './download';

interface Props {
  readonly service: Pick<Service, 'brief'>;
  readonly plan: ReadonlySignal<PlanFile | null>;
}

/** Prints the brief of the plan as it is now. */
export function BriefButton({ service, plan }: Props) {
  const printing = useSignal(false);
  const trouble = useSignal<string | null>(null);
  const print = async () => {
    const wanted = plan.value;
    if (wanted === null || printing.value) {
      return;
    }
    printing.value = true;
    trouble.value = null;
    try {
      handOver(await service.brief(wanted), fileNameOf(wanted.title, 'pdf'));
    } catch (thrown) {
      trouble.value = reasonOf(thrown);
    } finally {
      printing.value = false;
    }
  };
  return (
    <>
      <button
        type="button"
        class="ink"
        disabled={plan.value === null}
        aria-disabled={printing.value}
        onClick={() => void print()}
      >
        {printing.value ? 'Printing …' : 'Brief'}
      </button>
      {trouble.value !== null && (
        <p class="notice" role="alert">
          The brief was not printed. {trouble.value}{' '}
          <button type="button" class="plain" onClick={() => void print()}>
            Try again
          </button>
        </p>
      )}
    </>
  );
}
