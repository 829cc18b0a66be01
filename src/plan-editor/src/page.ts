import { createDesk } from './desk/createDesk';
import type { Desk } from './desk/desk';
import { createDrawer, type DrawerState } from './drawer/drawerState';
import { createSaving, type Saving } from './saving/saving';
import { httpService, newTabName } from './service/httpService';
import type { Service } from './service/service';
import { createOpening, type Opening } from './shelf/opening';

/** The parts of the page, put together once. */
export interface Page {
  readonly service: Service;
  readonly desk: Desk;
  readonly saving: Saving;
  readonly opening: Opening;
  readonly drawer: DrawerState;
}

export function createPage(): Page {
  const service = httpService((address, request) => fetch(address, request), newTabName());
  const desk = createDesk(service.assess);
  const saving = createSaving(service, desk, (milliseconds, act) => {
    const timer = setTimeout(act, milliseconds);
    return () => clearTimeout(timer);
  });
  return { service, desk, saving, opening: createOpening(service, saving), drawer: createDrawer(desk) };
}
