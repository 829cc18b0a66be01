import type { Saving } from './saving';

/** Sends what is owed when the tab is hidden or left, and asks before anything owed would be lost. */
export function saveOnLeaving(
  saving: Saving,
  page: Pick<Window, 'addEventListener'>,
  sheet: Pick<Document, 'addEventListener' | 'visibilityState'>,
): void {
  page.addEventListener('pagehide', () => saving.leave());
  sheet.addEventListener('visibilitychange', () => {
    if (sheet.visibilityState === 'hidden') {
      saving.leave();
    }
  });
  page.addEventListener('online', () => void saving.flush());
  page.addEventListener('beforeunload', (event) => {
    if (saving.owes.value) {
      saving.leave();
      event.preventDefault();
    }
  });
}
