import type { PlanSummary, TemplateSummary, VersionSummary } from '../service/answers';
import type { Service } from '../service/service';

/** What lies on the shelf. */
export interface ShelfContent {
  readonly plans: readonly PlanSummary[] | null;
  readonly templates: readonly TemplateSummary[];
  readonly kept: readonly VersionSummary[];
}

export const emptyShelf: ShelfContent = { plans: null, templates: [], kept: [] };

/** Looks at the shelf; kept states are those of the plan on the desk. */
export async function readShelf(
  service: Pick<Service, 'plans' | 'templates' | 'versions'>,
  planId: string | null,
): Promise<ShelfContent> {
  const [plans, templates, kept] = await Promise.all([
    service.plans(),
    service.templates(),
    planId === null ? [] : service.versions(planId),
  ]);
  return { plans, templates, kept };
}

/** What a template shows. Its first sentences only say that it is invented, which the page says by itself. */
export function whatItShows(notes: string | null | undefined): string {
  const sentences = (notes ?? '').split(/(?<=\.)\s+/);
  return sentences
    .filter((sentence) => !/^(Invented example|Start a plan of your own)/.test(sentence))
    .join(' ');
}
