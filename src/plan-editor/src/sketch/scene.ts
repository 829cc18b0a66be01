import { computed, effect, type ReadonlySignal } from '@preact/signals';
import type { Desk } from '../desk/desk';
import { limitLines, toneLayer } from '../levels/levelLayers';
import type { LevelLimit } from '../levels/levelLimits';
import type { LevelState } from '../levels/watchLevels';
import { answerScene } from './drawing/answerScene';
import { groundScene, siteScene } from './drawing/groundScene';
import { markScene } from './drawing/markScene';
import { movingScene, obstacles, uncheckedScene } from './drawing/movingScene';
import { stillGround } from './drawing/stillGround';
import { markWhenDrawn } from './drawnMark';
import type { Frame } from './geometry/frame';
import { inkLayer } from './sheet';

/** The layers of the sheet and what fills them from the desk. */
export function scene(
  desk: Desk,
  frame: ReadonlySignal<Frame | null>,
  levels: ReadonlySignal<LevelState>,
  levelLimits: ReadonlySignal<readonly LevelLimit[] | null>,
) {
  const site = inkLayer(false, 0);
  const tones = toneLayer(5);
  // Above the answer, whose labels give way to the limits' names.
  const limits = inkLayer('still', 25);
  const ground = inkLayer('still', 10);
  const answer = inkLayer('still', 20);
  const unchecked = inkLayer('moving', 10);
  const marks = inkLayer(false, 20);
  const moving = inkLayer('moving', 30);
  // Apart from the frame: a view that only shifts paints nothing anew.
  const metresPerPixel = computed(() => frame.value?.metresPerPixel);
  const ofPlan = stillGround(desk.plan);
  // Null all through a drag, so that answers landing in it leave the still sheet alone.
  const checked = computed(() => (desk.unchecked.value ? null : desk.answer.value));

  const fill = () => [
    effect(() => site.show(ofPlan.value === null ? [] : siteScene(ofPlan.value))),
    effect(() => {
      const grid = levels.value.kind === 'shown' ? levels.value.grid : null;
      tones.show(grid);
      limits.show(grid === null ? [] : limitLines(grid, levelLimits.value ?? []));
    }),
    effect(() => ground.show(ofPlan.value === null ? [] : groundScene(ofPlan.value))),
    effect(() => {
      const said = checked.value;
      answer.show(
        said === null ? [] : [...answerScene(said.assessment, desk.shownZones.value), ...obstacles(said)],
      );
    }),
    effect(() => {
      const plan = desk.plan.value;
      const said = desk.answer.value;
      unchecked.show(
        plan === null || said === null || !desk.unchecked.value
          ? []
          : uncheckedScene(plan, said, desk.shownZones.value),
      );
    }),
    effect(() => {
      const plan = desk.plan.value;
      const scale = metresPerPixel.value;
      moving.show(plan === null || scale === undefined ? [] : movingScene(plan, checked.value, scale));
    }),
    effect(() => {
      const plan = ofPlan.value;
      marks.show(plan === null ? [] : markScene(plan, desk.chosen.value, desk.spot.value));
    }),
    markWhenDrawn(desk.answer),
  ];
  return {
    still: [site.layer, tones.layer, ground.layer, limits.layer, answer.layer],
    moving: [unchecked.layer, marks.layer, moving.layer],
    /** Begins to follow the desk; the answer ends it. */
    follow() {
      const ends = fill();
      return () => {
        for (const end of ends) {
          end();
        }
      };
    },
  };
}
