import { type Desk, zoneKey } from '../desk/desk';
import { levelPictureOn } from '../levels/levelPicture';
import { nameOf } from '../plan/names';
import type { Assessment, Zone } from '../service/answers';
import { Switch } from './Switch';

interface Props {
  readonly assessment: Assessment;
  readonly desk: Desk;
}

const effects: readonly { readonly id: Zone['effect']; readonly label: string }[] = [
  { id: 'excludes', label: 'Keep people out' },
  { id: 'requires', label: 'Ask something of people' },
  { id: 'informs', label: 'To know' },
];

/** Every area of the assessment, with a switch to show it on the plan. */
export function Areas({ assessment, desk }: Props) {
  return (
    <>
      <Switch
        on={levelPictureOn.value}
        label="Level picture"
        onSwitch={(on) => {
          levelPictureOn.value = on;
        }}
      >
        The loudest level of the programme at every place, in dB(A), drawn under the plan.
      </Switch>
      {effects.map(({ id, label }) => (
        <section key={id} aria-labelledby={`effect-${id}`}>
          <h3 id={`effect-${id}`}>{label}</h3>
          {assessment.zones
            .filter((zone) => zone.effect === id)
            .map((zone) => (
              <Area key={zoneKey(zone)} zone={zone} desk={desk} />
            ))}
        </section>
      ))}
    </>
  );
}

function Area({ zone, desk }: { readonly zone: Zone; readonly desk: Desk }) {
  const plan = desk.settled.value;
  const key = zoneKey(zone);
  return (
    <Switch
      on={desk.shownZones.value.has(key)}
      label={zone.label ?? zone.row}
      of={plan === null ? zone.elementId : nameOf(plan, zone.elementId)}
      onSwitch={(on) => desk.showZone(key, on)}
    >
      {zone.sentence}
    </Switch>
  );
}
