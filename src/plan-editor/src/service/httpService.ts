import type { PlanFile } from '../plan/planFile';
import type {
  Assessment,
  PlaceAnswer,
  PlanSummary,
  RuleSet,
  TemplateSummary,
  VersionSummary,
} from './answers';
import { refusalOf, silence } from './refusal';
import type { LastChance, Saved, Service } from './service';

/** The part of `fetch` that is needed, so that tests need no network. */
export type Fetch = (address: string, request?: RequestInit) => Promise<Response>;

/** The service behind this page. The tab's name lets it drop questions of this tab that a later one has overtaken. */
export function httpService(fetch: Fetch, tab: string): Service {
  const ask = async (address: string, request: RequestInit = {}): Promise<Response> => {
    const response = await fetch(address, request).catch((thrown: unknown) => {
      throw isAbort(thrown) ? thrown : silence();
    });
    if (!response.ok) {
      throw await refusalOf(response);
    }
    return response;
  };
  const json = async <T>(address: string, request?: RequestInit): Promise<T> => {
    const response = await ask(address, request);
    return response.json().catch((thrown: unknown) => {
      throw isAbort(thrown) ? thrown : silence();
    });
  };
  const computing = (body: unknown, signal: AbortSignal): RequestInit => ({
    ...sent('POST', body, { 'ShowSafety-Tab': tab }),
    signal,
  });

  return {
    templates: () => json<readonly TemplateSummary[]>('/api/templates'),
    template: (name) => json<PlanFile>(`/api/templates/${encodeURIComponent(name)}`),
    start: (name) => json<PlanFile>(`/api/templates/${encodeURIComponent(name)}/start`),

    plans: () => json<readonly PlanSummary[]>('/api/plans'),
    plan: async (id) => {
      const response = await ask(planAddress(id));
      return { plan: (await response.json()) as PlanFile, tag: response.headers.get('ETag') ?? '' };
    },
    add: async (plan, last) => savedBy(await ask('/api/plans', leaving(sent('POST', plan), last))),
    save: async (id, tag, plan, last) =>
      savedBy(await ask(planAddress(id), leaving(sent('PUT', plan, { 'If-Match': tag }), last))),
    remove: async (id, tag) => {
      await ask(planAddress(id), { method: 'DELETE', headers: { 'If-Match': tag } });
    },

    versions: (id) => json<readonly VersionSummary[]>(`${planAddress(id)}/versions`),
    keep: (id, name) => json<VersionSummary>(`${planAddress(id)}/versions`, sent('POST', { name })),
    version: (id, number) => json<PlanFile>(`${planAddress(id)}/versions/${number}`),

    assess: (plan, detail, signal) =>
      json<Assessment>(`/api/assessments?detail=${detail}`, computing(plan, signal)),
    askPlace: async (plan, place, signal) => {
      const answer = await json<{ readonly places: readonly PlaceAnswer[] }>(
        '/api/points',
        computing({ plan, places: [{ place }] }, signal),
      );
      const [first] = answer.places;
      if (first === undefined) {
        throw silence();
      }
      return first;
    },
    levels: async (plan, window, signal) =>
      (await ask('/api/levels', { ...sent('POST', { plan, window }), signal })).arrayBuffer(),
    ruleSets: () => json<readonly RuleSet[]>('/api/rule-sets'),
    brief: async (plan) => (await ask('/api/briefs', sent('POST', plan))).blob(),
    sitePlan: async (plan) => (await ask('/api/site-plans', sent('POST', plan))).blob(),
  };
}

/** A name for this tab: random, of no meaning, gone with the tab. */
export function newTabName(): string {
  return Array.from(crypto.getRandomValues(new Uint32Array(2)), (part) => part.toString(36)).join('-');
}

/** Whether something thrown only says that the answer was no longer wanted. */
export function isAbort(thrown: unknown): boolean {
  return thrown instanceof DOMException && thrown.name === 'AbortError';
}

function planAddress(id: string): string {
  return `/api/plans/${encodeURIComponent(id)}`;
}

function sent(method: string, body: unknown, headers: Record<string, string> = {}): RequestInit {
  return { method, headers: { 'Content-Type': 'application/json', ...headers }, body: JSON.stringify(body) };
}

function leaving(request: RequestInit, last: LastChance | undefined): RequestInit {
  return last?.leaving === true ? { ...request, keepalive: true } : request;
}

async function savedBy(response: Response): Promise<Saved> {
  const { id, savedAt } = (await response.json()) as PlanSummary;
  return { id, tag: response.headers.get('ETag') ?? '', savedAt: new Date(savedAt) };
}
