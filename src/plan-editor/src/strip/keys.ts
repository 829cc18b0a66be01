import type { Desk } from '../desk/desk';

type Stroke = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey'>;

/** What a key stroke asks of the history, if anything. */
export function stepOf({ key, ctrlKey, metaKey, shiftKey, altKey }: Stroke): 'undo' | 'redo' | null {
  if (altKey || ctrlKey === metaKey) {
    return null;
  }
  switch (key.toLowerCase()) {
    case 'z':
      return shiftKey ? 'redo' : 'undo';
    case 'y':
      return ctrlKey && !shiftKey ? 'redo' : null;
    default:
      return null;
  }
}

/** Undo and redo by keyboard, except where the keys belong to a text being typed. */
export function stepByKeyboard(
  desk: Pick<Desk, 'undo' | 'redo'>,
  page: Pick<Window, 'addEventListener'>,
): void {
  page.addEventListener('keydown', (event) => {
    const step = stepOf(event);
    if (step === null || isTyping(event.target)) {
      return;
    }
    event.preventDefault();
    desk[step]();
  });
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLInputElement && !['checkbox', 'radio', 'range'].includes(target.type);
}
