import { type LevelLimit, limitsInWords } from './levelLimits';
import { darkestDbA, palestDbA } from './ramp';
import type { LevelState } from './watchLevels';

interface Props {
  readonly state: LevelState;
  /** The limits drawn as lines; null when they are not known. */
  readonly limits: readonly LevelLimit[] | null;
}

/** What the level picture shows, or why there is none. */
export function LevelNote({ state, limits }: Props) {
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
      {state.kind === 'shown' ? (
        // On a telephone the plan below is worth more than words read once.
        <details open={window.matchMedia('(min-width: 700px)').matches}>
          <summary>What this shows</summary>
          <p>{sentenceOf(state)}</p>
          <Limits limits={limits} />
        </details>
      ) : (
        <p>{sentenceOf(state)}</p>
      )}
    </div>
  );
}

// A day's or a window's average is lower than the loudest moment, so the lines lie outside of where the limits are met.
function Limits({ limits }: Pick<Props, 'limits'>) {
  if (limits === null || limits.length === 0) {
    return <p>{limits === null ? 'The limits of the rules are not known here.' : 'No rule is chosen.'}</p>;
  }
  return (
    <>
      <p>Lines: limits of the rules chosen, as if that moment lasted.</p>
      {limitsInWords(limits).map((words) => (
        <p key={words}>{words}</p>
      ))}
    </>
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
