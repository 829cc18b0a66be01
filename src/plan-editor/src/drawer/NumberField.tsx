import { useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import { type NumberRange, readNumber } from './numberEntry';

interface Props extends NumberRange {
  readonly value: number;
  readonly digits: number;
  readonly onEnter: (value: number) => void;
}

/** A number with its unit, taken when one leaves the field or presses Enter. A wrong one is told, not taken. */
export function NumberField({ value, digits, onEnter, ...range }: Props) {
  const id = useId();
  const shown = String(Number(value.toFixed(digits)));
  const wrong = useSignal<{ readonly text: string; readonly reason: string } | null>(null);
  // Another value from elsewhere makes the complaint stale.
  useEffect(() => {
    wrong.value = null;
  }, [shown]);
  return (
    <div class="number">
      <label for={id}>
        {range.label} <span class="minor">in {range.unit}</span>
      </label>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autocomplete="off"
        value={wrong.value?.text ?? shown}
        aria-invalid={wrong.value !== null}
        aria-describedby={`${id}-reason`}
        onChange={(event) => {
          const text = event.currentTarget.value;
          const entry = readNumber(text, range);
          wrong.value = entry.valid ? null : { text, reason: entry.reason };
          if (entry.valid) {
            onEnter(entry.value);
          }
        }}
      />
      <p id={`${id}-reason`} class="reason" role="alert">
        {wrong.value?.reason}
      </p>
    </div>
  );
}
