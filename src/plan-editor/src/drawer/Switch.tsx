import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

interface Props {
  readonly on: boolean;
  readonly label: string;
  /** What the thing belongs to, where several have the same label. */
  readonly of?: string;
  readonly onSwitch: (on: boolean) => void;
  readonly children: ComponentChildren;
}

/** Something that is shown on the plan or not, told by filling and by word. */
export function Switch({ on, label, of, onSwitch, children }: Props) {
  const id = useId();
  return (
    <div class="switch">
      <label>
        <input
          type="checkbox"
          role="switch"
          checked={on}
          aria-checked={on}
          aria-describedby={id}
          onChange={(event) => onSwitch(event.currentTarget.checked)}
        />
        <span class="switch-label">
          {label}
          {of !== undefined && <span class="minor"> {of}</span>}
        </span>
        <span class="switch-state" aria-hidden="true">
          {on ? 'Shown' : 'Show'}
        </span>
      </label>
      <p id={id}>{children}</p>
    </div>
  );
}
