import { useSignal } from '@preact/signals';
import type { Page } from '../page';
import { clockTime } from '../saving/saveState';
import type { PlanSummary } from '../service/answers';
import { reasonOf } from '../service/refusal';
import { tagOf } from '../service/service';

interface Props {
  readonly page: Page;
  readonly plans: readonly PlanSummary[] | null;
  readonly onRemoved: () => Promise<void>;
  readonly onOpen: (opening: Promise<boolean>) => void;
}

/** The user's own plans, the last saved first. */
export function OwnPlans({ page, plans, onRemoved, onOpen }: Props) {
  return (
    <section aria-labelledby="own-plans">
      <h3 id="own-plans">Your plans</h3>
      {plans?.length === 0 && <p>None yet. Change an example, or start your own from one.</p>}
      <ul class="rows" aria-label="Your plans">
        {plans?.map((plan) => (
          <OwnPlan key={plan.id} page={page} plan={plan} onRemoved={onRemoved} onOpen={onOpen} />
        ))}
      </ul>
    </section>
  );
}

interface OneProps extends Omit<Props, 'plans'> {
  readonly plan: PlanSummary;
}

function OwnPlan({ page, plan, onRemoved, onOpen }: OneProps) {
  const asking = useSignal(false);
  const trouble = useSignal<string | null>(null);
  const isOnDesk = page.saving.planId.value === plan.id;
  const remove = async () => {
    try {
      await page.service.remove(plan.id, tagOf(plan));
      await onRemoved();
    } catch (thrown) {
      trouble.value = `Not removed. ${reasonOf(thrown)}`;
    } finally {
      asking.value = false;
    }
  };
  return (
    <li class="row">
      <div>
        <strong>{plan.title}</strong>
        <span class="minor">
          Saved at {clockTime(new Date(plan.savedAt), new Date())}
          {isOnDesk && ', on the desk now'}
        </span>
        {trouble.value !== null && <span role="alert">{trouble.value}</span>}
      </div>
      {asking.value ? (
        <fieldset class="pair" aria-label={`Remove ${plan.title}?`}>
          <button type="button" class="ink" onClick={() => void remove()}>
            Yes, remove it
          </button>
          <button type="button" onClick={() => (asking.value = false)}>
            No
          </button>
        </fieldset>
      ) : (
        !isOnDesk && (
          <div class="pair">
            <button type="button" onClick={() => onOpen(page.opening.plan(plan.id))}>
              Open<span class="unseen"> {plan.title}</span>
            </button>
            <button type="button" onClick={() => (asking.value = true)}>
              Remove<span class="unseen"> {plan.title}</span>
            </button>
          </div>
        )
      )}
    </li>
  );
}
