import { signal } from '@preact/signals';

/** Whether the picture of levels is drawn under the plan. */
export const levelPictureOn = signal(false);
