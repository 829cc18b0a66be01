import { darkestDbA, palestDbA } from './ramp';
import type { LevelState } from './watchLevels';

/** What the level picture shows, or why there is none. */
export function LevelNote({ state }: { readonly state: LevelState }) {
  if (state.kind === 'off') {
    return null;
  }
  return (
    <div class="level-note" role="status">
      {state.kind === 'shown' && (
        <div class="level-ramp">
          <span>{palestDbA}</span>
          <span class="level-tones" />
          <span>{darkestDbA} dB(A)</span>
        </div>
      )}
      <p>{sentenceOf(state)}</p>
    </div>
  );
}

function sentenceOf(state: Exclude<LevelState, { readonly kind: 'off' }>): string {
  switch (state.kind) {
    case 'asking':
      return 'Level picture: asking …';
    case 'cannotTell':
      return 'Level cannot be told.';
    case 'trouble':
      return `No level picture. ${state.reason}`;
    case 'shown':
      return `Planning value at the loudest moment of the programme, ear at ${state.grid.earHeightMetres} m.`;
    default:
      return '';
  }
}
