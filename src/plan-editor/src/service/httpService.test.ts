import { describe, expect, it } from 'vitest';
import { planOf } from '../desk/fakeAssess';
import { type Fetch, httpService, isAbort, newTabName } from './httpService';
import { noAnswer, Refusal, reasonOf } from './refusal';

interface Sent {
  readonly address: string;
  readonly request: RequestInit;
}

function answering(response: () => Response) {
  const sent: Sent[] = [];
  const fetch: Fetch = async (address, request = {}) => {
    sent.push({ address, request });
    return response();
  };
  return { sent, service: httpService(fetch, 'tab-1') };
}

const summary = { id: 'p/1', title: 'a', revision: 2, savedAt: '2027-06-26T12:31:00+00:00' };
const saved = () => Response.json(summary, { headers: { ETag: '"2"' } });
const headers = ({ request }: Sent) => request.headers as Record<string, string>;

describe('plans', () => {
  it('are saved over the state they follow', async () => {
    const { sent, service } = answering(saved);
    const result = await service.save('p/1', '"1"', planOf('a'));

    expect(sent[0]?.address).toBe('/api/plans/p%2F1');
    expect(sent[0]?.request.method).toBe('PUT');
    expect(sent[0] && headers(sent[0])['If-Match']).toBe('"1"');
    expect(result).toEqual({ id: 'p/1', tag: '"2"', savedAt: new Date('2027-06-26T12:31:00Z') });
  });

  it('are sent to the end when the page is being left', async () => {
    const { sent, service } = answering(saved);
    await service.add(planOf('a'), { leaving: true });
    await service.add(planOf('a'));

    expect(sent.map((s) => s.request.keepalive)).toEqual([true, undefined]);
  });

  it('come with the tag a save must name', async () => {
    const { service } = answering(() => Response.json(planOf('a'), { headers: { ETag: '"7"' } }));

    expect(await service.plan('x')).toEqual({ plan: planOf('a'), tag: '"7"' });
  });
});

describe('questions', () => {
  it('name the tab, so that a later one overtakes them', async () => {
    const { sent, service } = answering(() => Response.json({ places: [{ loud: 'x' }] }));
    const never = new AbortController().signal;
    await service.assess(planOf('a'), 'drag', never);
    await service.askPlace(planOf('a'), [1, 2], never);

    expect(sent.map((s) => s.address)).toEqual(['/api/assessments?detail=drag', '/api/points']);
    expect(sent.map((s) => headers(s)['ShowSafety-Tab'])).toEqual(['tab-1', 'tab-1']);
    expect(JSON.parse(String(sent[1]?.request.body))).toEqual({
      plan: planOf('a'),
      places: [{ place: [1, 2] }],
    });
  });

  it('of every tab have a name of their own', () => {
    expect(newTabName()).not.toBe(newTabName());
    expect(newTabName()).toMatch(/^[0-9a-z]+-[0-9a-z]+$/);
  });
});

describe('refusals', () => {
  const refused = async (response: () => Response) =>
    answering(response)
      .service.plans()
      .then(
        () => null,
        (thrown: unknown) => thrown,
      );

  it('name the field, the value and what is allowed', async () => {
    const errors = [
      { pointer: '/site/outline', code: 'missing', text: 'The outline is missing.' },
      {
        pointer: '/engines/0/place',
        code: 'outOfRange',
        value: '9999',
        allowed: '-5000 to 5000',
        text: 'Too far.',
      },
    ];
    const thrown = await refused(() => Response.json({ title: 'x', detail: 'y', errors }, { status: 400 }));

    expect(thrown).toBeInstanceOf(Refusal);
    expect((thrown as Refusal).problems).toEqual(errors);
    expect(reasonOf(thrown)).toBe(
      '/site/outline: The outline is missing. /engines/0/place: Too far. It is 9999. Allowed: -5000 to 5000.',
    );
  });

  it('name three problems and count the rest', async () => {
    const errors = ['a', 'b', 'c', 'd', 'e'].map((text) => ({ pointer: '', code: 'x', text: `${text}.` }));
    const thrown = await refused(() => Response.json({ errors }, { status: 400 }));

    expect(reasonOf(thrown)).toBe('a. b. c. And 2 more.');
  });

  it.each([
    [Response.json({ detail: 'Saved elsewhere.' }, { status: 412 }), 412, 'Saved elsewhere.'],
    [new Response('<html>', { status: 502 }), 502, 'The service answered with status 502.'],
    [Response.json({ errors: 'x' }, { status: 400 }), 400, 'The service answered with status 400.'],
  ])('are told by detail or status', async (response, status, words) => {
    const thrown = await refused(() => response);
    expect(thrown).toMatchObject({ status, message: words });
  });

  it('say when nothing answers', async () => {
    const service = httpService(() => Promise.reject(new TypeError('Failed to fetch')), 't');

    await expect(service.plans()).rejects.toMatchObject({ status: noAnswer });
  });

  it('are no refusals when the answer was no longer wanted', async () => {
    const service = httpService(() => Promise.reject(new DOMException('x', 'AbortError')), 't');
    const thrown = await service.plans().catch((e: unknown) => e);

    expect(isAbort(thrown)).toBe(true);
  });
});
